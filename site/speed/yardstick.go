package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"os"
	"path/filepath"

	"github.com/andybalholm/brotli"

	"spraywright/calc/menu"
	"spraywright/site/compile"
)

// withEmptyCores copies a built site and puts the empty program in place of its cores, packed as they are.
func withEmptyCores(dist string) (folder string, remove func(), err error) {
	if folder, err = os.MkdirTemp("", "yardstick"); err != nil {
		return "", nil, err
	}
	remove = func() { os.RemoveAll(folder) }
	fail := func(err error) (string, func(), error) { remove(); return "", nil, err }
	copied := filepath.Join(folder, "dist")
	if err := os.CopyFS(copied, os.DirFS(dist)); err != nil {
		return fail(err)
	}
	if err := compile.WASM(folder, "spraywright/site/size/empty"); err != nil {
		return fail(err)
	}
	empty, err := os.ReadFile(filepath.Join(folder, "empty"))
	if err != nil {
		return fail(err)
	}
	var packed bytes.Buffer
	w := brotli.NewWriterLevel(&packed, brotli.BestCompression)
	w.Write(empty) // a buffer takes everything
	w.Close()
	build, worker := filepath.Join(copied, "scripts", "build.js"), filepath.Join(copied, "sw.js")
	known, err := os.ReadFile(build) // pages take a core only with the hash that they know
	if err != nil {
		return fail(err)
	}
	kept, err := os.ReadFile(worker) // and it keeps a file only with the hash that it knows
	if err != nil {
		return fail(err)
	}
	before := hash(known)
	for _, core := range menu.Cores() {
		file := filepath.Join(copied, core.Name+".wasm")
		full, err := os.ReadFile(file)
		if err != nil {
			return fail(err)
		}
		known, kept = bytes.ReplaceAll(known, hash(full), hash(empty)), bytes.ReplaceAll(kept, hash(full), hash(empty))
		if err := replace(file, empty, packed.Bytes()); err != nil {
			return fail(err)
		}
	}
	if err := replace(build, known, nil); err != nil {
		return fail(err)
	}
	kept = bytes.ReplaceAll(kept, before, hash(known))
	if err := replace(worker, kept, nil); err != nil {
		return fail(err)
	}
	return copied, remove, nil
}

// replace puts text into a file, and packed into what is handed out instead of it where there was such a file.
func replace(file string, text, packed []byte) error {
	os.Remove(file + ".gz")
	if _, err := os.Stat(file + ".br"); err == nil {
		os.Remove(file + ".br")
		if packed != nil {
			if err := os.WriteFile(file+".br", packed, 0o644); err != nil {
				return err
			}
		}
	}
	return os.WriteFile(file, text, 0o644)
}

func hash(text []byte) []byte {
	sum := sha256.Sum256(text)
	return []byte(base64.StdEncoding.EncodeToString(sum[:]))
}
