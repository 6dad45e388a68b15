package gun

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// DistanceAndArc tells what holding the gun too far, or swinging it from the wrist, does to the film.
func DistanceAndArc() *calc.Calculator {
	return &calc.Calculator{
		ID:       "gun-distance",
		Title:    "Distance and arcing",
		Question: "What does holding the gun too far, or swinging it in an arc, do to my film?",
		Range: "Distances up to twice apart, the gun turned up to 60° by the wrist at an even swing, and a fan that widens with distance. " +
			"The share of paint that reaches the panel is taken as the same; in truth it falls with distance and slant, so far films come out thinner still.",
		Inputs:   []calc.Input{field.GunDistance, field.DistanceHeld, field.GunTurned, field.WetFilm.Maybe()},
		Outputs:  []calc.Output{filmEnds, filmMiddle, endsAt, wetEnds, wetMiddle},
		Work:     distanceAndArc,
		Cautions: []calc.Phrase{caution.Isocyanate},
	}
}

var (
	filmEnds   = calc.Output{Key: "film_ends", Label: "Film at the ends of the stroke, of what you set up for", Unit: unit.Percent, Main: true}
	filmMiddle = calc.Output{Key: "film_middle", Label: "Film in the middle of the stroke", Unit: unit.Percent}
	endsAt     = calc.Output{Key: "ends_at", Label: "Gun is turned that far at this distance from the middle", Unit: unit.Millimetre}
	wetEnds    = calc.Output{Key: "wet_ends", Label: "Wet film at the ends", Unit: unit.Micrometre, Optional: true}
	wetMiddle  = calc.Output{Key: "wet_middle", Label: "Wet film in the middle", Unit: unit.Micrometre, Optional: true}
)

var (
	fanWidens = source.Definition.At("a fan as wide as it is far away spreads the same paint")
	arcs      = source.Definition.At("turned by theta the fan is 1/cos wider and sweeps the panel 1/cos² faster")
	eighty    = source.ISO19840.At("no reading below 80 % of the nominal film").By(source.SecondHand)
)

// distancesApart is how many times further one distance may be than the other.
const distancesApart = 2

func distanceAndArc(w *calc.Working) {
	meant, held, theta := w.Given(field.GunDistance), w.Given(field.DistanceHeld), w.Given(field.GunTurned)
	if far(meant, held, distancesApart) {
		w.Reject(field.DistanceHeld, calc.Beyond, "is more than twice off the distance you set up for", "Hold the gun nearer to it and ask again")
		return
	}
	turn := theta.V * math.Pi / 180
	middle := w.Step("Film in the middle", "f_m = 100 * L / L_2", unit.Percent, fanWidens, 100*meant.V/held.V, meant, held)
	ends := w.Step("Film at the ends", "f_e = f_m * pow(cos(theta * pi / 180), 3)", unit.Percent, arcs, middle.V*math.Pow(math.Cos(turn), 3), middle, theta)
	w.Result(filmMiddle, middle)
	w.Result(filmEnds, ends)
	w.Result(endsAt, w.Step("From the middle of the stroke", "x = L_2 * tan(theta * pi / 180)", unit.Millimetre, source.Definition, held.V*math.Tan(turn), held, theta))
	if h := w.Given(field.WetFilm); h.Given() {
		of := func(label calc.Phrase, share calc.Num) calc.Num {
			return w.Step(label, "h_x = h * f / 100", unit.Micrometre, source.Definition, h.V*share.V/100, h, share)
		}
		w.Result(wetMiddle, of("Wet film in the middle", middle))
		w.Result(wetEnds, of("Wet film at the ends", ends))
	}
	least := w.Constant("Thinnest that an acceptance rule lets pass", unit.Percent, eighty, 80)
	switch {
	case ends.V < least.V:
		w.Judge(calc.Wait, calc.Say("The ends get {ends} of the film; below {least} a usual acceptance rule fails it", ends.To(0, "ends"), least.To(0, "least")),
			calc.Say("Keep the gun square and at its distance: move the arm, not the wrist"))
	case middle.V > 10000/least.V:
		w.Judge(calc.Wait, calc.Say("The middle gets {middle} of the film and may run", middle.To(0, "middle")), calc.Say("Go back to your distance, or move faster"))
	default:
		w.Judge(calc.Go, calc.Say("The film is {ends} at the ends and {middle} in the middle", ends.To(0, "ends"), middle.To(0, "middle")), calc.Say("Check with a comb at both places"))
	}
}
