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
	"strings"
	"text/tabwriter"

	"github.com/andybalholm/brotli"

	"spraywright/calc/menu"
	"spraywright/site/compile"
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
	if err := compile.WASM(dir, "spraywright/site/size/empty"); err != nil {
		return err
	}
	rows, err := weigh(dist, filepath.Join(dir, "empty"))
	if err != nil {
		return err
	}
	yardstick := rows[0].brotli
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(table, "bytes\traw\tgzip -9\tbrotli -11\ttimes the empty program\t")
	var over error
	for _, r := range rows {
		fmt.Fprintf(table, "%s\t%d\t%d\t%d\t%.2f\t\n", r.name, r.raw, r.gzip, r.brotli, float64(r.brotli)/float64(yardstick))
		if limit := int(most * float64(yardstick)); r.core && r.brotli > limit {
			over = errors.Join(over, fmt.Errorf("%s is %d bytes over its limit; see what it imports", r.name, r.brotli-limit))
		}
	}
	table.Flush()
	fmt.Fprintf(out, "A core may be %.1f times the empty program (brotli).\n", most)
	return over
}

// A row is one line of the table.
type row struct {
	name string
	core bool
	size
}

// weigh measures the empty program, which comes first, each core, and what is downloaded in all.
func weigh(dist, empty string) ([]row, error) {
	s, err := measureFile(empty)
	if err != nil {
		return nil, err
	}
	rows := []row{{name: "empty program", size: s}}
	for _, core := range menu.Cores() {
		file := core.Name + ".wasm"
		s, err := measureFile(filepath.Join(dist, file))
		if err != nil {
			return nil, err
		}
		rows = append(rows, row{file, true, s})
	}
	front, err := os.ReadFile(filepath.Join(dist, "index.html"))
	if err != nil {
		return nil, err
	}
	for _, part := range []struct {
		name   string
		counts func(file string) bool
	}{{"front page", onFrontPage(string(front))}, {"all kept offline", func(string) bool { return true }}} {
		total, files, err := measureAll(dist, part.counts)
		if err != nil {
			return nil, err
		}
		rows = append(rows, row{name: fmt.Sprintf("%s, %d files", part.name, files), size: total})
	}
	return rows, nil
}

// onFrontPage reports whether the page that the site opens on, whose text this is, loads a file before it answers: what it
// names, and what starts its core. What is loaded when it is first used, such as the timers, is not named.
func onFrontPage(page string) func(file string) bool {
	return func(file string) bool {
		switch file {
		case "index.html", "wasm_exec.js", "scripts/core-worker.js", "scripts/engine.js", menu.Job().Name + ".wasm":
			return true
		}
		return strings.Contains(page, `="`+file+`"`) && path.Ext(file) != ".png" && path.Ext(file) != ".html"
	}
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
		s, err := measureFile(path)
		total.raw, total.gzip, total.brotli = total.raw+s.raw, total.gzip+s.gzip, total.brotli+s.brotli
		files++
		return err
	})
	return total, files, err
}

// A size is how many bytes something takes as it is and packed.
type size struct{ raw, gzip, brotli int }

func measureFile(path string) (size, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return size{}, err
	}
	var gz, br bytes.Buffer
	g, _ := gzip.NewWriterLevel(&gz, gzip.BestCompression)
	g.Write(text) // a buffer takes everything
	g.Close()
	b := brotli.NewWriterLevel(&br, brotli.BestCompression)
	b.Write(text)
	b.Close()
	return size{len(text), gz.Len(), br.Len()}, nil
}

func command(name string, args ...string) error {
	cmd := exec.Command(name, args...)
	cmd.Stdout, cmd.Stderr = os.Stderr, os.Stderr
	return cmd.Run()
}
