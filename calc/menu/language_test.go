package menu_test

import (
	"regexp"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
)

// bracketed is a language that puts every phrase in brackets, so that what was never looked up stands outside them.
var bracketed = calc.Language{Words: func(_, phrase string) string { return "⟦" + phrase + "⟧" }, Comma: true}

// someRandom is how many of the random forms are put into the language.
const someRandom = 10

func TestEveryTextIsLookedUp(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		told := map[string]bool{} // one complaint for each text will do
		forms, random := wrongForms(c), 0
		for _, r := range runs(t, c) {
			if r.random {
				random++
			}
			if random <= someRandom {
				forms = append(forms, r.form)
			}
		}
		for _, form := range forms {
			for where, text := range texts(c.RunIn(bracketed, form)) {
				if left := outside(text, form); left != "" && !told[where+left] {
					told[where+left] = true
					t.Errorf("%s says %q outside the catalogue: %s", where, left, text)
				}
			}
		}
	})
}

// wrongForms are forms that cannot be read.
func wrongForms(c *calc.Calculator) []calc.Form {
	forms := []calc.Form{{}}
	for _, wrong := range []string{"-99999999", "99999999", "1,250", "x", "1.5", strings.Repeat("1", 300)} {
		form := c.ExampleForm()
		for key := range form {
			form[key] = wrong
		}
		forms = append(forms, form)
	}
	return forms
}

// texts are what a report says, each under where it stands.
func texts(r calc.Report) map[string]string {
	said := map[string]string{}
	for where, text := range sentences(r) {
		said[where] = text
	}
	for _, p := range r.Problems {
		said["row of "+p.Field] = p.Row
	}
	for _, f := range figures(r) {
		said["label of "+f.Key], said["unit of "+f.Key] = f.Label, f.Unit
		if f.UnitID == "" && notWords[f.Key] {
			delete(said, "figure "+f.Key)
		}
	}
	for _, l := range r.Lists {
		said["label of "+l.Key] = l.Label
		for _, c := range l.Columns {
			said["column "+c.Key] = c.Label
		}
	}
	for _, p := range r.Pictures {
		said["title of "+p.Key] = p.Title
		for _, s := range p.Shapes {
			said["in picture "+p.Key+": "+s.Text] = s.Text
		}
	}
	for _, s := range r.Steps {
		said["legend of "+s.Label] = symbols.ReplaceAllString(s.Legend, "")
		if s.Kind == calc.Modelled {
			said["model of "+s.Label] = s.Formula
		}
		if s.Source != nil {
			said["source of "+s.Label], said["own source of "+s.Label] = string(s.Source.Place), string(s.Source.Ours)
		}
	}
	return said
}

// notWords are outputs that hold text for programs.
var notWords = map[string]bool{"csv_head": true, "csv_lines": true, "link_units": true, "short_link": true, "form": true, "correction": true}

var (
	symbols = regexp.MustCompile(`(^|; )[^:;⟦]+: `)     // of a legend: "V: "
	clock   = regexp.MustCompile(`\d+:\d\d( \+\d+ d)?`) // digits and the sign for days
	power   = regexp.MustCompile(`×10[⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+`)   // of a large number
	inner   = regexp.MustCompile(`⟦[^⟦⟧]*⟧`)            // a phrase with nothing but its own words left in it
)

// outside is what of a text has letters and is neither in brackets nor what the person typed.
func outside(text string, form calc.Form) string {
	for _, typed := range form {
		if strings.ContainsFunc(typed, unicode.IsLetter) {
			text = strings.ReplaceAll(text, strings.TrimSpace(typed), "")
		}
	}
	text = power.ReplaceAllString(clock.ReplaceAllString(text, ""), "")
	for inner.MatchString(text) {
		text = inner.ReplaceAllString(text, "")
	}
	if strings.ContainsFunc(text, unicode.IsLetter) {
		return text
	}
	return ""
}

// A language changes what is said, never what is worked out.
func TestALanguageLeavesTheNumbersAlone(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, r := range runs(t, c)[:1] {
			said := c.RunIn(bracketed, r.form)
			for i, f := range figures(r.report) {
				other := figures(said)[i]
				assert.Equal(t, []any{f.Key, f.Value, f.Typed, f.UnitID}, []any{other.Key, other.Value, other.Typed, other.UnitID})
				if f.UnitID != "" {
					assert.Equal(t, f.Text, strings.Replace(other.Text, ",", ".", 1), f.Key)
				}
			}
		}
	})
}
