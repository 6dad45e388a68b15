package main

import (
	"bytes"
	"embed"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"

	"spraywright/calc/menu"
	"spraywright/site/compile"
)

// assets are the parts of the site that are written by hand.
//
//go:embed templates scripts styles static
var assets embed.FS

// A bundle is a finished site: what each file holds, by its slash-separated path.
type bundle map[string][]byte

// build compiles the cores, makes the site and writes it to a folder. sheets names a folder of data sheets to offer; blank
// stands for the folder sheets in the source, where there is one. compress asks for packed files beside the others.
func build(out, sheets string, compress bool) error {
	root, err := moduleRoot()
	if err != nil {
		return err
	}
	offered, err := sheetsIn(sheets, filepath.Join(root, "sheets"))
	if err != nil {
		return err
	}
	cores, err := compileCores()
	if err != nil {
		return err
	}
	runtime, err := wasmRuntime()
	if err != nil {
		return err
	}
	if offered != nil {
		cores[sheetsFile] = offered
	}
	site, err := assemble(cores, runtime, os.DirFS(filepath.Join(root, "testdata")))
	if err != nil {
		return err
	}
	if compress {
		site.addPacked(out)
	}
	return site.write(out)
}

// assemble makes every file of the site from the compiled cores, with the data sheets to offer beside them, Go's script for them, and testdata with its demo job
// and published check values.
func assemble(cores bundle, runtime []byte, testdata fs.FS) (bundle, error) {
	site := maps.Clone(cores)
	site["wasm_exec.js"] = runtime
	for _, add := range []func(bundle) error{addLicences, addScripts, addStyles, addStatic, addIcons, addDescription, addManifest, addWords, addLessonInputs, addLessonSketches} {
		if err := add(site); err != nil {
			return nil, err
		}
	}
	if err := addPages(site, testdata); err != nil {
		return nil, err
	}
	for _, add := range []func(bundle) error{markPages, addCourse, addEmbedded, addOneFile, bindScripts, addHostFiles} {
		if err := add(site); err != nil {
			return nil, err
		}
	}
	// Last, because it lists the hashes of all the others.
	return site, addServiceWorker(site)
}

func addScripts(site bundle) error {
	return each("scripts", func(name string, text []byte) {
		if name != workerTemplate {
			site["scripts/"+name] = text
		}
	})
}

// addStyles joins the style sheets, in the order of their names, into one.
func addStyles(site bundle) error {
	var all bytes.Buffer
	err := each("styles", func(_ string, text []byte) { all.Write(text) })
	site["site.css"] = all.Bytes()
	return err
}

func addStatic(site bundle) error {
	return each("static", func(name string, text []byte) { site[name] = text })
}

// each calls f with every file of one folder of the assets, in order of name.
func each(folder string, f func(name string, text []byte)) error {
	entries, err := fs.ReadDir(assets, folder)
	if err != nil {
		return err
	}
	for _, e := range entries {
		text, err := fs.ReadFile(assets, folder+"/"+e.Name())
		if err != nil {
			return err
		}
		f(e.Name(), text)
	}
	return nil
}

// coreFile is the file of a compiled core.
func coreFile(name string) string { return name + ".wasm" }

// compileCores compiles the calculators for the browser.
func compileCores() (bundle, error) {
	dir, err := os.MkdirTemp("", "cores")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	names := []string{wholeCore}
	for _, core := range menu.Cores() {
		names = append(names, core.Name)
	}
	var commands []string
	for _, name := range names {
		commands = append(commands, "spraywright/wasm/"+name)
	}
	if err := compile.WASM(dir, commands...); err != nil {
		return nil, err
	}
	cores := bundle{}
	for _, name := range names {
		if cores[coreFile(name)], err = os.ReadFile(filepath.Join(dir, name)); err != nil {
			return nil, err
		}
	}
	return cores, nil
}

// wasmRuntime is the script that starts a Go program in a browser. It must be of the compiler's own version.
func wasmRuntime() ([]byte, error) {
	root, err := goEnv("GOROOT")
	if err != nil {
		return nil, err
	}
	return os.ReadFile(filepath.Join(root, "lib", "wasm", "wasm_exec.js"))
}

func moduleRoot() (string, error) {
	mod, err := goEnv("GOMOD")
	return filepath.Dir(mod), err
}

func goEnv(name string) (string, error) {
	text, err := exec.Command("go", "env", name).Output()
	if err != nil {
		return "", fmt.Errorf("go env %s: %w", name, err)
	}
	return strings.TrimSpace(string(text)), nil
}

// write puts the site into a folder and takes out what an earlier build left there. It writes first the file by which
// the folder is known as ours, so that a build that was stopped can be run again, and sw.js last, so that a browser
// never finds a list of files that are not there yet.
func (site bundle) write(out string) error {
	if err := refuseStrange(out); err != nil {
		return err
	}
	between := slices.DeleteFunc(slices.Sorted(maps.Keys(site)), func(name string) bool { return name == descriptionFile || name == "sw.js" })
	for _, name := range slices.Concat([]string{descriptionFile}, between, []string{"sw.js"}) {
		if err := writeFile(out, name, site[name]); err != nil {
			return err
		}
	}
	return filepath.WalkDir(out, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(out, path)
		if _, ours := site[filepath.ToSlash(rel)]; err != nil || ours {
			return err
		}
		return os.Remove(path)
	})
}

// refuseStrange stops before files are removed from a folder that is not an earlier build.
func refuseStrange(out string) error {
	entries, err := os.ReadDir(out)
	if err != nil || len(entries) == 0 {
		return nil // not there yet
	}
	if _, err := os.Stat(filepath.Join(out, descriptionFile)); err != nil {
		return fmt.Errorf("%s holds something else; name an empty folder", out)
	}
	return nil
}

func writeFile(out, name string, text []byte) error {
	path := filepath.Join(out, filepath.FromSlash(name))
	if old, err := os.ReadFile(path); err == nil && bytes.Equal(old, text) {
		return nil
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	return os.WriteFile(path, text, 0o644)
}
