package main

import (
	"encoding/json"

	"spraywright/calc"
	"spraywright/calc/lesson"
)

// lessonSketches is the script that holds the sketches of lessons, worded, by language and by the calculator that has one.
const lessonSketches = "scripts/lesson-sketches.js"

// addLessonSketches draws them as the core draws its pictures. Several calculators share one.
func addLessonSketches(site bundle) error {
	all, err := tongues()
	if err != nil {
		return err
	}
	of := map[string]string{} // the title of a calculator's sketch, in English
	drawn := map[string]map[string]json.RawMessage{}
	for _, t := range all {
		drawn[t.Code] = map[string]json.RawMessage{}
		for _, c := range calculators() {
			p, has := lesson.Sketch(t.Language, c.ID)
			if !has {
				continue
			}
			plain, _ := lesson.Sketch(calc.Language{}, c.ID)
			of[c.ID] = plain.Title
			drawn[t.Code][plain.Title] = json.RawMessage(calc.WriteJSON(func(w calc.JSON) { w.Picture("picture", p) }))
		}
	}
	text, err := json.Marshal(map[string]any{"of": of, "drawn": drawn}) // keys come out sorted
	site[lessonSketches] = []byte("// Made by the build: the sketches of lessons.\nexport const sketches = " + string(text) + ";\n")
	return err
}
