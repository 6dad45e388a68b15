package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"spraywright/calc"
	"spraywright/calc/menu"
	"spraywright/calc/shelf"
)

// A sheetReader reads one file of things for the shelf and gathers what is wrong in it.
type sheetReader struct {
	file  string
	text  []byte
	where map[string]string // where each thing stands, by kind and name and by its id, in this file and those before
	wrong []error
}

var itemID = regexp.MustCompile(`^[0-9a-z]{1,40}$`)

const longestEntry = 200 // characters

func (r *sheetReader) complain(at int, format string, args ...any) {
	r.wrong = append(r.wrong, fmt.Errorf("%s, line %d: %s", r.file, lineAt(r.text, at), fmt.Sprintf(format, args...)))
}

// read returns the things in the file.
func (r *sheetReader) read() (items []shelfItem) {
	var whole json.RawMessage
	if slip := (&json.SyntaxError{}); errors.As(json.Unmarshal(r.text, &whole), &slip) {
		r.complain(int(slip.Offset), "the file cannot be read (%v); look for a comma or a quotation mark before this place", slip)
		return nil
	}
	all, ok := r.pairs(r.text, 0, "the file")
	mark, version, list := "", "", pair{}
	for _, p := range all {
		switch p.key {
		case "spraywright":
			mark = string(p.value)
		case "version":
			version = string(p.value)
		case "items":
			list = p
		default:
			r.complain(p.at, "“%s” has no place in such a file; take it out", p.key)
		}
	}
	switch {
	case !ok:
		return nil
	case mark != `"shelf"`:
		r.complain(0, `this is no shelf: it has to say "spraywright": "shelf"`)
		return nil
	case version != "1":
		r.complain(0, `this is of another version: it has to say "version": 1`)
		return nil
	}
	d := json.NewDecoder(bytes.NewReader(list.value))
	if open, err := d.Token(); err != nil || open != json.Delim('[') {
		r.complain(list.at, `“items” has to be a list: "items": [ … ]`)
		return nil
	}
	for n := 1; d.More(); n++ {
		var value json.RawMessage
		if err := d.Decode(&value); err != nil {
			r.complain(list.at+int(d.InputOffset()), "item %d cannot be read (%v)", n, err)
			return nil
		}
		if item, ok := r.item(value, list.at+int(d.InputOffset())-len(value), fmt.Sprint("item ", n)); ok {
			items = append(items, item)
		}
	}
	return items
}

// item reads one thing. ok is false where it cannot be offered; why has been told.
func (r *sheetReader) item(text []byte, at int, what string) (item shelfItem, ok bool) {
	before := len(r.wrong)
	all, _ := r.pairs(text, at, what)
	form := pair{at: at}
	for _, p := range all {
		var words string
		isText := json.Unmarshal(p.value, &words) == nil
		switch {
		case p.key == "form":
			form = p
		case p.key == "kind" && isText:
			item.Kind = words
		case p.key == "id" && isText && itemID.MatchString(words):
			item.ID = words
		case p.key == "name" && isText: // that in the form counts
		default:
			r.complain(p.at, "“%s” of %s has no place there, or is not what it should be; an export from the shelf's page shows how", p.key, what)
		}
	}
	c := kept(item.Kind)
	if len(r.wrong) > before {
		return item, false
	}
	if c == nil {
		r.complain(at, `%s has to say what it is: "kind" is one of data-sheet, gun, booth, shop`, what)
		return item, false
	}
	places := r.form(form, what, &item)
	if len(r.wrong) > before {
		return item, false
	}
	r.check(c, item, places, form.at, what)
	item.Name = strings.TrimSpace(item.Form[c.Inputs[0].Key])
	if item.Name != "" {
		r.once(at, item.Kind+" "+strings.ToLower(strings.Join(strings.Fields(item.Name), " ")), item.Name, "call one of them otherwise, or take it out")
	}
	if item.ID != "" {
		r.once(at, item.ID, item.ID, "give one of them another id, or none")
	}
	return item, len(r.wrong) == before
}

// once notes where a thing stands by its key, and complains where there is one already.
func (r *sheetReader) once(at int, key, called, fix string) {
	if other, taken := r.where[key]; taken {
		r.complain(at, "“%s” stands in %s already; %s", called, other, fix)
	}
	r.where[key] = fmt.Sprintf("%s, line %d", r.file, lineAt(r.text, at))
}

// kept makes the calculator of a kind of thing on the shelf, or returns nil.
func kept(kind string) *calc.Calculator {
	for _, k := range shelf.Kinds() {
		if k.ID == kind {
			return menu.Find(kind)
		}
	}
	return nil
}

// form reads the entries of an item and returns where each stands.
func (r *sheetReader) form(p pair, what string, item *shelfItem) map[string]int {
	item.Form = calc.Form{}
	places := map[string]int{}
	if p.value == nil {
		r.complain(p.at, `%s has no "form": { … }`, what)
		return places
	}
	entries, _ := r.pairs(p.value, p.at, "the form of "+what)
	for _, e := range entries {
		var words string
		switch err := json.Unmarshal(e.value, &words); {
		case err != nil:
			r.complain(e.at, `“%s” has to stand in quotation marks, numbers too: "%s": "60"`, e.key, e.key)
		case utf8.RuneCountInString(words) > longestEntry:
			r.complain(e.at, "“%s” is longer than %d characters; shorten it", e.key, longestEntry)
		case strings.TrimSpace(words) != "":
			item.Form[e.key] = words
		}
		places[e.key] = e.at
	}
	return places
}

// check has the kind's own calculator read the form.
func (r *sheetReader) check(c *calc.Calculator, item shelfItem, places map[string]int, at int, what string) {
	for _, key := range slices.Sorted(maps.Keys(item.Form)) {
		base := strings.TrimSuffix(key, ".unit")
		if base != "units" && !strings.HasPrefix(base, "units.") && (c.Input(withoutRow(base)) == nil || base != key && c.Input(withoutRow(base)).Unit == 0) {
			r.complain(places[key], "%s has no entry “%s”; take it out, or look for a slip of the pen", strings.ToLower(string(c.Title)), key)
		}
	}
	for _, p := range c.Run(item.Form).Problems {
		place, known := places[p.Field]
		if !known {
			place = at
		}
		r.complain(place, "%s, “%s”: %s. %s", what, p.Field, p.Message, p.Fix)
	}
}
