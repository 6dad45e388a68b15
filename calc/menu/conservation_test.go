package menu_test

import (
	"math"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/check/forms"
	"spraywright/calc/menu"
	"spraywright/calc/unit"
)

// What is mixed is sprayed, left over or lost, and nothing comes from nowhere: on random forms, to nine digits.

// tiny is the rounding of amounts of up to a million.
const tiny = 1e-9

// balances are sums that have to come out on any answered form; each returns both sides.
var balances = []struct {
	id, says string
	sides    func(got map[string]float64, given func(key string) float64) (one, other float64)
	slack    float64
}{
	{"mix", "the parts by volume are the amount", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return column(got, "component", "volume"), given("amount")
	}, tiny},
	{"from-one-part", "the parts are the mix, by volume", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return column(got, "component", "volume"), got["total_volume"]
	}, tiny},
	{"from-one-part", "the parts are the mix, by weight", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return column(got, "component", "mass"), got["total_mass"]
	}, tiny},
	{"mix-ratio", "shares by volume are a whole", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return column(got, "component", "share_volume"), 100
	}, tiny},
	{"mix-ratio", "shares by weight are a whole", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return column(got, "component", "share_weight"), 100
	}, tiny},
	{"part-used-cup", "what is in it and what is added are what is wanted", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return given("cup_left") + column(got, "component", "volume"), given("amount")
	}, tiny},
	{"over-pour", "each part in all is what the scale reads in the end", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return column(got, "addition", "mass"), got["total_mass"]
	}, 0.05 * 6}, // additions are to 0.1 g, and there are up to six
	{"blend-strength", "weak and strong are the amount", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return got["weak_volume"] + got["strong_volume"], given("amount")
	}, tiny},
	{"blend-strength", "what is dissolved stays", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return got["weak_volume"]*given("weak") + got["strong_volume"]*given("strong"), given("amount") * given("wanted")
	}, tiny},
	{"coverage-left", "paint left is on the area, in the air, or lost", func(got map[string]float64, given func(string) float64) (float64, float64) {
		onto := got["area_covered"] * given("dry_film") / (solids(got, given) / 100)
		return onto/(given("transfer_efficiency")/100) + given("losses"), given("paint_left")
	}, tiny},
	{"filter-loading", "overspray is caught or escapes", func(got map[string]float64, given func(string) float64) (float64, float64) {
		return got["caught"] + got["escapes"], got["overspray"]
	}, tiny},
	{"filter-loading", "solids sprayed stay on the part or are overspray", func(got map[string]float64, given func(string) float64) (float64, float64) {
		all := given("sprayed") * given("mix_density") * given("solids_weight") / 100
		return all*given("transfer_efficiency")/100 + got["overspray"], all
	}, tiny},
	{"mix-record", "what was mixed was sprayed, is left, or stays in the gun", func(got map[string]float64, given func(string) float64) (float64, float64) {
		rho := got["mix_mass"] / got["mix_volume"]
		if got["sprayed_volume"] == 0 {
			return 0, 0
		}
		return got["sprayed_volume"] + given("left_mass")/rho + given("losses"), got["mix_volume"]
	}, tiny},
	{"job-cost", "paint paid for is on the part or wasted", func(got map[string]float64, given func(string) float64) (float64, float64) {
		on := given("area") * given("dry_film") / (given("volume_solids") / 100)
		return on/1000*given("price") + got["cost_waste"], got["cost_paint"]
	}, tiny},
}

func TestNothingIsLostOrMade(t *testing.T) {
	onceAlone(t)
	for _, b := range balances {
		t.Run(b.id+": "+b.says, func(t *testing.T) {
			c := menu.Find(b.id)
			s := forms.New(c, *seed, forms.Known(c, rows(t, c)))
			held := 0
			for range 300 {
				form := s.Next()
				check.Complete(c, form)
				got := numbers(c, c.Run(form))
				one, other := b.sides(got, func(key string) float64 {
					x, known := worth(c, form, key, c.Input(key).Unit)
					if !known {
						return 0 // left blank
					}
					return x
				})
				if len(got) == 0 || one == 0 || math.IsNaN(one) || math.IsNaN(other) {
					continue // not what this form asks
				}
				held++
				if !(math.Abs(one-other) <= 1e-9*max(math.Abs(one), math.Abs(other))+b.slack) {
					t.Fatalf("%v and %v\non %s", one, other, form)
				}
			}
			if held < 10 {
				t.Errorf("only %d of 300 forms have both sides", held)
			}
		})
	}
}

// column adds up a column of a list.
func column(got map[string]float64, list, key string) (sum float64) {
	for n := 1; ; n++ {
		x, there := got[list+"."+strconv.Itoa(n)+"."+key]
		if !there {
			return sum
		}
		sum += x
	}
}

// solids are those of the mix ready to spray.
func solids(got map[string]float64, given func(string) float64) float64 {
	if x, there := got["sprayed_solids"]; there {
		return x
	}
	return given("volume_solids")
}

// The job card: of each product, what its cups hold is what is to be mixed; what is mixed and not lost in the cups is sprayed
// or left over, on average over all jobs that the spread allows.
func TestTheJobMixesWhatItSpraysLeavesAndLoses(t *testing.T) {
	onceAlone(t)
	c := menu.Find("job")
	s := forms.New(c, *seed, forms.Known(c, rows(t, c)))
	answered := 0
	for range 150 {
		form := s.Next()
		check.Complete(c, form)
		r := c.Run(form)
		got := numbers(c, r)
		if got["to_mix_all"] == 0 {
			continue
		}
		answered++
		balanceJob(t, c, form, r, got)
	}
	assert.Greater(t, answered, 20)
}

func balanceJob(t *testing.T, c *calc.Calculator, form calc.Form, r calc.Report, got map[string]float64) {
	near := func(one, other float64, says string) {
		t.Helper()
		if !(math.Abs(one-other) <= 1e-9*max(math.Abs(one), math.Abs(other))+1e-9) {
			t.Fatalf("%s: %v and %v\non %s", says, one, other, form)
		}
	}
	near(column(got, "amounts", "to_mix"), 1000*got["to_mix_all"], "all products are the whole")
	near(column(got, "amounts", "left_over"), 1000*got["left_over_all"], "all that is left over is the whole")
	near(poured(r), 1000*got["to_mix_all"], "the parts poured are what is mixed")
	for n := 1; got["amounts."+strconv.Itoa(n)+".to_mix"] > 0; n++ {
		mixed, left := got["amounts."+strconv.Itoa(n)+".to_mix"], got["amounts."+strconv.Itoa(n)+".left_over"]
		if left < 0 || left > mixed {
			t.Fatalf("%v left over of %v\non %s", left, mixed, form)
		}
	}
	near(column(got, "vocs", "emitted")+lostToCleaner(c, form), got["emitted_all"], "all solvent is the whole")
}

// several is how cups that are alike are told together.
var several = regexp.MustCompile(`, cups (\d+) to (\d+) of \d+, each$`)

// poured adds up all parts of all cups, in mL.
func poured(r calc.Report) (sum float64) {
	for _, l := range r.Lists {
		if l.Key != "pour" {
			continue
		}
		for _, row := range l.Rows {
			cups := 1.
			if m := several.FindStringSubmatch(row[0].Text); m != nil {
				from, _ := strconv.Atoi(m[1])
				to, _ := strconv.Atoi(m[2])
				cups = float64(to - from + 1)
			}
			u, _ := unit.ByID(row[2].UnitID)
			sum += cups * unit.Convert(row[2].Value, u, unit.Millilitre)
		}
	}
	return sum
}

func lostToCleaner(c *calc.Calculator, form calc.Form) float64 {
	x, known := worth(c, form, "cleaner_lost", c.Input("cleaner_lost").Unit)
	if !known {
		return 0
	}
	return x
}
