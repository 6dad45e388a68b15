package main

import (
	"encoding/json"
	"fmt"
	"index/suffixarray"
	"path/filepath"
	"slices"

	"spraywright/calc/menu"
	"spraywright/site/words"
)

// addWords writes what the cores and the scripts say in each tongue but English: for each core the phrases that it holds.
func addWords(site bundle) error {
	all, err := tongues()
	if err != nil {
		return err
	}
	for _, t := range all[1:] {
		said := map[string]string{}
		for _, m := range t.messages {
			if slices.Contains(m.Is, "script") && m.Text != "" {
				said[m.ID] = m.Text
			}
		}
		text, err := json.Marshal(said) // keys come out sorted
		if err != nil {
			return err
		}
		site[t.Folder()+"words.js"] = []byte("// Made by the build from the catalogue.\nexport const translated = " + string(text) + ";\n")
		for _, core := range append(menu.Cores(), menu.Core{Name: wholeCore}) {
			site[t.Folder()+core.Name+".words"] = []byte(lines(heldBy(site[coreFile(core.Name)], t.messages)))
		}
	}
	return nil
}

// onPages are the kinds of text that pages show and no core says. A question is said by exercises.
var onPages = []string{"help", "heading", "range", "title", "page", "script", "typed", "place"}

// heldBy picks the messages whose English a compiled core holds: the linker has left out what it cannot say. Texts that
// pages alone show are in it too, and are not needed.
func heldBy(core []byte, ms []words.Message) []words.Message {
	index := suffixarray.New(core)
	return slices.DeleteFunc(slices.Clone(ms), func(m words.Message) bool {
		return len(index.Lookup([]byte(m.ID), 1)) == 0 || !slices.ContainsFunc(m.Is, func(kind string) bool { return !slices.Contains(onPages, kind) })
	})
}

// updateWords brings the catalogue up to date with the sources.
func updateWords() error {
	root, err := moduleRoot()
	if err != nil {
		return err
	}
	change, err := words.Update(root, filepath.Join(root, "site", "words", "es"), "es")
	for _, m := range change.Dropped {
		if m.Text != "" {
			fmt.Printf("dropped, no longer in the sources: %s\n    %s\n", m.ID, m.Text)
		}
	}
	fmt.Printf("%d texts, %d without a translation\n", change.Texts, change.Missing)
	return err
}
