package exercise_test

import (
	"math"
	"runtime"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/exercise"
	"spraywright/calc/menu"
	"spraywright/calc/unit"
)

// seeds is how many tasks each calculator is tried with: fewer as WASM, which is slower and must only agree.
var seeds = map[bool]int{false: 200, true: 12}[runtime.GOARCH == "wasm"]

// wordsAlone lists the calculators that give no number.
var wordsAlone = map[string]bool{"mix-csv": true, "link-read": true, "customer-sheets": true, "day-change": true}

// each runs a test for every calculator that gives a number, whichever core holds it.
func each(t *testing.T, test func(t *testing.T, c *calc.Calculator)) {
	for _, topic := range menu.Topics() {
		for _, c := range topic.Calculators() {
			if !wordsAlone[c.ID] {
				t.Run(c.ID, func(t *testing.T) { t.Parallel(); test(t, c) })
			}
		}
	}
}

// drawn is a task that must be there.
func drawn(t *testing.T, c *calc.Calculator, set calc.Form) *exercise.Task {
	t.Helper()
	task := exercise.New(calc.Language{}, c, set)
	require.Empty(t, task.Problems, "%s with %v", c.ID, set)
	return task
}

// Every calculator gives a task for every seed, at every level, in either world's units; its own answer, as it is shown,
// is right; and the wrong answers that mistakes lead to are off and named.
func TestEveryCalculatorSetsTasks(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		n := seeds
		if c.InStages {
			n = 12 // a job or a day's settings takes some milliseconds, and each trap is another one
		}
		if testing.Short() {
			n /= 4
		}
		for seed := range n {
			set := calc.Form{"seed": strconv.Itoa(seed), "level": strconv.Itoa(1 + seed%3), "units": []string{"si", "us"}[seed/3%2]}
			task := drawn(t, c, set)
			assert.NotEmpty(t, task.Given)
			for _, g := range task.Given {
				assert.NotEmpty(t, g.Text, g.Label)
			}
			assert.Contains(t, unit.Of(task.Unit.Quantity()), task.Unit)
			own := task.Judge(task.Figure.Typed, task.Figure.UnitID)
			require.Equal(t, exercise.Right, own.Is, "its own answer, %s %s, to %v", task.Figure.Text, task.Figure.Unit, set)
			if seed%10 != 0 {
				continue
			}
			for _, trap := range task.Traps() {
				text := strconv.FormatFloat(trap.Value, 'f', 9, 64)
				j := task.Judge(text, task.Unit.ID())
				require.Empty(t, task.Problems, "%s %s", text, task.Unit.Symbol())
				assert.Equal(t, exercise.Off, j.Is, "%s, with %v", trap.Says, set)
				assert.NotEmpty(t, j.Mistake, "%s, with %v", trap.Says, set)
				assert.NotContains(t, j.Mistake, "{")
			}
		}
	})
}

// unasked lists answers that no task asks for by itself, each with the reason why.
var unasked = map[string]string{
	"day tried_next":             "a day of one job is planned to the end at once",
	"day-look tried_next":        "the same",
	"gun exponent_spread":        "takes three pairs of readings that agree",
	"settings exponent_spread":   "takes three pairs of readings that agree",
	"room-vapour exposure_times": "every spill near the example is over the limit, which is a stop",
}

// Every other answer that a calculator gives can be asked for.
func TestEveryAnswerCanBeAskedFor(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, out := range c.Outputs {
			if out.Unit != 0 && unasked[c.ID+" "+out.Key] == "" {
				task := exercise.New(calc.Language{}, c, calc.Form{"ask": out.Key, "seed": "1"})
				if !assert.Empty(t, task.Problems, out.Key) {
					continue
				}
				assert.Equal(t, out.Key, task.Figure.Key)
			}
		}
	})
}

// Numbers are round: no more than three digits that say something, as a data sheet prints them.
func TestNumbersAreRound(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for seed := range 20 {
			task := drawn(t, c, calc.Form{"seed": strconv.Itoa(seed), "level": "3"})
			for _, g := range task.Given {
				if in := c.Input(withoutRow(g.Field)); g.Unit != 0 && !in.Prefill {
					digits := strings.TrimLeft(strings.TrimRight(strings.ReplaceAll(g.Typed, ".", ""), "0"), "-0")
					assert.LessOrEqual(t, len(digits), 3, "%s is %s", g.Label, g.Text)
					x, err := strconv.ParseFloat(g.Typed, 64)
					require.NoError(t, err)
					own := unit.Convert(x, g.Unit, in.Unit)
					slack := 1e-4 * (math.Abs(own) + 1)
					assert.True(t, in.Limits.Min-slack <= own && own <= in.Limits.Max+slack, "%s is %s", g.Label, g.Text)
				}
			}
		}
	})
}

func withoutRow(key string) string {
	pieces := strings.Split(key, ".")
	if len(pieces) == 3 {
		return pieces[0] + "." + pieces[2]
	}
	return key
}

// A setting of the exercise itself must not be an input's key as well.
func TestNoInputIsCalledLikeASetting(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, key := range strings.Fields("ask seed draw level units right close answer show") {
			assert.Nil(t, c.Input(key), key)
		}
	})
}

func TestACalculatorOfWordsSaysSo(t *testing.T) {
	for id := range wordsAlone {
		task := exercise.New(calc.Language{}, menu.Find(id), calc.Form{"seed": "1"})
		require.NotEmpty(t, task.Problems, id)
		assert.Equal(t, "This calculator answers in words alone", task.Problems[0].Message)
	}
}
