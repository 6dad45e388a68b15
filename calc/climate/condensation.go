package climate

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Condensation tells whether a panel is warm enough above the dew point to be sprayed.
func Condensation() *calc.Calculator {
	return &calc.Calculator{
		ID:       "condensation",
		Title:    "Dew on the panel",
		Question: "Is my panel warm enough that no water settles on it?",
		Range: "Air and panels from −10 to 60 °C. The 3 °C rule and the 5 °F rule are two rules: 3 °C is 5.4 °F, 5 °F is 2.8 °C. " +
			"The 85 % humidity limit of many data sheets is a third: at 85 % a part at air temperature is only 2.3 to 2.9 °C above the dew point.",
		Inputs:  []calc.Input{field.Air, field.Humidity, field.Panel, field.MarginNeeded},
		Outputs: []calc.Output{margin, dewPoint, panelGoal, humidityGoal, dewPointShift},
		Work:    workCondensation,
		Cautions: []calc.Phrase{
			"Measure the panel at its coldest place, beside the work, and again whenever the weather or the heating changes. Where the data sheet asks for more, it rules.",
			"Warm and dry the air with equipment made for a spray area: an open flame or a glowing element can light solvent vapour, and a flame adds water to the air.",
		},
	}
}

var (
	margin        = calc.Output{Key: "margin", Label: "Panel above dew point", Unit: unit.DiffC, Decimals: 1, Main: true}
	panelGoal     = calc.Output{Key: "panel_goal", Label: "Panel must reach", Unit: unit.DegC, Decimals: 1}
	humidityGoal  = calc.Output{Key: "humidity_goal", Label: "Or humidity must come down to", Unit: unit.Percent, Decimals: 1}
	dewPointShift = calc.Output{Key: "dew_point_shift", Label: "Dew point rises, if the hygrometer reads 3 % low", Unit: unit.DiffC, Decimals: 1}
)

func workCondensation(w *calc.Working) {
	t := w.Given(field.Air)
	d := condense(w, w.Given(field.Panel), t, w.Given(field.Humidity), w.Given(field.MarginNeeded))
	d.judge(w)
	w.Result(margin, d.margin)
	w.Result(dewPoint, d.dew)
	w.Result(panelGoal, d.panelGoal)
	w.Result(humidityGoal, d.humidityGoal)
	w.Result(dewPointShift, d.shift)
	frost(w, t, d.dew)
}

// JudgeCondensation rules on a panel in air of temperature air and humidity rh: go where it is needed (a difference)
// or more above the dew point, wait where it is less, stop where it is at or under it.
func JudgeCondensation(w *calc.Working, panel, air, rh, needed calc.Num) (margin, dew calc.Num) {
	d := condense(w, panel, air, rh, needed)
	d.judge(w)
	return d.margin, d.dew
}

// Margin is how far the panel is above the dew point.
func Margin(w *calc.Working, panel, dew calc.Num) calc.Num {
	return w.Step("Panel above dew point", "m = t_s - t_d", unit.DiffC, source.Definition, panel.V-dew.V, panel, dew)
}

// dewing is what there is to say about a panel and the dew point.
type dewing struct {
	air, needed                                 calc.Num
	dew, margin, panelGoal, humidityGoal, shift calc.Num
}

func condense(w *calc.Working, panel, air, rh, needed calc.Num) dewing {
	pws := Saturation(w, air)
	dew := dewPointAtVapour(w, vapour(w, pws, rh))
	return dewing{
		air: air, needed: needed, dew: dew, margin: Margin(w, panel, dew),
		panelGoal:    w.Step("Panel must reach", "t_goal = t_d + needed", unit.DegC, marginRule, dew.V+needed.V, dew, needed),
		humidityGoal: driest(w, panel, pws, needed),
		shift:        misread(w, pws, rh, dew),
	}
}

// driest is the humidity at which the dew point lies as far below the panel as needed; at most 100 %.
func driest(w *calc.Working, panel, pws, needed calc.Num) calc.Num {
	goal := w.Step("Highest dew point for this panel", "t_max = t_s - needed", unit.DegC, threeRule, panel.V-needed.V, panel, needed)
	p := Saturation(w, goal)
	return w.Step("Highest humidity for this panel", "RH_max = min(100, 100*p_max/p_ws)", unit.Percent, humidity,
		min(100, 100*p.V/pws.V), p, pws)
}

// misread is how much higher the dew point is when the true humidity is 3 % above the reading, at most 100 %.
func misread(w *calc.Working, pws, rh, dew calc.Num) calc.Num {
	p := w.Step("Vapour pressure with 3 % more humidity", "p_3 = min(100, RH + 3)/100*p_ws", unit.Pascal, sensorRule,
		min(100, rh.V+3)/100*pws.V, rh, pws)
	higher := dewPointAtVapour(w, p)
	return w.Step("Rise of the dew point", "e = t_3 - t_d", unit.DiffC, source.Definition, higher.V-dew.V, higher, dew)
}

func (d dewing) judge(w *calc.Working) {
	if w == nil {
		return
	}
	above := calc.Say("Panel {m} above dew point", d.margin.To(1, "m"))
	shift := d.shift.To(1, "shift")
	switch {
	case d.margin.V < 1e-6: // none but for rounding
		under := d.margin
		under.V = -under.V
		w.Judge(calc.Stop, calc.Say("Panel {m} below dew point: water settles on it", under.To(1, "m")), d.cure())
	case d.margin.V < d.needed.V:
		w.Judge(calc.Wait, above, d.cure())
	case d.margin.V < d.needed.V+d.shift.V:
		w.Judge(calc.Go, above, calc.Say("Check the hygrometer first: if it reads 3 % low, the dew point is {shift} higher and the margin too small", shift))
	default:
		w.Judge(calc.Go, above, calc.Say("Measure again before each coat; a hygrometer that reads 3 % low hides {shift}", shift))
	}
}

// cure says how to get a panel dry. Heating alone leaves the dew point where it is.
func (d dewing) cure() calc.Text {
	goal, rh := d.panelGoal.To(1, "goal"), d.humidityGoal.To(1, "rh")
	shift := d.shift.To(1, "shift")
	if d.panelGoal.V > d.air.V {
		return calc.Say("Warm booth and panel to {goal} with dry heat, or dry the air to {rh}; add {shift} if the hygrometer may read 3 % low", goal, rh, shift)
	}
	return calc.Say("Warm the panel to {goal}, or dry the air to {rh}; add {shift} if the hygrometer may read 3 % low", goal, rh, shift)
}
