//go:build js && wasm

package border

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/core"
	"spraywright/calc/exercise"
)

// Exercises answers for a core what stands under "exercise/wet-film", a task from one of its calculators.
func Exercises(core core.Core, language calc.Language, id, form string) (answer string, mine bool) {
	rest, mine := strings.CutPrefix(id, "exercise/")
	if c := core.Find(rest); mine && c != nil {
		return exercise.Answer(language, c, calc.ParseForm(form)), true
	}
	return "", false
}

// ExerciseSets answers "exercise-set", the tasks in a link, and "exercise-score", what a course is told of them. One core
// is enough for it.
func ExerciseSets(_ core.Core, language calc.Language, id, form string) (answer string, mine bool) {
	switch id {
	case "exercise-set":
		return exercise.ReadSet(language, calc.ParseForm(form)).JSON(), true
	case "exercise-score":
		return exercise.ScoreJSON(calc.ParseForm(form)), true
	}
	return "", false
}
