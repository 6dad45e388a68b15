package main

import (
	"bytes"
	"compress/gzip"
	"io"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"

	"github.com/andybalholm/brotli"
)

// addPacked adds to a site what hosts may hand out instead of its files: name.br and name.gz, where that saves a tenth.
// The densest brotli takes a minute for all, so that what an earlier build has left in the folder is used again.
func (site bundle) addPacked(out string) {
	work := make(chan string)
	var all sync.WaitGroup
	var one sync.Mutex
	add := func(name string, small []byte, of int) {
		one.Lock()
		defer one.Unlock()
		if len(small) < of*9/10 {
			site[name] = small
		}
	}
	names := slices.Sorted(maps.Keys(site))
	texts := maps.Clone(site)
	for range runtime.GOMAXPROCS(0) {
		all.Go(func() {
			for name := range work {
				text := texts[name]
				earlier, _ := os.ReadFile(filepath.Join(out, filepath.FromSlash(name+".br")))
				add(name+".br", brotliOf(text, earlier), len(text))
				add(name+".gz", gzipOf(text), len(text))
			}
		})
	}
	for _, name := range names {
		if name != oneFile && path.Ext(name) != ".png" { // both are packed already
			work <- name
		}
	}
	close(work)
	all.Wait()
}

// brotliOf packs a text, unless it is what was packed earlier.
func brotliOf(text, earlier []byte) []byte {
	if old, err := io.ReadAll(brotli.NewReader(bytes.NewReader(earlier))); err == nil && len(earlier) > 0 && bytes.Equal(old, text) {
		return earlier
	}
	var b bytes.Buffer
	w := brotli.NewWriterLevel(&b, brotli.BestCompression)
	w.Write(text) // a buffer takes everything
	w.Close()
	return b.Bytes()
}

// gzipOf leaves out the name and the time, so that the same text makes the same bytes.
func gzipOf(text []byte) []byte {
	var b bytes.Buffer
	w, _ := gzip.NewWriterLevel(&b, gzip.BestCompression)
	w.Write(text)
	w.Close()
	return b.Bytes()
}

// enclosed is where the program that holds the site takes it from as it is compiled.
const enclosed = "site/standalone/held/site"

// enclose puts a built site there, or into another folder: of each file the one packed with gzip, which browsers take
// over plain http too, or the file itself where it has none.
func enclose(dir, to string) error {
	if err := os.RemoveAll(to); err != nil {
		return err
	}
	from := os.DirFS(dir)
	return fs.WalkDir(from, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasSuffix(name, ".br") {
			return err
		}
		if _, err := fs.Stat(from, name+".gz"); err == nil {
			return nil
		}
		text, err := fs.ReadFile(from, name)
		if err != nil {
			return err
		}
		return writeFile(to, name, text)
	})
}
