package main

import (
	"io/fs"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/menu"
	"spraywright/calc/unit"
)

func TestAPrintedValueStandsBesideOurs(t *testing.T) {
	all, err := tongues()
	require.NoError(t, err)
	c := menu.Find("wet-film")
	r := c.Run(c.ExampleForm()) // 60 µm in 2 coats at 45 %: 66.667 µm
	for _, tt := range []struct {
		tongue tongue
		want   check.Want
		values checkedValue
	}{
		{all[0], check.Want{Key: "wet_film", Unit: unit.Micrometre, Value: 67, Tolerance: .5}, checkedValue{"Wet film of one coat", "67\u202fµm", "66.67\u202fµm", "−0.33", "0.50\u202f%", "±\u202f0.5", 0}},
		{all[1], check.Want{Key: "wet_film", Unit: unit.Micrometre, Value: 66.5, Tolerance: .2}, checkedValue{"Wet film of one coat", "66,5\u202fµm", "66,667\u202fµm", "+0,167", "0,25\u202f%", "±\u202f0,2", 0}},
		{all[0], check.Want{Key: "wet_film", Unit: unit.Micrometre, Value: 66.5, Tolerance: .5}, checkedValue{"Wet film of one coat", "66.5\u202fµm", "66.667\u202fµm", "+0.167", "0.25\u202f%", "±\u202f0.5", 0}},
		{all[0], check.Want{Key: "wet_film", Unit: unit.Mil, Value: 2.6, Tolerance: .05}, checkedValue{"Wet film of one coat", "2.6\u202fmil", "2.625\u202fmil", "+0.025", "0.95\u202f%", "±\u202f0.05", 0}},
	} {
		got := tt.tongue.checkedValue(c, tt.want, r)
		got.share = 0
		assert.Equal(t, tt.values, got)
	}
	assert.Equal(t, "0", all[0].signed(-1e-9, 2))
	assert.Equal(t, "<\u202f0,01\u202f%", all[1].percent(1e-5, 2))
}

// Every row of every file is on the page, and none is off by more than is allowed.
func TestEveryRowIsOnThePage(t *testing.T) {
	all, err := tongues()
	require.NoError(t, err)
	testdata := os.DirFS("../testdata")
	published, err := fs.Sub(testdata, "published")
	require.NoError(t, err)
	var n numbersPage
	rows := 0
	for _, c := range calculators() {
		p, err := newCalculatorPage(all[0], c, testdata)
		require.NoError(t, err)
		require.NoError(t, n.add(all[0], p))
		if rs, err := check.Read(published, c); err == nil {
			rows += len(rs)
		}
	}
	assert.Equal(t, rows, n.Rows)
	assert.Greater(t, n.Values, 1000)
	for _, c := range n.Calculators {
		assert.LessOrEqual(t, c.most, 1+1e-9, c.Calculator.ID)
		for _, r := range c.Rows {
			assert.NotEmpty(t, r.Known, "%s: %s", c.Calculator.ID, r.Source)
			for _, v := range r.Values {
				assert.False(t, v.Printed == "" || v.Ours == "" || v.Label == "", "%s: %+v", c.Calculator.ID, v)
			}
		}
	}
}

// What comes out otherwise than printed, in words too, is on no page.
func TestAValueThatIsNotMetStopsTheBuild(t *testing.T) {
	all, err := tongues()
	require.NoError(t, err)
	c := menu.Find("mix")
	p := calculatorPage{Calculator: c, Checks: []check.Row{{Source: "A book", KnownBy: "memory", Line: 7, Form: c.ExampleForm()}}}
	p.Checked = []calc.Report{c.Run(p.Checks[0].Form)}
	list := p.Checked[0].Lists[0]
	w := check.Want{Key: list.Key, Row: 1, Column: list.Rows[0][0].Key, Words: list.Rows[0][0].Text}
	p.Checks[0].Wants = []check.Want{w}
	assert.NoError(t, new(numbersPage).add(all[0], p))
	p.Checks[0].Wants[0].Words = "Another"
	assert.ErrorContains(t, new(numbersPage).add(all[0], p), "mix, row of line 7")
}
