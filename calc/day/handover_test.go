package day

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/day/plan/checkplan"
	card "spraywright/calc/job"
)

// jobRows are the rows that the job card hands over for the invented job, with an answer of it changed.
func jobRows(t *testing.T, key, text string) (rows string) {
	t.Helper()
	lines, err := os.ReadFile("../../testdata/demo/job.txt")
	require.NoError(t, err)
	_, pairs, _ := strings.Cut(string(lines), "\n") // after the comment
	form := calc.ParseForm(pairs)
	if key != "" {
		form[key] = text
	}
	r := card.Job().Run(form)
	require.Empty(t, r.Problems)
	if list := rowsOf(r, "day_rows"); len(list) > 0 {
		rows = list[0][0].Text
	}
	return rows
}

// What the job card hands over is a day that can be planned, with the coats of the card and waits that are no shorter.
func TestTheJobCardHandsOverItsRows(t *testing.T) {
	rows := jobRows(t, "", "")
	require.NotEmpty(t, rows)
	handed := calc.ParseForm(rows)
	form := changedForm(t, calc.Form{}, "day_change=add&added="+escaped(rows))
	d, day := run(form)
	require.Empty(t, day.Problems)
	require.Empty(t, checkplan.Check(&d.model, &d.plan))
	assert.Equal(t, "2", handed["coat.1.coats"])
	assert.Equal(t, "Grey two-pack primer", handed["paint.1.product"])
	assert.Equal(t, "42", handed["job.1.bake_time"], "12 min to heat up and 30 min at heat")
	assert.Equal(t, "60", handed["job.1.bake_heat"])
	life := d.model.Products[0].PotLife
	assert.True(t, 50 <= life && life < 90, "90 min at 20 °C and 50 min at 30 °C leave %d at 29 °C", life)
	for n := range d.model.Jobs[0].Coats {
		assert.Positive(t, d.model.Jobs[0].Coats[n].Flash)
		assert.Positive(t, d.model.Jobs[0].Coats[n].Spray)
	}
	// The next day is too long to wait for within one.
	long := jobRows(t, "coat.1.dry_time", "3000")
	assert.Empty(t, long)
}
