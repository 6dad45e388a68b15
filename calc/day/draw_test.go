package day

import (
	"math"
	"strconv"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
)

// crowded finds labels of a picture that touch each other or run out of it, with characters taken wider than they are.
func crowded(r calc.Report) string {
	for _, p := range r.Pictures {
		var boxes [][4]float64
		for _, s := range p.Shapes {
			if s.Kind != calc.Label {
				continue
			}
			w := charWidth * float64(utf8.RuneCountInString(s.Text))
			x := s.X
			if s.AnchorEnd {
				x -= w
			} else if s.AnchorMid {
				x -= w / 2
			}
			box := [4]float64{x, s.Y - 9, x + w, s.Y}
			if x < -1 || box[2] > p.Width+1 || s.Y > p.Height {
				return p.Key + ": " + s.Text + " runs out of the picture"
			}
			for _, o := range boxes {
				if box[0] < o[2] && o[0] < box[2] && box[1] < o[3] && o[1] < box[3] {
					return p.Key + ": " + s.Text + " touches another label"
				}
			}
			boxes = append(boxes, box)
		}
	}
	return ""
}

func TestPicturesOfTheDemoDay(t *testing.T) {
	d, r := run(changedTo(demo(t), "tried=40000"))
	require.Len(t, r.Pictures, 2)
	assert.Empty(t, crowded(r))
	for _, p := range r.Pictures {
		assert.Equal(t, 340.0, p.Width, p.Key)
		for _, s := range p.Shapes {
			if s.Kind == calc.Bar {
				assert.True(t, s.X >= 0 && s.Y >= 0 && s.X+s.W <= p.Width+0.01 && s.Y+s.H <= p.Height, "%s %s", p.Key, s.Look)
				assert.True(t, s.Of != "" || s.Look == "break", "%s: a bar of %s cannot be named", p.Key, s.Look)
			}
		}
	}
	assert.Equal(t, len(d.jobs), count(r.Pictures[1], "bake"))
}

func count(p calc.Picture, look string) int {
	n := 0
	for _, s := range p.Shapes {
		if s.Kind == calc.Bar && s.Look == look {
			n++
		}
	}
	return n
}

// A place in the picture means the same time while the plan gets better, and what is dragged there lands there.
func TestABarStandsWhereItsTimeIs(t *testing.T) {
	form := demo(t)
	d, r := run(form)
	for _, s := range r.Pictures[0].Shapes {
		if s.Kind != calc.Bar || s.Look != "spray" {
			continue
		}
		c := changeOf(form, "day_change=hold&step_of="+s.Of+"&along="+strconv.FormatFloat(s.Y, 'f', -1, 64))
		require.Empty(t, c.Problems)
		held := calc.ParseForm(c.Figures[0].Text)
		at := d.since(held["pin.1.held_at"], early)
		y := headHeight + pixelsAMinute*float64(at-8*60)
		assert.LessOrEqual(t, math.Abs(y-s.Y), pixelsAMinute*nearest/2+0.01, s.Of)
	}
}
