package lesson

import (
	"math"

	"spraywright/calc"
)

// says tells what the curve shows: from what to what, and whether it rises.
func (g *graph) says() string {
	first, last, least, most := -1, -1, -1, -1
	for i, y := range g.y {
		if math.IsNaN(y) {
			continue
		}
		if first < 0 {
			first, least, most = i, i, i
		}
		if last = i; y < g.y[least] {
			least = i
		}
		if y > g.y[most] {
			most = i
		}
	}
	if first < 0 {
		return g.Say("There is no answer for any of these numbers")
	}
	return g.Say(trend(g.y[first:last+1]), "x", g.xLabel, "y", g.yLabel, "c", g.xText[first], "d", g.xText[last], "a", g.yText[first], "b", g.yText[last], "least", g.yText[least], "most", g.yText[most])
}

// trend is a sentence with holes for how numbers go.
func trend(ys []float64) calc.Phrase {
	turns, rising := 0, false // runs up or down, and whether the first one goes up
	before := math.NaN()
	up := false
	for _, y := range ys {
		if y > before || y < before { // neither where there is none
			if turns == 0 || up != (y > before) {
				turns++
			}
			if up = y > before; turns == 1 {
				rising = up
			}
		}
		if !math.IsNaN(y) {
			before = y
		}
	}
	switch {
	case turns == 0:
		return "As {x} goes from {c} to {d}, {y} stays at {a}"
	case turns > 2:
		return "As {x} goes from {c} to {d}, {y} goes up and down between {least} and {most}"
	case turns == 1 && rising:
		return "As {x} goes from {c} to {d}, {y} rises from {a} to {b}"
	case turns == 1:
		return "As {x} goes from {c} to {d}, {y} falls from {a} to {b}"
	case rising:
		return "As {x} goes from {c} to {d}, {y} rises from {a}, then falls to {b}"
	}
	return "As {x} goes from {c} to {d}, {y} falls from {a}, then rises to {b}"
}

// gaps are sentences on where there is no answer, and why.
func (g *graph) gaps() []string {
	var all []string
	for i := 0; i < len(g.y); i++ {
		if !math.IsNaN(g.y[i]) {
			continue
		}
		end := i
		for end+1 < len(g.y) && math.IsNaN(g.y[end+1]) && g.why[end+1] == g.why[i] {
			end++
		}
		says := calc.Phrase("From {c} to {d} there is no answer. {why}")
		if i == end {
			says = "At {c} there is no answer. {why}"
		}
		all = append(all, g.Say(says, "c", g.xText[i], "d", g.xText[end], "why", g.why[i]))
		i = end
	}
	return all
}
