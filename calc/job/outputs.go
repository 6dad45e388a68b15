package job

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// The places of the card.
const (
	cardMix  = "What to mix"
	cardFilm = "Film"
	cardGun  = "Gun"
	cardTime = "Time"
	cardVOC  = "VOC and cost"
	cardAir  = "Air and parts"
)

var (
	product = calc.Output{Key: "product", Label: "Product", Words: true}

	toMixAll = calc.Output{Key: "to_mix_all", Place: cardMix, Label: "Mix in all", Unit: unit.Litre, Decimals: 2, Main: true, Optional: true}
	leftOver = calc.Output{Key: "left_over_all", Place: cardMix, Label: "Expected left-over", Unit: unit.Litre, Decimals: 2, Optional: true}

	demand   = calc.Output{Key: "demand", Label: "Film needs", Unit: unit.Millilitre}
	toMix    = calc.Output{Key: "to_mix", Label: "Mix", Unit: unit.Millilitre}
	leftOne  = calc.Output{Key: "left_over", Label: "Left over", Unit: unit.Millilitre}
	cupCount = calc.Output{Key: "cups", Label: "Cups", Unit: unit.One}
	areaOf   = calc.Output{Key: "area", Label: "Area", Unit: unit.SquareMetre, Decimals: 2}
	amounts  = calc.Output{
		Key: "amounts", Place: cardMix, Label: "How much of each", Columns: []calc.Output{product, areaOf, demand, toMix, leftOne, cupCount}, Optional: true,
	}

	cupName   = calc.Output{Key: "cup", Label: "Cup", Words: true}
	cupPart   = calc.Output{Key: "part", Label: "Pour", Words: true}
	cupVolume = calc.Output{Key: "volume", Label: "Volume", Unit: unit.Millilitre}
	cupMass   = calc.Output{Key: "mass", Label: "Weight", Unit: unit.Gram, Decimals: 1}
	cupScale  = calc.Output{Key: "reading", Label: "Scale reads", Unit: unit.Gram, Decimals: 1}
	cups      = calc.Output{
		Key: "pour", Place: cardMix, Label: "Cup by cup", Look: "pour", Columns: []calc.Output{cupName, cupPart, cupVolume, cupMass, cupScale}, Optional: true,
	}

	wetCoat     = calc.Output{Key: "wet_film", Label: "Wet film a coat", Unit: unit.Micrometre}
	wetTooth    = calc.Output{Key: "wet_tooth", Label: "Comb wets", Unit: unit.Micrometre}
	dryTooth    = calc.Output{Key: "dry_tooth", Label: "Comb stays dry at", Unit: unit.Micrometre}
	passes      = calc.Output{Key: "passes", Label: "Passes at your speed", Unit: unit.One, Decimals: 1}
	wholePasses = calc.Output{Key: "whole_passes", Label: "Whole passes", Unit: unit.One}
	speedFor    = calc.Output{Key: "speed_for", Label: "Gun speed for them", Unit: unit.MetrePerSecond, Decimals: 2}
	strokes     = calc.Output{Key: "stroke_gap", Label: "Strokes apart", Unit: unit.Millimetre}
	films       = calc.Output{
		Key: "film", Place: cardFilm, Label: "Film of each coat", Columns: []calc.Output{product, wetCoat, wetTooth, dryTooth, passes, wholePasses, speedFor, strokes}, Optional: true,
	}

	startPressure = calc.Output{Key: "start_pressures", Place: cardGun, Label: "Start pressure", Words: true, Main: true, Optional: true}
	pressureOne   = calc.Output{Key: "pressure", Label: "Start pressure", Unit: unit.PSI, Decimals: 1}
	pressureMost  = calc.Output{Key: "pressure_most", Label: "Never above", Unit: unit.PSI, Decimals: 1}
	pressureWhy   = calc.Output{Key: "why", Label: "Why", Words: true}
	pressures     = calc.Output{
		Key: "pressures", Place: cardGun, Label: "Pressure for each product", Columns: []calc.Output{product, pressureOne, pressureMost, pressureWhy}, Optional: true,
	}

	doneAt    = calc.Output{Key: "done_at", Place: cardTime, Label: "Done", Words: true, Main: true, Optional: true}
	takes     = calc.Output{Key: "takes", Place: cardTime, Label: "From first mix to done", Unit: unit.Minute, Optional: true}
	from      = calc.Output{Key: "from", Label: "From", Words: true}
	until     = calc.Output{Key: "until", Label: "Until", Words: true}
	step      = calc.Output{Key: "step", Label: "What", Words: true}
	note      = calc.Output{Key: "note", Label: "Mind", Words: true}
	timeline  = calc.Output{Key: "timeline", Place: cardTime, Label: "Call sheet", Look: "clock", Columns: []calc.Output{from, until, step, note}, Optional: true}
	flashLow  = calc.Output{Key: "flash_low", Label: "Flash-off, shortest", Unit: unit.Minute}
	flashHigh = calc.Output{Key: "flash_high", Label: "Flash-off, longest", Unit: unit.Minute}
	potLow    = calc.Output{Key: "pot_life_low", Label: "Pot life, shortest", Unit: unit.Minute}
	potHigh   = calc.Output{Key: "pot_life_high", Label: "Pot life, longest", Unit: unit.Minute}
	recoatBy  = calc.Output{Key: "latest_recoat", Label: "Latest recoat", Unit: unit.Hour, Decimals: 1}
	times     = calc.Output{
		Key: "times", Place: cardTime, Label: "In today's air", Columns: []calc.Output{product, potLow, potHigh, flashLow, flashHigh, recoatBy}, Optional: true,
	}

	vocMix    = calc.Output{Key: "voc", Label: "VOC as sprayed", Unit: unit.GramPerLitre}
	vocLimit  = calc.Output{Key: "limit", Label: "Limit", Unit: unit.GramPerLitre}
	vocSays   = calc.Output{Key: "says", Label: "Against the limit", Words: true}
	vocMass   = calc.Output{Key: "emitted", Label: "Solvent into the air", Unit: unit.Gram}
	costOne   = calc.Output{Key: "cost", Label: "Cost", Unit: unit.PlainMoney, Decimals: 2}
	vocs      = calc.Output{Key: "vocs", Place: cardVOC, Label: "Each product", Columns: []calc.Output{product, vocMix, vocLimit, vocSays, vocMass, costOne}, Optional: true}
	vocAll    = calc.Output{Key: "emitted_all", Place: cardVOC, Label: "Solvent into the air in all", Unit: unit.Gram, Optional: true}
	costAll   = calc.Output{Key: "cost_all", Place: cardVOC, Label: "Paint cost", Unit: unit.PlainMoney, Decimals: 2, Optional: true}
	costWaste = calc.Output{Key: "cost_left", Place: cardVOC, Label: "Cost of the left-over", Unit: unit.PlainMoney, Decimals: 2, Optional: true}
	costArea  = calc.Output{Key: "cost_area", Place: cardVOC, Label: "Paint cost of a square metre", Unit: unit.PricePerSquareMetre, Decimals: 2, Optional: true}

	areaAll  = calc.Output{Key: "area_all", Place: cardAir, Label: "Area in all", Unit: unit.SquareMetre, Decimals: 2, Optional: true}
	dewPoint = calc.Output{Key: "dew_point", Place: cardAir, Label: "Dew point", Unit: unit.DegC, Decimals: 1, Optional: true}
	margin   = calc.Output{Key: "margin", Place: cardAir, Label: "Panel above dew point", Unit: unit.DiffC, Decimals: 1, Optional: true}
)

func outputs() []calc.Output {
	return []calc.Output{
		toMixAll, leftOver, amounts, cups, labels, films, startPressure, pressures, doneAt, takes, timeline, times, handOver,
		vocs, vocAll, costAll, costWaste, costArea, areaAll, dewPoint, margin,
	}
}
