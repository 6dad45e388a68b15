package voc_test

import (
	"testing"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
	"spraywright/calc/voc"

	"github.com/stretchr/testify/assert"
)

func gL(x float64) calc.Num  { return calc.N(x, unit.GramPerLitre) }
func pct(x float64) calc.Num { return calc.N(x, unit.Percent) }
func mL(x float64) calc.Num  { return calc.N(x, unit.Millilitre) }

// Every kind of coat the form offers has a limit in both tables, and "none" has none.
func TestEveryRoleHasALimit(t *testing.T) {
	for _, role := range field.Role.Choices {
		for _, table := range field.Limits.Choices {
			l, ok := voc.LimitFor(table.Key, role.Key, 2)
			if assert.Equal(t, table.Key != "none", ok, "%s %s", table.Key, role.Key) && ok {
				assert.Equal(t, table.Key, l.Table)
				assert.NotEmpty(t, l.Category)
				assert.NotEqual(t, source.Seen, l.Source.Basis, "nobody has read the tables themselves")
			}
		}
	}
	for _, wrong := range [][2]string{{"eu", ""}, {"us", "paint"}, {"", "base"}, {"xx", "base"}} {
		_, ok := voc.LimitFor(wrong[0], wrong[1], 2)
		assert.False(t, ok, wrong)
	}
}

// 40 CFR 59 subpart B table 1, from memory; its lb/gal column is for information and printed to one decimal.
func TestUSLimits(t *testing.T) {
	for _, c := range []struct {
		role       string
		stages     int
		gL, poundG float64
	}{
		{"wash-primer", 1, 780, 6.5}, {"surfacer", 1, 580, 4.8}, {"sealer", 1, 550, 4.6}, {"topcoat", 1, 600, 5.0},
		{"base", 2, 600, 5.0}, {"clear", 2, 600, 5.0}, {"base", 3, 630, 5.2}, {"clear", 4, 630, 5.2}, {"special", 1, 840, 7.0},
	} {
		l, _ := voc.LimitFor("us", c.role, c.stages)
		assert.Equal(t, c.gL, l.Value, c.role)
		// 630 g/L is 5.26 lb/gal: the printed 5.2 is cut, not rounded.
		assert.InDelta(t, c.poundG, unit.Convert(l.Value, unit.GramPerLitre, unit.PoundPerGalUS), 0.06, c.role)
	}
}

// The factor is exact from the pound and the gallon: 453.59237 g, 3.785411784 L. Metal Finishing Guidebook 2013
// prints 119.8.
func TestPoundsPerGallon(t *testing.T) {
	assert.InDelta(t, 119.826427, unit.Convert(1, unit.PoundPerGalUS, unit.GramPerLitre), 1e-6)
	assert.InDelta(t, 119.8, unit.Convert(1, unit.PoundPerGalUS, unit.GramPerLitre), 0.05)
}

// A sample and its description by weight are one mix, and must come to the same contents.
func TestBothWaysAgree(t *testing.T) {
	// 1 L of 1050 g: 350 g solids, 400 g water of 0.998 kg/L, 100 g exempt of 0.79 kg/L, so 200 g of VOC.
	g, rho := func(x float64) calc.Num { return calc.N(x, unit.Gram) }, func(x float64) calc.Num { return calc.N(x, unit.KilogramPerLitre) }
	regulatory, actual := voc.Sample{
		Volatiles: g(700), Water: g(400), Exempt: g(100), Volume: mL(1000), WaterVolume: mL(400 / 0.998), ExemptVolume: mL(100 / 0.79),
	}.Contents(nil)
	byWeight, actualToo := voc.ByWeight{
		Solids: pct(350 / 10.5), Water: pct(400 / 10.5), Exempt: pct(100 / 10.5), Density: rho(1.05), WaterDensity: rho(0.998), ExemptDensity: rho(0.79),
	}.Contents(nil)
	assert.InDelta(t, 200, actual.V, 1e-9)
	assert.InDelta(t, 200, actualToo.V, 1e-9)
	assert.InDelta(t, regulatory.V, byWeight.V, 1e-9)
	share := pct(100 * (400/0.998 + 100/0.79) / 1000)
	assert.InDelta(t, actual.V, voc.Actual(nil, regulatory, share).V, 1e-9)
}

// The most thinner makes a mix that is right at the limit.
func TestThinnerReachesTheLimit(t *testing.T) {
	most := voc.Thinner(nil, mL(500), gL(380), gL(870), gL(420))
	none := calc.Num{}
	mixed, actual, _ := voc.Blend(nil, []calc.Num{mL(500), most}, []calc.Num{gL(380), gL(870)}, []calc.Num{none, none})
	assert.InDelta(t, 420, mixed.V, 1e-9)
	assert.InDelta(t, 420, actual.V, 1e-9)
}

// San Luis Obispo County APCD, Rule 423 (June 1993), definition 3: a two-stage topcoat is (bc + 2 cc) / 3.
func TestTwoStages(t *testing.T) {
	assert.InDelta(t, (720+2*420)/3.0, voc.MultiStage(nil, gL(720), nil, gL(420)).V, 1e-9)
}

func TestVerdicts(t *testing.T) {
	form := calc.ParseForm("role=topcoat&limits=eu&voc=420&water_share=0&sprayed=1000")
	level := func() calc.Level { return voc.AsSprayed().Run(form).Verdict[0].Level }
	assert.Equal(t, calc.Go, level(), "right at the limit is inside it")
	form["voc"] = "421"
	assert.Equal(t, calc.Stop, level())
	form["limits"], form["role"] = "us", "base"
	assert.Equal(t, calc.Wait, level(), "one stage alone cannot be judged")
	form["limits"] = "none"
	assert.Empty(t, voc.AsSprayed().Run(form).Verdict)

	form = calc.ParseForm("unthinned=500&voc=430&voc_thinner=870&voc_limit=420")
	r := voc.MostThinner().Run(form)
	assert.Equal(t, calc.Stop, r.Verdict[0].Level)
	assert.Empty(t, r.Figures)
	form["voc"], form["voc_thinner"] = "400", "300"
	r = voc.MostThinner().Run(form)
	assert.Equal(t, calc.Go, r.Verdict[0].Level)
	assert.Empty(t, r.Figures, "there is no most")
}

func TestRefusals(t *testing.T) {
	for text, c := range map[string]struct {
		of    *calc.Calculator
		field string
	}{
		"sample_volume=1&sample_volume.unit=L&volatile_mass=500&water_mass=100&water_volume=1000&exempt_mass=0&exempt_volume=0": {voc.Content(), "sample_volume"},
		"sample_volume=1000&volatile_mass=500&water_mass=600&water_volume=600&exempt_mass=0&exempt_volume=0":                    {voc.Content(), "volatile_mass"},
		"solids_weight=60&water_weight=50&mix_density=1":                                                                        {voc.LessWater(), "solids_weight"},
		"solids_weight=0&water_weight=95&mix_density=1.3":                                                                       {voc.LessWater(), "mix_density"},
		"solids_weight=40&water_weight=10&mix_density=1&exempt_weight=5":                                                        {voc.LessWater(), "exempt_density"},
		"voc=900": {voc.OfSolids(), "voc"},
		"component.1.part_volume=0&component.1.part_voc=5": {voc.Blended(), "component"},
	} {
		r := c.of.Run(calc.ParseForm(text))
		if assert.Len(t, r.Problems, 1, text) {
			assert.Equal(t, c.field, r.Problems[0].Field, text)
		}
	}
}
