// Command size tells what a first visit downloads, and holds the core to a limit.
//
//	go run ./site/size
//
// It builds the site, and beside its core the smallest program that a page can call, with the same flags. It fails
// when the core, packed with brotli, is more than [most] times as large.
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
	"path/filepath"
	"strings"
	"text/tabwriter"

	"github.com/andybalholm/brotli"
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
	core, err := compile(dir, "spraywright/wasm")
	if err != nil {
		return err
	}
	empty, err := compile(dir, "spraywright/site/size/empty")
	if err != nil {
		return err
	}
	if shipped, err := os.ReadFile(filepath.Join(dist, "core.wasm")); err != nil || !bytes.Equal(shipped, core) {
		return errors.Join(err, errors.New("the site's core.wasm differs from the one built here; the flags have parted"))
	}
	visit, files, err := firstVisit(dist)
	if err != nil {
		return err
	}
	coreSize, emptySize := measure(core), measure(empty)
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(table, "bytes\traw\tgzip -9\tbrotli -11\t")
	fmt.Fprintf(table, "core.wasm\t%d\t%d\t%d\t\n", coreSize.raw, coreSize.gzip, coreSize.brotli)
	fmt.Fprintf(table, "empty program\t%d\t%d\t%d\t\n", emptySize.raw, emptySize.gzip, emptySize.brotli)
	fmt.Fprintf(table, "first visit, %d files\t%d\t%d\t%d\t\n", files, visit.raw, visit.gzip, visit.brotli)
	table.Flush()
	ratio := float64(coreSize.brotli) / float64(emptySize.brotli)
	fmt.Fprintf(out, "The core is %.2f times the empty program (brotli); %.1f is the most.\n", ratio, most)
	if ratio > most {
		return fmt.Errorf("the core is %d bytes over its limit; see what it imports", coreSize.brotli-int(most*float64(emptySize.brotli)))
	}
	return nil
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

// firstVisit adds up the files that the service worker fetches, which are all a visitor needs offline, and the
// worker itself.
func firstVisit(dist string) (total size, files int, err error) {
	worker, err := os.ReadFile(filepath.Join(dist, "sw.js"))
	if err != nil {
		return total, 0, err
	}
	err = filepath.WalkDir(dist, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		name, err := filepath.Rel(dist, path)
		if err != nil {
			return err
		}
		if name = filepath.ToSlash(name); name != "sw.js" && !strings.Contains(string(worker), `"`+name+`"`) {
			return nil
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
