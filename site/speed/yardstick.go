package main

import (
	"bytes"
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
	for _, core := range menu.Cores() {
		file := filepath.Join(copied, core.Name+".wasm")
		if err := os.WriteFile(file, empty, 0o644); err != nil {
			return fail(err)
		}
		os.Remove(file + ".gz")
		if _, err := os.Stat(file + ".br"); err == nil {
			if err := os.WriteFile(file+".br", packed.Bytes(), 0o644); err != nil {
				return fail(err)
			}
		}
	}
	return copied, remove, nil
}
