package drying

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Drops between cap and panel. No measured speed of a refinish gun's drops has been found: they are taken to make
// 10 m/s good on average, 2 m/s of it against the air around them. Losses compare well; they are not measurements.

var (
	dropBalance = source.DropEvaporation.At("heat brought to a drop at rest equals heat that evaporation takes").By(source.Memory)
	dropMoving  = source.DropEvaporation.At("Sh = 2 + 0.6 Re^½ Sc^⅓; 2 m/s against the air is our choice").By(source.Memory)
	dropFlight  = source.OurChoice.At("10 m/s from cap to panel; d² falls at a steady rate")
)

// airViscosity is the kinematic viscosity of booth air in mm²/s.
const airViscosity = 15.3

// drop is the temperature in K that a drop at rest comes to, and the rate in m²/s at which its squared diameter
// shrinks: K = 8 c D M/ρ ln((1 - y∞)/(1 - ys)), with k (Ta - Td) = c D M L ln((1 - y∞)/(1 - ys)).
func (l liquid) drop(at place) (T, rate float64) {
	lo, hi := at.air-90, at.air+1
	for range 50 {
		T = (lo + hi) / 2
		film := (at.air + T) / 2
		share := max(1e-9, 1-l.pressure(T)/at.pressure) // boiling is past any balance
		loss := at.pressure / (gasConstant * film) * l.diffusivity(film, at.pressure) * l.molar * math.Log((1-at.vapour/at.pressure)/share)
		rate = 8 * loss / l.density
		if viscosity(film)*cp/prandtl*(at.air-T) > loss*l.latent(T) {
			lo = T
		} else {
			hi = T
		}
	}
	return T, max(0, rate)
}

// DropRate is how fast the squared diameter of a resting drop shrinks in µm²/s, in air of 0 to 60 °C. key is [Water]
// or a key of field.Solvent; a drop of paint loses less than one of its thinner alone.
func DropRate(w *calc.Working, c Climate, key string) calc.Num {
	T, rate := liquids[key].drop(c.place(key))
	args := []calc.Arg{c.Air.As("t"), c.Pressure.As("p")}
	if key == Water {
		args = append(args, c.Humidity.As("RH"))
	}
	cold := w.Model("Drop cools to", "where the heat that the air brings is the heat that evaporation takes", unit.DegC, dropBalance, T-kelvin, args...)
	return w.Model("Drop shrinks at", "8 times what its face loses, over the density, at that temperature", unit.SquareMicronPerSec, dropBalance,
		rate*1e12, append(args, cold.As("t_d"))...)
}

// Schmidt is the kinematic viscosity of air over the diffusivity of the vapour at 20 °C.
func Schmidt(w *calc.Working, c Climate, key string) calc.Num {
	return w.Model("Schmidt number of the vapour", "15.3 mm²/s over its diffusivity in air of 20 °C", unit.One, dropMoving,
		airViscosity*1e-6/liquids[key].diffusivity(20+kelvin, c.Pressure.V), c.Pressure.As("p"))
}

// FlightLoss is the share of a drop in percent that is gone when it lands, for a drop of size µm over distance mm that
// would shrink at rate µm²/s at rest; Sc as from [Schmidt].
func FlightLoss(w *calc.Working, rate, size, distance, Sc calc.Num) calc.Num {
	moving := sherwood(size.V, Sc.V)
	S := w.Step("Moving air hastens it", "S = 1 + 0.3 * sqrt(2 * d / 15.3) * pow(Sc, 1 / 3)", unit.One, dropMoving, moving, size, Sc)
	return w.Step("Lost in flight", "x = 100 * (1 - pow(max(0, 1 - S * K * L / (10000 * d * d)), 1.5))", unit.Percent, dropFlight,
		100*(1-math.Pow(math.Max(0, 1-moving*rate.V*distance.V/(10000*size.V*size.V)), 1.5)), S, rate, distance, size)
}

// sherwood is the Sherwood number of a drop of size µm that meets air at 2 m/s, over that of one at rest, which is 2.
func sherwood(size, Sc float64) float64 {
	return 1 + 0.3*math.Sqrt(2*size/airViscosity)*math.Pow(Sc, 1./3)
}

// half is the share of its liquid after which a film is taken to have lost its wet edge: our choice.
const half = 0.5

// WetTime is how many seconds an ordinary coat takes from leaving the gun until half of its liquid is gone: film is
// its thickness against 12 g/m², lost the share that went in flight. It is 0 where half is gone on landing and
// infinite where nothing dries. It is for comparing, as [FlashTime] is.
func WetTime(c Climate, key string, film, lost float64) float64 {
	s := ordinaryAt(c.AirSpeed.V)
	s.film *= film
	s.leaves = max(0, half-lost)
	return liquids[key].seconds(s, c.place(key))
}

// FilmTemperature is how cold a film gets in °C until nine tenths of its liquid have left: an ordinary coat on 0.8 mm
// steel, and a wet one of 30 g/m² on thin plastic, which is the coldest.
func FilmTemperature(w *calc.Working, c Climate, key string) (steel, plastic calc.Num) {
	at, s := c.place(key), ordinaryAt(c.AirSpeed.V)
	cool := func(label, how calc.Phrase) calc.Num {
		_, T := liquids[key].dry(s, at)
		return w.Model(label, how, unit.DegC, balance, T-kelvin, c.args(key)...)
	}
	steel = cool("Film on steel comes to", modelled)
	s.heatCapacity, s.film = 1500, 0.030
	plastic = cool("Wet film on thin plastic comes to", "the same for 30 g/m² on a panel of 1.5 kJ/(m² K)")
	return steel, plastic
}

// FlashRatio is how a film's drying time changes from ref to now, on ordinary sheet. It is for searching: [FlashTime]
// gives the range, and [Refuse] says where there is none.
func FlashRatio(ref, now Climate, key string) float64 {
	sheet, today := central(ref, now, key)
	return today / sheet
}
