package main

import (
	"fmt"
	"html/template"
	"io/fs"
	"slices"
	"strings"
	"unicode"

	"spraywright/calc"
)

// A cardPlace is one part of the answer.
type cardPlace struct {
	Name    calc.Phrase
	Outputs []calc.Output
}

// cardPlaces gathers the outputs by place, in the order in which the places first occur. Labels are for paper
// alone, and what is handed over is for another page.
func cardPlaces(c *calc.Calculator) []cardPlace {
	var places []cardPlace
	for _, out := range c.Outputs {
		if out.Look == "labels" || out.Look == "hand-over" {
			continue
		}
		i := slices.IndexFunc(places, func(p cardPlace) bool { return p.Name == out.Place })
		if i < 0 {
			i, places = len(places), append(places, cardPlace{Name: out.Place})
		}
		places[i].Outputs = append(places[i].Outputs, out)
	}
	return places
}

// An example is a form filled in, with its answer, as the page shows it to those whose browser runs no script.
type example struct {
	Link    template.URL // the form as text, which a template must not escape again
	Call    calc.Phrase  // what the link to it says
	Entered []enteredValue
	Report  calc.Report
	Places  []answeredPlace
	Working []calc.Line // all of it, where there is too much to repeat it under each figure
}

// muchWorking is how many steps are no longer repeated under each figure.
const muchWorking = 40

type enteredValue struct {
	Label, Text string
}

type answeredPlace struct {
	Name    calc.Phrase
	Answers []answer
}

// An answer is one output with what was worked out for it: a figure or a list.
type answer struct {
	Output calc.Output
	Figure *calc.Figure
	List   *calc.List
	Steps  []calc.Line
}

// newExample works an example out. One that the calculator has a problem with is an error.
func newExample(t tongue, c *calc.Calculator, form calc.Form, call calc.Phrase) (*example, error) {
	report := c.RunIn(t.Language, form)
	if len(report.Problems) > 0 {
		return nil, fmt.Errorf("the example of %s: %s", c.ID, report.Problems[0].Error())
	}
	ex := &example{Link: template.URL(form.String()), Call: call, Entered: t.entered(t.put(c).(*calc.Calculator).Inputs, form, ""), Report: report}
	if len(report.Steps) > muchWorking {
		ex.Working = report.Steps
	}
	for _, p := range cardPlaces(c) {
		place := answeredPlace{Name: p.Name}
		for _, out := range p.Outputs {
			a := answered(report, out)
			if ex.Working != nil {
				a.Steps = nil
			}
			if a.Figure != nil || a.List != nil {
				place.Answers = append(place.Answers, a)
			}
		}
		if len(place.Answers) > 0 {
			ex.Places = append(ex.Places, place)
		}
	}
	return ex, nil
}

func answered(r calc.Report, out calc.Output) answer {
	a := answer{Output: out}
	for i, f := range r.Figures {
		if f.Key == out.Key {
			a.Figure = &r.Figures[i]
			for _, n := range f.Steps {
				a.Steps = append(a.Steps, r.Steps[n-1])
			}
		}
	}
	for i, l := range r.Lists {
		if l.Key == out.Key {
			a.List = &r.Lists[i]
		}
	}
	return a
}

// entered lists what a form has for these inputs, in their order.
func (t tongue) entered(ins []calc.Input, form calc.Form, row string) []enteredValue {
	var all []enteredValue
	for _, in := range ins {
		text := form[row+in.Key]
		switch {
		case in.Rows != nil:
			for _, n := range form.Rows(in.Key) {
				all = append(all, enteredValue{Label: string(in.Label) + " " + n})
				all = append(all, t.entered(in.Rows, form, in.Key+"."+n+".")...)
			}
			continue
		case text == "":
			continue
		}
		all = append(all, enteredValue{string(in.Label), t.spoken(in, text, form[row+in.Key+".unit"])})
	}
	return all
}

// spoken is an answer as a person would say it.
func (t tongue) spoken(in calc.Input, text, unitID string) string {
	for _, ch := range in.Choices {
		if ch.Key == text {
			return string(ch.Label)
		}
	}
	if in.Unit == 0 || strings.ContainsFunc(text, unicode.IsLetter) { // words, or a number with its unit
		return text
	}
	symbol := t.say(in.Unit.Label())
	for _, u := range in.Units() {
		if u.ID() == unitID {
			symbol = t.say(u.Label())
		}
	}
	if symbol == "" {
		return text
	}
	return text + "\u202f" + symbol
}

// demoForm reads a calculator's invented demo. Where there is none the error is fs.ErrNotExist.
func demoForm(testdata fs.FS, id string) (calc.Form, error) {
	text, err := fs.ReadFile(testdata, "demo/"+id+".txt")
	return calc.ParseForm(string(text)), err
}

// points writes a path's coordinates as SVG wants them.
func points(xy []float64) string {
	texts := make([]string, len(xy))
	for i, x := range xy {
		texts[i] = plain(x)
	}
	return strings.Join(texts, " ")
}
