package calc

import (
	"strings"
	"unicode"
	"unicode/utf8"
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
	l := Line{Label: s.Label, Kind: s.Kind, Source: s.Source, Result: quantity(significant(s.Value, 5), s.Unit), From: stepsOf(s.Args)}
	if s.Kind == Modelled {
		l.Formula = s.Formula
	} else if s.Formula != "" {
		l.Formula = pretty(s.Formula)
		_, right, _ := strings.Cut(s.Formula, "=")
		if s.Kind == Solved {
			right = s.Formula
		}
		l.Numbers = pretty(substitute(strings.TrimSpace(right), s.Args))
	}
	var legend []string
	for _, a := range s.Args {
		if a.Num.Label != "" {
			legend = append(legend, a.Name+": "+lowerFirst(a.Num.Label)+", "+quantity(significant(a.Num.V, 5), a.Num.Unit))
		}
	}
	l.Legend = strings.Join(legend, "; ")
	return l
}

// substitute writes numbers in place of the names that stand for them.
func substitute(formula string, args []Arg) string {
	var b strings.Builder
	for formula != "" {
		n := strings.IndexFunc(formula+" ", func(r rune) bool { return !isName(r) })
		if n == 0 {
			_, n = utf8.DecodeRuneInString(formula)
		}
		word := formula[:n]
		formula = formula[n:]
		b.WriteString(number(word, args))
	}
	return b.String()
}

func number(word string, args []Arg) string {
	for _, a := range args {
		if a.Name == word {
			if s := significant(a.Num.V, 5); s[0] != '-' {
				return s
			} else {
				return "(" + s + ")"
			}
		}
	}
	return word
}

func isName(r rune) bool { return r == '_' || r == '.' || unicode.IsLetter(r) || unicode.IsDigit(r) }

// pretty writes operators as a book prints them.
func pretty(formula string) string {
	return strings.ReplaceAll(strings.ReplaceAll(strings.ReplaceAll(formula, "*", "×"), "/", "÷"), "-", "−")
}
