package day

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"spraywright/calc"
	"spraywright/calc/check/sound"
)

// fewSteps keeps a form from asking for more steps than a test has time for; a page asks for many in slices.
func fewSteps(form calc.Form) calc.Form {
	if form["tried"] != "1000" {
		form["tried"] = "0"
	}
	return form
}

// Whatever a link holds, a day is answered.
func FuzzDay(f *testing.F) {
	f.Add(demo(f).String())
	f.Add(small)
	f.Add(small + "&tried=1000")
	f.Add(random(3).String())
	f.Fuzz(func(t *testing.T, link string) {
		sound.Run(t, (&session{}).day(), calc.Language{}, fewSteps(calc.ParseForm(link)).String())
	})
}

// A day that makes sense but for some entries, each put by two bytes: an answer or problems, and whatever is done in its
// plan gives a form that is answered again.
func FuzzDayFilled(f *testing.F) {
	f.Add(uint64(1), []byte{0, 1, 9, 3}, "2-5-1", "hold", "9:15")
	f.Add(uint64(7), []byte{40, 6, 41, 7, 60, 8}, "1-5-2", "done", "")
	f.Add(uint64(9), []byte{3, 9}, "9-9-9", "undo", "25:00")
	f.Fuzz(func(t *testing.T, seed uint64, changes []byte, step, change, at string) {
		form := random(seed % 1000)
		for ; len(changes) >= 2; changes = changes[2:] {
			keys := slices.Sorted(maps.Keys(form))
			key := keys[int(changes[0])%len(keys)]
			if odd[int(changes[1])%len(odd)] == "row" { // one more, like it
				if parts := strings.Split(key, "."); len(parts) == 3 {
					form[parts[0]+".9."+parts[2]] = form[key]
				}
				continue
			}
			form[key] = odd[int(changes[1])%len(odd)]
		}
		text, s := fewSteps(form).String(), &session{}
		sound.Run(t, s.day(), calc.Language{}, text)
		done := sound.Run(t, s.dayChange(), calc.Language{}, calc.Form{"day_form": text, "day_change": change, "step_of": step, "to_time": at, "now": at}.String())
		for _, fig := range done.Figures {
			if fig.Key == newForm.Key {
				sound.Run(t, s.day(), calc.Language{}, fewSteps(calc.ParseForm(fig.Text)).String())
			}
		}
	})
}

// odd is what a day's entries are put to.
var odd = []string{"row", "", "0", "0.5", "1", "2", "3", "9", "60", "240", "600", "1440", "-1", "1e9", "NaN", "8:00", "12:00", "23:59", "24:00", "Lids", "x", "\u202e", "72F", "any", "spray", "prep"}
