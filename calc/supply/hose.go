package supply

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/climate"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// HoseDrop tells what a hose loses and where to set the regulator.
func HoseDrop() *calc.Calculator {
	return &calc.Calculator{
		ID:       "hose-drop",
		Title:    "Pressure lost in the hose",
		Question: "Where do I set the regulator for the pressure I want at the gun?",
		Range: "A straight line of one bore with 20 °C air. Couplers, filters and bends come on top and are often the larger part: nobody publishes them, so read a gauge at the gun. " +
			"A flow the line cannot carry is refused.",
		Inputs: []calc.Input{
			field.PressureKnown, field.InletPressure, field.WallPressure, field.AirDemand, statedElsewhere(), field.LineKind, field.Bore, field.LineLength, field.Altitude,
		},
		Outputs: []calc.Output{atWall, atGun, lost},
		Work:    hoseDrop,
		Cautions: []calc.Phrase{
			caution.CompressedAir,
			"With the trigger released nothing is lost: the gun then feels all that the regulator is set to, so that setting too must be within what the gun is rated for.",
		},
	}
}

var (
	atWall = calc.Output{Key: "pressure_at_wall", Label: "At the regulator", Unit: unit.PSI, Decimals: 1, Main: true}
	atGun  = calc.Output{Key: "pressure_at_gun", Label: "At the gun's inlet", Unit: unit.PSI, Decimals: 1, Main: true}
	lost   = calc.Output{Key: "hose_drop", Label: "Lost in the line", Unit: unit.PSI, Decimals: 1}
)

// statedElsewhere leaves out air as it is here, which a gun's sheet cannot mean.
func statedElsewhere() calc.Input {
	in := field.FlowStated
	in.Choices = in.Choices[:4]
	return in
}

func hoseDrop(w *calc.Working) {
	pa := climate.Pressure(w, w.Given(field.Altitude))
	T0, p0 := State(w, w.Picked(field.FlowStated))
	line := NewLine(w, w.Given(field.AirDemand), T0, p0, w.Given(field.Bore), w.Given(field.LineLength), w.Picked(field.LineKind) == "steel")
	var p1, p2 calc.Num
	var ok bool
	in := field.InletPressure
	if w.Picked(field.PressureKnown) == "gun" {
		p2 = absolute(w, w.Given(in), pa)
		p1, ok = line.Before(w, p2)
	} else {
		in = field.WallPressure
		p1 = absolute(w, w.Given(in), pa)
		p2, ok = line.After(w, p1)
		ok = ok && p2.V > pa.V
	}
	if !ok {
		w.Reject(in, calc.Beyond, "cannot drive this much air through the line: it chokes, or nothing is left at its end", "Use a wider or a shorter line, or check the air the gun takes")
		return
	}
	drop := w.Step("Lost in the line", "dp = (p_1 - p_2)/6894.757293168361", unit.PSI, source.Definition, (p1.V-p2.V)/psi, p1, p2)
	wall := gauge(w, "At the regulator", p1, pa)
	w.Result(lost, drop)
	w.Result(atWall, wall)
	w.Result(atGun, gauge(w, "At the gun's inlet", p2, pa))
	judgeDrop(w, drop, wall)
}

func absolute(w *calc.Working, p, pa calc.Num) calc.Num {
	return w.Step("The same, absolute", "p = 6894.757293168361*P + p_a", unit.Pascal, source.Definition, psi*p.V+pa.V, p, pa)
}

func gauge(w *calc.Working, label calc.Phrase, p, pa calc.Num) calc.Num {
	return w.Step(label, "P = (p - p_a)/6894.757293168361", unit.PSI, source.Definition, (p.V-pa.V)/psi, p, pa)
}

func judgeDrop(w *calc.Working, drop, wall calc.Num) {
	share := w.Step("Share lost", "s = 100*dp/P_1", unit.Percent, tenth, 100*drop.V/wall.V, drop, wall)
	why := calc.Say("The line loses {drop} of {wall}, {share}", drop.To(1, "drop"), wall.To(1, "wall"), share.To(0, "share"))
	if share.V > 10 {
		w.Judge(calc.Wait, why, calc.Say("A wider line loses far less; read the gauge at the gun with the trigger pulled and set the regulator by it"))
		return
	}
	w.Judge(calc.Go, why, calc.Say("Couplers and filters come on top: read the gauge at the gun with the trigger pulled"))
}
