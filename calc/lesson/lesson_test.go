package lesson_test

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/check/sound"
	"spraywright/calc/lesson"
)

type answer struct {
	Steps   []struct{ Typed, Shown string }
	At      []int
	Picture *struct {
		Title, Says string
		Shapes      []struct {
			Kind, Look, Text string
			Points           []float64
			X, Y             float64
		}
	}
	Gaps []struct{ Says string }
}

func ask(t *testing.T, l calc.Language, what, form string) (a answer) {
	t.Helper()
	require.NoError(t, json.Unmarshal([]byte(lesson.Answer(l, what, calc.ParseForm(form))), &a))
	return a
}

func TestASliderGoesThroughRoundNumbers(t *testing.T) {
	scale := func(form string) (typed []string, at string) {
		a := ask(t, calc.Language{}, "scale", form)
		for _, s := range a.Steps {
			typed = append(typed, s.Typed)
		}
		if len(a.At) > 0 {
			at = a.Steps[a.At[0]].Shown
		}
		return typed, at
	}
	typed, at := scale("text=60&unit=um&own=um&min=1&max=2000")
	assert.Equal(t, []string{"30", "32", "34", "120", "60\u202fµm"}, append(append(typed[:3:3], typed[len(typed)-1]), at))
	typed, at = scale("text=2.37&unit=mil&own=um&min=1&max=2000")
	assert.Contains(t, typed, "2.37")
	assert.Contains(t, typed, "2.4")
	assert.Equal(t, "2.37\u202fmil", at)
	typed, _ = scale("text=22&unit=degC&own=degC&min=-20&max=60")
	assert.Equal(t, []string{"7", "37"}, []string{typed[0], typed[len(typed)-1]})
	typed, _ = scale("text=72&unit=degF&own=degC&min=-20&max=60")
	assert.Equal(t, []string{"46", "98"}, []string{typed[0], typed[len(typed)-1]})
	typed, _ = scale("text=50&unit=pct&own=pct&min=0&max=100&wide=1")
	assert.Equal(t, []string{"0", "100"}, []string{typed[0], typed[len(typed)-1]})
	typed, _ = scale("text=2&unit=1&own=1&min=1&max=10&whole=1")
	assert.Equal(t, []string{"1", "2", "3", "4"}, typed)
	typed, _ = scale("text=0,5&unit=m/s&own=m/s&min=0.1&max=0.9&wide=1")
	assert.Contains(t, typed, "0,5", "as it was typed")
	for _, none := range []string{"", "text=72F&unit=degF&own=degC&min=0&max=9", "text=5&unit=um&own=degC&min=0&max=9", "text=5&unit=um&own=um&min=9&max=9"} {
		typed, _ = scale(none)
		assert.Empty(t, typed, none)
	}
	typed, at = scale("text=3000&unit=um&own=um&min=1&max=2000")
	assert.Equal(t, "3000\u202fµm", at, "a number beyond the limits stands at the end")
	assert.Equal(t, "3000", typed[len(typed)-1])
}

func TestAGraphHasGapsWhereThereIsNoAnswer(t *testing.T) {
	form := calc.Form{"x": "1\n2\n3\n4\n5\n6", "xs": "1 m\n2 m\n3 m\n4 m\n5 m\n6 m", "y": "10\n20\n\n\n15\n", "ys": "10 g\n20 g\n\n\n15 g\n",
		"why": "\n\nToo far.\nToo far.\n\nNot at all.", "at": "1", "xlabel": "Length", "ylabel": "Mass"}
	a := ask(t, calc.Language{}, "graph", form.String())
	assert.Equal(t, "Mass by Length", a.Picture.Title)
	assert.Equal(t, "As Length goes from 1 m to 5 m, Mass rises from 10 g, then falls to 15 g", a.Picture.Says)
	assert.Equal(t, []struct{ Says string }{{"From 3 m to 4 m there is no answer. Too far."}, {"At 6 m there is no answer. Not at all."}}, a.Gaps)
	var paths, dots int
	for _, s := range a.Picture.Shapes {
		if s.Kind == "path" {
			paths++
			assert.Len(t, s.Points, 4)
		}
		if s.Kind == "dot" {
			dots++
		}
	}
	assert.Equal(t, []int{1, 2}, []int{paths, dots}, "a line of two, one alone, and the marker")

	form["y"] = "\n\n\n\n\n"
	form["why"] = "a\nb\nb\nb\nb\nb"
	a = ask(t, calc.Language{}, "graph", form.String())
	assert.Equal(t, "There is no answer for any of these numbers", a.Picture.Says)
	assert.Len(t, a.Gaps, 2)
	assert.Nil(t, ask(t, calc.Language{}, "graph", "").Picture)
	for y, says := range map[string]string{"1\n1\n1\n1\n1\n1": "stays at", "6\n5\n4\n3\n2\n1": "falls from", "3\n2\n1\n2\n3\n4": "falls from 10 g, then rises to", "1\n2\n1\n2\n1\n2": "up and down"} {
		form["y"] = y
		assert.Contains(t, ask(t, calc.Language{}, "graph", form.String()).Picture.Says, says)
	}
}

func TestSketchesAreThereWhereOneExplains(t *testing.T) {
	for _, of := range []string{"wet-film", "overlap", "gun-distance", "cup-seconds", "mix"} {
		p, ok := lesson.Sketch(calc.Language{}, of)
		require.True(t, ok, of)
		assert.NotEmpty(t, p.Says)
		for _, s := range p.Shapes {
			assert.True(t, s.X >= 0 && s.X <= 340 && s.Y >= 0 && s.Y <= 150, "%s: %+v stands outside", of, s)
		}
	}
	_, ok := lesson.Sketch(calc.Language{}, "voc-content")
	assert.False(t, ok)
}

func FuzzLesson(f *testing.F) {
	for _, s := range []string{"text=60&unit=um&own=um&min=1&max=2000", "x=1%0A2&xs=a%0Ab&y=1%0Ax&ys=a%0Ab&why=%0A&at=9", "x=1%0A1&y=NaN%0A1e999&xs=%0A&ys=%0A&why=%0A", "text=1e-300&unit=um&own=um&min=-1&max=1e308&wide=1"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, form string) {
		for _, what := range []string{"scale", "graph", "else"} {
			for _, l := range []calc.Language{{}, {Comma: true}} {
				text := ""
				sound.Within(t, form, func() { text = lesson.Answer(l, what, calc.ParseForm(form)) })
				require.True(t, json.Valid([]byte(text)), what)
			}
		}
	})
}
