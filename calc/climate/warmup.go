package climate

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// PartWarmUp tells how long a cold part takes to clear the dew point.
func PartWarmUp() *calc.Calculator {
	return &calc.Calculator{
		ID:       "part-warm-up",
		Title:    "Warming up a cold part",
		Question: "This part came in cold: how long until I can spray it?",
		Range: "Parts as warm inside as outside: it refuses where the Biot number passes 0.1. How well air warms a part is known only within a range, " +
			"so the answer is one. Water that settles on the part warms it a little and must then dry; neither is counted.",
		Inputs: []calc.Input{
			field.PartMaterial, field.PartThickness, field.AirReaches, field.AirMoves, field.HeatTransfer,
			coldPart, field.Air, field.Humidity, field.MarginNeeded,
		},
		Outputs:  []calc.Output{warmHigh, warmLow, panelGoal, dewPoint, warmConstant, biot},
		Work:     workPartWarmUp,
		Cautions: []calc.Phrase{"Measure the part at its thickest, coldest place before you spray: the thermometer rules, not this time. Never warm a part with an open flame."},
	}
}

var (
	coldPart = func() calc.Input { in := field.Panel; in.Example = 5; return in }()

	warmHigh     = calc.Output{Key: "warm_up_high", Label: "Wait this long", Unit: unit.Minute, Main: true, Optional: true}
	warmLow      = calc.Output{Key: "warm_up_low", Label: "It will not be ready before", Unit: unit.Minute, Optional: true}
	warmConstant = calc.Output{Key: "time_constant", Label: "Time constant at the slowest", Unit: unit.Minute, Decimals: 1}
	biot         = calc.Output{Key: "biot", Label: "Biot number at the most", Unit: unit.One, Decimals: 4}
)

var (
	metals   = source.Incropera.At("table A.1: plain carbon steel, aluminium alloy 2024-T6").By(source.Memory)
	plastics = source.Plastics.At("ABS and polypropylene lie between 1.5 and 1.8 MJ/(m³ K); a little more is taken, to be slow rather than fast").By(source.Memory)
	lumped   = source.Incropera.At("lumped capacitance, equations 5.6 and 5.10").By(source.Memory)
	airHeats = source.Incropera.At("table 1.1, gases 2 to 25 W/(m² K) in still air, with radiation; the two ends are our choice").By(source.Memory)
)

// A stuff is what a part is made of: density in kg/m³, specific heat in J/(kg K), conductivity in W/(m K).
type stuff struct {
	density, heat, conductivity float64
	from                        source.Source
}

func stuffOf(key string) stuff {
	switch key {
	case "steel":
		return stuff{7854, 434, 60.5, metals}
	case "aluminium":
		return stuff{2770, 875, 177, metals}
	}
	return stuff{1100, 1700, 0.2, plastics}
}

// mostBiot is the Biot number up to which a part is as warm inside as outside, within some 5 %.
const mostBiot = 0.1

func workPartWarmUp(w *calc.Working) {
	panel, air := w.Given(coldPart), w.Given(field.Air)
	dew := DewPointOf(w, air, w.Given(field.Humidity))
	goal := clearOf(w, dew, w.Given(field.MarginNeeded))

	m := stuffOf(w.Picked(field.PartMaterial))
	part := warming{
		depth:   warmedDepth(w, w.Given(field.PartThickness), w.Picked(field.AirReaches)),
		density: w.Constant("Density", unit.KilogramPerCubicM, m.from, m.density),
		heat:    w.Constant("Specific heat, J/(kg K)", unit.One, m.from, m.heat),
	}
	weak, strong := heating(w)
	k := w.Constant("Conductivity, W/(m K)", unit.One, m.from, m.conductivity)
	bi := w.Step("Biot number", "Bi = h * L_c / 1000 / k", unit.One, lumped, strong.V*part.depth.V/1000/k.V, strong, part.depth, k)
	if bi.V > mostBiot {
		w.Reject(field.PartThickness, calc.Beyond, "is too much for this sum: the inside lags behind the skin", "Measure the part with a surface thermometer")
		return
	}
	slow, fast := part.constant(w, weak), part.constant(w, strong)
	w.Result(biot, bi)
	w.Result(warmConstant, slow)
	w.Result(dewPoint, dew)
	w.Result(panelGoal, goal)
	switch {
	case panel.V >= goal.V:
		w.Judge(calc.Go, calc.Say("The part is at {t} and needs {goal}: it is warm enough", panel.To(1, "t"), goal.To(1, "goal")), calc.Say("Measure again before each coat"))
	case goal.V > air.V-0.05:
		w.Judge(calc.Stop, calc.Say("It never gets there: the part needs {goal} and the air is {air}", goal.To(1, "goal"), air.To(1, "air")), calc.Say("Warm or dry the air first"))
	default:
		part.wait(w, slow, fast, air, panel, goal, dew)
	}
	frost(w, air, dew)
}

// clearOf is the temperature that stands needed above the dew point.
func clearOf(w *calc.Working, dew, needed calc.Num) calc.Num {
	return w.Step("Panel must reach", "t_goal = t_d + needed", unit.DegC, marginRule, dew.V+needed.V, dew, needed)
}

// warmedDepth is the thickness in mm that one side of the part has to warm.
func warmedDepth(w *calc.Working, thickness calc.Num, reaches string) calc.Num {
	sides := 2.0
	if reaches == "one" {
		sides = 1
	}
	n := calc.N(sides, unit.One).Called("Sides that the air reaches")
	return w.Step("Thickness that each side warms", "L_c = L / N", unit.Millimetre, lumped, thickness.V/sides, thickness, n)
}

// heating is the least and the most heat, in W/(m² K), that the air brings a part.
func heating(w *calc.Working) (weak, strong calc.Num) {
	low, high := 5.0, 10.0
	switch w.Picked(field.AirMoves) {
	case "known":
		h := w.Given(field.HeatTransfer)
		return h, h
	case "booth":
		low, high = 8, 20
	}
	const label = "Heat transfer coefficient, "
	return w.Constant(label+"at the least", unit.WattPerSquareMetreK, airHeats, low), w.Constant(label+"at the most", unit.WattPerSquareMetreK, airHeats, high)
}

// A warming is what a part's speed of warming depends on, besides the air: mm, kg/m³, J/(kg K).
type warming struct{ depth, density, heat calc.Num }

// constant is the part's time constant in minutes for a heat transfer in W/(m² K).
func (p warming) constant(w *calc.Working, h calc.Num) calc.Num {
	return w.Step("Time constant of the part", "tau = rho * c * L_c / 1000 / h / 60", unit.Minute, lumped,
		p.density.V*p.heat.V*p.depth.V/1000/h.V/60, p.density, p.heat, p.depth, h)
}

func (p warming) wait(w *calc.Working, slow, fast, air, panel, goal, dew calc.Num) {
	takes := func(label calc.Phrase, tau calc.Num) calc.Num {
		return w.Step(label, "t = tau * ln((t_a - t_0) / (t_a - t_goal))", unit.Minute, lumped,
			tau.V*math.Log((air.V-panel.V)/(air.V-goal.V)), tau, air, panel, goal)
	}
	low, high := takes("Warming up at the fastest", fast), takes("Warming up at the slowest", slow)
	w.Result(warmLow, low)
	w.Result(warmHigh, high)
	w.Judge(calc.Wait, calc.Say("The part is at {t} and must reach {goal}: allow {high}", panel.To(1, "t"), goal.To(1, "goal"), high.To(0, "high")),
		calc.Say("Then measure it, at its thickest place"))
	if panel.V < dew.V {
		w.Caution("The part is colder than the dew point, so water settles on it while it warms: wipe it off and let it dry.")
	}
}
