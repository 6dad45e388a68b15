package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
)

// A pair is an entry of a JSON object: where its value starts, and the value.
type pair struct {
	key   string
	at    int
	value json.RawMessage
}

// pairs reads an object. ok is false where it is none; that has been told.
func (r *sheetReader) pairs(text []byte, at int, what string) (all []pair, ok bool) {
	d := json.NewDecoder(bytes.NewReader(text))
	if open, err := d.Token(); err != nil || open != json.Delim('{') {
		r.complain(at, "%s is no JSON object; it starts with { and ends with }", what)
		return nil, false
	}
	seen := map[string]bool{}
	for d.More() {
		key, err := d.Token()
		name, isText := key.(string)
		p := pair{key: name}
		if err == nil && isText {
			err = d.Decode(&p.value)
		}
		p.at = at + int(d.InputOffset()) - len(p.value)
		if err != nil || !isText {
			r.complain(p.at, "%s cannot be read (%v); look for a comma or a quotation mark", what, err)
			return nil, false
		}
		if seen[name] {
			r.complain(p.at, "%s has “%s” twice; take one out", what, name)
		}
		seen[name] = true
		all = append(all, p)
	}
	if _, err := d.Token(); err != nil {
		r.complain(at+len(text), "%s is cut off (%v)", what, err)
		return nil, false
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		r.complain(at+int(d.InputOffset()), "something stands after %s; take it out", what)
		return nil, false
	}
	return all, true
}
