package climate

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// CompressedAir tells how much water compressed air carries and where it settles.
func CompressedAir() *calc.Calculator {
	return &calc.Calculator{
		ID:       "compressed-air-water",
		Title:    "Water in compressed air",
		Question: "How much water comes out of my compressed air, and how dry is it at the gun?",
		Range: "Air of −10 to 60 °C drawn in, 5 to 300 psi (0.3 to 21 bar), coldest point −70 to 60 °C, where all the water that settles is drained. " +
			"Ideal gas: a real line holds a few percent more water. Below 0 °C dew points are frost points. " +
			"Classes 7 to 9 go by liquid water, which no dew point tells.",
		Inputs:   []calc.Input{drawnIn(), field.Humidity, field.Altitude, field.LinePressure, field.ColdestPoint, field.ClassWanted},
		Outputs:  []calc.Output{pressureDewPoint, dewPointAtGun, airClass, condensate, waterLeft, absoluteHumidity, humidityAtGun, classDewPoint},
		Work:     workCompressedAir,
		Cautions: []calc.Phrase{caution.CompressedAir},
	}
}

var (
	pressureDewPoint = calc.Output{Key: "pressure_dew_point", Label: "Pressure dew point", Unit: unit.DegC, Decimals: 1, Main: true}
	dewPointAtGun    = calc.Output{Key: "expanded_dew_point", Label: "Dew point once let out of the gun", Unit: unit.DegC, Decimals: 1}
	airClass         = calc.Output{Key: "humidity_class", Label: "Humidity class by ISO 8573-1", Words: true}
	classDewPoint    = calc.Output{Key: "class_dew_point", Label: "Highest pressure dew point of the class wanted", Unit: unit.DegC, Optional: true}
	condensate       = calc.Output{Key: "condensate", Label: "Water that settles, from each m³ drawn in", Unit: unit.GramPerCubicMetre, Decimals: 1, Main: true}
	waterLeft        = calc.Output{Key: "water_left", Label: "Water left, in each m³ of compressed air", Unit: unit.GramPerCubicMetre, Decimals: 2}
	humidityAtGun    = calc.Output{Key: "expanded_humidity", Label: "Humidity once let out, at air temperature", Unit: unit.Percent, Decimals: 1}

	dalton     = source.ASHRAEAir.At("partial pressures of an ideal gas").By(source.SecondHand)
	humidClass = source.ISO8573.At("2010, table 2").By(source.SecondHand)
)

func drawnIn() calc.Input {
	in := field.Air
	in.Help = "Where the compressor draws in; the hose is taken to lie in it too"
	return in
}

func workCompressedAir(w *calc.Working) {
	t, cold, P := w.Given(field.Air), w.Given(field.ColdestPoint), w.Given(field.LinePressure)
	pa, pws := Pressure(w, w.Given(field.Altitude)), Saturation(w, t)
	pw := vapour(w, pws, w.Given(field.Humidity))
	W := MoistureOf(w, pw, pa)
	p := w.Step("Pressure in the line, absolute", "p = 6894.757293168361*P + p_a", unit.Pascal, source.Definition, 6894.757293168361*P.V+pa.V, P, pa)
	limit := Saturation(w, cold)
	left := w.Step("Vapour pressure left in the line", "p_l = min(p_w*p/p_a, p_ws)", unit.Pascal, dalton, min(pw.V*p.V/pa.V, limit.V), pw, p, pa, limit)
	pdp := dewPointAtVapour(w, left)
	let := w.Step("Vapour pressure once let out", "p_e = p_l*p_a/p", unit.Pascal, dalton, left.V*pa.V/p.V, left, pa, p)
	dew := dewPointAtVapour(w, let)
	taken := w.Step("Water in the air drawn in", "AH = 1000*W*p/(287.042*(t + 273.15)*(1 + 1.607858*W))", unit.GramPerCubicMetre, volume,
		AbsoluteHumidity(t.V, W.V, pa.V), W, pa, t)
	remains := MoistureOf(w, left, p)
	drains := w.Step("Water that settles", "c = AH*max(0, 1 - W_l/W)", unit.GramPerCubicMetre, source.Definition,
		taken.V*max(0, 1-remains.V/W.V), taken, remains, W)

	w.Result(pressureDewPoint, pdp)
	w.Result(dewPointAtGun, dew)
	w.Result(absoluteHumidity, taken)
	w.Result(condensate, drains)
	w.Result(waterLeft, w.Step("Water left", "AH_l = 1000*0.621945*p_l/(287.042*(t_d + 273.15))", unit.GramPerCubicMetre, dalton,
		621.945*left.V/(287.042*(pdp.V+kelvin)), left, pdp))
	w.Result(humidityAtGun, w.Step("Humidity once let out", "RH_e = 100*p_e/p_ws", unit.Percent, humidity, 100*let.V/pws.V, let, pws))
	class, most, ok := HumidityClass(pdp.V)
	said := calc.Say("none of 1 to 6")
	if ok {
		said = calc.Say("{class}", calc.Words(class, "class"), w.Constant("Highest pressure dew point of that class", unit.DegC, humidClass, most).As("most"))
	}
	w.Tell(airClass, said)
	wantedClass(w, pdp)
	judgeLine(w, pdp, t, drains)
	frost(w, t, dew)
}

// classes are the highest pressure dew points in °C of classes 1 to 6.
var classes = [...]float64{-70, -40, -20, 3, 7, 10}

// wantedClass tells the dew point of the class wanted and whether the line meets it.
func wantedClass(w *calc.Working, pdp calc.Num) {
	class := w.Given(field.ClassWanted)
	if !class.Given() {
		return
	}
	most := w.Constant(classDewPoint.Label, unit.DegC, humidClass, classes[int(class.V)-1])
	w.Result(classDewPoint, most)
	says := []calc.Arg{class.To(0, "class"), most.As("most"), pdp.To(1, "pdp")}
	if pdp.V > most.V+1e-6 {
		w.Judge(calc.Stop, calc.Say("Class {class} wants a pressure dew point of {most} or lower, and the line has {pdp}", says...), calc.Say("Fit a dryer that gets there at your flow, after a cooler that is drained"))
		return
	}
	w.Judge(calc.Go, calc.Say("The line meets class {class}: it wants {most} or lower, and has {pdp}", says...), calc.Say("Have it measured where the gun couples in"))
}

// HumidityClass is the class of ISO 8573-1 for a pressure dew point in °C, by the dew point alone, and the highest
// dew point of that class. The driest class that it meets has the lowest number; blank where it meets none.
func HumidityClass(pdp float64) (class string, most float64, ok bool) {
	for i, most := range classes {
		if pdp <= most+1e-6 {
			return string(rune('1' + i)), most, true
		}
	}
	return "", 0, false
}

func judgeLine(w *calc.Working, pdp, t, drains calc.Num) {
	dew := pdp.To(1, "dew")
	if pdp.V > t.V {
		w.Judge(calc.Stop, calc.Say("The line holds air that is damp up to {dew}, warmer than the shop: water settles in the hose and comes out of the gun", dew),
			calc.Say("Cool the air after the compressor and drain it there, or fit a dryer"))
		return
	}
	w.Judge(calc.Go, calc.Say("No water settles where the line stays warmer than {dew}", dew),
		calc.Say("Drain what settles before that, {c} of what is drawn in", drains.To(1, "c")))
}
