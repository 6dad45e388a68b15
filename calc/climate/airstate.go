package climate

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// AirState tells what there is to know about the air from a thermometer and a hygrometer.
func AirState() *calc.Calculator {
	return &calc.Calculator{
		ID:       "air-state",
		Title:    "The air in the booth",
		Question: "How damp is this air, and how fast can it dry paint?",
		Range: "Air from −10 to 60 °C, from 400 m below to 5000 m above the sea, at that altitude's standard pressure. " +
			"Below 0 °C humidity, dew point and wet bulb are over ice.",
		Inputs: []calc.Input{field.Air, field.Humidity, field.Altitude},
		Outputs: []calc.Output{
			dewPoint, wetBulbTemperature, absoluteHumidity, moistureContent, vapourPressure, saturationPressure, deficit, airDensity, airPressure,
		},
		Work: workAirState,
	}
}

var (
	dewPoint           = calc.Output{Key: "dew_point", Label: "Dew point", Unit: unit.DegC, Decimals: 1, Main: true}
	wetBulbTemperature = calc.Output{Key: "wet_bulb", Label: "Wet bulb", Unit: unit.DegC, Decimals: 1, Main: true}
	absoluteHumidity   = calc.Output{Key: "absolute_humidity", Label: "Water in the air", Unit: unit.GramPerCubicMetre, Decimals: 1}
	moistureContent    = calc.Output{Key: "moisture_content", Label: "Moisture content", Unit: unit.GramPerKilogram, Decimals: 1}
	vapourPressure     = calc.Output{Key: "vapour_pressure", Label: "Vapour pressure", Unit: unit.Pascal}
	saturationPressure = calc.Output{Key: "saturation_pressure", Label: "Saturation pressure", Unit: unit.Pascal}
	deficit            = calc.Output{Key: "vapour_pressure_deficit", Label: "Vapour pressure deficit", Unit: unit.Pascal}
	airDensity         = calc.Output{Key: "air_density", Label: "Density of the air", Unit: unit.KilogramPerCubicM, Decimals: 3}
	airPressure        = calc.Output{Key: "air_pressure", Label: "Air pressure", Unit: unit.Pascal}
)

func workAirState(w *calc.Working) {
	t, rh := w.Given(field.Air), w.Given(field.Humidity)
	p := Pressure(w, w.Given(field.Altitude))
	pws := Saturation(w, t)
	pw := vapour(w, pws, rh)
	W := MoistureOf(w, pw, p)
	dew := dewPointAtVapour(w, pw)
	w.Result(airPressure, p)
	w.Result(saturationPressure, pws)
	w.Result(vapourPressure, pw)
	w.Result(dewPoint, dew)
	w.Result(moistureContent, W)
	w.Result(wetBulbTemperature, wetBulb(w, t, W, p))
	w.Result(absoluteHumidity, w.Step("Water in the air", "AH = 1000*W*p/(287.042*(t + 273.15)*(1 + 1.607858*W))", unit.GramPerCubicMetre, volume,
		AbsoluteHumidity(t.V, W.V, p.V), W, p, t))
	w.Result(deficit, w.Step("Vapour pressure deficit", "VPD = p_ws - p_w", unit.Pascal, source.Definition,
		VapourPressureDeficit(t.V, pw.V), pws, pw))
	w.Result(airDensity, w.Step("Density of the air", "rho = (1 + W)*p/(287.042*(t + 273.15)*(1 + 1.607858*W))", unit.KilogramPerCubicM, volume,
		AirDensity(t.V, W.V, p.V), W, p, t))
	frost(w, t, dew)
}

// frost says what is meant by humidity and dew point below 0 °C.
func frost(w *calc.Working, t, dew calc.Num) {
	switch {
	case t.V < 0:
		w.Caution("Below 0 °C (32 °F) many hygrometers read humidity over water. Here it is over ice, which gives a slightly lower dew point.")
	case dew.V < 0:
		w.Caution("This dew point is below freezing: it is the frost point.")
	}
}
