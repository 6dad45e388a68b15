// Command site builds the finished static site and serves it.
//
//	go run ./site build [-out dist] [-sheets folder]
//	go run ./site words
//	go run ./site serve [-dir dist] [-addr 127.0.0.1:8080] [-lan] [-nobuild] [-sheets folder]
package main

import (
	"errors"
	"flag"
	"fmt"
	"os"
)

func main() {
	if err := run(os.Args[1:]); err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(os.Stderr, "site:", err)
		os.Exit(1)
	}
}

const usage = "say what to do: build [-out dist] [-sheets folder], words, or serve [-dir dist] [-addr 127.0.0.1:8080] [-lan] [-nobuild] [-sheets folder]"

func run(args []string) error {
	if len(args) == 0 {
		return errors.New(usage)
	}
	flags := flag.NewFlagSet(args[0], flag.ContinueOnError)
	sheets := flags.String("sheets", "", "folder of data sheets, *.json, that the site offers; sheets in the source where none is named")
	switch args[0] {
	case "build":
		out := flags.String("out", "dist", "folder to write the site to")
		if err := flags.Parse(args[1:]); err != nil {
			return err
		}
		return build(*out, *sheets)
	case "words":
		return updateWords()
	case "serve":
		var s server
		flags.StringVar(&s.dir, "dir", "dist", "folder with the site")
		flags.StringVar(&s.addr, "addr", "127.0.0.1:8080", "address to listen on; the next free port is taken where it is in use")
		flags.BoolVar(&s.lan, "lan", false, "let other devices in the same network in, and show their address as a QR code")
		skip := flags.Bool("nobuild", false, "serve the folder as it is")
		if err := flags.Parse(args[1:]); err != nil {
			return err
		}
		if !*skip {
			if err := build(s.dir, *sheets); err != nil {
				return err
			}
		}
		return s.serve()
	}
	return errors.New(usage)
}
