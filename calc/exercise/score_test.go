package exercise_test

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/exercise"
)

func TestAScoreIsTheShareOfTasksThatAreRight(t *testing.T) {
	for form, want := range map[string]string{
		"right=2&tasks=3":                       `{"right":2,"tasks":3,"scaled":0.6667,"percent":"66.67"}`,
		"right=3&tasks=3&pass=100":              `{"right":3,"tasks":3,"scaled":1,"percent":"100","mastery":1,"passed":"yes"}`,
		"right=4&tasks=5&pass=80":               `{"right":4,"tasks":5,"scaled":0.8,"percent":"80","mastery":0.8,"passed":"yes"}`,
		"right=3&tasks=5&pass=80":               `{"right":3,"tasks":5,"scaled":0.6,"percent":"60","mastery":0.8,"passed":"no"}`,
		"right=2&tasks=3&mastery=.6667":         `{"right":2,"tasks":3,"scaled":0.6667,"percent":"66.67","mastery":0.6667,"passed":"yes"}`,
		"right=2&tasks=3&mastery=0.6668&pass=1": `{"right":2,"tasks":3,"scaled":0.6667,"percent":"66.67","mastery":0.6668,"passed":"no"}`,
		"right=0&tasks=60&mastery=0":            `{"right":0,"tasks":60,"scaled":0,"percent":"0"}`,
		"right=1&tasks=3&pass=":                 `{"right":1,"tasks":3,"scaled":0.3333,"percent":"33.33"}`,
		"right=4&tasks=3":                       `{}`, "right=1.5&tasks=3": `{}`, "tasks=0&right=0": `{}`, "right=-1&tasks=3": `{}`, "": `{}`,
	} {
		assert.Equal(t, want, exercise.ScoreJSON(calc.ParseForm(form)), form)
	}
}

// A course counts a score of 66.67 as passed at 66 and not at 67, and so does this, whatever the number of tasks.
func TestRoundingNeverPassesAnybody(t *testing.T) {
	for _, tasks := range []int{1, 2, 3, 7, 13, 30, 59, 60} {
		for right := 0; right <= tasks; right++ {
			for pass := 1; pass <= 100; pass++ {
				s := exercise.Score{Right: right, Tasks: tasks, Mastery: float64(pass) / 100}
				read, ok := exercise.ReadScore(calc.ParseForm("right=" + whole(right) + "&tasks=" + whole(tasks) + "&pass=" + whole(pass)))
				if s.Scaled = read.Scaled; !ok || s.Passed() != (100*right >= pass*tasks) {
					t.Errorf("%d of %d at %d %%", right, tasks, pass)
				}
			}
		}
	}
}

func whole(n int) string { return calc.Language{}.Quantity(float64(n), 0, 0) }

func TestASetHasANameOfItsOwn(t *testing.T) {
	read := func(link string) *exercise.Set { return exercise.ReadSet(calc.Language{}, calc.ParseForm(link)) }
	a, b := read("q.1.of=wet-film&pass=80"), read("pass=80&q.1.of=wet-film")
	assert.Equal(t, a.Name, b.Name)
	assert.NotEqual(t, a.Name, read("q.1.of=wet-film&pass=81").Name)
	assert.Regexp(t, regexp.MustCompile(`^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$`), a.Name)
	assert.Equal(t, []string{"80", "0.8"}, []string{a.Pass, a.Mastery})
	assert.Empty(t, read("q.1.of=wet-film").Pass)
	for _, bad := range []string{"0", "101", "80.5", "most"} {
		assert.Equal(t, "“"+bad+"” is no share of the tasks", read("q.1.of=wet-film&pass=" + bad).Problems[0].Message)
	}
}
