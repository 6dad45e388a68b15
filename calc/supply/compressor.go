package supply

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/climate"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Compressor tells whether compressor and receiver keep up with the gun.
func Compressor() *calc.Calculator {
	return &calc.Calculator{
		ID:       "compressor",
		Title:    "Compressor and receiver",
		Question: "Does my compressor keep up, and how long can I hold the trigger?",
		Range: "One gun, both flows stated the same way, air in the tank as warm as the shop. Higher up a compressor delivers less by the air pressure; " +
			"that a gun then takes a little less is left out.",
		Inputs: []calc.Input{
			field.AirDemand, field.TriggerShare, field.FreeAir, field.Receiver, field.CutOut, field.LowestReceiver, field.Altitude,
		},
		Outputs:  []calc.Output{duty, delivered, runTime, refill},
		Work:     compressor,
		Cautions: []calc.Phrase{caution.CompressedAir},
	}
}

var (
	duty      = calc.Output{Key: "duty", Label: "The compressor works", Unit: unit.Percent, Main: true}
	delivered = calc.Output{Key: "delivered_air", Label: "It delivers here", Unit: unit.LitrePerMinute}
	runTime   = calc.Output{Key: "run_time", Label: "Trigger held, the tank lasts", Unit: unit.Minute, Decimals: 1, Main: true, Optional: true}
	refill    = calc.Output{Key: "refill_time", Label: "The tank fills again in", Unit: unit.Minute, Decimals: 1}
)

// enough is the highest duty in percent that leaves half as much again.
const enough = 100 / 1.5

func compressor(w *calc.Working) {
	q, share, free := w.Given(field.AirDemand), w.Given(field.TriggerShare), w.Given(field.FreeAir)
	v, high, low := w.Given(field.Receiver), w.Given(field.CutOut), w.Given(field.LowestReceiver)
	if low.V >= high.V {
		w.Reject(field.LowestReceiver, calc.Impossible, "must be less than the {p} at which the compressor stops", "Check both", high.As("p"))
		return
	}
	pa := climate.Pressure(w, w.Given(field.Altitude))
	air := w.Step("Delivered here", "F_z = F*p/101325", unit.LitrePerMinute, source.Definition, free.V*pa.V/101325, free, pa)
	use := w.Step("Share of its time the compressor works", "U = Q*k/F_z", unit.Percent, source.Definition, q.V*share.V/air.V, q, share, air)
	w.Result(duty, use)
	w.Result(delivered, air)
	w.Result(refill, w.Step("Tank fills again in", "t = 6894.757293168361*V*(P_1 - P_2)/(101325*F_z)", unit.Minute, source.Definition,
		psi*v.V*(high.V-low.V)/(101325*air.V), v, high, low, air))
	if q.V > air.V {
		w.Result(runTime, RunTime(w, v, high, low, q, air))
	}
	judgeDuty(w, use, air)
}

// RunTime is how many minutes a receiver of v L lasts from high to low, in psi, while q L/min are taken and fewer, air
// L/min, delivered; flows as free air at 101.325 kPa.
func RunTime(w *calc.Working, v, high, low, q, air calc.Num) calc.Num {
	return w.Step("Trigger held, the tank lasts", "t = 6894.757293168361*V*(P_1 - P_2)/(101325*(Q - F_z))", unit.Minute, source.Definition,
		psi*v.V*(high.V-low.V)/(101325*(q.V-air.V)), v, high, low, q, air)
}

func judgeDuty(w *calc.Working, use, air calc.Num) {
	why := calc.Say("The gun takes {use} of the {air} that the compressor delivers here", use.To(0, "use"), air.To(0, "air"))
	switch {
	case use.V > 100:
		w.Judge(calc.Stop, why, calc.Say("The pressure will fall while you spray: pause to let it recover, or use a larger compressor; a larger tank only delays it"))
	case use.V > enough:
		w.Judge(calc.Wait, why, calc.Say("It keeps up with little to spare; a common rule wants half as much again"))
	default:
		w.Judge(calc.Go, why, calc.Say("That leaves half as much again, which a common rule wants"))
	}
}
