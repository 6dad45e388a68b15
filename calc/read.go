package calc

import (
	"math"
	"strings"
	"unicode"
	"unicode/utf8"

	"spraywright/calc/unit"
)

// longest is how many bytes one answer may have; more was pasted by mistake.
const longest = 200

// An answer is what a person gave for one input.
type answer struct {
	num   float64 // in unit
	unit  unit.Unit
	text  string // words, or the choice picked
	given bool
	bad   bool

	entered Num // the number as written down in the working, once it is
}

// An Entry is a form, or one row of a table in it, as a calculator reads it.
type Entry struct {
	w       *Working
	prefix  string // "" or "part.2."
	name    string // "part 2"; blank for the form itself
	place   string // the part of the form it stands in; blank for the form itself
	inputs  []Input
	answers map[string]answer
	tables  map[string][]*Entry
}

// A reader goes through a form once and finds every problem in it.
type reader struct {
	form     Form
	problems Problems
	typed    map[unit.Quantity]unit.Unit // the first unit chosen for each quantity
	row      *Entry                      // the row being read, or nil
}

// read goes through the inputs of a form, or of one row of it.
func (r *reader) read(e *Entry, ins []Input) *Entry {
	prefix := e.prefix
	e.inputs, e.answers = ins, make(map[string]answer, len(ins))
	for i := range ins {
		in := &ins[i]
		switch {
		case in.When != nil && !in.When.holds(r.form, prefix, ins):
		case in.Rows != nil:
			r.table(e, prefix, in)
		default:
			e.answers[in.Key] = r.answer(prefix, in)
		}
	}
	return e
}

func (r *reader) table(e *Entry, prefix string, in *Input) {
	if e.tables == nil {
		e.tables = map[string][]*Entry{}
	}
	table := prefix + in.Key
	rows := r.form.Rows(table)
	switch {
	case len(rows) == 0 && in.Optional:
		return
	case len(rows) == 0:
		r.problem(in, table, Missing, "{label} has no rows", "Add a {row}", Words(in.RowName, "row"))
		return
	case len(rows) > in.Most:
		r.problem(in, table, TooMany, "{label} has {n} rows; it can hold {most}", "Take some out, or split the work in two",
			Words(plain(float64(len(rows))), "n"), Words(plain(float64(in.Most)), "most"))
		return
	}
	for i, n := range rows {
		r.row = &Entry{prefix: table + "." + n + ".", name: in.RowName + " " + plain(float64(i+1)), place: in.Place}
		e.tables[in.Key] = append(e.tables[in.Key], r.read(r.row, in.Rows))
	}
	r.row = nil
}

// problem notes what is wrong with an input; the sentences may name {label}.
func (r *reader) problem(in *Input, field string, code Code, message, fix string, args ...Arg) answer {
	args = append(args, Words(in.Label, "label"), Words(lowerFirst(in.Label), "this"))
	v := voice{}
	p := Problem{Field: field, Place: in.Place, Code: code, Message: v.say(Say(message, args...)), Fix: v.say(Say(fix, args...))}
	if r.row != nil {
		p.Place, p.Row = r.row.place, r.row.name
	}
	r.problems = append(r.problems, p)
	return answer{bad: true}
}

func (r *reader) answer(prefix string, in *Input) answer {
	field := prefix + in.Key
	text := strings.TrimSpace(r.form[field])
	switch {
	case len(text) > longest:
		return r.problem(in, field, TooLong, "{label} is {n} characters long", "Keep it under {most} characters",
			Words(plain(float64(utf8.RuneCountInString(text))), "n"), Words(plain(longest), "most"))
	case in.Choices != nil:
		return r.choice(field, in, text)
	case in.Unit == 0:
		return r.words(field, in, text)
	}
	return r.number(prefix, field, in, text)
}

func (r *reader) missing(field string, in *Input) answer {
	if in.Optional {
		return answer{}
	}
	if in.Choices != nil {
		return r.problem(in, field, Missing, "{label} is not chosen", "Choose one")
	}
	return r.problem(in, field, Missing, "{label} is blank", "Enter {this}")
}

func (r *reader) choice(field string, in *Input, text string) answer {
	text = in.picked(text)
	if text == "" {
		return r.missing(field, in)
	}
	for _, ch := range in.Choices {
		if ch.Key == text {
			return answer{text: text, given: true}
		}
	}
	return r.problem(in, field, NotOffered, "{label} has no answer “{text}”", "Choose one of the answers in the list", Words(text, "text"))
}

func (r *reader) words(field string, in *Input, text string) answer {
	if text == "" {
		if in.Prefill {
			return answer{text: in.Words, given: true}
		}
		return r.missing(field, in)
	}
	if in.Check != nil {
		if f := in.Check(text); f != nil {
			return r.problem(in, field, Unclear, "{label} {fault}", "{fix}", Words(f.Message, "fault"), Words(f.Fix, "fix"))
		}
	}
	return answer{text: text, given: true}
}

func (r *reader) number(prefix, field string, in *Input, text string) answer {
	u, id := r.unit(prefix, field, in)
	if u == 0 {
		return r.problem(in, field, NotOffered, "{label} cannot be given in “{unit}”", "Choose one of the units in the list",
			Words(cut(id, 20), "unit"))
	}
	if text == "" {
		if in.Prefill {
			return answer{num: in.Example, unit: in.Unit, given: true}
		}
		return r.missing(field, in)
	}
	num, suffix := splitNumber(text)
	if suffix != "" {
		typed := in.unitTyped(suffix, u)
		if typed == 0 {
			return r.problem(in, field, NotNumber, "{label} must be a number in {unit}, like {example}; “{text}” is not",
				"Enter digits, with one point or comma for decimals", Words(in.unitName(u), "unit"), Words(in.show(in.Example, u), "example"), Words(text, "text"))
		}
		u = typed
	}
	x, bad := parseNumber(num)
	switch {
	case bad == ambiguous:
		return r.problem(in, field, Unclear, "{label} “{text}” can be read two ways", "Write it without a separator for thousands",
			Words(text, "text"))
	case bad != fine:
		return r.problem(in, field, NotNumber, "{label} must be a number, like {example}", "Enter digits, with one point or comma for decimals",
			Words(in.show(in.Example, u), "example"))
	}
	return r.within(field, in, x, u)
}

// within holds a number to the input's limits, wording them in the unit it was typed in. A limit is worded to
// five digits, so what was typed may pass it by their rounding; it is then taken as the limit itself.
func (r *reader) within(field string, in *Input, x float64, u unit.Unit) answer {
	const rounding = 5e-5
	low, high := in.Limits.Min, in.Limits.Max
	own, slack := unit.Convert(x, u, in.Unit), 1e-9*(math.Abs(high)+math.Abs(low))
	switch {
	case own < low-slack-rounding*math.Abs(low):
		return r.problem(in, field, TooLow, "{label} must be {limit} or more", "Check the number and its unit",
			Words(in.limit(low, u), "limit"))
	case own > high+slack+rounding*math.Abs(high):
		return r.problem(in, field, TooHigh, "{label} must be {limit} or less", "Check the number and its unit",
			Words(in.limit(high, u), "limit"))
	case own < low:
		x, u = low, in.Unit
	case own > high:
		x, u = high, in.Unit
	case in.Whole && x != math.Trunc(x):
		return r.problem(in, field, NotNumber, "{label} must be a whole number", "Round it up or down")
	}
	if _, chosen := r.typed[in.Unit.Quantity()]; !chosen && u != in.Unit {
		r.typed[in.Unit.Quantity()] = u
	}
	return answer{num: x, unit: u, given: true}
}

// unit is the one chosen for a cell, else for its column, else the input's own. It is none where the
// form names one that the input does not offer.
func (r *reader) unit(prefix, field string, in *Input) (u unit.Unit, id string) {
	id = r.form[field+".unit"]
	if id == "" && prefix != "" {
		table := prefix[:strings.LastIndexByte(prefix[:len(prefix)-1], '.')+1]
		id = r.form[table+in.Key+".unit"]
	}
	if id == "" {
		return in.Unit, id
	}
	for _, u := range in.Units() {
		if u.ID() == id {
			return u, id
		}
	}
	return 0, id
}

// unitTyped finds the unit somebody wrote after the number. The unit chosen for the field comes first, so that
// "oz" after a number of fluid ounces is taken as meant.
func (in *Input) unitTyped(suffix string, chosen unit.Unit) unit.Unit {
	lower := strings.ToLower(suffix)
	for _, u := range append([]unit.Unit{chosen}, in.Units()...) {
		if u.Symbol() == suffix || strings.ToLower(u.Symbol()) == lower || u.ID() == suffix {
			return u
		}
		for _, a := range u.Aliases() {
			if a == lower {
				return u
			}
		}
	}
	return 0
}

func (in *Input) show(x float64, u unit.Unit) string { return plain(unit.Convert(x, in.Unit, u)) }

func (in *Input) limit(x float64, u unit.Unit) string {
	return quantity(significant(unit.Convert(x, in.Unit, u), 5), u)
}

func (in *Input) unitName(u unit.Unit) string {
	if u == 0 || u.Symbol() == "" {
		return "digits"
	}
	return u.Symbol()
}

// cut keeps the first n characters.
func cut(s string, n int) string {
	for i := range s {
		if n--; n < 0 {
			return s[:i] + "…"
		}
	}
	return s
}

func lowerFirst(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	if second, _ := utf8.DecodeRuneInString(s[n:]); n == 0 || unicode.IsUpper(second) {
		return s // an abbreviation
	}
	return string(unicode.ToLower(r)) + s[n:]
}
