package calc

import (
	"math"

	"spraywright/calc/unit"
)

// A Timer is a stretch of time in an answer that a clock can run down. All minutes count from the moment of the answer.
type Timer struct {
	Kind  Timing
	Of    string  // what is timed, as a person calls it; blank where the form does not say
	Row   string  // where the form holds its data sheet: "coat.2.", or blank for the form itself
	Ago   float64 // minutes since it began
	Marks []Mark
}

// A Timing is what a timer is of. It decides which end of a range is the careful one.
type Timing string

// The timings.
const (
	FlashOff Timing = "flash"
	PotLife  Timing = "pot"
	Recoat   Timing = "recoat"
	Bake     Timing = "bake"
)

// A Mark is a moment that a timer tells of.
type Mark struct {
	Is      string  // "soonest", before which not to go on, or "latest"
	Minutes float64 // below 0 when it has passed
}

// Timer makes a timer for something in this form or row. A number that is not Given is left out; without a mark there
// is no timer.
func (e *Entry) Timer(kind Timing, of string, ago, soonest, latest Num) *Timer {
	t := &Timer{Kind: kind, Of: of, Row: e.prefix, Ago: max(0, minutes(ago))}
	t.mark("soonest", soonest)
	t.mark("latest", latest)
	if t.Marks == nil {
		return nil
	}
	return t
}

func (t *Timer) mark(is string, n Num) {
	if m := minutes(n); n.given && !math.IsNaN(m) && !math.IsInf(m, 0) {
		t.Marks = append(t.Marks, Mark{is, m})
	}
}

func minutes(n Num) float64 {
	if !n.given {
		return 0
	}
	return unit.Convert(n.V, n.Unit, unit.Minute)
}

// Timed lets a figure that has been entered start a timer.
func (w *Working) Timed(out Output, t *Timer) { w.results[out.Key][0].timer = t }

// Timed lets a cell start a timer.
func (c Cell) Timed(t *Timer) Cell { c.timer = t; return c }

func (j *jsonWriter) timer(t *Timer) {
	j.key("timer")
	j.object(func() {
		j.text("kind", string(t.Kind))
		j.text("of", t.Of)
		j.text("row", t.Row)
		j.number("ago", t.Ago)
		j.list("marks", len(t.Marks), func(i int) { j.text("is", t.Marks[i].Is); j.number("minutes", t.Marks[i].Minutes) })
	})
}
