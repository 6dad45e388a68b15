package main

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"html"
	"path"
	"regexp"
	"strings"
	"text/template"

	"github.com/evanw/esbuild/pkg/api"

	"spraywright/calc"
)

// oneFile is the whole site in one file. It opens from a stick or out of a letter, where there is no server to ask, so
// it asks for nothing. The service worker does not keep it, because it would make the first visit half as heavy again.
const oneFile = siteSlug + ".html"

const siteSlug = "spraywright"

// wholeCore answers every calculator: one of these is a third of the size of the several that the pages share.
const wholeCore = "whole"

// A packedPage is a page as the one file holds it.
type packedPage struct {
	Title string `json:"title"`
	Lang  string `json:"lang"`
	Body  string `json:"body"`
}

// An openingNote is what shows where the file cannot open, in one language.
type openingNote struct{ Lang, Unscripted, Unpackable string }

// A packedWords is what the core says in a language, packed.
type packedWords struct{ Lang, Text string }

// addOneFile puts every page, the scripts, the styles and a core of all calculators into one file.
func addOneFile(site bundle) error {
	pages, err := packPages(site)
	if err != nil {
		return err
	}
	core, err := pack(site[coreFile(wholeCore)])
	if err != nil {
		return err
	}
	delete(site, coreFile(wholeCore)) // it is of use here alone
	words, notes, err := packWords(site)
	if err != nil {
		return err
	}
	course, err := pack(site[courseScript])
	if err != nil {
		return err
	}
	script, err := bundleScript(site, inOneFile, "onefile/open.js", api.FormatESModule)
	if err != nil {
		return err
	}
	theme, err := oneFileAssets.ReadFile("onefile/theme.js")
	if err != nil {
		return err
	}
	style := string(site["site.css"])
	t, err := template.ParseFS(oneFileAssets, "onefile/page.html")
	if err != nil {
		return err
	}
	var b bytes.Buffer
	err = t.Execute(&b, map[string]any{
		"Site": siteName, "Policy": oneFilePolicy([]string{string(theme), script}, style), "Icon": base64.StdEncoding.EncodeToString(site["mark.svg"]),
		"Style": style, "Theme": string(theme), "Script": script, "Worker": string(site[courseWorker]), "Course": course, "Pages": pages, "Core": core, "Words": words, "Notes": notes,
	})
	site[oneFile] = b.Bytes()
	return err
}

// oneFilePolicy lets run what the file itself holds, known by its hash, and nothing else; it may ask for nothing.
func oneFilePolicy(scripts []string, style string) string {
	var own strings.Builder
	for _, s := range scripts {
		own.WriteString(" " + hashSource(s))
	}
	return "default-src 'none'; script-src" + own.String() + " 'wasm-unsafe-eval'; style-src " + hashSource(style) +
		"; img-src data:; worker-src blob:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types spraywright"
}

func hashSource(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// packWords packs what the core says in each language but English, and words the opening notes in all.
func packWords(site bundle) (packed []packedWords, notes []openingNote, err error) {
	all, err := tongues()
	if err != nil {
		return nil, nil, err
	}
	for _, t := range all {
		notes = append(notes, openingNote{t.Code,
			t.say(calc.Phrase("This file holds a whole site, which scripts open, and none runs here. If a mail program shows you this, save the file and open it in a browser.")),
			t.say(calc.Phrase("This browser is too old to unpack the file. Open it in a newer one.")),
		})
		name := t.Folder() + wholeCore + ".words"
		if site[name] == nil {
			continue // English, which the core speaks by itself
		}
		text, err := pack(site[name])
		if err != nil {
			return nil, nil, err
		}
		delete(site, name)
		packed = append(packed, packedWords{t.Code, text})
	}
	return packed, notes, nil
}

var (
	pageBody  = regexp.MustCompile(`(?s)<body>(.*)</body>`)
	pageTitle = regexp.MustCompile(`<title>(.*)</title>`)
	pageLang  = regexp.MustCompile(`<html lang="([^"]+)"`)
)

// packPages packs what is between the body tags of every page, by the page's path without its ending.
func packPages(site bundle) (string, error) {
	pages := map[string]packedPage{}
	for name, text := range site {
		if path.Ext(name) != ".html" || path.Base(name) == frameFile {
			continue
		}
		body, title, lang := pageBody.FindSubmatch(text), pageTitle.FindSubmatch(text), pageLang.FindSubmatch(text)
		if body == nil || title == nil || lang == nil {
			return "", fmt.Errorf("%s is not a page as the layout makes them", name)
		}
		pages[strings.TrimSuffix(name, ".html")] = packedPage{html.UnescapeString(string(title[1])), string(lang[1]), string(body[1])}
	}
	text, err := json.Marshal(pages) // keys come out sorted
	if err != nil {
		return "", err
	}
	return pack(text)
}

// pack is gzip in base64: plain text that no mail program or editor harms, and that browsers unpack by themselves.
func pack(data []byte) (string, error) {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return "", err
	}
	if _, err := w.Write(data); err != nil {
		return "", err
	}
	err = w.Close()
	return base64.StdEncoding.EncodeToString(b.Bytes()), err
}
