package main

import (
	"embed"
	"fmt"
	"io/fs"
	"regexp"
	"slices"
	"strings"

	"spraywright/calc"
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

// twoWays finds a number that a comma would make readable in two ways, "1,250".
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
