package main

import (
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"regexp"
	"slices"
	"strings"
)

// Parts of two versions of the site must not work together: not while a new one is being put on the host, and not when a
// cache still has some files of the old. The service worker sees to that once it is there. Until then each part tells
// whether the others are of its build: a script cannot be linked to one of another build, app.js compares the page's
// build with its own, and a core, its words or the styles with another hash than the one written down are refused. What
// a person is then told is in theme.js.

// buildFile is the script that holds the build's name and the hashes of what scripts fetch.
const buildFile = "scripts/build.js"

// unbuilt stands in pages where the build's name is to come.
const unbuilt = `data-build=""`

// markPages names the build after all that goes into it, in the pages and in a script. What comes after it may use the name.
func markPages(site bundle) error {
	hash := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(site)) {
		fmt.Fprintf(hash, "%s %d\n%s", name, len(site[name]), site[name])
	}
	for _, folder := range []fs.FS{embeddedAssets, oneFileAssets} {
		err := fs.WalkDir(folder, ".", func(name string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() {
				return err
			}
			text, err := fs.ReadFile(folder, name)
			fmt.Fprintf(hash, "%s %d\n%s", name, len(text), text)
			return err
		})
		if err != nil {
			return err
		}
	}
	build, sums := hex.EncodeToString(hash.Sum(nil)[:6]), map[string]string{}
	for name, text := range site {
		switch path.Ext(name) {
		case ".html":
			site[name] = []byte(strings.Replace(string(text), unbuilt, `data-build="`+build+`"`, 1))
		case ".wasm", ".words":
			sums[name] = integrity(text)
		}
	}
	list, err := json.MarshalIndent(sums, "", " ")
	site[buildFile] = fmt.Appendf(nil, "// Made by the build: its name, and the hashes of what scripts fetch.\nexport const build = %q;\nexport const sums = %s;\n", build, list)
	return err
}

// integrity is a file's hash as a browser holds it to (W3C Subresource Integrity).
func integrity(text []byte) string {
	sum := sha256.Sum256(text)
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}

var builtAs = regexp.MustCompile(`export const build = "([0-9a-f]+)"`)

// bindScripts has every script of the site ask those that it imports for the build's name, so that a browser does not
// link scripts of two builds. One that imports none asks build.js.
func bindScripts(site bundle) error {
	found := builtAs.FindSubmatch(site[buildFile])
	if found == nil {
		return fmt.Errorf("%s does not name the build", buildFile)
	}
	mark := "v_" + string(found[1])
	for name, text := range site {
		if !bound(name) {
			continue
		}
		var from []string
		for _, m := range importsOf.FindAllSubmatch(text, -1) {
			from = append(from, "./"+string(m[1]))
		}
		if len(from) == 0 && name != buildFile {
			from = append(from, relative(path.Dir(name), buildFile))
		}
		var more strings.Builder
		fmt.Fprintf(&more, "export const %s = 0;\n", mark)
		for i, other := range from {
			fmt.Fprintf(&more, "import { %s as %s_%d } from %q;\n", mark, mark, i, other)
		}
		site[name] = append(slices.Clone(text), more.String()...)
	}
	return nil
}

// bound reports whether a file is a module of the site: one of the scripts, or what a language says to them.
func bound(name string) bool {
	return path.Ext(name) == ".js" && name != "scripts/theme.js" && (path.Dir(name) == "scripts" || path.Base(name) == "words.js")
}

// relative is the way from a folder of the site, at most one deep, to a file.
func relative(folder, name string) string {
	if folder == path.Dir(name) {
		return "./" + path.Base(name)
	}
	return "../" + name
}
