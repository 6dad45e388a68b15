package calc

import (
	"math"
	"strings"

	"spraywright/calc/unit"
)

func (r *reader) numeric(prefix, field string, in *Input, text string) answer {
	u, id := r.unit(prefix, field, in)
	if u == 0 {
		return r.problem(in, field, NotOffered, "{label} cannot be given in “{unit}”", "Choose one of the units in the list",
			Words(cut(id, 20), "unit"))
	}
	if text == "" {
		if in.Prefill {
			r.nudge(field, in, in.Example, in.Unit)
			return answer{num: in.Example, unit: in.Unit, given: true}
		}
		return r.missing(field, in)
	}
	num, suffix := splitNumber(text)
	if suffix != "" {
		typed := in.unitTyped(suffix, u)
		if typed == 0 {
			return r.problem(in, field, NotNumber, "{label} must be a number in {unit}, like {example}; “{text}” is not",
				"Enter digits, with one point or comma for decimals", Words(r.unitName(u), "unit"), Words(r.number(in.show(in.Example, u)), "example"), Words(text, "text"))
		}
		u = typed
		r.retyped = append(r.retyped, Retyped{field, strings.TrimSpace(num), u.ID()})
	}
	x, bad := parseNumber(num)
	switch {
	case bad == ambiguous:
		return r.problem(in, field, Unclear, "{label} “{text}” can be read two ways", "Write it without a separator for thousands",
			Words(text, "text"))
	case bad != fine:
		return r.problem(in, field, NotNumber, "{label} must be a number, like {example}", "Enter digits, with one point or comma for decimals",
			Words(r.number(in.show(in.Example, u)), "example"))
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
			Words(r.limit(in, low, u), "limit"))
	case own > high+slack+rounding*math.Abs(high):
		return r.problem(in, field, TooHigh, "{label} must be {limit} or less", "Check the number and its unit",
			Words(r.limit(in, high, u), "limit"))
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
	r.nudge(field, in, x, u)
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

func (r *reader) limit(in *Input, x float64, u unit.Unit) string {
	return r.quantity(significant(unit.Convert(x, in.Unit, u), 5), u)
}

func (r *reader) unitName(u unit.Unit) string {
	if symbol := r.word(u.Label()); symbol != "" {
		return symbol
	}
	return r.word("digits")
}
