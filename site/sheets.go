package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"html/template"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"spraywright/calc"
	"spraywright/calc/menu"
	"spraywright/calc/shelf"
)

// sheetsFile is all that a site offers for the shelf, in the form in which a shelf goes out and comes in.
const sheetsFile = "sheets.json"

// mostOffered is how many things a site may offer: they all stand on one page.
const mostOffered = 2000

// A shelfFile is the shelf as a file; scripts/shelf-file.js writes and reads the same.
type shelfFile struct {
	Spraywright string      `json:"spraywright"` // "shelf"
	Version     int         `json:"version"`
	Items       []shelfItem `json:"items"`
}

// A shelfItem is one thing kept: the form of a calculator in calc/shelf.
type shelfItem struct {
	ID   string    `json:"id,omitempty"`
	Kind string    `json:"kind"`
	Name string    `json:"name"`
	Form calc.Form `json:"form"`
}

// A shelfPage is what the shelf's page shows.
type shelfPage struct {
	Kinds   []shelfKind
	Offered []offeredItem
}

// An offeredItem is a line of what the site offers.
type offeredItem struct {
	ID, Kind, Name, Form string
	Link                 template.URL // to the form, filled in
}

// sheetsIn reads a folder of files and puts them together in one. Without a name the usual folder is read where there is
// one; nil stands for nothing to offer.
func sheetsIn(folder, usual string) ([]byte, error) {
	if folder == "" {
		if _, err := os.Stat(usual); errors.Is(err, fs.ErrNotExist) {
			return nil, nil
		}
		folder = usual
	}
	return readSheets(os.DirFS(folder), filepath.Base(folder))
}

// readSheets reads every *.json of a folder. It finds what is wrong in all of them at once; each line of the error names
// file, line and entry, and says what to do.
func readSheets(folder fs.FS, called string) ([]byte, error) {
	names, err := fs.Glob(folder, "*.json")
	if err != nil {
		return nil, err
	}
	if len(names) == 0 {
		return nil, fmt.Errorf("%s: there is no *.json in this folder; put the files there that the shelf's page exports", called)
	}
	slices.Sort(names)
	all := shelfFile{"shelf", 1, []shelfItem{}}
	where := map[string]string{}
	var wrong []error
	for _, name := range names {
		text, err := fs.ReadFile(folder, name)
		if err != nil {
			return nil, err
		}
		r := sheetReader{file: called + "/" + name, text: text, where: where}
		all.Items = append(all.Items, r.read()...)
		wrong = append(wrong, r.wrong...)
	}
	if len(all.Items) > mostOffered {
		wrong = append(wrong, fmt.Errorf("%s: it holds %d things; a site offers %d at most", called, len(all.Items), mostOffered))
	}
	if wrong != nil {
		return nil, errors.Join(wrong...)
	}
	text, err := json.MarshalIndent(all, "", " ")
	return append(text, '\n'), err
}

// offeredIn lists what a site offers, by name within each kind.
func offeredIn(site bundle) ([]offeredItem, error) {
	if site[sheetsFile] == nil {
		return nil, nil
	}
	var file shelfFile
	if err := json.Unmarshal(site[sheetsFile], &file); err != nil {
		return nil, err
	}
	var all []offeredItem
	for _, kind := range shelf.Kinds() {
		first := len(all)
		for _, item := range file.Items {
			if item.Kind == kind.ID {
				form := item.Form.String()
				all = append(all, offeredItem{item.ID, item.Kind, item.Name, form, template.URL(pageFile(menu.Find(kind.ID)) + "#" + form)})
			}
		}
		slices.SortStableFunc(all[first:], func(a, b offeredItem) int {
			return strings.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name))
		})
	}
	return all, nil
}

// lineAt is the number of the line that a place in a text stands in.
func lineAt(text []byte, at int) int { return 1 + bytes.Count(text[:min(at, len(text))], []byte("\n")) }
