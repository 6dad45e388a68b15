package calc

import (
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

// A reader goes through a form once and finds every problem in it.
type reader struct {
	Language
	form     Form
	problems Problems
	typed    map[unit.Quantity]unit.Unit // the first unit chosen for each quantity
	row      *Entry                      // the row being read, or nil
	retyped  []Retyped
	nudges   []Nudge
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
		r.problem(in, table, Missing, "{label} has no rows", "Add a {row}", Words(r.label("one", in.RowName), "row"))
		return
	case len(rows) > in.Most:
		r.problem(in, table, TooMany, "{label} has {n} rows; it can hold {most}", "Take some out, or split the work in two",
			Words(plain(float64(len(rows))), "n"), Words(plain(float64(in.Most)), "most"))
		return
	}
	for i, n := range rows {
		r.row = &Entry{prefix: table + "." + n + ".", name: r.label(in.Key, in.RowName) + " " + plain(float64(i+1)), place: string(in.Place)}
		e.tables[in.Key] = append(e.tables[in.Key], r.read(r.row, in.Rows))
	}
	r.row = nil
}

// problem notes what is wrong with an input; the sentences may name {label}.
func (r *reader) problem(in *Input, field string, code Code, message, fix Phrase, args ...Arg) answer {
	key := in.Key
	if r.row != nil {
		key = r.row.table() + key
	}
	label := r.label(key, in.Label)
	args = append(args, Words(label, "label"), Words(lowerFirst(label), "this"))
	v := voice{Language: r.Language}
	p := Problem{Field: field, Place: string(in.Place), Code: code, Message: v.say(Say(message, args...)), Fix: v.say(Say(fix, args...))}
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
	case len(text) > max(longest, in.Most):
		return r.problem(in, field, TooLong, "{label} is {n} characters long", "Keep it under {most} characters",
			Words(plain(float64(utf8.RuneCountInString(text))), "n"), Words(plain(float64(max(longest, in.Most))), "most"))
	case in.Choices != nil:
		return r.choice(field, in, text)
	case in.Unit == 0:
		return r.words(field, in, text)
	}
	return r.numeric(prefix, field, in, text)
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
			return r.problem(in, field, Unclear, "{label} {fault}", "{fix}", Say(f.Message, f.Args...).As("fault"), Say(f.Fix, f.Args...).As("fix"))
		}
	}
	return answer{text: text, given: true}
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
