package main

import (
	"encoding/json"

	"spraywright/calc"
)

// lessonInputs is the script that tells a lesson what its sliders go by. It is fetched with the first lesson.
const lessonInputs = "scripts/lesson-inputs.js"

// A slide is what a slider has to know of an input: the unit of its limits, and the limits.
type slide struct {
	Unit  string  `json:"unit"`
	Min   float64 `json:"min"`
	Max   float64 `json:"max"`
	Whole bool    `json:"whole,omitempty"`
}

// addLessonInputs lists every numeric input by calculator and key, "part.length" in a table.
func addLessonInputs(site bundle) error {
	all := map[string]map[string]slide{}
	for _, c := range calculators() {
		slides := map[string]slide{}
		gatherSlides(slides, "", c.Inputs)
		all[c.ID] = slides
	}
	text, err := json.Marshal(all) // keys come out sorted
	site[lessonInputs] = []byte("// Made by the build: the numeric inputs of every calculator, with the unit of their limits.\nexport const inputs = " + string(text) + ";\n")
	return err
}

func gatherSlides(slides map[string]slide, table string, ins []calc.Input) {
	for _, in := range ins {
		switch kindOf(in) {
		case "number":
			slides[table+in.Key] = slide{in.Unit.ID(), in.Limits.Min, in.Limits.Max, in.Whole}
		case "table":
			gatherSlides(slides, in.Key+".", in.Rows)
		}
	}
}
