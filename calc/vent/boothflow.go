package vent

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// BoothFlow tells the air flow that goes with a face velocity, and holds it to the US table.
func BoothFlow() *calc.Calculator {
	return &calc.Calculator{
		ID:       "booth-flow",
		Title:    "Air through the booth",
		Question: "Does my booth move enough air, and how much should it?",
		Range: "Dry-filter booths with an open face, by the US table. Water-wash booths and closed ones without openings have no figure there: " +
			"the limit on vapour governs. Other countries have other rules. Large and small are the table's own words and it does not say where one ends.",
		Inputs:   []calc.Input{field.BoothCase, field.FaceWidth, field.FaceHeight, field.AirKnown, field.FaceSpeed, field.FanFlow.If("air_known", "flow")},
		Outputs:  []calc.Output{boothAir, faceVelocity, designFlow, flowLeast, flowMost},
		Work:     boothFlow,
		Cautions: []calc.Phrase{notBreathing, caution.Estimate, caution.Isocyanate, caution.Flammable},
	}
}

var (
	boothAir     = calc.Output{Key: "booth_air", Label: "Air through the booth", Unit: unit.CubicMetrePerHour, Main: true, Optional: true}
	faceVelocity = calc.Output{Key: "face_velocity", Label: "Air speed at the face", Unit: unit.AirMetrePerSecond, Decimals: 2, Optional: true}
	designFlow   = calc.Output{Key: "design_flow", Label: "Flow to design for", Unit: unit.CubicMetrePerHour, Main: true}
	flowLeast    = calc.Output{Key: "flow_least", Label: "Least flow that complies", Unit: unit.CubicMetrePerHour}
	flowMost     = calc.Output{Key: "flow_most", Label: "Most in the table’s range", Unit: unit.CubicMetrePerHour}
)

// velocities are the design velocity and its range, in ft/min, for a case of the form.
func velocities(key string) (design, low, high float64) {
	switch key {
	case "auto-large":
		return 50, 50, 75
	case "auto-small", "still-large":
		return 100, 75, 125
	case "still-small", "draught-large":
		return 150, 125, 175
	}
	return 200, 150, 250
}

func boothFlow(w *calc.Working) {
	b, h := w.Given(field.FaceWidth), w.Given(field.FaceHeight)
	face := w.Step("Face of the booth", "A = b * h", unit.SquareMetre, source.Definition, b.V*h.V, b, h)
	design, low, high := velocities(w.Picked(field.BoothCase))
	speed := func(label calc.Phrase, ftMin float64) calc.Num {
		return w.Constant(label, unit.AirMetrePerSecond, tableG10, unit.Convert(ftMin, unit.AirFootPerMinute, unit.AirMetrePerSecond))
	}
	least, most := speed("Lowest velocity of the range", low), speed("Highest velocity of the range", high)
	flow := func(out calc.Output, v calc.Num) {
		w.Result(out, w.Step(out.Label, "Q = 3600 * v * A", unit.CubicMetrePerHour, source.Definition, 3600*v.V*face.V, v, face))
	}
	flow(designFlow, speed("Velocity to design for", design))
	flow(flowLeast, least)
	flow(flowMost, most)

	v := w.Given(field.FaceSpeed)
	switch w.Picked(field.AirKnown) {
	case "neither":
		return
	case "flow":
		q := w.Given(field.FanFlow)
		w.Result(boothAir, q)
		v = w.Step("Air speed at the face", "v = Q / 3600 / A", unit.AirMetrePerSecond, source.Definition, q.V/3600/face.V, q, face)
	default:
		flow(boothAir, v)
	}
	w.Result(faceVelocity, v)
	judgeFace(w, v, least, most)
}

func judgeFace(w *calc.Working, v, least, most calc.Num) {
	const hair = 1e-9
	says := []calc.Arg{v.To(2, "v"), least.To(2, "least"), most.To(2, "most")}
	switch {
	case v.V < least.V-hair:
		w.Judge(calc.Stop, calc.Say("{v} at the face is below the range of {least} to {most}", says...), calc.Say("Do not spray: change the filters, check belt and fan, and have it measured again"))
	case v.V > most.V+hair:
		w.Judge(calc.Wait, calc.Say("{v} at the face is above the range of {least} to {most}", says...), calc.Say("Check the reading; so fast a draught wastes paint and heat"))
	default:
		w.Judge(calc.Go, calc.Say("{v} at the face is within the range of {least} to {most}", says...), calc.Say("Check the vapour too, and your local code"))
	}
}
