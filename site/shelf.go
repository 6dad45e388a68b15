package main

import (
	"spraywright/calc/menu"
	"spraywright/calc/shelf"
)

// A shelfKind is one kind of thing that a person keeps, with the fields of its form: the shelf's page reads off them what
// a key is called, and the names of choices and units.
type shelfKind struct {
	shelf.Kind
	Page   string
	Fields []field
}

func shelfKinds() []shelfKind {
	var kinds []shelfKind
	for _, k := range shelf.Kinds() {
		c := menu.Find(k.ID)
		kind := shelfKind{Kind: k, Page: pageFile(c)}
		for _, in := range c.Inputs {
			kind.Fields = append(kind.Fields, newField(in, "", ""))
		}
		kinds = append(kinds, kind)
	}
	return kinds
}
