package exercise

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// Answer draws the task that settings ask for, judges the learner's answer where they hold one, and writes all that the
// page shows. The right answer and the working are there only once the learner has answered, or with show=answer, which
// adds the wrong answers that mistakes lead to.
func Answer(l calc.Language, c *calc.Calculator, set calc.Form) string {
	t := New(l, c, set)
	drawn := t.Problems == nil
	var j Judgement
	if drawn && set["answer"] != "" {
		j = t.Judge(set["answer"], set["answer.unit"])
	}
	return calc.WriteJSON(func(w calc.JSON) {
		w.Problems(t.Problems)
		w.Text("question", t.Say(c.Question))
		if drawn {
			t.write(w)
		}
		if j.Is != "" || drawn && set["show"] != "" {
			w.Text("judged", string(j.Is))
			w.Text("yours", j.Yours)
			w.Text("mistake", j.Mistake)
			w.Text("right", t.Figure.Text)
			w.Text("right_unit", t.Figure.Unit)
			w.Ints("steps", t.Figure.Steps)
			w.Report("report", t.Report)
		}
		if drawn && set["show"] != "" {
			traps := t.Traps()
			w.List("traps", len(traps), func(i int) {
				w.Text("text", t.Quantity(traps[i].Value, unit.Decimals(t.out.Decimals, t.out.Unit, t.Unit), t.Unit))
				w.Text("says", traps[i].Says)
			})
		}
	})
}

func (t *Task) write(w calc.JSON) {
	w.Text("asked", t.Asked)
	w.Text("label", t.Label)
	w.Text("unit_id", t.Unit.ID())
	units := unit.Of(t.out.Unit.Quantity())
	w.List("units", len(units), func(i int) {
		w.Text("id", units[i].ID())
		w.Text("symbol", t.Say(units[i].Label()))
	})
	w.List("given", len(t.Given), func(i int) {
		g := t.Given[i]
		w.Text("field", g.Field)
		w.Text("label", g.Label)
		w.Text("text", g.Text)
		w.Text("typed", g.Typed)
		w.Text("unit", g.Unit.ID())
	})
}
