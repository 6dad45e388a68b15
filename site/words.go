package main

import (
	"embed"
	"encoding/json"
	"fmt"
	"index/suffixarray"
	"io/fs"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"

	"spraywright/calc"
	"spraywright/calc/menu"
	"spraywright/site/words"
)

//go:embed words/es/*.po
var catalogues embed.FS

// A tongue is a language that the pages are in.
type tongue struct {
	Code   string // "es"
	Name   string // in itself: "Español"
	Within string // the name in a sentence of its own: "español"
	calc.Language
	messages []words.Message
}

// tongues lists the languages, English first: its pages stand at the root.
func tongues() ([]tongue, error) {
	files, err := fs.Sub(catalogues, "words/es")
	if err != nil {
		return nil, err
	}
	known, err := words.Read(files)
	if err != nil {
		return nil, err
	}
	es := tongue{Code: "es", Name: "Español", Within: "español"}
	for _, ms := range known {
		es.messages = append(es.messages, ms...)
	}
	slices.SortFunc(es.messages, func(a, b words.Message) int { return strings.Compare(a.ID+a.Context, b.ID+b.Context) })
	es.Language = calc.Language{Words: calc.ParseWords(lines(es.messages)), Comma: true}
	return []tongue{{Code: "en", Name: "English", Within: "English"}, es}, nil
}

// Root is the way from the tongue's pages to the root of the site.
func (t tongue) Root() string {
	if t.Code == "en" {
		return ""
	}
	return "../"
}

// Folder is where the tongue's pages stand.
func (t tongue) Folder() string {
	if t.Code == "en" {
		return ""
	}
	return t.Code + "/"
}

// lines writes messages for calc.ParseWords. What has no translation yet stays English.
func lines(ms []words.Message) string {
	var b strings.Builder
	for _, m := range ms {
		if m.Text == "" || m.Text == m.ID && m.Context == "" {
			continue
		}
		if m.Context != "" {
			b.WriteString(m.Context + "|")
		}
		b.WriteString(m.ID + "\t" + m.Text + "\n")
	}
	return b.String()
}

// say is a text of ours in the tongue, with what stands in its holes: "n", 3.
func (t tongue) say(text any, holes ...any) string {
	said := t.label("", calc.Phrase(fmt.Sprint(text)))
	for i := 0; i+1 < len(holes); i += 2 {
		said = strings.ReplaceAll(said, "{"+fmt.Sprint(holes[i])+"}", fmt.Sprint(holes[i+1]))
	}
	return said
}

// verdict is the word for a level.
func (t tongue) verdict(level calc.Level) string {
	return t.say(map[calc.Level]calc.Phrase{calc.Go: "Go", calc.Wait: "Wait", calc.Stop: "Stop"}[level])
}

// label is the text that labels an input or output, known by its key.
func (t tongue) label(key string, p calc.Phrase) string {
	p = calc.Phrase(strings.TrimPrefix(string(p), calc.First))
	if t.Words != nil && p != "" {
		if said := t.Words(key, string(p)); said != "" {
			return said
		}
	}
	return string(p)
}

var (
	phraseType = reflect.TypeFor[calc.Phrase]()
	inputType  = reflect.TypeFor[calc.Input]()
	outputType = reflect.TypeFor[calc.Output]()
	fieldType  = reflect.TypeFor[field]()
)

// put copies what a page shows with every text of ours in it put into the tongue. Places stay as they are: the parts of
// a form are known by them.
func (t tongue) put(data any) any {
	if data == nil {
		return nil
	}
	return t.copy(reflect.ValueOf(data), "", "").Interface()
}

// copy puts one value into the tongue; under is the table that it stands in, "part.", and key the field.
func (t tongue) copy(v reflect.Value, under, key string) reflect.Value {
	switch v.Kind() {
	case reflect.String:
		if v.Type() == phraseType {
			return reflect.ValueOf(calc.Phrase(t.label(key, calc.Phrase(v.String()))))
		}
	case reflect.Pointer, reflect.Interface:
		if v.IsNil() {
			return v
		}
		said := t.copy(v.Elem(), under, key)
		if v.Kind() == reflect.Interface {
			return said
		}
		p := reflect.New(v.Type().Elem())
		p.Elem().Set(said)
		return p
	case reflect.Slice:
		said := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
		for i := range v.Len() {
			said.Index(i).Set(t.copy(v.Index(i), under, key))
		}
		if !v.IsNil() {
			return said
		}
	case reflect.Struct:
		return t.copyStruct(v, under, key)
	}
	return v
}

func (t tongue) copyStruct(v reflect.Value, under, key string) reflect.Value {
	switch v.Type() {
	case inputType, outputType:
		key = under + v.FieldByName("Key").String()
		under = key + "."
	case fieldType:
		if column := v.FieldByName("Column").String(); column != "" {
			under = column[:strings.IndexByte(column, '.')+1]
		}
	}
	said := reflect.New(v.Type()).Elem()
	said.Set(v)
	for i := range v.NumField() {
		if f := v.Type().Field(i); f.IsExported() && f.Name != "Place" {
			said.Field(i).Set(t.copy(v.Field(i), under, key))
		}
	}
	if v.Type() == fieldType {
		said.FieldByName("One").SetString(t.label("one", calc.Phrase(v.FieldByName("One").String())))
	}
	return said
}

// plainNumber finds a number that a comma would make readable in two ways, "1,250".
var twoWays = regexp.MustCompile(`^-?[1-9]\d{0,2}\.\d{3}$`)

// typed is a number as a person would type it.
func (t tongue) typed(number string) string {
	if !t.Comma || twoWays.MatchString(number) {
		return number
	}
	return strings.Replace(number, ".", ",", 1)
}

// form is a form as a person would have typed it in the tongue.
func (t tongue) form(c *calc.Calculator, form calc.Form) calc.Form {
	said := calc.Form{}
	for key, text := range form {
		switch in := c.Input(withoutRow(key)); {
		case in == nil || in.Choices != nil || in.Check != nil:
		case in.Unit != 0:
			text = t.typed(text)
		default:
			text = t.say(text)
		}
		said[key] = text
	}
	return said
}

// withoutRow takes "part.2.length" to "part.length".
func withoutRow(key string) string {
	if parts := strings.SplitN(key, ".", 3); len(parts) == 3 {
		return parts[0] + "." + parts[2]
	}
	return key
}

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

// onPages are the kinds of text that pages show and no core says.
var onPages = []string{"help", "heading", "question", "range", "title", "page", "script", "typed", "place"}

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
