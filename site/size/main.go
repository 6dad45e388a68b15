// Command size tells what a first visit downloads, and holds each core to a limit.
//
//	go run ./site/size
//
// It builds the site, and beside its cores the smallest program that a page can call, with the same flags. It fails
// when a core, packed with brotli, is more than [most] times as large.
package main

import (
	"bytes"
	"compress/gzip"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"text/tabwriter"

	"github.com/andybalholm/brotli"

	"spraywright/calc/menu"
)

// most is how many times as large as the empty program the core may be. Both carry Go's runtime, which is nearly
// all of the empty one.
const most = 1.6

func main() {
	if err := run(os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "size:", err)
		os.Exit(1)
	}
}

func run(out io.Writer) error {
	dir, err := os.MkdirTemp("", "size")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	dist := filepath.Join(dir, "dist")
	if err := command("go", "run", "spraywright/site", "build", "-out", dist); err != nil {
		return err
	}
	empty, err := compile(dir, "spraywright/site/size/empty")
	if err != nil {
		return err
	}
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(table, "bytes\traw\tgzip -9\tbrotli -11\ttimes the empty program\t")
	yardstick := measure(empty).brotli
	line := func(name string, s size) {
		fmt.Fprintf(table, "%s\t%d\t%d\t%d\t%.2f\t\n", name, s.raw, s.gzip, s.brotli, float64(s.brotli)/float64(yardstick))
	}
	line("empty program", measure(empty))
	var over error
	for _, core := range menu.Cores() {
		shipped, err := os.ReadFile(filepath.Join(dist, core.Name+".wasm"))
		if err != nil {
			return err
		}
		s := measure(shipped)
		line(core.Name+".wasm", s)
		if limit := int(most * float64(yardstick)); s.brotli > limit {
			over = errors.Join(over, fmt.Errorf("%s.wasm is %d bytes over its limit; see what it imports", core.Name, s.brotli-limit))
		}
	}
	for _, part := range []struct {
		name   string
		counts func(file string) bool
	}{{"front page", onFrontPage}, {"all kept offline", func(string) bool { return true }}} {
		total, files, err := measureAll(dist, part.counts)
		if err != nil {
			return err
		}
		line(fmt.Sprintf("%s, %d files", part.name, files), total)
	}
	table.Flush()
	fmt.Fprintf(out, "A core may be %.1f times the empty program (brotli).\n", most)
	return over
}

// onFrontPage reports whether the page that the site opens on loads a file before it answers.
func onFrontPage(file string) bool {
	switch path.Ext(file) {
	case ".js", ".css", ".svg", ".webmanifest":
		return true
	}
	return file == "index.html" || file == menu.Job().Name+".wasm"
}

// compile builds a program as the site's build does.
func compile(dir, pkg string) ([]byte, error) {
	file := filepath.Join(dir, filepath.Base(pkg)+".wasm")
	cmd := exec.Command("go", "build", "-trimpath", "-ldflags=-s -w -buildid=", "-buildvcs=false", "-o", file, pkg)
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if text, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("compiling %s: %w\n%s", pkg, err, text)
	}
	return os.ReadFile(file)
}

// measureAll adds up the files of a built site that count.
func measureAll(dist string, counts func(file string) bool) (total size, files int, err error) {
	err = filepath.WalkDir(dist, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		name, err := filepath.Rel(dist, path)
		if err != nil || !counts(filepath.ToSlash(name)) {
			return err
		}
		text, err := os.ReadFile(path)
		s := measure(text)
		total.raw, total.gzip, total.brotli = total.raw+s.raw, total.gzip+s.gzip, total.brotli+s.brotli
		files++
		return err
	})
	return total, files, err
}

// A size is how many bytes something takes as it is and packed.
type size struct{ raw, gzip, brotli int }

func measure(text []byte) size {
	var gz, br bytes.Buffer
	g, _ := gzip.NewWriterLevel(&gz, gzip.BestCompression)
	g.Write(text) // a buffer takes everything
	g.Close()
	b := brotli.NewWriterLevel(&br, brotli.BestCompression)
	b.Write(text)
	b.Close()
	return size{len(text), gz.Len(), br.Len()}
}

func command(name string, args ...string) error {
	cmd := exec.Command(name, args...)
	cmd.Stdout, cmd.Stderr = os.Stderr, os.Stderr
	return cmd.Run()
}
