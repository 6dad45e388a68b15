package exercise_test

import (
	"encoding/json"
	"math"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/check/sound"
	"spraywright/calc/exercise"
	"spraywright/calc/menu"
)

// What a course is told: whatever it says of itself, the score is a share that a course takes, or there is none.
func FuzzScore(f *testing.F) {
	for _, s := range []string{"right=2&tasks=3&mastery=0.8", "right=60&tasks=60&pass=100", "right=1/2&tasks=1", "right=-0&tasks=1&mastery=NaN", "right=1e9&tasks=1e9", "tasks=60&right=0&pass=0.5"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		form := calc.ParseForm(text)
		s, ok := exercise.ReadScore(form)
		if ok {
			require.True(t, s.Right >= 0 && s.Right <= s.Tasks && s.Tasks >= 1, "%+v", s)
			require.True(t, s.Scaled >= 0 && s.Scaled <= 1 && s.Mastery >= 0 && s.Mastery <= 1, "%+v", s)
			require.InDelta(t, float64(s.Right)/float64(s.Tasks), s.Scaled, 5.001e-5)
		}
		var told struct {
			Right, Tasks, Scaled *float64
			Percent              string
		}
		require.NoError(t, json.Unmarshal([]byte(exercise.ScoreJSON(form)), &told))
		require.Equal(t, ok, told.Scaled != nil)
	})
}

// Tasks from any calculator that a set may name, with whatever settings.
func FuzzTasks(f *testing.F) {
	var all []*calc.Calculator
	for _, core := range menu.Exercised() {
		for _, topic := range core.Topics {
			all = append(all, topic.Calculators()...)
		}
	}
	for i, c := range all {
		f.Add(i, "seed=7&level=3&draw=2&show=answer&answer=1&ask="+exercise.Usual(c))
	}
	f.Add(3, "dry_film=0..1e9 by 0.001&part=99999&units=us&close=50&right=50&answer=1/3 qt")
	f.Fuzz(func(t *testing.T, i int, settings string) {
		c, text := all[uint(i)%uint(len(all))], ""
		sound.Within(t, c.ID+"?"+settings, func() { text = exercise.Answer(calc.Language{}, c, calc.ParseForm(settings)) })
		require.True(t, json.Valid([]byte(text)) && utf8.ValidString(text), "%s", text)
		task := exercise.New(calc.Language{}, c, calc.ParseForm(settings))
		if len(task.Problems) == 0 {
			require.False(t, math.IsNaN(task.Figure.Value) || math.IsInf(task.Figure.Value, 0), "%s?%s", c.ID, settings)
		}
	})
}
