package exercise_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/exercise"
)

func TestASetTakesItsExercisesInTurn(t *testing.T) {
	s := exercise.ReadSet(calc.Language{}, calc.ParseForm("title=Films&tasks=5&q.1.of=wet-film&q.1.ask=wet_film&q.3.of=mix-ratio&seed=7"))
	require.Empty(t, s.Problems)
	var of []string
	for _, task := range s.Tasks {
		of = append(of, task.Of+" "+task.Row)
	}
	assert.Equal(t, []string{"wet-film q.1.", "mix-ratio q.3.", "wet-film q.1.", "mix-ratio q.3.", "wet-film q.1."}, of)
	assert.Equal(t, "7", s.Seed)
	other := exercise.ReadSet(calc.Language{}, calc.ParseForm("q.3.of=mix-ratio&q.1.ask=wet_film&q.1.of=wet-film&tasks=5&seed=7&title=Films"))
	assert.Equal(t, s.ID, other.ID, "the order of a link's parts says nothing")
	assert.NotEqual(t, s.ID, exercise.ReadSet(calc.Language{}, calc.ParseForm("title=Films&tasks=4&q.1.of=wet-film")).ID)
	assert.Len(t, exercise.ReadSet(calc.Language{}, calc.ParseForm("q.1.of=a&q.2.of=b")).Tasks, 2, "each exercise once")
}

func TestWhatIsWrongWithALink(t *testing.T) {
	for link, want := range map[string]string{
		"":                           "This link holds no exercises",
		"title=Films":                "This link holds no exercises",
		"q.1.ask=wet_film":           "Exercise 1 names no calculator",
		"q.1.of=wet-film&tasks=0":    "“0” is no number of tasks",
		"q.1.of=wet-film&tasks=61":   "“61” is no number of tasks",
		"q.1.of=wet-film&tasks=1.5":  "“1.5” is no number of tasks",
		"q.1.of=wet-film&tasks=many": "“many” is no number of tasks",
		"q.1.of=wet-film&coats=2":    "The link has “coats”, which no set of exercises has",
		"q.1.of=x&title=" + strings.Repeat("x", 3000): "The title or the note is too long",
	} {
		s := exercise.ReadSet(calc.Language{}, calc.ParseForm(link))
		if assert.NotEmpty(t, s.Problems, link) {
			assert.Equal(t, want, s.Problems[0].Message, link)
			assert.Empty(t, s.Tasks)
		}
	}
	for range 20 { // a map has no order of its own
		said := exercise.ReadSet(calc.Language{}, calc.ParseForm("q.1.of=wet-film&coats=2&air=3&b=4")).Problems
		require.Len(t, said, 3)
		assert.Equal(t, "“air” “b” “coats”", strings.Join([]string{word(said[0].Message), word(said[1].Message), word(said[2].Message)}, " "))
	}
	var many strings.Builder
	for i := range 31 {
		many.WriteString("&q." + string(rune('1'+i/9)) + string(rune('1'+i%9)) + ".of=wet-film")
	}
	assert.Equal(t, "A set holds at most 30 exercises", exercise.ReadSet(calc.Language{}, calc.ParseForm(many.String())).Problems[0].Message)
}

// word is the first word of a sentence in quotes.
func word(s string) string {
	_, s, _ = strings.Cut(s, "“")
	s, _, _ = strings.Cut(s, "”")
	return "“" + s + "”"
}

func FuzzReadSet(f *testing.F) {
	for _, s := range []string{"", "title=Films&tasks=5&q.1.of=wet-film&q.1.ask=wet_film&seed=7", "q.1.of=%zz&q..of=1&q.=2&tasks=1e9", "q.9999.of=a&q.10000.of=b", "tasks=\xff"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, link string) {
		s := exercise.ReadSet(calc.Language{}, calc.ParseForm(link))
		require.True(t, json.Valid([]byte(s.JSON())))
		require.Equal(t, len(s.Problems) > 0, len(s.Tasks) == 0)
		require.LessOrEqual(t, len(s.Tasks), 60)
		for _, task := range s.Tasks {
			require.NotEmpty(t, task.Of)
		}
	})
}
