package vent

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// RoomVapour tells what spilled solvent makes of a room's air.
func RoomVapour() *calc.Calculator {
	return &calc.Calculator{
		ID:       "room-vapour",
		Title:    "Solvent in a room",
		Question: "If this much solvent evaporates in the room, can it burn, and can I breathe it?",
		Range: "One solvent, all of it evaporated, no fan, mixed evenly into a room near sea level. Solvent vapour is heavier than air: over the spill, in pits and along the floor " +
			"there is far more of it. It says nothing of isocyanate.",
		Inputs:   []calc.Input{field.Spilled, field.LiquidDensity, field.MolarMass, roomAir, field.RoomVolume, field.LEL, field.ExposureLimit},
		Outputs:  []calc.Output{roomLEL, roomPPM, roomMass, roomVolume, exposureTimes},
		Work:     roomVapour,
		Cautions: []calc.Phrase{caution.Estimate, caution.Flammable, caution.Skin},
	}
}

var (
	roomLEL       = calc.Output{Key: "room_lel", Label: "Of the lower explosive limit", Unit: unit.Percent, Decimals: 1, Main: true}
	roomPPM       = calc.Output{Key: "room_ppm", Label: "Vapour in the air", Unit: unit.PartsPerMillion, Main: true}
	roomMass      = calc.Output{Key: "room_mass", Label: "That is", Unit: unit.GramPerCubicMetre, Decimals: 2}
	roomVolume    = calc.Output{Key: "room_vapour", Label: "Volume of the vapour", Unit: unit.CubicMetre, Decimals: 3}
	exposureTimes = calc.Output{Key: "exposure_times", Label: "Times the limit for breathing", Unit: unit.One, Decimals: 1, Optional: true}
)

func roomVapour(w *calc.Working) {
	liquid, rho, room, lel := w.Given(field.Spilled), w.Given(field.LiquidDensity), w.Given(field.RoomVolume), w.Given(field.LEL)
	yield := vapourOf(w)
	v := w.Step("Volume of the vapour", "v = V / 1000 * V_v", unit.CubicMetre, source.Definition, liquid.V/1000*yield.V, liquid, yield)
	if v.V > room.V/4 {
		w.Reject(field.Spilled, calc.Beyond, "is more than this room's air can take up", "Treat it as an emergency: get out, and call those who are trained for it")
		return
	}
	c := w.Step("Vapour in the air", "C = 1000000 * v / V_R", unit.PartsPerMillion, source.Definition, 1e6*v.V/room.V, v, room)
	share := w.Step("Share of the lower explosive limit", "s = C / (100 * LEL)", unit.Percent, source.Definition, c.V/(100*lel.V), c, lel)
	w.Result(roomVolume, v)
	w.Result(roomPPM, c)
	w.Result(roomLEL, share)
	w.Result(roomMass, w.Step("Vapour by weight", "m = V * rho / V_R", unit.GramPerCubicMetre, source.Definition, liquid.V*rho.V/room.V, liquid, rho, room))
	strict := w.Constant("Most that a strict rule allows", unit.Percent, tenth, 10)
	said := share.To(1, "share")
	if share.V >= strict.V {
		w.Judge(calc.Stop, calc.Say("Mixed evenly it is {share} of what can burn, and a strict rule stops at {strict}; near the spill it may burn now", said, strict.To(0, "strict")),
			calc.Say("No switch, no spark, no engine: leave, open what you can, and come back with a gas meter"))
	} else {
		w.Judge(calc.Wait, calc.Say("Mixed evenly it is {share} of what can burn; near the spill and along the floor it is far more", said), calc.Say("Keep sparks away, cover or take up the rest, and run the exhaust"))
	}
	limit := w.Given(field.ExposureLimit)
	if !limit.Given() {
		return
	}
	times := w.Step("Times the limit for breathing", "n = C / E", unit.One, source.Definition, c.V/limit.V, c, limit)
	w.Result(exposureTimes, times)
	if times.V > 1 {
		w.Judge(calc.Stop, calc.Say("It is {times} times the limit for breathing", times.To(1, "times")), calc.Say("Stay out without the protection the safety data sheet names"))
	}
}
