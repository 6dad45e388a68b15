package gun

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/drying"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

const (
	lowestPressure = 20   // psi at the inlet; below it an HVLP cap gets too little to break paint up
	leastDrying    = 0.01 // of the reference: in saturated air nothing dries, and the law would ask for infinity
)

// exponent is how strongly a kind of gun's start pressure follows the drying strength of the air. ok is false
// for kinds that nothing is known of.
func exponent(w *calc.Working, kind string) (m calc.Num, ok bool) {
	const label = "How far pressure follows the air, as painters do it"
	switch kind {
	case "hvlp":
		return w.Constant(label, unit.One, desert, 0.15), true
	case "reduced":
		return w.Constant(label, unit.One, desertR, 0.12), true
	}
	return m, false
}

// StartPressure is the inlet pressure in psi to start from with waterborne paint, trigger pulled, from the one
// that works (ref, psi) in air of refAir °C and refHumidity percent. The air's pressure is in Pa; kind is a key
// of the gun's choices. It is a first setting, not validated; it stands in steps of 0.5 psi, and is never above most, nor below
// 20 psi or ref where that is lower. ok is false where no figure can be given (a conventional gun, saturated
// reference air): then keep the pressure that the data sheet and the gun's sheet give.
//
// Painters lower the pressure in air that dries fast, so that drops stay larger and land wet. The order of
// climates is physics; how far to go is practice, known from one desert setting.
func StartPressure(w *calc.Working, kind string, ref, most calc.Num, refAir, refHumidity, air, humidity, pressure calc.Num) (start calc.Num, ok bool) {
	if _, ok := exponent(nil, kind); !ok || drying.Strength(nil, refAir, refHumidity, pressure).V <= 0 {
		return start, false
	}
	m, _ := exponent(w, kind)
	asked := follow(w, m, ref, drying.Strength(w, air, humidity, pressure), drying.Strength(w, refAir, refHumidity, pressure))
	return clamp(w, ref, most, asked), true
}

func follow(w *calc.Working, m, ref, now, then calc.Num) calc.Num {
	return w.Step("Pressure for this air, before limits", "P_air = P_ref / pow(max(E / E_ref, 0.01), m)", unit.PSI, lowered,
		ref.V/math.Pow(math.Max(now.V/then.V, leastDrying), m.V), ref, now, then, m)
}

func clamp(w *calc.Working, ref, most, asked calc.Num) calc.Num {
	low := w.Constant("Lowest that still breaks paint up", unit.PSI, capLow, lowestPressure)
	return w.Step("Start pressure, to the nearest half psi", "P = min(floor(2 * P_max) / 2, round(2 * max(P_air, min(P_low, P_ref))) / 2)", unit.PSI, source.Definition,
		math.Min(math.Floor(2*most.V)/2, math.Round(2*math.Max(asked.V, math.Min(low.V, ref.V)))/2),
		most, asked, low, ref)
}
