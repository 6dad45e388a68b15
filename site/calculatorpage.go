package main

import (
	"cmp"
	"errors"
	"io/fs"
	"slices"
	"strings"

	"spraywright/calc"
	"spraywright/calc/check"
	vocabulary "spraywright/calc/field"
	"spraywright/calc/menu"
)

// A calculatorPage is what the page of one calculator shows.
type calculatorPage struct {
	*calc.Calculator
	Form    []formPlace
	Card    []cardPlace
	Example *example
	Sources []cited
	Checks  []check.Row
	Checked []calc.Report // of each of these
}

// CoreFile is the compiled core that answers the page.
func (p calculatorPage) CoreFile() string {
	for _, core := range menu.Cores() {
		if core.Find(p.ID) != nil {
			return coreFile(core.Name)
		}
	}
	return ""
}

// modules are the scripts of calculators whose pages do more than ask and answer.
var modules = map[string]string{"day": "day"}

// Module is the page's own script, or blank.
func (p calculatorPage) Module() string { return modules[p.ID] }

// Paced is the input that says how long the core looks for a better answer, or blank.
func (p calculatorPage) Paced() string {
	if p.Input(vocabulary.Tried.Key) == nil {
		return ""
	}
	return vocabulary.Tried.Key
}

// Places reports whether the form has named parts.
func (p calculatorPage) Places() bool { return len(p.Form) > 1 }

// WorkedFile is the page of the worked example's steps, where there are too many for the calculator's own page.
func (p calculatorPage) WorkedFile() string { return p.ID + "-worked.html" }

// CardTitle is what the answer is called.
func (p calculatorPage) CardTitle() calc.Phrase {
	if p.ID == front {
		return "Job card"
	}
	if p.ID == "day" {
		return "The day"
	}
	return "Answer"
}

func newCalculatorPage(t tongue, c *calc.Calculator, testdata fs.FS) (calculatorPage, error) {
	p := calculatorPage{Calculator: c, Form: formPlaces(c), Card: cardPlaces(c)}
	form, err := demoForm(testdata, c.ID)
	call := calc.Phrase("Fill in an example")
	if c.ID == front {
		call = "Try the demo job (invented)"
	}
	if c.ID == "day" {
		call = "Try a day of six jobs (invented)"
	}
	if errors.Is(err, fs.ErrNotExist) {
		form, err = c.ExampleForm(), nil
	}
	if err != nil {
		return p, err
	}
	if p.Example, err = newExample(t, c, t.form(c, form), call); err != nil {
		return p, err
	}
	published, err := fs.Sub(testdata, "published")
	if err != nil {
		return p, err
	}
	if p.Checks, err = check.Read(published, c); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return p, err
	}
	for _, row := range p.Checks {
		p.Checked = append(p.Checked, p.RunIn(t.Language, row.Form))
	}
	p.Sources = sourcesOf(p)
	return p, nil
}

// sourcesOf lists what the working of a calculator's example and check values rests on.
func sourcesOf(p calculatorPage) []cited {
	var all []cited
	for _, r := range append([]calc.Report{p.Example.Report}, p.Checked...) {
		for _, s := range r.Steps {
			if s.Source != nil && !slices.Contains(all, cited{*s.Source}) {
				all = append(all, cited{*s.Source})
			}
		}
	}
	slices.SortFunc(all, func(a, b cited) int {
		return cmp.Or(strings.Compare(a.Name(), b.Name()), strings.Compare(string(a.Place), string(b.Place)))
	})
	return all
}
