package shelf

import (
	"slices"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Booth keeps what stays the same about a booth. Its air of the day is read anew each day.
func Booth() *calc.Calculator {
	return &calc.Calculator{
		ID:       "booth",
		Title:    "Booth",
		Question: "What is known of this booth’s air, and what is not measured yet?",
		Range: "One booth, with its fan and filters as they were when they were measured. Temperature and humidity are not kept with it: " +
			"read them on the day.",
		Inputs:     boothInputs(),
		Outputs:    []calc.Output{complete, lacking, boothAir, changes, purgeLeast, filterRoom},
		Work:       keptBooth,
		Cautions:   []calc.Phrase{caution.Estimate, caution.Isocyanate},
		Arithmetic: true,
	}
}

func boothInputs() []calc.Input {
	return slices.Concat(
		[]calc.Input{boothName().Under("What it is")},
		maybe("", field.BoothCase, field.Altitude, field.RoomVolume, field.FaceWidth, field.FaceHeight),
		maybe("Air, measured", field.AirSpeed, always(field.FaceSpeed), always(field.FanFlow), field.MixingFactor, field.LELShare),
		maybe("Filters", field.FilterCapture, field.FilterHolds, field.FilterHas),
		maybe("Air supply", field.LineKind, field.Bore, field.LineLength, field.LinePressure, field.ColdestPoint, field.ClassWanted),
		maybe("Oven", always(field.OvenAir)),
	)
}

// boothName must be given here: it is what the booth is known by.
func boothName() calc.Input {
	in := field.Booth
	in.Optional, in.Help = false, "As you call it in the shop"
	return in
}

var boothWorks = []work{
	{"Job card", "air_speed altitude"},
	{"Air flow of the booth", "booth_case face_width face_height face_speed"},
	{"Clearing the air", "room_volume fan_flow mixing_factor"},
	{"Vapour in the air", "fan_flow room_volume lel_share"},
	{"Overspray in the filters", "filter_capture filter_holds"},
	{"Air hose", "line_kind bore line_length"},
	{"Water in the air line", "line_pressure coldest_point"},
}

var (
	boothAir   = calc.Output{Key: "booth_air", Label: "Air through the booth", Unit: unit.CubicMetrePerHour, Main: true, Optional: true}
	changes    = calc.Output{Key: "changes_hour", Label: "Air changes an hour", Unit: unit.One, Decimals: 0, Main: true, Optional: true}
	purgeLeast = calc.Output{Key: "one_change", Label: "One air change takes", Unit: unit.Minute, Decimals: 1, Optional: true}
	filterRoom = calc.Output{Key: "filter_room", Label: "Room left in the filters", Unit: unit.Gram, Optional: true}
)

func keptBooth(w *calc.Working) {
	if !seen(w.Entry, field.Booth) {
		return
	}
	blanks(w, boothInputs(), boothWorks)
	b, h, v, q := w.Given(field.FaceWidth), w.Given(field.FaceHeight), w.Given(field.FaceSpeed), w.Given(field.FanFlow)
	if !q.Given() && b.Given() && h.Given() && v.Given() {
		q = w.Step("Air through the booth", "Q = 3600 * v * b * h", unit.CubicMetrePerHour, source.Definition, 3600*v.V*b.V*h.V, v, b, h)
	}
	if q.Given() {
		w.Result(boothAir, q)
	}
	if room := w.Given(field.RoomVolume); q.Given() && room.Given() {
		n := w.Step("Air changes an hour", "n = Q / V_R", unit.One, source.Definition, q.V/room.V, q, room)
		w.Result(changes, n)
		w.Result(purgeLeast, w.Step("One air change", "t_1 = 60 / n", unit.Minute, source.Definition, 60/n.V, n))
	}
	holds, has := w.Given(field.FilterHolds), w.Given(field.FilterHas)
	if !holds.Given() {
		return
	}
	room := holds
	if has.Given() {
		room = w.Step("Room left in the filters", "r = max(0, H - B)", unit.Gram, source.Definition, max(0, holds.V-has.V), holds, has)
	}
	w.Result(filterRoom, room)
	if room.V <= 0 {
		w.Judge(calc.Stop, calc.Say("The filters are full"), calc.Say("Change them before you spray"))
	}
}
