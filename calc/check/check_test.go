package check_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/unit"
)

// A calculator of no trade, with a table to fill in and a list that is answered.
var (
	air   = calc.Input{Key: "air", Label: "Air", Unit: unit.DegC, Limits: calc.Between(-10, 60), Example: 22}
	how   = calc.Input{Key: "how", Label: "How", Choices: []calc.Choice{{Key: "plain", Label: "Plain"}, {Key: "deep", Label: "Deep"}}}
	depth = calc.Input{Key: "depth", Label: "Depth", Unit: unit.Millimetre, Limits: calc.Between(0, 100), Example: 12.5}.If("how", "deep")
	coats = calc.Input{Key: "coats", Label: "Coats", Unit: unit.One, Limits: calc.Between(1, 9), Example: 2, Whole: true}
	part  = calc.Input{Key: "part", Label: "Parts", Most: 5, Rows: []calc.Input{
		{Key: "name", Label: "Name", Words: "Lid"}, {Key: "length", Label: "Length", Unit: unit.Millimetre, Limits: calc.Between(1, 999), Example: 600},
	}}
	warm   = calc.Output{Key: "warm", Label: "Warm", Unit: unit.DegC}
	word   = calc.Output{Key: "word", Label: "Word", Words: true}
	cup    = calc.Output{Key: "cup", Label: "Cups", Columns: []calc.Output{{Key: "of", Words: true}, {Key: "mass", Unit: unit.Gram}}}
	sample = &calc.Calculator{ID: "sample", Inputs: []calc.Input{air, how, depth, coats, part}, Outputs: []calc.Output{warm, word, cup},
		Work: func(w *calc.Working) {
			w.Result(warm, calc.N(w.Given(air).V+w.Given(depth).V, unit.DegC))
			w.Tell(word, calc.Say("fine"))
			for _, row := range w.Rows(part) {
				w.List(cup, calc.Told(calc.Say("{n}", calc.Words(row.Words(part.Rows[0]), "n"))), calc.Of(calc.N(row.Given(part.Rows[1]).V, unit.Gram)))
			}
		}}
)

func read(csv string) ([]check.Row, error) {
	return check.Read(fstest.MapFS{"sample.csv": {Data: []byte(csv)}}, sample)
}

func TestARowIsReadWhole(t *testing.T) {
	rows, err := read(`# Made up.
source,known_by,air degF,how,part.1.name,part.1.length cm,part.2.name,warm degF,word,cup.2.mass g,cup.1.of
"A book, 1999, table 3",seen https://example.org/3,68,deep,Fork,20,Lid,90.5,fine,600,Fork
# The second is as the first.
Ours,by hand,,,,,,22±0.2,,,
`)
	require.NoError(t, err)
	require.Len(t, rows, 2)
	first := rows[0]
	assert.Equal(t, 3, first.Line)
	assert.Equal(t, "A book, 1999, table 3", first.Source)
	assert.True(t, first.Outside())
	assert.Equal(t, "air=68&air.unit=degF&coats=2&depth=12.5&how=deep&part.1.length=20&part.1.length.unit=cm&part.1.name=Fork&part.2.length=600&part.2.name=Lid", first.Form.String(),
		"what the row leaves blank and its choices ask for stands at its example")
	assert.Equal(t, []check.Want{
		{Key: "warm", Unit: unit.DegF, Value: 90.5, Tolerance: 0.05}, {Key: "word", Words: "fine"},
		{Key: "cup", Row: 2, Column: "mass", Unit: unit.Gram, Value: 600, Tolerance: 0.5}, {Key: "cup", Row: 1, Column: "of", Words: "Fork"},
	}, first.Wants)
	for _, w := range first.Wants {
		assert.NoError(t, w.Met(sample.Run(first.Form)))
	}
	assert.False(t, rows[1].Outside())
	assert.Equal(t, 0.2, rows[1].Wants[0].Tolerance)
	assert.Equal(t, "air=22&coats=2&how=plain&part.1.length=600&part.1.name=Lid", rows[1].Form.String())
}

func TestHalfOfTheLastPrintedDigit(t *testing.T) {
	for cell, want := range map[string][2]float64{
		"9.3": {9.3, 0.05}, "9.30": {9.3, 0.005}, "9": {9, 0.5}, "100": {100, 0.5}, "-0.25": {-0.25, 0.005},
		"1.2e3": {1200, 50}, "6.02E-4": {6.02e-4, 5e-7}, "9.3±0.2": {9.3, 0.2}, "9.3 ± 1": {9.3, 1},
	} {
		rows, err := read("source,known_by,warm degC\nx,memory," + cell + "\n")
		require.NoError(t, err, cell)
		assert.Equal(t, want[0], rows[0].Wants[0].Value, cell)
		assert.InEpsilon(t, want[1], rows[0].Wants[0].Tolerance, 1e-12, cell)
	}
}

func TestMisprintsInAFileAreNamed(t *testing.T) {
	for csv, says := range map[string]string{
		"":                                                         "has no headings",
		"source,warm degC\n":                                       "first columns must be source and known_by",
		"source,known_by,cold degC\n":                              "has no input or output “cold”",
		"source,known_by,warm\n":                                   "needs a unit, such as degC",
		"source,known_by,warm kg\n":                                "“kg” is no unit of temperature",
		"source,known_by,how degC\n":                               "takes no unit",
		"source,known_by,part\n":                                   "is a table",
		"source,known_by,cup g\n":                                  "is a table",
		"source,known_by,part.length mm\n":                         "needs a row number",
		"source,known_by,cup.mass g\n":                             "needs a row number",
		"source,known_by,part.1.girth mm\n":                        "has no input or output “part.1.girth”",
		"source,known_by,air degC,air degF\n":                      "air has a column already",
		"source,known_by,warm degC\nx,memory\n":                    "wrong number of fields",
		"source,known_by,warm degC\nx,memory,\n":                   "line 2: expects nothing",
		"source,known_by,warm degC\n,memory,1\n":                   "names no source",
		"source,known_by,warm degC\nx,somehow,1\n":                 "known_by must be",
		"source,known_by,warm degC\nx,seen,1\n":                    "needs the address",
		"source,known_by,warm degC\nx,second-hand ,1\n":            "needs the address",
		"source,known_by,warm degC\nx,memory,about 4\n":            "“about 4” is not a printed value",
		"source,known_by,warm degC\nx,memory,NaN\n":                "is not a printed value",
		"source,known_by,warm degC\nx,memory,4±some\n":             "has no number after ±",
		"source,known_by,warm degC\nx,memory,4\n\n# c\nx,memory,y": "line 5: warm",
	} {
		_, err := read(csv)
		assert.ErrorContains(t, err, says, strings.TrimSpace(csv))
		assert.ErrorContains(t, err, "sample.csv", csv)
	}
	_, err := check.Read(fstest.MapFS{}, sample)
	assert.ErrorContains(t, err, "sample.csv")
}

func TestAWantThatIsMissedSaysHow(t *testing.T) {
	r := sample.Run(sample.ExampleForm())
	for says, w := range map[string]check.Want{
		"warm is 22 degC, expected 22.5 ± 0.4":     {Key: "warm", Unit: unit.DegC, Value: 22.5, Tolerance: 0.4},
		"warm is 71.6 degF, expected 70 ± 0.5":     {Key: "warm", Unit: unit.DegF, Value: 70, Tolerance: 0.5},
		"word is “fine”, expected “wet”":           {Key: "word", Words: "wet"},
		"word is “fine”, expected the number 3":    {Key: "word", Unit: unit.One, Value: 3},
		"the report has no chill":                  {Key: "chill", Unit: unit.DegC},
		"cup has 1 rows, so no row 2":              {Key: "cup", Row: 2, Column: "mass", Unit: unit.Gram},
		"the report has no cup.1.girth":            {Key: "cup", Row: 1, Column: "girth", Unit: unit.Gram},
		"cup.1.mass is 600 g, expected 1 ± 0.0005": {Key: "cup", Row: 1, Column: "mass", Unit: unit.Gram, Value: 1, Tolerance: 0.0005},
	} {
		assert.EqualError(t, w.Met(r), says)
	}
	assert.NoError(t, check.Want{Key: "warm", Unit: unit.DegC, Value: 22.5, Tolerance: 0.5}.Met(r), "the edge of the tolerance is inside")
}
