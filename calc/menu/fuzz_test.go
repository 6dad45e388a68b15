package menu_test

import (
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"spraywright/calc"
	"spraywright/calc/check/sound"
	"spraywright/calc/menu"
)

func everyCalculator() []*calc.Calculator {
	var all []*calc.Calculator
	for _, topic := range menu.Topics() {
		all = append(all, topic.Calculators()...)
	}
	return all
}

// ofDay reports whether a calculator is of the booth day, which plans for as long as its form says. It has tests of its own.
func ofDay(c *calc.Calculator) bool { return strings.HasPrefix(c.ID, "day") }

// tongues are the languages that a form is answered in: English, and one with a comma in which every text is another.
var tongues = []calc.Language{{}, {Comma: true, Words: func(_, phrase string) string { return "«" + phrase + "»" }}}

// Whatever a link holds, every calculator of every core answers it soundly.
func FuzzCalculators(f *testing.F) {
	all := everyCalculator()
	for i, c := range all {
		f.Add(i, c.ExampleForm().String())
	}
	f.Fuzz(func(t *testing.T, i int, link string) {
		if c := all[uint(i)%uint(len(all))]; !ofDay(c) {
			sound.Run(t, c, tongues[uint(i)/uint(len(all))%2], link)
		}
	})
}

// nasty is what forms are filled with that mean harm, or were filled by mistake.
var nasty = []string{
	"", "0", "-0", "-1", "1", "1e9", "1e308", "NaN", "Inf", "-Inf", "0x1p-2", "½", "1/3", "1 1/2", "1/0", "0.000000001", "99999999999999999999",
	"12,5", "1.250,5", "72F", "5 mil", "3/4 qt", "__proto__", "constructor", "\u202e31", "\ufeff5", "\x00", "<script>", "{label}", "a\nb", "4:1:1", "1:0",
	"100%", "4:1+10%", "2026-02-30", "25:61", "8:00", "9999", "0.1", strings.Repeat("9", 39), strings.Repeat("x", 201),
}

// Forms that are filled in sensibly but for some entries. Each three bytes change one: which, how, and to what.
func FuzzFilledForms(f *testing.F) {
	all := everyCalculator()
	for i := range all {
		f.Add(i, []byte{0, 1, 0, 3, 2, 9})
		f.Add(i, []byte{1, 0, 7, 5, 3, 200, 2, 4, 1})
	}
	f.Fuzz(func(t *testing.T, i int, changes []byte) {
		c := all[uint(i)%uint(len(all))]
		if ofDay(c) {
			return
		}
		form := c.ExampleForm()
		for ; len(changes) >= 3 && len(form) < 200; changes = changes[3:] {
			change(c, form, changes[0], changes[1], changes[2])
		}
		sound.Run(t, c, tongues[0], form.String())
	})
}

// change puts one entry of a form as three bytes say.
func change(c *calc.Calculator, form calc.Form, which, how, what byte) {
	keys := slices.Sorted(maps.Keys(form))
	key := keys[int(which)%len(keys)]
	in := c.Input(withoutRow(strings.TrimSuffix(key, ".unit")))
	switch how % 6 {
	case 0:
		form[key] = nasty[int(what)%len(nasty)]
	case 1:
		form[key] = string([]byte{what})
	case 2: // so far between the limits
		if in != nil && in.Unit != 0 {
			share := float64(what) / 255
			form[key] = show(in.Limits.Min + share*(in.Limits.Max-in.Limits.Min))
		}
	case 3: // near the lower limit, where divisors vanish
		if in != nil && in.Unit != 0 {
			form[key] = show(in.Limits.Min + (in.Example-in.Limits.Min)/float64(1+int(what)*int(what)))
		}
	case 4:
		if in != nil && in.Unit != 0 {
			us := in.Units()
			form[strings.TrimSuffix(key, ".unit")+".unit"] = us[int(what)%len(us)].ID()
		} else if in != nil && in.Choices != nil {
			form[key] = in.Choices[int(what)%len(in.Choices)].Key
		}
	case 5: // one more row, like the one before
		if table, rest, ok := strings.Cut(key, "."); ok {
			_, column, _ := strings.Cut(rest, ".")
			if c.Input(table+"."+column) != nil {
				form[table+"."+string(rune('1'+what%9))+"."+column] = form[key]
			}
		}
	}
}

func show(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
