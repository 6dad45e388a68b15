package shelf

import (
	"slices"
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Shop keeps the shop's own ways: its cups, scale and comb, what it loses and pays, and the units it reads.
func Shop() *calc.Calculator {
	return &calc.Calculator{
		ID:         "shop",
		Title:      "Shop",
		Question:   "Which cups, scale, losses, prices and units does my shop work with?",
		Range:      "One shop, or one bench of it. Units chosen here are those that answers come in while the shop is marked as in use; a number that was typed keeps its own.",
		Inputs:     shopInputs(),
		Outputs:    []calc.Output{complete, lacking, leastWeighed, cupLoss, cupLosses, linkUnits},
		Work:       keptShop,
		Arithmetic: true,
	}
}

func shopInputs() []calc.Input {
	ins := slices.Concat(
		[]calc.Input{field.Shop.Under("What it is")},
		maybe("", field.Painter, field.Wage, field.Limits, field.MassLimit, field.CleanerLost),
		maybe("Cups, scale and comb", field.CupSize, field.Losses, field.ScaleStep, field.CombStep),
		[]calc.Input{cups()},
		maybe("How sure, and how long", field.Confidence, field.FilmSpread, field.MixTime, field.RinseTime),
		maybe("Compressor", field.FreeAir, field.Receiver, field.CutOut, field.LowestReceiver),
	)
	for i, c := range field.UnitChoices() {
		if i == 0 {
			c.Input.Heading = "Units of the answers"
		}
		ins = append(ins, c.Input)
	}
	return ins
}

func cups() calc.Input {
	in := cupTable
	in.Rows = []calc.Input{field.CupSize}
	return in
}

var cupTable = calc.Input{Key: "cup", Label: "Other cups", Help: "Other sizes that you mix in", RowName: "cup", Most: 12, Optional: true}

var shopWorks = []work{
	{"Job card", "cup_size losses scale_step comb_step confidence film_spread mix_time rinse_time limits"},
	{"Mixing on a scale", "scale_step"},
	{"Film and coverage", "comb_step confidence film_spread losses"},
	{"VOC and the log", "painter limits mass_limit"},
	{"Cost", "wage"},
	{"Compressor", "free_air receiver cut_out lowest_receiver"},
}

var (
	leastWeighed = calc.Output{Key: "least_weighed", Label: "Lightest part weighed to 1 %", Unit: unit.Gram, Main: true, Optional: true}
	cupLoss      = calc.Output{Key: "cup_loss", Label: "Of each cup, lost in cup, filter and gun", Unit: unit.Percent, Decimals: 1, Main: true, Optional: true}
	cupLosses    = calc.Output{Key: "cup_losses", Label: "The same for the other cups", Columns: []calc.Output{
		{Key: "cup_holds", Label: "Cup", Unit: unit.Millilitre},
		{Key: "cup_keeps", Label: "Lost of it", Unit: unit.Percent, Decimals: 1},
	}}
	linkUnits = calc.Output{Key: "link_units", Label: "What a link says for these units", Words: true, Optional: true}
)

func keptShop(w *calc.Working) {
	if !seen(w.Entry, field.Shop, field.Painter) {
		return
	}
	blanks(w, shopInputs(), shopWorks)
	if d := w.Given(field.ScaleStep); d.Given() {
		w.Result(leastWeighed, w.Step("Lightest part of which one step is 1 %", "m = 100 * d", unit.Gram, source.Definition, 100*d.V, d))
	}
	if lost := w.Given(field.Losses); lost.Given() {
		if size := w.Given(field.CupSize); size.Given() {
			w.Result(cupLoss, share(w, lost, size))
		}
		for _, row := range w.Rows(cupTable) {
			size := row.Given(field.CupSize)
			w.List(cupLosses, calc.Of(size), calc.Of(share(w, lost, size)))
			row.Describe(calc.Say("{size}", size.As("size")))
		}
	}
	if text := unitKeys(w); text != "" {
		w.Tell(linkUnits, calc.Say("{text}", calc.Words(text, "text")))
	}
}

// share is how much of a cup of size mL is lost, in percent and no more than all of it, where lost mL stay behind.
func share(w *calc.Working, lost, size calc.Num) calc.Num {
	return w.Step("Lost of this cup", "s = min(100, 100 * H / V)", unit.Percent, source.Definition, min(100, 100*lost.V/size.V), lost, size)
}

// unitKeys writes the units chosen as the keys of a form that ask for them.
func unitKeys(w *calc.Working) string {
	var pairs []string
	for _, c := range field.UnitChoices() {
		u := c.Unit(w.Picked(c.Input))
		if u == 0 {
			continue
		}
		pairs = append(pairs, "units."+string(u.Quantity())+"="+u.ID())
		switch u { // a difference goes with the temperature
		case unit.DegC:
			pairs = append(pairs, "units."+string(unit.TemperatureDifference)+"="+unit.DiffC.ID())
		case unit.DegF:
			pairs = append(pairs, "units."+string(unit.TemperatureDifference)+"="+unit.DiffF.ID())
		}
	}
	return strings.Join(pairs, "&")
}
