package gun

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// DeliveryTest tells the delivery from what a gun put into a cup in a measured time.
func DeliveryTest() *calc.Calculator {
	return &calc.Calculator{
		ID:       "gun-delivery",
		Title:    "Delivery from a timed cup",
		Question: "How much paint does my gun put out in a minute?",
		Range: "The gun, tip, needle setting, air and paint as tested, and no others: delivery is measured, not worked out from viscosity. " +
			"A gravity cup puts out less as it empties.",
		Inputs:     []calc.Input{field.CaughtBy, field.CaughtMass, caughtDensity, field.CaughtVolume, field.CaughtFor},
		Outputs:    []calc.Output{deliveryMeasured, triggerSlip},
		Mistakes:   deliveryMistakes,
		Work:       deliveryTest,
		Cautions:   []calc.Phrase{"Catch it in the booth, with the fan on and protected as for spraying: what misses the cup is mist.", caution.Flammable, caution.Isocyanate},
		Arithmetic: true,
	}
}

var (
	caughtDensity = field.MixDensity.If("caught_by", "weighed")

	deliveryMeasured = calc.Output{Key: "delivery", Label: "Delivery", Unit: unit.MillilitrePerMinute, Main: true}
	triggerSlip      = calc.Output{Key: "trigger_slip", Label: "Off by this, for half a second on the trigger", Unit: unit.Percent, Decimals: 1}
)

// slipMost, in percent, is how much half a second may weigh before the test is too short.
const slipMost = 4

func deliveryTest(w *calc.Working) {
	t, v := w.Given(field.CaughtFor), w.Given(field.CaughtVolume)
	if w.Picked(field.CaughtBy) == "weighed" {
		m, rho := w.Given(field.CaughtMass), w.Given(caughtDensity)
		v = w.Step("Volume caught", "V = m / rho", unit.Millilitre, source.Definition, m.V/rho.V, m, rho)
	}
	q := w.Step("Delivery", "Q = 60 * V / t", unit.MillilitrePerMinute, source.Definition, 60*v.V/t.V, v, t)
	half := w.Constant("A finger on the trigger, s", unit.One, source.CommonPractice, 0.5)
	slip := w.Step("What that is of the test", "s = 100 * dt / t", unit.Percent, source.Definition, 100*half.V/t.V, half, t)
	w.Result(deliveryMeasured, q)
	w.Result(triggerSlip, slip)
	if slip.V > slipMost {
		w.Judge(calc.Wait, calc.Say("Half a second on the trigger is already {slip} of this test", slip.To(1, "slip")), calc.Say("Catch for half a minute or more"))
	}
}
