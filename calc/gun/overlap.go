package gun

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// StrokeOverlap tells how even neighbouring strokes come out.
func StrokeOverlap() *calc.Calculator {
	return &calc.Calculator{
		ID:       "overlap",
		Title:    "Overlap and stripes",
		Question: "How even is the film at this overlap, and where do I put the first stroke?",
		Range: "Straight strokes side by side on a flat panel, each like the last, overlap up to 90 %. It shows how strokes add up, " +
			"not how the wet film levels afterwards; a real fan matches one of these shapes only roughly.",
		Inputs:  []calc.Input{field.FanProfile, field.Overlap, field.FanWidth},
		Outputs: []calc.Output{ripple, thinnest, thickest, deviation, strokeGap, firstStroke, overlapBest, rippleBest, overlapEven},
		Work:    strokeOverlap,
	}
}

var (
	ripple      = calc.Output{Key: "ripple", Label: "Thickest less thinnest, of the average film", Unit: unit.Percent, Decimals: 1, Main: true}
	thinnest    = calc.Output{Key: "thinnest", Label: "Thinnest place, of the average", Unit: unit.Percent, Decimals: 1}
	thickest    = calc.Output{Key: "thickest", Label: "Thickest place, of the average", Unit: unit.Percent, Decimals: 1}
	deviation   = calc.Output{Key: "deviation", Label: "Standard deviation, of the average", Unit: unit.Percent, Decimals: 1}
	strokeGap   = calc.Output{Key: "stroke_gap", Label: "From stroke to stroke", Unit: unit.Millimetre}
	firstStroke = calc.Output{Key: "first_stroke", Label: "First stroke’s middle beyond the edge; below 0 it is on the panel", Unit: unit.Millimetre}
	overlapBest = calc.Output{Key: "overlap_best", Label: "Least ripple up to 50 % is at", Unit: unit.Percent, Decimals: 1}
	rippleBest  = calc.Output{Key: "ripple_best", Label: "Ripple there", Unit: unit.Percent, Decimals: 1}
	overlapEven = calc.Output{Key: "overlap_even", Label: "Least standard deviation up to 50 % is at", Unit: unit.Percent, Decimals: 1}
)

var (
	strokesAdd = source.Definition.At("the films of neighbouring strokes add up")
	evenest    = source.UniformSpeed.At("abstract: least variance, for a parabola at 29 to 31 %").By(source.SecondHand)
)

func strokeOverlap(w *calc.Working) {
	profile, _ := ProfileByKey(w.Picked(field.FanProfile))
	overlap, fan := w.Given(field.Overlap), w.Given(field.FanWidth)
	e := profile.Evenness(overlap.V)
	share := func(out calc.Output, label, how calc.Phrase, x float64, args ...calc.Arg) calc.Num {
		n := w.Model(label, how, unit.Percent, strokesAdd, x, args...)
		w.Result(out, n)
		return n
	}
	now := share(ripple, "Ripple", "thickest less thinnest place of the summed strokes at overlap o, against their average", e.Ripple, overlap.As("o"))
	share(thinnest, "Thinnest place", "smallest sum of the strokes at overlap o, against the average", e.Thinnest, overlap.As("o"))
	share(thickest, "Thickest place", "largest sum of the strokes at overlap o, against the average", e.Thickest, overlap.As("o"))
	share(deviation, "Standard deviation", "root of the mean square of film less average, at overlap o", e.Deviation, overlap.As("o"))

	gap, first := Strokes(w, fan, overlap)
	w.Result(strokeGap, gap)
	w.Result(firstStroke, first)

	o := profile.LeastRipple()
	best := share(overlapBest, "Overlap with the least ripple", "searched from 0 to 50 %", o)
	least := share(rippleBest, "Ripple there", "as above, at that overlap", Ripple(profile, o), best.As("o"))
	even := w.Model("Overlap with the least standard deviation", "searched from 0 to 50 %", unit.Percent, evenest, profile.LeastDeviation())
	w.Result(overlapEven, even)
	w.Draw(across(w, profile, overlap, now, best, least))
}

// Strokes is how far apart strokes lie and how far beyond the panel's edge the middle of the first belongs so that
// the edge gets its full film, both in mm, from the fan's width in mm and the overlap in percent. Below 0 the
// first stroke's middle is on the panel.
func Strokes(w *calc.Working, fan, overlap calc.Num) (gap, first calc.Num) {
	gap = w.Step("From stroke to stroke", "s = w * (1 - o / 100)", unit.Millimetre, source.Definition, fan.V*(1-overlap.V/100), fan, overlap)
	first = w.Step("First stroke’s middle beyond the edge", "b = w * (o / 100 - 1 / 2)", unit.Millimetre, source.Definition, fan.V*(overlap.V/100-0.5), fan, overlap)
	return gap, first
}
