// Command site builds the finished static site and serves it.
//
//	go run ./site build [-out dist] [-sheets folder] [-compress]
//	go run ./site words
//	go run ./site enclose [-dir dist]
//	go run ./site serve [-dir dist] [-addr 127.0.0.1:8080] [-lan] [-nobuild] [-sheets folder]
package main

import (
	"errors"
	"flag"
	"fmt"
	"net"
	"os"
	"path/filepath"

	"spraywright/site/server"
)

func main() {
	if err := run(os.Args[1:]); err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(os.Stderr, "site:", err)
		os.Exit(1)
	}
}

const usage = "say what to do: build [-out dist] [-sheets folder] [-compress], words, enclose [-dir dist], or serve [-dir dist] [-addr 127.0.0.1:8080] [-lan] [-nobuild] [-sheets folder]"

func run(args []string) error {
	if len(args) == 0 {
		return errors.New(usage)
	}
	flags := flag.NewFlagSet(args[0], flag.ContinueOnError)
	sheets := flags.String("sheets", "", "folder of data sheets, *.json, that the site offers; sheets in the source where none is named")
	switch args[0] {
	case "build":
		out := flags.String("out", "dist", "folder to write the site to")
		compress := flags.Bool("compress", false, "write a .br and a .gz beside each file that gets smaller, for hosts that hand those out; takes a minute")
		if err := flags.Parse(args[1:]); err != nil {
			return err
		}
		return build(*out, *sheets, *compress)
	case "words":
		return updateWords()
	case "serve":
		dir := flags.String("dir", "dist", "folder with the site")
		addr := flags.String("addr", "127.0.0.1:8080", "address to listen on; the next free port is taken where it is in use")
		lan := flags.Bool("lan", false, "let other devices in the same network in, and show their address as a QR code")
		skip := flags.Bool("nobuild", false, "serve the folder as it is")
		if err := flags.Parse(args[1:]); err != nil {
			return err
		}
		if !*skip {
			if err := build(*dir, *sheets, false); err != nil {
				return err
			}
		}
		return serve(*dir, *addr, *lan)
	case "enclose":
		dir := flags.String("dir", "dist", "folder with a site that was built with -compress")
		if err := flags.Parse(args[1:]); err != nil {
			return err
		}
		root, err := moduleRoot()
		if err != nil {
			return err
		}
		return enclose(*dir, filepath.Join(root, filepath.FromSlash(enclosed)))
	}
	return errors.New(usage)
}

// serve hands out one folder and nothing outside it, not even through a link.
func serve(dir, addr string, lan bool) error {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return err
	}
	if _, port, err := net.SplitHostPort(addr); lan && err == nil {
		addr = ":" + port
	}
	return (&server.Server{Site: root.FS(), Addr: addr, Out: os.Stdout}).Serve()
}
