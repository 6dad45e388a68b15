package calc

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"spraywright/calc/source"
)

// lines words the working.
func (w *Working) lines() []Line {
	lines := make([]Line, len(w.steps))
	for i, s := range w.steps {
		lines[i] = w.line(s)
	}
	return lines
}

func (w *Working) line(s Step) Line {
	v := w.voice.Language
	l := Line{Label: v.word(s.Label), Kind: s.Kind, Source: v.cited(s.Source), Result: v.quantity(inPowers(s.Value, 5), s.Unit), From: stepsOf(s.Args)}
	if s.Kind == Modelled {
		l.Formula = v.word(Phrase(s.Formula))
	} else if s.Formula != "" {
		l.Formula = v.typeset(s.Formula, nil)
		_, right, _ := strings.Cut(s.Formula, "=")
		if s.Kind == Solved {
			right = s.Formula
		}
		l.Numbers = v.typeset(strings.TrimSpace(right), s.Args)
	}
	var legend []string
	for _, a := range s.Args {
		if a.Num.Label != "" {
			legend = append(legend, v.spell(a.Name)+": "+lowerFirst(v.word(a.Num.Label))+", "+v.quantity(inPowers(a.Num.V, 5), a.Num.Unit))
		}
	}
	l.Legend = strings.Join(legend, "; ")
	return l
}

// cited is a source with what is worded of it in the language: its place, and the title where that is ours.
func (l Language) cited(s source.Source) source.Source {
	if s == nil || l.Words == nil {
		return s
	}
	in := *s
	in.Ours, in.Place = Phrase(l.word(s.Ours)), Phrase(l.word(s.Place))
	return &in
}

// named gives each number the name that the formula has for it, in the order of first appearance. Functions, pi and
// the name but are passed over. It panics when names and numbers do not pair up: that is a mistake in the program.
func named(formula, but string, nums []Num) []Arg {
	args := make([]Arg, 0, len(nums)+1)
	for word, rest := nextWord(formula); word != ""; word, rest = nextWord(rest) {
		if r, _ := utf8.DecodeRuneInString(word); r != '_' && !unicode.IsLetter(r) || word == but || isFunction(word) || hasName(args, word) {
			continue
		}
		if len(args) == len(nums) {
			panic("calc: no number is given for " + word + " in " + formula)
		}
		args = append(args, nums[len(args)].As(word))
	}
	if len(args) < len(nums) {
		panic("calc: more numbers than names in " + formula)
	}
	return args
}

func hasName(args []Arg, name string) bool {
	for i := range args {
		if args[i].Name == name {
			return true
		}
	}
	return false
}

// isFunction reports whether a formula may use a name without a number for it.
func isFunction(name string) bool {
	switch name {
	case "ln", "log10", "exp", "sqrt", "pow", "min", "max", "sin", "cos", "tan", "atan", "floor", "ceil", "round", "erf", "pi":
		return true
	}
	return false
}

// nextWord cuts a name, a number or one sign off a formula.
func nextWord(formula string) (word, rest string) {
	n := 0
	for n < len(formula) {
		r, size := utf8.DecodeRuneInString(formula[n:])
		if n > 0 && !isName(r) {
			break
		}
		n += size
		if !isName(r) {
			break
		}
	}
	return formula[:n], formula[n:]
}

func isName(r rune) bool { return r == '_' || r == '.' || unicode.IsLetter(r) || unicode.IsDigit(r) }
