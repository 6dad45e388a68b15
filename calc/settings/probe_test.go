package settings

import (
	"fmt"
	"testing"

	"spraywright/calc"
)

func TestProbe(t *testing.T) {
	for _, link := range []string{
		"", "air=40.6&humidity=4&panel=40", "air=15&humidity=85&panel=15", "air=30&humidity=70&panel=29", "carrier=solvent&pack=two&pot_life=120&pot_life_at=20&solvent=butyl-acetate&air=33&humidity=40&panel=33",
		"carrier=solvent&solvent=acetone&air=22&humidity=75&panel=21",
	} {
		form := Settings.ExampleForm()
		for k, v := range calc.ParseForm(link) {
			form[k] = v
		}
		delete(form, "pressure_exponent")
		for k := range form {
			if len(k) > 5 && k[:5] == "pair." {
				delete(form, k)
			}
		}
		r := Settings.Run(form)
		fmt.Println("=====", link, len(r.Steps), "steps", len(r.JSON()))
		for _, p := range r.Problems {
			fmt.Println("  PROBLEM", p.Error())
		}
		for _, v := range r.Verdict {
			fmt.Println("  ", v.Level, v.Why, "|", v.Do)
		}
		for _, f := range r.Figures {
			fmt.Println("  ", f.Label, ":", f.Text, f.Unit)
		}
		for _, l := range r.Lists {
			fmt.Println("  ", l.Label)
			for _, row := range l.Rows {
				fmt.Print("     ")
				for _, c := range row {
					fmt.Print(c.Text, c.Unit, " | ")
				}
				fmt.Println()
			}
		}
		for _, s := range r.Pictures {
			fmt.Println("  PIC", s.Says)
		}
		for _, s := range r.Cautions {
			fmt.Println("  !", s)
		}
	}
}

func BenchmarkSettings(b *testing.B) {
	form := Settings.ExampleForm()
	for b.Loop() {
		Settings.Run(form).JSON()
	}
}
