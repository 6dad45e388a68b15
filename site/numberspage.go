package main

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/check"
)

// A numbersPage is what the page "Where every number comes from" shows: each published value beside ours.
type numbersPage struct {
	Calculators           []checkedNumbers
	Values, Rows, Outside int
	MostOff               string // the largest deviation of all, as a share of what is allowed
}

// checkedNumbers are the check rows of one calculator.
type checkedNumbers struct {
	Calculator *calc.Calculator
	Rows       []numbersRow
	Outside    int    // rows from outside the project
	MostOff    string // the largest deviation, as a share of what is allowed; blank where there are no numbers
	most       float64
}

// A numbersRow is one line of testdata/published.
type numbersRow struct {
	Source, Address string
	Known           calc.Phrase
	Given           []enteredValue
	More            bool // is filled in as in the example
	Values          []checkedValue
}

// A checkedValue is what a source prints beside what comes out here.
type checkedValue struct {
	Label         string
	Printed, Ours string
	Off, Percent  string // the difference, and as a share of the printed value; blank for words
	Allowed       string // half of the last printed digit, or what the source states
	share         float64
}

// knownWords say how a check value is known, as [check.Row] has it.
var knownWords = []struct {
	how   string
	words calc.Phrase
}{
	{"seen", "read in print"}, {"second-hand", "as another work quotes it"}, {"memory", "from memory, not yet checked against the work"},
	{"common practice", "common practice of the trade, no source"}, {check.ByHand, "worked by hand"},
}

// add takes in the rows of a calculator's page. A value that is not met is an error: the page says that all are.
func (n *numbersPage) add(t tongue, p calculatorPage) error {
	c := checkedNumbers{Calculator: p.Calculator}
	put := t.put(p.Calculator).(*calc.Calculator)
	for i, row := range p.Checks {
		r := numbersRow{Source: row.Source, Given: filled(t.entered(put.Inputs, row.Stated, "")), More: len(row.Form) > len(row.Stated)}
		for _, k := range knownWords {
			if rest, ok := strings.CutPrefix(row.KnownBy, k.how); ok {
				r.Known, r.Address = k.words, strings.TrimSpace(rest)
			}
		}
		for _, w := range row.Wants {
			if err := w.Met(p.Checked[i]); err != nil && t.Words == nil { // words are as printed in English alone
				return fmt.Errorf("%s, row of line %d: %w", p.ID, row.Line, err)
			}
			v := t.checkedValue(put, w, p.Checked[i])
			c.most = max(c.most, v.share)
			r.Values = append(r.Values, v)
		}
		if row.Outside() {
			c.Outside++
		}
		n.Values += len(r.Values)
		c.Rows = append(c.Rows, r)
	}
	if c.Rows == nil {
		return nil
	}
	c.MostOff = t.percent(100*c.most, 0)
	n.Rows, n.Outside = n.Rows+len(c.Rows), n.Outside+c.Outside
	n.Calculators = append(n.Calculators, c)
	most := slices.MaxFunc(n.Calculators, func(a, b checkedNumbers) int { return cmp.Compare(a.most, b.most) })
	n.MostOff = t.percent(100*most.most, 0)
	return nil
}

// filled leaves out the names of rows.
func filled(all []enteredValue) []enteredValue {
	return slices.DeleteFunc(all, func(e enteredValue) bool { return e.Text == "" })
}

func (t tongue) checkedValue(c *calc.Calculator, w check.Want, r calc.Report) checkedValue {
	v := checkedValue{Label: t.labelOf(c, w)}
	x, words, err := w.Got(r)
	if err != nil || w.Unit == 0 {
		v.Printed, v.Ours = words, words // add has seen that they are the same in English
		return v
	}
	d := decimalsOf(w)
	symbol := t.say(w.Unit.Label())
	v.Printed, v.Ours = t.measured(strconv.FormatFloat(w.Value, 'f', d, 64), symbol), t.measured(strconv.FormatFloat(x, 'f', d+2, 64), symbol)
	off := x - w.Value
	v.Off, v.Allowed = t.signed(off, d+2), "±\u202f"+t.decimal(strconv.FormatFloat(w.Tolerance, 'f', -1, 64))
	if w.Value != 0 && v.Off != "0" {
		v.Percent = t.percent(100*math.Abs(off/w.Value), 2)
	}
	if w.Tolerance > 0 {
		v.share = math.Abs(off) / w.Tolerance
	}
	return v
}

// labelOf is what the answer calls a value: "Cups 2: Mass" is the mass in a list's second row.
func (t tongue) labelOf(c *calc.Calculator, w check.Want) string {
	label := string(c.Output(w.Key).Label)
	if w.Row == 0 {
		return label
	}
	return t.say(listedLabel, "list", label, "n", w.Row, "column", c.Output(w.Key+"."+w.Column).Label)
}

const listedLabel calc.Phrase = "{list} {n}: {column}"

// decimalsOf is how many decimals a value was printed with. Its tolerance tells of noughts at its end, "9.30".
func decimalsOf(w check.Want) int {
	_, after, _ := strings.Cut(strconv.FormatFloat(w.Value, 'f', -1, 64), ".")
	if w.Tolerance > 0 {
		if d := -math.Log10(2 * w.Tolerance); math.Abs(d-math.Round(d)) < 1e-9 {
			return max(len(after), int(math.Round(d)))
		}
	}
	return len(after)
}

// decimal gives a number written with a point the tongue's own mark.
func (t tongue) decimal(s string) string {
	s = strings.Replace(s, "-", "−", 1)
	if t.Comma {
		s = strings.Replace(s, ".", ",", 1)
	}
	return s
}

func (t tongue) measured(number, symbol string) string {
	if symbol == "" {
		return t.decimal(number)
	}
	return t.decimal(number) + "\u202f" + symbol
}

// signed is a difference with d decimals and its sign; nothing is 0.
func (t tongue) signed(x float64, d int) string {
	s := strconv.FormatFloat(math.Abs(x), 'f', d, 64)
	switch {
	case strings.Trim(s, "0.") == "":
		return "0"
	case x < 0:
		return "−" + t.decimal(s)
	}
	return "+" + t.decimal(s)
}

func (t tongue) percent(x float64, d int) string {
	s := strconv.FormatFloat(x, 'f', d, 64)
	if d > 0 && x > 0 && strings.Trim(s, "0.") == "" {
		return "<\u202f" + t.decimal(strconv.FormatFloat(math.Pow10(-d), 'f', d, 64)) + "\u202f%"
	}
	return t.decimal(s) + "\u202f%"
}
