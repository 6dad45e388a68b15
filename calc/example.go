package calc

import "strings"

// ExampleForm is a form filled in with every input's example, optional ones too; a table has one row.
func (c *Calculator) ExampleForm() Form {
	form := Form{}
	fillExamples(form, "", c.Inputs)
	return form
}

func fillExamples(form Form, prefix string, ins []Input) {
	for _, in := range ins {
		if in.When != nil && !in.When.holds(form, prefix, ins) {
			continue
		}
		switch {
		case in.Rows != nil:
			fillExamples(form, prefix+in.Key+".1.", in.Rows)
		case in.Choices != nil:
			form[prefix+in.Key] = in.Choices[0].Key
		case in.Unit != 0:
			form[prefix+in.Key] = plain(in.Example)
		default:
			form[prefix+in.Key] = in.Words
		}
	}
}

// holds reports whether the choice that w asks for has been made. An input that is itself not wanted has none.
func (w *When) holds(form Form, prefix string, ins []Input) bool {
	asked := find(ins, w.Key)
	if asked == nil || asked.When != nil && !asked.When.holds(form, prefix, ins) {
		return false
	}
	picked := asked.picked(strings.TrimSpace(form[prefix+w.Key]))
	for _, k := range w.In {
		if k == picked {
			return true
		}
	}
	return false
}

// picked is the choice a blank stands for where the input starts filled in.
func (in *Input) picked(text string) string {
	if text == "" && in.Prefill && len(in.Choices) > 0 {
		return in.Choices[0].Key
	}
	return text
}
