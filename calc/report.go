package calc

import (
	"math"
	"strings"

	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A Report is everything the page shows after a calculation, worded.
type Report struct {
	Calculator string
	Problems   Problems
	Places     []PlaceState
	Rows       []RowText
	Retyped    []Retyped
	Nudges     []Nudge
	Verdict    []Ruling // the gravest first; none where there is nothing to judge
	Figures    []Figure
	Lists      []List
	Pictures   []Picture
	Steps      []Line
	Cautions   []string
}

// A PlaceState says whether a part of the form is filled in. Its place is the input's own, in no language.
type PlaceState struct {
	Place          string
	Missing, Wrong int
}

// A RowText is the sentence for one row of a table, "part.2".
type RowText struct{ Row, Text string }

// A Retyped is a number typed with its unit, "72F", as the form would have it: the number and the unit apart.
type Retyped struct{ Field, Text, Unit string }

// A Level says how the answer should be taken.
type Level string

// The levels, from best to gravest.
const (
	Go   Level = "go"
	Wait Level = "wait"
	Stop Level = "stop"
)

// gravest lists the levels in the order in which rulings are shown.
var gravest = []Level{Stop, Wait, Go}

// A Ruling is a level with its reason and what to do.
type Ruling struct {
	Level   Level
	Why, Do string
	Steps   []int
}

// A Figure is one output, ready to show.
type Figure struct {
	Key, Label string
	Text       string  // the number, or words
	Unit       string  // the unit's symbol
	UnitID     string  // blank for words
	Value      float64 // in that unit, unrounded
	Typed      string  // the same, rounded as Text is, as a form takes it in whatever language; blank for words
	Full       string  // the same to nine digits, to be added up further
	Steps      []int   // the working behind it, as places in Steps counted from 1
	Of         string  // the step that it tells of, as [Shape] has it
	Timer      *Timer  // that it can start, or nil
}

// A List is an output with columns.
type List struct {
	Key, Label string
	Columns    []Column
	Rows       [][]Figure
}

// A Column heads one column of a list.
type Column struct{ Key, Label string }

// A Line is one step of the working, worded.
type Line struct {
	Label   string
	Kind    StepKind
	Formula string // WFT = DFT ÷ VS
	Numbers string // 60 ÷ 0.55
	Result  string // 109 µm
	Legend  string // what each letter stands for
	Source  source.Source
	From    []int // the steps it uses
}

// figure is an output as Work gives it.
type figure struct {
	text  string
	num   Num
	isNum bool
	unit  unit.Unit // to show it in
	steps []int
	of    string
	timer *Timer
}

//go:noinline
func (w *Working) figure(out Output, n Num) figure {
	f := figure{num: n, isNum: true, unit: w.voice.unitFor(out.Unit)}
	if n.step > 0 {
		f.steps = []int{int(n.step)}
	}
	if !n.given {
		return figure{text: "—"}
	}
	return f
}

// show words a figure. ok is false when there is no finite number to show.
func (f figure) show(l Language, out Output, form Form) (fig Figure, ok bool) {
	fig = Figure{Key: out.Key, Label: l.label(out.Key, out.Label), Text: f.text, Steps: f.steps, Of: f.of, Timer: f.timer}
	if !f.isNum {
		return fig, true
	}
	u := f.unit
	if id := form[out.Key+".unit"]; id != "" {
		if chosen, ok := unit.ByID(id); ok && chosen.Quantity() == out.Unit.Quantity() {
			u = chosen
		}
	}
	x := unit.Convert(f.num.V, f.num.Unit, u)
	fig.Typed = fixed(x, unit.Decimals(out.Decimals, out.Unit, u))
	fig.Text = strings.Replace(l.number(fig.Typed), "-", "−", 1)
	fig.Unit, fig.UnitID, fig.Value, fig.Full = l.word(u.Label()), u.ID(), x, significant(x, 9)
	return fig, !math.IsNaN(x) && !math.IsInf(x, 0)
}

// behind lists every step that the given ones rest on, in order. A step only uses earlier ones.
func (w *Working) behind(steps []int) []int {
	if w.brief {
		if w.form["working"] == "later" {
			return steps
		}
		return nil
	}
	wanted := make([]bool, len(w.steps)+1)
	for _, n := range steps {
		wanted[n] = true
	}
	count := 0
	for n := len(w.steps); n > 0; n-- {
		if !wanted[n] {
			continue
		}
		count++
		for _, a := range w.steps[n-1].Args {
			wanted[a.Num.step] = true
		}
	}
	all := make([]int, 0, count)
	for n := 1; n < len(wanted); n++ {
		if wanted[n] {
			all = append(all, n)
		}
	}
	return all
}
