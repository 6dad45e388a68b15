package day

import (
	"math"
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

const aDay = 24 * 60

// at is a time of day as minutes after the midnight before the day starts. One before the start is of the next day.
func (d *day) at(words string) int {
	t, _ := field.ReadClock(words)
	if t < d.start {
		t += aDay
	}
	return t
}

// before is at for what may lie before the start: half a day and less before it, it does.
func (d *day) before(words string) int {
	t := d.at(words)
	if t >= aDay && t-aDay >= d.start-aDay/2 {
		t -= aDay
	}
	return t
}

// show names a time for a sentence.
func show(minutes int, name string) calc.Arg { return calc.Words(field.ShowClock(minutes), name) }

// told is a cell with a time of day.
func told(minutes int) calc.Cell { return calc.Told(calc.Say("{clock}", show(minutes, "clock"))) }

// named is a cell with words that a person typed.
func named(words string) calc.Cell { return calc.Told(calc.Say("{name}", calc.Words(words, "name"))) }

// blank is a cell with nothing in it.
func blank() calc.Cell { return calc.Of(calc.Num{}) }

func minutes(n int, label calc.Phrase) calc.Num {
	return calc.N(float64(n), unit.Minute).Called(label)
}

func whole(n int, name string) calc.Arg { return calc.N(float64(n), unit.One).To(0, name) }

func mins(n int, name string) calc.Arg { return calc.N(float64(n), unit.Minute).To(0, name) }

// up and down are a number as whole minutes or millilitres, on the careful side.
func up(n calc.Num) int   { return int(math.Ceil(n.V - 1e-9)) }
func down(n calc.Num) int { return int(math.Floor(n.V + 1e-9)) }

// fold makes "Ivory " and "ivory" one name.
func fold(s string) string { return strings.ToLower(strings.TrimSpace(s)) }
