package vent

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// DilutionAir tells how much air keeps solvent vapour well below what can burn.
func DilutionAir() *calc.Calculator {
	return &calc.Calculator{
		ID:       "dilution-air",
		Title:    "Air against burning vapour",
		Question: "How much air keeps the solvent vapour safely below what can burn?",
		Range: "Booths at room temperature and near sea level, vapour mixed evenly into the exhaust. The explosive limit falls in heat: ovens and heated booths need more, and are not answered for. " +
			"For a blend enter the lowest limit of its solvents.",
		Inputs: []calc.Input{
			field.VapourBy, field.LiquidDensity.If("vapour_by", "sheet"), field.MolarMass.If("vapour_by", "sheet"), roomAir.If("vapour_by", "sheet"), field.VapourYield,
			field.LEL, field.LELShare, field.SolventRate, field.FanFlow.Maybe(),
		},
		Outputs:  []calc.Output{airNeeded, airPerLitre, vapourVolume, fanShare},
		Work:     dilutionAir,
		Cautions: []calc.Phrase{notBreathing, caution.Estimate, caution.Flammable},
	}
}

var (
	roomAir = func() calc.Input {
		in := field.Air
		in.Limits = calc.Between(5, 40)
		return in
	}()

	airNeeded    = calc.Output{Key: "air_needed", Label: "Air needed", Unit: unit.CubicMetrePerHour, Main: true}
	airPerLitre  = calc.Output{Key: "air_per_litre", Label: "Air for the liquid", Unit: unit.CubicMetrePerLitre, Decimals: 1}
	vapourVolume = calc.Output{Key: "vapour_volume", Label: "Vapour from the liquid", Unit: unit.CubicMetrePerLitre, Decimals: 3}
	fanShare     = calc.Output{Key: "fan_share", Label: "Share of the explosive limit with your fan", Unit: unit.Percent, Decimals: 1, Optional: true}
)

func dilutionAir(w *calc.Working) {
	yield := w.Given(field.VapourYield)
	if w.Picked(field.VapourBy) == "sheet" {
		yield = vapourOf(w)
	}
	lel, s, rate, fan := w.Given(field.LEL), w.Given(field.LELShare), w.Given(field.SolventRate), w.Given(field.FanFlow)
	air := AirFor(w, yield, lel, s)
	q := w.Step("Air needed", "Q_n = 60 * ER / 1000 * A", unit.CubicMetrePerHour, quarter, 60*rate.V/1000*air.V, rate, air)
	w.Result(vapourVolume, yield)
	w.Result(airPerLitre, air)
	w.Result(airNeeded, q)
	if !fan.Given() {
		w.Judge(calc.Wait, calc.Say("It takes {q} to stay at {s} of the explosive limit", q.To(0, "q"), s.To(0, "s")), calc.Say("Measure what your fan moves, with its filters as they are"))
		return
	}
	share := w.Step("Share with your fan", "s_f = s * Q_n / Q", unit.Percent, quarter, s.V*q.V/fan.V, s, q, fan)
	w.Result(fanShare, share)
	if fan.V < q.V {
		w.Judge(calc.Stop, calc.Say("It takes {q} and the fan moves {fan}", q.To(0, "q"), fan.To(0, "fan")), calc.Say("Do not spray at this rate: fewer guns, less delivery or more air"))
		return
	}
	w.Judge(calc.Go, calc.Say("The fan moves {fan} and it takes {q}", fan.To(0, "fan"), q.To(0, "q")), calc.Say("Check the air speed at the face too, and your fire code"))
}

// AirFor is the air in m³ for each litre of liquid that keeps its vapour (yield, m³/L) at a share in percent of the
// lower explosive limit (lel, percent by volume). At 25 % it is the US rule's 4 (100 - LEL) V / LEL,
// which asks for 0.7 to 5 % less than exact arithmetic, for limits of 1 to 7 %.
func AirFor(w *calc.Working, yield, lel, share calc.Num) calc.Num {
	return w.Step("Air for a litre of solvent", "A = 100 / s * (100 - LEL) * V_v / LEL", unit.CubicMetrePerLitre, quarter,
		100/share.V*(100-lel.V)*yield.V/lel.V, share, lel, yield)
}
