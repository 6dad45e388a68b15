package calc

import (
	"math"
	"strconv"
	"strings"
)

// typeset writes a formula as a book prints it, with numbers in place of the names in args: "pow(D / 2, 2)" becomes
// "(D ÷ 2)²". What is set low stands after an underscore, "ρ_2", for the page to lower.
func (l Language) typeset(formula string, args []Arg) string {
	set := ""
	for formula != "" {
		var word string
		if word, formula = nextWord(formula); word == "pow" {
			var base, exponent string
			base, exponent, formula = operands(formula)
			word = l.factor(base, args) + raised(l.factor(exponent, args))
		} else {
			word = l.printed(word, args)
		}
		set += word
	}
	return set
}

// operands takes "(a, b) + c" apart into a, b and " + c".
func operands(s string) (first, second, rest string) {
	depth, comma := 0, 0
	for i := range len(s) {
		switch s[i] {
		case '(':
			depth++
		case ')':
			if depth--; depth == 0 {
				return s[1:comma], strings.TrimSpace(s[comma+1 : i]), s[i+1:]
			}
		case ',':
			if depth == 1 {
				comma = i
			}
		}
	}
	panic("calc: a bracket is open in " + s)
}

// factor puts brackets around an expression of more than one word.
func (l Language) factor(expression string, args []Arg) string {
	s := l.typeset(expression, args)
	if _, rest := nextWord(expression); rest != "" {
		return "(" + s + ")"
	}
	return s
}

// raised sets a whole exponent high; another follows a caret.
func raised(exponent string) string {
	high := ""
	for _, r := range exponent {
		switch {
		case r == '(' || r == ')':
		case r == '−' || r == '-':
			high += "⁻"
		case r >= '0' && r <= '9':
			high += superscripts[r-'0']
		default:
			return "^" + exponent
		}
	}
	return high
}

var superscripts = [...]string{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"}

// printed is one word of a formula: the number it stands for, in brackets where it is not one sign and its digits, or
// the word as a book has it.
func (l Language) printed(word string, args []Arg) string {
	var number string
	if c := word[0]; c >= '0' && c <= '9' {
		x, _ := strconv.ParseFloat(word, 64)
		number = strings.TrimPrefix(l.number(inPowers(x, 12)), "1×")
	}
	for i := range args {
		if args[i].Name == word {
			number = l.number(inPowers(args[i].Num.V, 5))
		}
	}
	switch {
	case number == "":
		return l.spell(word)
	case number[0] == '-':
		return "(−" + number[1:] + ")"
	case strings.Contains(number, "×"):
		return "(" + number + ")"
	}
	return number
}

// inPowers is [significant], with a power of ten from a million up and below a hundred thousandth. Below a hundred
// million millionth it is 0: no working comes to so little but by the rounding of two numbers that are alike.
//
//go:noinline
func inPowers(x float64, digits int) string {
	power := 0
	switch size := math.Abs(x); {
	case size < 1e-14:
		x = 0
	case size >= 1e6 && !math.IsInf(x, 0):
		for ; math.Abs(x) >= 10; x /= 10 {
			power++
		}
	case size < 1e-5:
		for ; math.Abs(x) < 1; x *= 10 {
			power--
		}
	}
	s := significant(x, digits)
	if power != 0 {
		s += "×10" + raised(strconv.Itoa(power))
	}
	return s
}

// spelled pairs what formulas have in letters with what books print. A name may have a subscript: rho_2.
var spelled = [...]string{
	"*", "×", "/", "÷", "-", "−", "sqrt", "√", "log10", "log_10", "pi", "π",
	"alpha", "α", "beta", "β", "gamma", "γ", "delta", "δ", "epsilon", "ε", "eta", "η", "theta", "θ", "lambda", "λ",
	"mu", "μ", "nu", "ν", "rho", "ρ", "sigma", "σ", "tau", "τ", "phi", "φ",
}

// spell is a name, a function or a sign as a book prints it. Where decimals follow a comma, something else must part
// one number from the next.
//
//go:noinline
func (l Language) spell(word string) string {
	switch {
	case word == "floor":
		return l.word("round down")
	case word == "ceil":
		return l.word("round up")
	case word == "," && l.Comma:
		return ";"
	}
	name, _, _ := strings.Cut(word, "_")
	for i := 0; i < len(spelled); i += 2 {
		if spelled[i] == name {
			return spelled[i+1] + word[len(name):]
		}
	}
	return word
}
