// Package ratio reads mix ratios as data sheets print them.
package ratio

import (
	"math"
	"strconv"
	"strings"

	"spraywright/calc"
)

// Most is the most components a mix may have.
const Most = 6

// Parse reads "4:1:1", "4 : 1 + 10 %", "100 + 50", "2:1+5%+10%" and "60% + 30% + 10%" as parts in the order given.
//
// A percentage after plain parts is a share of their sum, as thinner is measured against the mixed paint: 4:1+10%
// is 4, 1 and 0.5 parts. Percentages alone are shares of the mix and must add up to 100, or start with the 100 %
// that the others are added to. Numbers may have a decimal point or a comma. There are one to six parts, none
// negative, none above 100000 and the first above zero.
func Parse(s string) ([]float64, *calc.Fault) {
	s = calc.Tidy(s)
	if strings.Contains(s, "/") && strings.Contains(s, ":") {
		return nil, &calc.Fault{Message: "has both “/” and “:” and can be read two ways", Fix: "Write it like 4:1:1"}
	}
	fields := strings.Split(strings.ReplaceAll(strings.ReplaceAll(s, "+", ":"), "/", ":"), ":")
	if len(fields) > Most {
		return nil, &calc.Fault{Message: "has more than six parts", Fix: "Mix the first six, then add the rest"}
	}
	parts := make([]float64, len(fields))
	plain := 0 // how many parts come before the first percentage
	for i, field := range fields {
		text, percent := strings.CutSuffix(strings.TrimSpace(field), "%")
		x, fault := number(strings.TrimSpace(text))
		switch {
		case fault != nil:
			return nil, fault
		case percent:
		case plain < i:
			return nil, &calc.Fault{Message: "has a part after a percentage", Fix: "Put the percentages last, like 4:1+10%"}
		default:
			plain++
		}
		parts[i] = x
	}
	return finish(parts, plain)
}

const likeThis = "Write it like 4:1:1, or 4:1+10%"

func number(text string) (float64, *calc.Fault) {
	typed := []calc.Arg{calc.Words(text, "text")}
	switch before, after, comma := strings.Cut(text, ","); {
	case text == "":
		return 0, &calc.Fault{Message: "is not complete", Fix: likeThis}
	case strings.Trim(text, "0123456789.,") != "":
		return 0, &calc.Fault{Message: "has “{text}” where a number belongs", Fix: likeThis, Args: typed}
	case comma && len(after) == 3 && !strings.ContainsAny(after, ".,") && strings.Trim(before, "0") != "":
		return 0, &calc.Fault{Message: "has “{text}”, which can be read two ways", Fix: "Write it without a separator for thousands", Args: typed}
	}
	x, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	switch {
	case x > 100000:
		return 0, &calc.Fault{Message: "has a part of more than 100000", Fix: "Check the numbers"}
	case err != nil:
		return 0, &calc.Fault{Message: "has “{text}” where a number belongs", Fix: likeThis, Args: typed}
	}
	return x, nil
}

// finish turns percentages that follow plain parts into parts, and holds the whole to what a mix can be.
func finish(parts []float64, plain int) ([]float64, *calc.Fault) {
	base, shares := sum(parts[:plain]), sum(parts[plain:])
	switch {
	case parts[0] == 0:
		return nil, &calc.Fault{Message: "starts with 0", Fix: "The paint comes first and cannot be 0"}
	case plain == 0 && parts[0] != 100 && math.Abs(shares-100) > 1: // shares are printed rounded, 33 % each
		return nil, &calc.Fault{Message: "has percentages that do not add up to 100", Fix: "Write the paint as parts, like 4:1+10%, or check the percentages"}
	case plain > 0:
		for i := plain; i < len(parts); i++ {
			parts[i] *= base / 100
		}
	}
	for _, x := range parts {
		if x > 1e6 {
			return nil, &calc.Fault{Message: "has a percentage far too large", Fix: "Check the numbers"}
		}
	}
	return parts, nil
}

func sum(xs []float64) (total float64) {
	for _, x := range xs {
		total += x
	}
	return total
}

// Check is Parse for an input that asks for a ratio.
func Check(s string) *calc.Fault {
	_, f := Parse(s)
	return f
}
