package gun

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// FilmPerPass is the wet film in µm that going over a panel once lays, from the delivery in mL/min, the transfer
// efficiency over the panel in percent, the fan's width in mm, the overlap of neighbouring strokes in percent
// (0 <= overlap < 100) and the gun's speed in m/s. It is the balance of paint: what is spent off the panel in
// turning must not be in te.
func FilmPerPass(w *calc.Working, delivery, te, fan, overlap, speed calc.Num) calc.Num {
	return w.Step("Wet film of one pass", "h = Q / 60 * (TE / 100) / (w / 1000 * (1 - o / 100) * v)", unit.Micrometre, source.Definition,
		delivery.V/60*(te.V/100)/(fan.V/1000*(1-overlap.V/100)*speed.V),
		delivery, te, fan, overlap, speed)
}

// Passes is how many passes of perPass make wetCoat, both in µm, and the nearest whole number, at least 1: the
// gun's speed then has to change least.
func Passes(w *calc.Working, wetCoat, perPass calc.Num) (exact, whole calc.Num) {
	exact = w.Step("Passes at this speed", "n = WFT / h", unit.One, source.Definition, wetCoat.V/perPass.V, wetCoat, perPass)
	whole = w.Step("Whole passes", "N = max(1, round(n))", unit.One, source.Definition, math.Max(1, math.Round(exact.V)), exact)
	return exact, whole
}

// SpeedFor is the gun's speed in m/s at which that many passes lay exactly wetCoat, in µm; the rest is as for
// [FilmPerPass].
func SpeedFor(w *calc.Working, delivery, te, fan, overlap, wetCoat, passes calc.Num) calc.Num {
	return w.Step("Speed for whole passes", "v = Q / 60 * (TE / 100) * N / (w / 1000 * (1 - o / 100) * WFT)", unit.MetrePerSecond, source.Definition,
		delivery.V/60*(te.V/100)*passes.V/(fan.V/1000*(1-overlap.V/100)*wetCoat.V),
		delivery, te, passes, fan, overlap, wetCoat)
}

// SprayTime is how many minutes it takes to spray a volume in mL with a delivery in mL/min, when the trigger is
// pulled for a share of the time in percent.
func SprayTime(w *calc.Working, volume, delivery, triggerShare calc.Num) calc.Num {
	return w.Step("Spraying takes", "t = V / Q / (k / 100)", unit.Minute, source.Definition,
		volume.V/delivery.V/(triggerShare.V/100), volume, delivery, triggerShare)
}
