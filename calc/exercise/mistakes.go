package exercise

import (
	"math"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// runs is how often a calculator is asked again at most to see where mistakes lead.
const runs = 100

// A trap is a wrong answer and the mistake that leads to it.
type trap struct {
	_     [0]func()
	x     float64 // in the output's own unit
	says  calc.Phrase
	g     *Given    // the number or choice that was taken wrongly
	u     unit.Unit // that something was taken in
	words string    // what else the sentence names
}

// A finder gathers the wrong answers that are clearly apart from the right one.
type finder struct {
	t     *Task
	u     unit.Unit // that the answer is given in
	traps []trap
	runs  int // left
}

// says words a mistake.
func (f *finder) says(m *trap) string {
	wrong, label, given := "", "", ""
	if g := m.g; g != nil {
		label, given = "“"+g.Label+"”", g.Text
		if m.u != 0 {
			wrong = f.t.quantity(g.number(), m.u)
		}
	}
	return f.t.Say(m.says, "label", label, "given", given, "wrong", wrong, "words", m.words, "unit", f.t.Say(m.u.Label()), "yours", f.t.Say(f.u.Label()))
}

// add notes where a mistake leads.
//
//go:noinline
func (f *finder) add(x float64, says calc.Phrase, g *Given, u unit.Unit, words string) {
	if !math.IsNaN(x) && !math.IsInf(x, 0) && f.t.stands(x, f.u) == Off {
		f.traps = append(f.traps, trap{x: x, says: says, g: g, u: u, words: words})
	}
}

// with is the answer to the form with some texts changed, key and text by turns; not a number where there is none.
//
//go:noinline
func (f *finder) with(changes ...string) float64 {
	if f.runs--; f.runs < 0 {
		return math.NaN()
	}
	form := calc.Form{}
	for key, text := range f.t.Form {
		form[key] = text
	}
	for i := 0; i < len(changes); i += 2 {
		form[changes[i]] = changes[i+1]
	}
	label := f.t.Label
	fig := f.t.find(f.t.c.Ask(f.t.Language, form))
	f.t.Label = label
	if fig == nil {
		return math.NaN()
	}
	return f.t.valueOf(fig)
}

// find gathers them, those first that this calculator itself invites.
func (f *finder) find() {
	for _, m := range f.t.c.Mistakes {
		if m.Output == "" || m.Output == f.t.out.Key {
			f.add(f.declared(&m), m.Says, nil, 0, "")
		}
	}
	for i, g := range f.t.Given {
		switch {
		case len(g.in.Choices) > 0 && len(g.in.Choices) < 6:
			for k := range g.in.Choices {
				ch := &g.in.Choices[k]
				f.add(f.with(g.Field, ch.Key), "This comes out with “{words}” for {label}", g, 0, f.t.Say(ch.Label))
			}
		case g.Unit != 0 && f.t.behind(g):
			f.misread(g)
			f.leftOut(g)
			for _, h := range f.t.Given[i+1:] {
				if h.in.Unit == g.in.Unit && f.t.behind(h) {
					f.add(f.with(g.Field, h.Typed, g.Field+".unit", h.Unit.ID(), h.Field, g.Typed, h.Field+".unit", g.Unit.ID()),
						"This comes out where {label} and “{words}” change places", g, 0, h.Label)
				}
			}
		}
	}
	f.answer()
}

// declared is where one of the calculator's own mistakes leads.
func (f *finder) declared(m *calc.Mistake) float64 {
	x := f.t.right
	if m.Form != "" {
		var changes []string
		for key, text := range calc.ParseForm(m.Form) {
			if factor, times := strings.CutPrefix(text, "*"); times {
				k, _ := calc.ReadNumber(factor)
				now, _ := calc.ReadNumber(f.t.Form[key])
				text = plain(k * now)
			}
			changes = append(changes, key, text)
		}
		x = f.with(changes...)
	}
	if m.Times != 0 {
		x *= m.Times
	}
	return x
}

// misread are the wrong units that a number can be read in.
func (f *finder) misread(g *Given) {
	for _, u := range g.in.Units() {
		if u != g.Unit {
			f.add(f.with(g.Field+".unit", u.ID()), "This comes out where {label}, {given}, is read as {wrong}", g, u, "")
		}
	}
	switch g.Unit {
	case unit.DiffF:
		f.add(f.with(g.Field, plain(g.number()-32)), "This comes out where 32 is taken off {label}: a difference of temperatures is converted without it", g, 0, "")
	case unit.DegF:
		f.add(f.with(g.Field, plain(g.number()+32)), "This comes out where {label} is converted without taking off 32", g, 0, "")
	}
}

// leftOut are the answers without a number, with what it lacks to 100 %, and with it on the wrong side of a fraction.
func (f *finder) leftOut(g *Given) {
	none, percent := "", g.in.Unit == unit.Percent
	switch {
	case percent:
		none = "100"
	case g.in.Whole:
		none = "1"
	case g.in.Limits.Min == 0:
		none = "0"
	case !g.in.Optional:
		return
	}
	x := f.with(g.Field, none, g.Field+".unit", g.in.Unit.ID())
	f.add(x, "This comes out where {label} is left out", g, 0, "")
	if percent {
		f.add(f.with(g.Field, plain(100-g.number())), "This comes out with what {label} lacks to 100 %", g, 0, "")
	}
	if percent || g.in.Whole {
		f.add(x*x/f.t.right, "This comes out where {label} multiplies what it should divide, or divides what it should multiply", g, 0, "")
	}
}

// answer are the ways to give the right answer wrongly.
func (f *finder) answer() {
	own, right := f.t.out.Unit, f.t.right
	for _, u := range unit.Of(own.Quantity()) {
		f.add(unit.Convert(unit.Convert(right, own, u), f.u, own), "The number is right, but in {unit} and not in {yours}", nil, u, "")
	}
	switch own.Quantity() {
	case unit.Temperature:
		return
	case unit.TemperatureDifference:
		f.add(right+32*5./9, "A difference of temperatures is converted without the 32", nil, 0, "")
		f.add(right-32*5./9, "A difference of temperatures is converted without the 32", nil, 0, "")
	case unit.Percentage:
		f.add(100-right, "This is what the right answer lacks to 100 %", nil, 0, "")
	}
	for k := 10.; k < 2000; k *= 10 {
		f.add(right*k, "This is {words} times the right answer: check the decimal point, and whether a percentage was taken as it stands", nil, 0, plain(k))
		f.add(right/k, "The right answer is {words} times this: check the decimal point, and whether a percentage was taken as it stands", nil, 0, plain(k))
	}
}

// plain writes a number for a form.
//
//go:noinline
func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// A Trap is a wrong answer, in the unit asked for, and the sentence that names its mistake.
type Trap struct {
	Value float64
	Says  string
}

// Traps lists the wrong answers that mistakes lead to.
func (t *Task) Traps() []Trap {
	f := finder{t: t, u: t.Unit, runs: runs}
	f.find()
	all := make([]Trap, len(f.traps))
	for i := range f.traps {
		all[i] = Trap{unit.Convert(f.traps[i].x, t.out.Unit, t.Unit), f.says(&f.traps[i])}
	}
	return all
}
