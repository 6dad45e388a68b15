//go:build js && wasm

package border

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/core"
	"spraywright/calc/lesson"
)

// Lessons answers what stands under "lesson/": see [lesson.Answer]. One core is enough for it.
func Lessons(_ core.Core, language calc.Language, id, form string) (answer string, mine bool) {
	what, mine := strings.CutPrefix(id, "lesson/")
	if !mine {
		return "", false
	}
	return lesson.Answer(language, what, calc.ParseForm(form)), true
}
