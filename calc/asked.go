package calc

import (
	"strings"

	"spraywright/calc/unit"
)

// Asked reports whether a form asks for an input, by the choices made in it. ins is the list that the input stands in
// and prefix the row, "part.2.", or blank for the form itself.
func (in *Input) Asked(form Form, prefix string, ins []Input) bool {
	return in.When == nil || in.When.holds(form, prefix, ins)
}

// ReadNumber reads a plain number as a form does: with a point or a comma, or as a fraction.
func ReadNumber(s string) (x float64, ok bool) {
	x, bad := parseNumber(strings.TrimSpace(Tidy(s)))
	return x, bad == fine
}

// ReadOne reads one number, form[in.Key], as Run does. It gives the number in the unit it was typed in, and whether the
// form or the text named that unit. ps says what is wrong.
func (l Language) ReadOne(in *Input, form Form) (x float64, u unit.Unit, named bool, ps Problems) {
	r := reader{Language: l, form: form, typed: map[unit.Quantity]unit.Unit{}}
	a := r.answer("", in)
	return a.num, a.unit, r.retyped != nil || form[in.Key+".unit"] != "", r.problems
}

// Ask is RunIn by pointer, for those who ask many times.
//
//go:noinline
func (c *Calculator) Ask(l Language, form Form) *Report {
	r := c.RunIn(l, form)
	return &r
}

// Say words a phrase in the language; its holes are filled with words, a name and the words for it by turns.
//
//go:noinline
func (l Language) Say(p Phrase, words ...string) string {
	args := make([]Arg, 0, len(words)/2)
	for i := 0; i < len(words); i += 2 {
		args = append(args, Words(words[i+1], words[i]))
	}
	return voice{Language: l}.say(Text{p, args})
}

// Quantity words a number with d decimals and its unit.
//
//go:noinline
func (l Language) Quantity(x float64, d int, u unit.Unit) string { return l.quantity(fixed(x, d), u) }

// Label is the phrase that labels an input or output, in the language; key is "part.length" for a column.
func (l Language) Label(key string, p Phrase) string { return l.label(key, p) }

// A Mistake is a wrong way to an answer that people take: the same calculator with a changed form, or the right answer
// times a factor.
type Mistake struct {
	Says   Phrase  // a sentence without a full stop
	Form   string  // what is changed, as [ParseForm] reads it; "*2" doubles the number that stands in a field
	Times  float64 // what the answer is multiplied by; 0 for 1
	Output string  // the one output that it spoils; blank for any
}

// A JSON writes an object for the page in the way of [Report.JSON].
type JSON struct{ w *jsonWriter }

// WriteJSON is the object that fill writes.
//
//go:noinline
func WriteJSON(fill func(j JSON)) string {
	w := &jsonWriter{}
	w.object(func() { fill(JSON{w}) })
	return string(w.b)
}

// Text writes a text.
//
//go:noinline
func (j JSON) Text(key, s string) { j.w.text(key, s) }

// Number writes a number.
func (j JSON) Number(key string, x float64) { j.w.number(key, x) }

// Ints writes a list of whole numbers.
func (j JSON) Ints(key string, ns []int) { j.w.ints(key, ns) }

// List writes n objects.
//
//go:noinline
func (j JSON) List(key string, n int, fill func(i int)) { j.w.list(key, n, fill) }

// Picture writes a picture.
func (j JSON) Picture(key string, p Picture) {
	j.w.key(key)
	j.w.object(func() { j.w.picture(p) })
}

// Problems writes problems as a report does.
func (j JSON) Problems(ps Problems) {
	j.List("problems", len(ps), func(i int) { j.w.problem(ps[i]) })
}

// Report writes a whole report.
func (j JSON) Report(key string, r *Report) {
	j.w.key(key)
	j.w.object(func() { j.w.report(*r) })
}
