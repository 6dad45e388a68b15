package supply

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A Line is a hose or pipe with a flow through it, ready to be solved for the pressure at one end.
type Line struct {
	Choke    calc.Num // Pa: the line cannot end at less, nor start at it
	Friction calc.Num // Darcy's friction factor
	bore     calc.Num // mm
	length   calc.Num // m
}

// NewLine takes free air Q in L/min stated at T0 K and p0 Pa, the line's bore in mm and length in m, and whether it is of
// steel. The air in it is at 20 °C.
func NewLine(w *calc.Working, q, T0, p0, bore, length calc.Num, ofSteel bool) Line {
	rough, from := 0.01, smooth
	if ofSteel {
		rough, from = 0.045, steel
	}
	T := w.Constant("Air in the line", unit.Kelvin, warm, 293.15)
	mu := w.Constant("Viscosity of air", unit.MillipascalSecond, viscous, 0.0182)
	eps := w.Constant("Roughness of the wall", unit.Millimetre, from, rough)
	D := bore.V
	choke := w.Step("Flow as a pressure: the line chokes below it", "p_c = Q/60000*p_0/T_0*4000000/(pi*D*D)*sqrt(T/287.05)", unit.Pascal, pipe,
		q.V/60000*p0.V/T0.V*4000000/(math.Pi*D*D)*math.Sqrt(T.V/gas), q, p0, T0, bore, T)
	re := w.Step("Reynolds number", "Re = p_c*D/(mu*sqrt(287.05*T))", unit.One, pipe, choke.V*D/(mu.V*math.Sqrt(gas*T.V)), choke, bore, mu, T)
	f := w.Step("Friction factor", "f = max(64/Re, pow(-1.8*log10(pow(epsilon/D/3.7, 1.11) + 6.9/Re), -2))", unit.One, friction, Darcy(re.V, eps.V/D), re, eps, bore)
	return Line{choke, f, bore, length}
}

// Darcy is Darcy's friction factor for a Reynolds number and a roughness over bore, by Haaland's formula, or 64/Re
// where that is more.
func Darcy(re, rough float64) float64 {
	return math.Max(64/re, math.Pow(-1.8*math.Log10(math.Pow(rough/3.7, 1.11)+6.9/re), -2))
}

// balance is isothermal flow with friction: it is nought where p1 and p2, in Pa, are the pressures at the two ends.
func balance(p1, p2, choke, fLD float64) float64 {
	return p1*p1 - p2*p2 - choke*choke*(fLD+2*math.Log(p1/p2))
}

// Outlet is the pressure in Pa at the far end of a line that starts at p1 Pa. ok is false where the line chokes.
func Outlet(p1, choke, fLD float64) (p2 float64, ok bool) {
	if choke >= p1 || balance(p1, choke, choke, fLD) < 0 {
		return 0, false
	}
	return root(func(p2 float64) float64 { return -balance(p1, p2, choke, fLD) }, choke, p1), true
}

// Inlet is the pressure in Pa with which a line must start to end at p2 Pa. ok is false where the line chokes.
func Inlet(p2, choke, fLD float64) (p1 float64, ok bool) {
	if choke >= p2 {
		return 0, false
	}
	most := 2 * p2
	for balance(most, p2, choke, fLD) < 0 {
		most *= 2
	}
	return root(func(p1 float64) float64 { return balance(p1, p2, choke, fLD) }, p2, most), true
}

// root halves the interval in which f rises through nought until nothing lies between.
func root(f func(float64) float64, lo, hi float64) float64 {
	for range 100 {
		mid := lo + (hi-lo)/2
		if mid <= lo || mid >= hi {
			break
		}
		if f(mid) < 0 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return hi
}

const flowEquation = "p_1*p_1 - p_2*p_2 = p_c*p_c*(1000*f*L/D + 2*ln(p_1/p_2))"

func (l Line) fLD() float64 { return 1000 * l.Friction.V * l.length.V / l.bore.V }

// After is the pressure in Pa at the far end of the line that starts at p1 Pa.
func (l Line) After(w *calc.Working, p1 calc.Num) (p2 calc.Num, ok bool) {
	x, ok := Outlet(p1.V, l.Choke.V, l.fLD())
	if !ok {
		return p2, false
	}
	return w.Solve("Pressure at the gun, absolute", "p_2", flowEquation, unit.Pascal, pipe, x, p1, l.Choke, l.Friction, l.length, l.bore), true
}

// Before is the pressure in Pa with which the line must start to end at p2 Pa.
func (l Line) Before(w *calc.Working, p2 calc.Num) (p1 calc.Num, ok bool) {
	x, ok := Inlet(p2.V, l.Choke.V, l.fLD())
	if !ok {
		return p1, false
	}
	return w.Solve("Pressure at the regulator, absolute", "p_1", flowEquation, unit.Pascal, pipe, x, p2, l.Choke, l.Friction, l.length, l.bore), true
}
