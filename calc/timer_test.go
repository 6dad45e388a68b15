package calc_test

import (
	"encoding/json"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// timing times a stated time that may be blank, and one row's.
var timing = &calc.Calculator{
	ID: "timing", Inputs: []calc.Input{stands, {Key: "coat", Label: "Coats", RowName: "coat", Most: 3, Rows: []calc.Input{stands}}},
	Outputs: []calc.Output{waits, {Key: "coats", Label: "Coats", Columns: []calc.Output{waits}, Optional: true}},
	Work: func(w *calc.Working) {
		n := w.Given(stands)
		w.Result(waits, n)
		w.Timed(waits, w.Timer(calc.FlashOff, "", calc.N(30, unit.Second), n, calc.N(1, unit.Hour)))
		for _, row := range w.Rows(calc.Input{Key: "coat"}) {
			m := row.Given(stands)
			w.List(calc.Output{Key: "coats", Columns: []calc.Output{waits}}, calc.Of(m).Timed(row.Timer(calc.PotLife, "Clear", calc.Num{}, calc.Num{}, m)))
		}
	},
}

var (
	stands = calc.Input{Key: "stands", Label: "Stands", Unit: unit.Minute, Limits: calc.Between(0, 100), Optional: true}
	waits  = calc.Output{Key: "waits", Label: "Waits", Unit: unit.Minute}
)

func TestAFigureAndACellCanBeTimed(t *testing.T) {
	r := timing.Run(calc.ParseForm("stands=12&coat.1.stands=3&coat.4.stands=30&coat.4.stands.unit=s"))
	require.Empty(t, r.Problems)
	assert.Equal(t, &calc.Timer{Kind: calc.FlashOff, Ago: 0.5, Marks: []calc.Mark{{Is: "soonest", Minutes: 12}, {Is: "latest", Minutes: 60}}}, r.Figures[0].Timer)
	rows := r.Lists[0].Rows
	assert.Equal(t, &calc.Timer{Kind: calc.PotLife, Of: "Clear", Row: "coat.1.", Marks: []calc.Mark{{Is: "latest", Minutes: 3}}}, rows[0][0].Timer)
	assert.Equal(t, &calc.Timer{Kind: calc.PotLife, Of: "Clear", Row: "coat.4.", Marks: []calc.Mark{{Is: "latest", Minutes: 0.5}}}, rows[1][0].Timer)
}

func TestNothingIsTimedWithoutANumber(t *testing.T) {
	r := timing.Run(calc.ParseForm("coat.1.stands.unit=s"))
	assert.Equal(t, []calc.Mark{{Is: "latest", Minutes: 60}}, r.Figures[0].Timer.Marks)
	assert.Nil(t, r.Lists[0].Rows[0][0].Timer)
	assert.Nil(t, (&calc.Entry{}).Timer(calc.Bake, "", calc.Num{}, calc.N(math.NaN(), unit.Minute), calc.N(math.Inf(1), unit.Minute)))
}

func TestATimerReachesThePageWhole(t *testing.T) {
	var page struct {
		Figures []struct{ Timer map[string]any }
		Lists   []struct {
			Rows [][]struct{ Timer map[string]any }
		}
	}
	require.NoError(t, json.Unmarshal([]byte(timing.Run(calc.ParseForm("stands=12&coat.2.stands=3")).JSON()), &page))
	assert.Equal(t, map[string]any{"kind": "flash", "of": "", "row": "", "ago": 0.5,
		"marks": []any{map[string]any{"is": "soonest", "minutes": 12.0}, map[string]any{"is": "latest", "minutes": 60.0}}}, page.Figures[0].Timer)
	assert.Equal(t, "coat.2.", page.Lists[0].Rows[0][0].Timer["row"])
	var r calc.Report
	assert.NotContains(t, r.JSON(), "timer")
}
