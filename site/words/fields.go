package words

import (
	"io/fs"
	"strings"

	"spraywright/calc"
	"spraywright/calc/menu"
)

// fields finds what every calculator says of its fields, and under which keys.
func fields() []place {
	var all []place
	for _, t := range menu.Topics() {
		for _, c := range t.Calculators() {
			add := func(key string, is string, p calc.Phrase) {
				if p != "" {
					all = append(all, place{text: string(p), is: is, key: c.ID + key})
				}
			}
			add("", "title", c.Title)
			add("", "question", c.Question)
			add("", "range", c.Range)
			inputs(".", c.Inputs, add)
			outputs(".", c.Outputs, add)
		}
	}
	return all
}

func inputs(table string, ins []calc.Input, add func(key, is string, p calc.Phrase)) {
	for _, in := range ins {
		key := table + in.Key
		add(key, "label", in.Label)
		add(key, "help", in.Help)
		add(key, "heading", in.Heading)
		add(key, "rowname", in.RowName)
		for _, ch := range in.Choices {
			add(key, "choice", ch.Label)
		}
		inputs(key+".", in.Rows, add)
	}
}

func outputs(list string, outs []calc.Output, add func(key, is string, p calc.Phrase)) {
	for _, out := range outs {
		add(list+out.Key, "label", out.Label)
		outputs(list+out.Key+".", out.Columns, add)
	}
}

// examples finds what a person would type: words that stand in for it on the pages, and what the demo job calls things.
func examples(demo fs.FS) ([]place, error) {
	var all []place
	for _, t := range menu.Topics() {
		for _, c := range t.Calculators() {
			typed(c.Inputs, func(in calc.Input) { all = append(all, place{text: in.Words, is: "typed", key: c.ID + "." + in.Key}) })
			text, err := fs.ReadFile(demo, c.ID+".txt")
			if err != nil {
				continue // not every calculator has one
			}
			form := calc.ParseForm(string(text))
			for key, said := range form {
				if in := c.Input(column(key)); in != nil && isTyped(*in) && says(said) {
					all = append(all, place{text: said, is: "typed", key: c.ID + "." + column(key)})
				}
			}
		}
	}
	return all, nil
}

func typed(ins []calc.Input, add func(in calc.Input)) {
	for _, in := range ins {
		if typed(in.Rows, add); isTyped(in) && says(in.Words) {
			add(in)
		}
	}
}

// isTyped reports whether an input takes a person's own words, and not a ratio, a time or the like.
func isTyped(in calc.Input) bool {
	return in.Unit == 0 && in.Choices == nil && in.Rows == nil && in.Check == nil && in.Most == 0
}

// column takes "part.2.length" to "part.length".
func column(key string) string {
	if parts := strings.SplitN(key, ".", 3); len(parts) == 3 {
		return parts[0] + "." + parts[2]
	}
	return key
}
