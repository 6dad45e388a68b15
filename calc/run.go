package calc

import (
	"slices"

	"spraywright/calc/unit"
)

// Run reads the form and, where nothing is wrong with what it needs, calculates. The report is in English.
func (c *Calculator) Run(form Form) Report { return c.RunIn(Language{}, form) }

// RunIn is Run with the report in a language.
func (c *Calculator) RunIn(l Language, form Form) Report {
	report, _ := c.run(l, form)
	return report
}

// Steps is Run for tests: it also returns the steps as they were made.
func (c *Calculator) Steps(form Form) (Report, []Step) {
	report, w := c.run(Language{}, form)
	return report, w.steps
}

func (c *Calculator) run(l Language, form Form) (Report, *Working) {
	r := reader{Language: l, form: form, typed: map[unit.Quantity]unit.Unit{}}
	entry := r.read(&Entry{}, c.Inputs) // before its problems are taken
	w := &Working{Entry: entry, form: form, problems: r.problems, results: map[string][]figure{}, lists: map[string][][]figure{}}
	w.voice, w.brief = newVoice(l, form, r.typed), form["working"] != ""
	w.adopt(w.Entry)
	if len(w.problems) == 0 || c.InStages {
		c.Work(w)
	}
	report := Report{Calculator: c.ID, Rows: w.rows, Retyped: r.retyped, Nudges: r.nudges}
	if len(w.problems) == 0 || c.InStages {
		c.answer(&report, w, form)
	}
	report.Problems, report.Places = w.problems, w.places(c.Inputs)
	return report, w
}

// adopt tells every row whose working it belongs to.
func (w *Working) adopt(e *Entry) {
	e.w = w
	for _, rows := range e.tables {
		for _, row := range rows {
			w.adopt(row)
		}
	}
}

func (c *Calculator) answer(report *Report, w *Working, form Form) {
	for _, out := range c.Outputs {
		if out.Columns != nil {
			if l, ok := w.list(out, form); ok {
				report.Lists = append(report.Lists, l)
			}
			continue
		}
		fs := w.results[out.Key]
		if fs == nil {
			if !c.InStages && !out.Optional {
				panic("calc: " + c.ID + " gave no " + out.Key)
			}
			continue
		}
		if f, ok := w.shown(fs[0], out, form); ok {
			report.Figures = append(report.Figures, f)
		}
	}
	if n := w.problems.wrong(); n > 0 && len(w.verdict) > 0 {
		w.Judge(Wait, Say("Not all of this is worked out: {n} to put right", N(float64(n), unit.One).To(0, "n")), Say("Put right what the form marks; what rests on it is left out here"))
	}
	for _, level := range gravest {
		for _, r := range w.verdict {
			if r.Level == level {
				r.Steps = w.behind(r.Steps)
				report.Verdict = append(report.Verdict, r)
			}
		}
	}
	if !w.brief {
		report.Steps = w.lines()
	}
	report.Pictures = w.pictures
	for _, caution := range c.Cautions {
		w.Caution(caution)
	}
	report.Cautions = w.cautions
}

func (w *Working) list(out Output, form Form) (List, bool) {
	l := List{Key: out.Key, Label: w.voice.label(out.Key, out.Label)}
	for _, col := range out.Columns {
		l.Columns = append(l.Columns, Column{col.Key, w.voice.label(out.Key+"."+col.Key, col.Label)})
	}
	for _, row := range w.lists[out.Key] {
		shown := make([]Figure, len(row))
		for i, f := range row {
			shown[i], _ = w.shown(f, out.Columns[i], nil) // a column has no unit of its own choosing
			shown[i].Label = l.Columns[i].Label
		}
		l.Rows = append(l.Rows, shown)
	}
	return l, len(l.Rows) > 0
}

// shown words a figure and gathers its working. A number that is not finite becomes a problem: there is
// then no answer to show.
func (w *Working) shown(f figure, out Output, form Form) (Figure, bool) {
	fig, ok := f.show(w.voice.Language, out, form)
	if !ok {
		w.problems = append(w.problems, Problem{Code: Impossible, Message: w.voice.say(Say("{answer} has no answer for these numbers", Words(fig.Label, "answer"))),
			Fix: w.voice.word("Check each number and its unit")})
		fig.Text, fig.Value, fig.UnitID, fig.Unit = "—", 0, "", ""
	}
	fig.Steps = w.behind(fig.Steps)
	return fig, ok
}

// places counts what is missing and what is wrong in each part of the form.
func (w *Working) places(ins []Input) []PlaceState {
	var states []PlaceState
	for _, in := range ins {
		if in.Place == "" || len(states) > 0 && slices.ContainsFunc(states, func(s PlaceState) bool { return s.Place == string(in.Place) }) {
			continue
		}
		s := PlaceState{Place: string(in.Place)}
		for _, p := range w.problems {
			switch {
			case p.Place != s.Place:
			case p.Code == Missing:
				s.Missing++
			default:
				s.Wrong++
			}
		}
		states = append(states, s)
	}
	return states
}
