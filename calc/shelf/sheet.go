package shelf

import (
	"slices"
	"strconv"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/cure"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// DataSheet keeps what a product's data sheet says.
func DataSheet() *calc.Calculator {
	return &calc.Calculator{
		ID:       "data-sheet",
		Title:    "Data sheet",
		Question: "What does this product’s data sheet give me, and what does it leave out?",
		Range: "Any product that is sprayed, one edition of its sheet. Only what the sheet says belongs here; what it does not say stays blank. " +
			"Up to four parts are turned from volume to weight.",
		Inputs: sheetInputs(),
		Outputs: []calc.Output{
			complete, lacking, bothWays, densityWorked, sprayedSolids, spreading, wetCoat, coatCost, limitCheck,
		},
		Work:       dataSheet,
		Cautions:   []calc.Phrase{"The printed sheet comes first, in its latest edition: hold this against it before you mix.", caution.HardenerRatio, caution.Isocyanate},
		Arithmetic: true,
	}
}

// sheetInputs stand in the order in which a printed data sheet gives its facts.
func sheetInputs() []calc.Input {
	return slices.Concat(
		[]calc.Input{field.Product.Under("What it is")},
		maybe("", field.SheetDated, field.Role, field.Pack, field.Carrier, field.Solvent.If("carrier", "solvent")),
		maybe("Mixing", field.Ratio, field.RatioBy, field.RatioTolerance, field.DensityA, field.DensityB, field.DensityC, field.DensityD, field.MixDensity,
			field.FlowCup, field.TargetSeconds),
		maybe("Film", field.VolumeSolids, field.SolidsFor, field.SolidsWeight, field.DryFilm, field.Coats),
		maybe("Pot life", field.PotLife.If("pack", "two"), field.PotLifeAt.If("pack", "two"), field.PotLifeSecond.If("pack", "two"), field.PotLifeSecondAt.If("pack", "two")),
		maybe("Flash-off and drying", field.Flash, field.FlashAt, field.FlashHumidity, field.FlashAirSpeed,
			field.RecoatTime, field.RecoatAt, field.RecoatSecond, field.RecoatSecondAt, field.LatestRecoat,
			field.Drying, field.DryTime.If("drying", "air", "bake"), field.DryAt.If("drying", "air", "bake"),
			field.DryTimeSecond.If("drying", "bake"), field.DryAtSecond.If("drying", "bake"),
			field.MetalLowest.If("drying", "bake"), field.MetalHighest.If("drying", "bake"), field.HeatUp.If("drying", "bake")),
		maybe("Limits", field.AirLowest, field.AirHighest, field.HumidityHighest, field.MarginNeeded),
		maybe("VOC and price", field.VOC, field.WaterShare.If("carrier", "water"), field.Price),
		maybe("From the safety data sheet", field.Isocyanate, field.LiquidDensity, field.MolarMass, field.LEL, field.ExposureLimit),
	)
}

// sheetWorks are what a data sheet is asked for, the whole job first.
var sheetWorks = []work{
	{"Job card", "role pack carrier solvent ratio ratio_by volume_solids dry_film coats pot_life pot_life_at flash flash_at drying dry_time dry_at voc water_share"},
	{"Mixing on a scale", "ratio ratio_by"},
	{"Film and coverage", "volume_solids dry_film coats"},
	{"Pot life today", "pack pot_life pot_life_at"},
	{"Flash-off today", "carrier solvent flash flash_at flash_humidity"},
	{"Recoat window", "recoat_time recoat_at latest_recoat"},
	{"Drying and bake", "drying dry_time dry_at"},
	{"Thinning to spray", "flow_cup target_seconds"},
	{"VOC limits", "role voc water_share"},
}

// worksFor adds to each work what this sheet's own facts make it ask for.
func worksFor(w *calc.Working, parts int) []work {
	works := slices.Clone(sheetWorks)
	for _, key := range []string{"density_a", "density_b", "density_c", "density_d"}[:min(parts, most)] {
		works[0].keys += " " + key
		works[1].keys += " " + key
	}
	if w.Picked(field.Carrier) == "water" {
		works[0].keys += " flash_humidity"
	}
	if w.Given(field.LatestRecoat).Given() {
		works[0].keys += " recoat_at"
	}
	if w.Picked(field.SolidsFor) == "unthinned" {
		works[2].keys += " ratio ratio_by"
	}
	return works
}

func dataSheet(w *calc.Working) {
	if !seen(w.Entry, field.Product, field.SheetDated) || !sheetIsSound(w) {
		return
	}
	s := sheet{Working: w}
	s.readMix()
	lacks := blanks(w, sheetInputs(), worksFor(w, len(s.parts)))
	s.bothWays()
	s.film()
	s.limits()
	s.judge(lacks)
}

// sheetIsSound rejects what cannot be true together, every fault at once.
func sheetIsSound(w *calc.Working) bool {
	ok := true
	reject := func(in calc.Input, f *calc.Fault, args ...calc.Arg) {
		if f != nil {
			w.Reject(in, calc.Impossible, f.Message, f.Fix, args...)
			ok = false
		}
	}
	second := func(in calc.Input, first, firstAt, other, otherAt calc.Input) {
		t, at, t2, at2 := w.Given(first), w.Given(firstAt), w.Given(other), w.Given(otherAt)
		if t.Given() && at.Given() && t2.Given() && at2.Given() {
			reject(in, cure.CheckSecond(t, at, t2, at2))
		}
	}
	second(field.PotLifeSecond, field.PotLife, field.PotLifeAt, field.PotLifeSecond, field.PotLifeSecondAt)
	second(field.RecoatSecond, field.RecoatTime, field.RecoatAt, field.RecoatSecond, field.RecoatSecondAt)
	second(field.DryTimeSecond, field.DryTime, field.DryAt, field.DryTimeSecond, field.DryAtSecond)
	if low, high := w.Given(field.AirLowest), w.Given(field.AirHighest); low.Given() && high.Given() && low.V >= high.V {
		reject(field.AirHighest, &calc.Fault{Message: "is not above the coldest allowed", Fix: "Check both on the data sheet"})
	}
	latest, flash, earliest := w.Given(field.LatestRecoat), w.Given(field.Flash), w.Given(field.RecoatTime)
	switch {
	case latest.Given() && flash.Given() && latest.V*60 <= flash.V:
		reject(field.LatestRecoat, &calc.Fault{Message: "comes before the flash-off of {flash} is over", Fix: "Check both on the data sheet"}, flash.As("flash"))
	case latest.Given() && earliest.Given() && latest.V <= earliest.V:
		reject(field.LatestRecoat, &calc.Fault{Message: "is not after the earliest", Fix: "Check both times and their units"})
	}
	return ok
}

// fewBlanks is how many labels still make a sentence.
const fewBlanks = 4

func (s *sheet) judge(lacks []calc.Phrase) {
	check := calc.Say("Look on the sheet again, or ask your supplier; what is not known stays blank")
	switch {
	case len(lacks) == 0:
		s.Judge(calc.Go, calc.Say("It has all that a job card asks of a data sheet"), calc.Say("Hold it against the printed sheet once, then fill forms from it"))
	case len(lacks) <= fewBlanks:
		s.Judge(calc.Wait, calc.Say("For a job card it still lacks: {labels}", listed(lacks).As("labels")), check)
	default:
		s.Judge(calc.Wait, calc.Say("For a job card it still lacks {n} facts", calc.Words(strconv.Itoa(len(lacks)), "n")), check)
	}
}

var (
	densityWorked = calc.Output{Key: "density_worked", Label: "Density of the mix, worked out", Unit: unit.KilogramPerLitre, Decimals: 3, Optional: true}
	sprayedSolids = calc.Output{Key: "sprayed_solids", Label: "Volume solids, ready to spray", Unit: unit.Percent, Decimals: 1, Optional: true}
	spreading     = calc.Output{Key: "spreading_rate", Label: "Theoretical spreading rate", Unit: unit.SquareMetrePerLitre, Decimals: 1, Main: true, Optional: true}
	wetCoat       = calc.Output{Key: "wet_film", Label: "Wet film of one coat", Unit: unit.Micrometre, Main: true, Optional: true}
	coatCost      = calc.Output{Key: "coat_cost", Label: "Paint for a square metre, nothing lost", Unit: unit.PricePerSquareMetre, Decimals: 2, Optional: true}

	bothWays = calc.Output{Key: "component", Label: "The ratio both ways", Columns: []calc.Output{
		{Key: "part", Label: "Part", Words: true},
		{Key: "by_volume", Label: "By volume", Unit: unit.PartsByVolume, Decimals: 2},
		{Key: "by_weight", Label: "By weight", Unit: unit.PartsByMass, Decimals: 2},
	}}
	limitCheck = calc.Output{Key: "limit_check", Label: "Against the VOC limits", Columns: []calc.Output{
		{Key: "table", Label: "Table", Words: true},
		{Key: "limit", Label: "Limit", Unit: unit.GramPerLitre},
		{Key: "standing", Label: "This product", Words: true},
	}}
)
