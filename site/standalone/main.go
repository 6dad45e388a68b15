// Command standalone is the server of the site with the site in it: one file to hand on and to open with a double-click.
//
//	spraywright [-addr :8080] [-open]
//
// Without arguments it opens the site in this machine's browser. What it holds is put into it when it is compiled; see
// go run ./site enclose.
package main

import (
	"embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"

	"spraywright/site/server"
)

//go:embed all:held
var held embed.FS

// version is filled in by the release.
var version = "unreleased"

func main() {
	site, err := fs.Sub(held, "held/site")
	if err == nil {
		err = run(os.Args[1:], site, os.Stdout)
	}
	if errors.Is(err, flag.ErrHelp) {
		return
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "spraywright:", err)
		os.Exit(1)
	}
}

func run(args []string, site fs.FS, out io.Writer) error {
	flags := flag.NewFlagSet("spraywright", flag.ContinueOnError)
	addr := flags.String("addr", ":8080", "address to listen on, 127.0.0.1:8080 for this machine alone; the next free port is taken where it is in use")
	opens := flags.Bool("open", len(args) == 0, "open the site in the browser; so it does without any argument")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("%q is not understood; -help tells what is", flags.Arg(0))
	}
	if files, err := fs.ReadDir(site, "."); err != nil || len(files) == 0 {
		return errors.New("compiled without the site in it: run make release-check, or go run ./site enclose before compiling")
	}
	fmt.Fprintf(out, "Spraywright %s\n", version)
	return (&server.Server{Site: site, Addr: *addr, Opens: *opens, Spared: *opens, Out: out}).Serve()
}
