package calc_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/source"
)

// wire is the report as the page reads it.
type wire struct {
	ID       string     `json:"id"`
	Problems []any      `json:"problems"`
	Places   []any      `json:"places"`
	Rows     []any      `json:"rows"`
	Retyped  []any      `json:"retyped"`
	Nudges   []any      `json:"nudges"`
	Verdict  []any      `json:"verdict"`
	Figures  []wireFig  `json:"figures"`
	Lists    []wireList `json:"lists"`
	Pictures []wirePic  `json:"pictures"`
	Steps    []wireStep `json:"steps"`
	Cautions []string   `json:"cautions"`
}

type wireFig struct {
	Key, Label, Text, Unit string
	UnitID                 string `json:"unit_id"`
	Typed, Full            string
	Value                  float64
	Steps                  []int
}

type wireList struct {
	Key, Label string
	Columns    []struct{ Key, Label string }
	Rows       [][]wireFig
}

type wirePic struct {
	Key, Title, Says string
	Width, Height    float64
	Shapes           []map[string]any
}

type wireStep struct {
	Label, Kind, Formula, Numbers, Result, Legend, Source string
	Place                                                 string `json:"source_place"`
	Basis                                                 string `json:"source_basis"`
	SourceID                                              string `json:"source_id"`
	From                                                  []int
}

// decoded reads a report with encoding/json, which knows the format and not how it was written.
func decoded(t *testing.T, r calc.Report) wire {
	t.Helper()
	var w wire
	d := json.NewDecoder(strings.NewReader(r.JSON()))
	d.DisallowUnknownFields()
	require.NoError(t, d.Decode(&w), r.JSON())
	require.False(t, d.More())
	require.Len(t, w.Problems, len(r.Problems))
	require.Len(t, w.Figures, len(r.Figures))
	require.Len(t, w.Steps, len(r.Steps))
	return w
}

func TestAReportReachesThePageWhole(t *testing.T) {
	r := sample.Run(filled("rise=12&note=so: so"))
	r.Pictures = []calc.Picture{{Key: "p", Title: "T", Says: "S", Width: 10, Height: 5, Shapes: []calc.Shape{
		{Kind: calc.Path, Points: []float64{0, 1, 2.5, -3}, Look: "coat"}, {Kind: calc.Label, Text: "a", AnchorMid: true}, {Kind: calc.Bar, W: 3, H: 4}}}}
	w := decoded(t, r)
	require.Equal(t, "sample", w.ID)
	for i, f := range r.Figures {
		require.Equal(t, wireFig{f.Key, f.Label, f.Text, f.Unit, f.UnitID, f.Typed, f.Full, f.Value, append([]int{}, f.Steps...)}, w.Figures[i])
	}
	for i, s := range r.Steps {
		title, id := "", ""
		if s.Source != nil {
			title, id = s.Source.Name(), s.Source.ID
		}
		require.Equal(t, []string{s.Label, string(s.Kind), s.Formula, s.Numbers, s.Result, s.Legend, title, id},
			[]string{w.Steps[i].Label, w.Steps[i].Kind, w.Steps[i].Formula, w.Steps[i].Numbers, w.Steps[i].Result, w.Steps[i].Legend, w.Steps[i].Source, w.Steps[i].SourceID})
	}
	require.Equal(t, map[string]any{"level": "stop", "why": r.Verdict[0].Why, "do": "Wait", "steps": []any{2.0}}, w.Verdict[0])
	require.Equal(t, []any{0.0, 1.0, 2.5, -3.0}, w.Pictures[0].Shapes[0]["points"])
	require.Equal(t, "middle", w.Pictures[0].Shapes[1]["anchor"])
	require.Equal(t, r.Cautions, w.Cautions)
	require.Equal(t, "Lid", w.Lists[0].Rows[0][0].Text)
}

func TestNoReportIsBrokenJSON(t *testing.T) {
	decoded(t, calc.Report{})
	decoded(t, calc.Language{}.Trouble("x", "y", "z"))
	r := calc.Report{Pictures: []calc.Picture{{Width: math.NaN(), Shapes: []calc.Shape{{Kind: calc.Path, Points: []float64{math.Inf(1), math.Inf(-1)}}}}}}
	decoded(t, r)
}

func FuzzJSON(f *testing.F) {
	f.Add("a", "\"\\\n\t\x00\u2028</script>", 1.5)
	f.Add("[", "{:", -0.0)
	f.Add("\xff\xfe", "🎨\U0010ffff", 1e300)
	f.Fuzz(func(t *testing.T, a, b string, x float64) {
		r := calc.Report{Calculator: a,
			Problems: calc.Problems{{Field: a, Place: b, Code: calc.Beyond, Message: b, Fix: a}},
			Figures:  []calc.Figure{{Key: a, Label: b, Text: a + b, UnitID: "m", Unit: b, Value: x, Steps: []int{1, 2}}},
			Lists:    []calc.List{{Key: b, Columns: []calc.Column{{Key: a, Label: b}}, Rows: [][]calc.Figure{{{Text: b}}, {}}}},
			Pictures: []calc.Picture{{Says: a, Width: x, Shapes: []calc.Shape{{Kind: calc.Path, Points: []float64{x, -x}}, {Kind: calc.Label, Text: b}}}},
			Steps:    []calc.Line{{Label: a, Formula: b, Source: &source.Work{ID: a + "!", Title: b}, From: []int{3}}},
			Cautions: []string{a, b},
		}
		w := decoded(t, r)
		valid := func(s string) string { return strings.Map(func(c rune) rune { return c }, s) }
		require.Equal(t, valid(a), w.ID)
		require.Equal(t, []string{valid(a), valid(b)}, w.Cautions)
		require.Equal(t, valid(b), w.Lists[0].Rows[0][0].Text)
		if !math.IsNaN(x) && !math.IsInf(x, 0) {
			require.Equal(t, x, w.Figures[0].Value)
			require.Equal(t, x, w.Pictures[0].Width)
		}
	})
}
