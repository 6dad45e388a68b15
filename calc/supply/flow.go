package supply

import (
	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// FlowStates says what one air flow is called in each state of reference.
func FlowStates() *calc.Calculator {
	return &calc.Calculator{
		ID:       "air-flow",
		Title:    "scfm, ANR, normal litres, free air",
		Question: "What is this air flow by another reference?",
		Range: "One mass of air, as an ideal gas; each name stands for a temperature and a pressure, so none is a mere unit of another. " +
			"Water vapour is left out: under 1 % between the references, up to 5 % for hot, damp free air.",
		Inputs:  []calc.Input{field.Flow, field.FlowStated, field.Air, field.Altitude},
		Outputs: []calc.Output{flowStandard, flowANR, flowNormal, flowSixty, flowHere},
		Work:    flowStates,
	}
}

var (
	flowStandard = flowOut("flow_standard", "Standard (scfm), 20 °C and 101.325 kPa")
	flowANR      = flowOut("flow_anr", "ANR, 20 °C and 100 kPa")
	flowNormal   = flowOut("flow_normal", "Normal, 0 °C and 101.325 kPa")
	flowSixty    = flowOut("flow_sixty", "At 60 °F and 101.325 kPa")
	flowHere     = flowOut("flow_here", "Free air, as it is here")
)

func flowOut(key string, label calc.Phrase) calc.Output {
	return calc.Output{Key: key, Label: label, Unit: unit.LitrePerMinute, Decimals: 1, Main: key == "flow_here"}
}

// State is the temperature in K and the pressure in Pa behind a key of field.FlowStated other than "here".
func State(w *calc.Working, key string) (T, p calc.Num) {
	kelvin, pascal, from := 293.15, 101325., scfm
	switch key {
	case "anr":
		pascal, from = 100000, anr
	case "normal":
		kelvin, from = 273.15, normal
	case "sixty":
		kelvin, from = 288.7055555555556, sixty
	}
	return w.Constant("Reference temperature", unit.Kelvin, from, kelvin), w.Constant("Reference pressure", unit.Pascal, from, pascal)
}

func flowStates(w *calc.Working) {
	q, air, z := w.Given(field.Flow), w.Given(field.Air), w.Given(field.Altitude)
	hereT := w.Step("Temperature here", "T = t + 273.15", unit.Kelvin, source.Definition, air.V+273.15, air)
	hereP := climate.Pressure(w, z)
	state := func(key string) (T, p calc.Num) {
		if key == "here" {
			return hereT, hereP
		}
		return State(w, key)
	}
	T, p := state(w.Picked(field.FlowStated))
	for i, out := range []calc.Output{flowStandard, flowANR, flowNormal, flowSixty, flowHere} {
		Tb, pb := state(field.FlowStated.Choices[i].Key)
		w.Result(out, w.Step(out.Label, "Q_b = Q*p/T*T_b/p_b", unit.LitrePerMinute, source.Definition, q.V*p.V/T.V*Tb.V/pb.V, q, p, T, Tb, pb))
	}
}
