package job

import (
	"spraywright/calc"
	"spraywright/calc/field"
)

// The places of the form.
const (
	placeParts = "Parts"
	placeCoats = "Coats"
	placeAir   = "Air"
	placeGun   = "Gun"
)

// The tables, without their columns: what Work needs to find their rows.
var (
	parts = calc.Input{Key: "part", Place: placeParts, Label: "Parts", Help: "One row for each kind of part", RowName: "part", Most: 300}
	coats = calc.Input{Key: "coat", Place: placeCoats, Label: "Coats", Help: "One row for each product, in the order you spray them", RowName: "product", Most: 12}
)

func partColumns() []calc.Input {
	return []calc.Input{
		field.PartName, field.Shape, field.PartLength, field.PartWidth, field.PartHeight, field.PartDiameter, field.PartSmallEnd,
		field.PartArea, field.Sides, field.Faces, field.Skin, field.Count, field.Colour,
	}
}

// coatColumns stand in the order in which a data sheet gives its facts.
func coatColumns() []calc.Input {
	return []calc.Input{
		field.Product, field.Role, field.Pack, field.Carrier, solvent, field.OnColour,
		field.Ratio.Under("Mixing"), field.RatioBy, field.DensityA, densityB, densityC, densityD,
		field.VolumeSolids.Under("Film"), field.SolidsFor, field.DryFilm, field.Coats,
		potLife.Under("Pot life"), potLifeAt, potLifeSecond, potLifeSecondAt,
		field.Flash.Under("Flash-off and drying"), field.FlashAt, flashHumidity, field.FlashAirSpeed, field.LatestRecoat, recoatAt,
		field.Drying, dryTime, dryAt, heatUp,
		field.AirLowest.Under("Limits, VOC and price"), field.AirHighest, field.HumidityHighest, field.VOC, waterShare, field.Price,
	}
}

// Fields asked only where they apply.
var (
	solvent         = field.Solvent.If("carrier", "solvent")
	densityB        = field.DensityB.Maybe()
	densityC        = field.DensityC.Maybe()
	densityD        = field.DensityD.Maybe()
	potLife         = field.PotLife.If("pack", "two")
	potLifeAt       = field.PotLifeAt.If("pack", "two")
	potLifeSecond   = field.PotLifeSecond.If("pack", "two")
	potLifeSecondAt = field.PotLifeSecondAt.If("pack", "two")
	recoatAt        = field.RecoatAt.Maybe()
	flashHumidity   = field.FlashHumidity.If("carrier", "water") // it does nothing to solvent
	dryTime         = field.DryTime.If("drying", "air", "bake")
	dryAt           = field.DryAt.If("drying", "air", "bake")
	heatUp          = field.HeatUp.If("drying", "bake")
	waterShare      = field.WaterShare.If("carrier", "water")

	densities = []calc.Input{field.DensityA, densityB, densityC, densityD}
)

// inputs is a function, like all that puts inputs together, so that only the core that asks the job holds it.
func inputs() []calc.Input {
	withParts, withCoats := parts, coats
	withParts.Rows, withCoats.Rows = partColumns(), coatColumns()
	return []calc.Input{
		withParts, withCoats,
		field.Air.In(placeAir), field.Humidity.In(placeAir), field.Panel.In(placeAir), field.AirSpeed.In(placeAir),
		field.Altitude.In(placeAir), field.MarginNeeded.In(placeAir),
		field.Gun.In(placeGun).Under("Gun"), field.Pressure.In(placeGun), field.PressureMost.In(placeGun), field.Delivery.In(placeGun), field.FanWidth.In(placeGun),
		field.GunDistance.In(placeGun), field.GunSpeed.In(placeGun), field.Overlap.In(placeGun), field.TransferEfficiency.In(placeGun), field.TriggerShare.In(placeGun),
		field.CupSize.In(placeGun).Under("Cup, scale and comb"), field.ScaleStep.In(placeGun), field.Losses.In(placeGun), field.CombStep.In(placeGun),
		field.Confidence.In(placeGun).Under("How sure"), field.FilmSpread.In(placeGun), field.TransferSpread.In(placeGun),
		field.Clock.In(placeGun).Under("Time and rules"), field.MixTime.In(placeGun), field.RinseTime.In(placeGun), field.Limits.In(placeGun), field.CleanerLost.In(placeGun),
	}
}
