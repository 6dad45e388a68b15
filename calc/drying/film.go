package drying

import "math"

// A setup is what is not known about the job: the panel, the film, and how the air goes over it.
type setup struct {
	heatCapacity float64 // of the panel, J/(m² K)
	film         float64 // liquid in the wet film, kg/m²
	leaves       float64 // share of it that has to go
	faces        float64 // that take up heat: the wet one, or the back too
	length       float64 // that the air has come along the part, m
	emissivity   float64
	exponent     float64 // heat transfer goes with this power of the air speed
	pivot        float64 // air speed in m/s at which every exponent gives the same
}

// ordinary is a coat with 12 g/m² of liquid on one face of 0.8 mm steel, of which nine tenths have to go. Every
// figure is a choice of ours; [variants] spreads them.
var ordinary = setup{heatCapacity: 3080, film: 0.012, leaves: 0.9, faces: 1, length: 0.5, emissivity: 0.9, exponent: 0.5}

// A place is a climate in plain numbers: K, Pa, m/s. vapour is what the air already holds of the liquid.
type place struct{ air, panel, pressure, vapour, speed float64 }

// A drying is one liquid drying in one place.
type drying struct {
	liquid
	setup
	place
	heat, mass float64 // transfer coefficients: W/(m² K), with radiation; m/s
}

// seconds is how long the film takes, by one lumped node for film and panel:
//
//	Cs dT/dt = faces (h + hr) (Ta - T) - J L,  dm/dt = -J,  J = hm M/(R Tm) (ps(T) - p∞),  Tm = (Ta + T)/2
//
// It is infinite where the film never dries.
func (l liquid) seconds(s setup, at place) float64 {
	t, _ := l.dry(s, at)
	return t
}

// dry is how long the film takes in seconds, and the temperature it has come to by then.
func (l liquid) dry(s setup, at place) (t, T float64) {
	d := drying{liquid: l, setup: s, place: at}
	d.transfer(at.air)
	d.transfer((at.air + d.steady()) / 2)
	return d.run()
}

// transfer sets the coefficients for air of temperature T between film and booth. The film is laminar all the way
// (Re < 5e5) at any speed the form takes: Nu = 0.664 Re^½ Pr^⅓, and hm/h = 1/(rho cp Le^⅔). Still air moves at
// 0.1 m/s by itself.
func (d *drying) transfer(T float64) {
	const stefan = 5.670374419e-8
	density := d.place.pressure / (287.042 * T)
	viscosity := viscosity(T)
	conductivity := viscosity * cp / prandtl
	speed, pivot := math.Hypot(d.speed, 0.1), math.Hypot(d.pivot, 0.1)
	h := nusselt(density*pivot*d.length/viscosity, prandtl) * conductivity / d.length * math.Pow(speed/pivot, d.exponent)
	lewis := conductivity / (density * cp) / d.diffusivity(T, d.place.pressure)
	d.mass = h / (density * cp * math.Pow(lewis, 2./3))
	d.heat = d.faces * (h + 4*d.emissivity*stefan*T*T*T)
}

// Air: heat capacity in J/(kg K) and Prandtl number (Incropera, table A.4, memory).
const cp, prandtl = 1007, 0.707

// viscosity of air in Pa s, by Sutherland's formula.
func viscosity(T float64) float64 {
	return 1.716e-5 * math.Pow(T/273.15, 1.5) * (273.15 + 110.4) / (T + 110.4)
}

// nusselt is the mean Nusselt number of a plate in laminar flow, or with Sc for Pr its Sherwood number.
func nusselt(reynolds, prandtl float64) float64 {
	return 0.664 * math.Sqrt(reynolds) * math.Cbrt(prandtl)
}

// flux is what leaves the film, kg/(m² s), at film temperature T.
func (d *drying) flux(T float64) float64 {
	return d.mass * d.molar / (gasConstant * (d.air + T) / 2) * (d.liquid.pressure(T) - d.vapour)
}

// rates are what leaves the film of temperature T, kg/(m² s), and dT/dt.
func (d *drying) rates(T float64) (flux, warming float64) {
	flux = d.flux(T)
	return flux, (d.heat*(d.air-T) - flux*d.latent(T)) / d.heatCapacity
}

func (d *drying) warming(T float64) float64 {
	_, warming := d.rates(T)
	return warming
}

// steady is the temperature at which the film takes up as much heat as evaporation carries off. The warmer the film, the
// faster dT/dt falls, so that Newton's steps from above it never pass it.
func (d *drying) steady() float64 {
	T := d.air + 1
	for range 30 {
		change := d.warming(T) / d.slope(T)
		T -= change
		if math.Abs(change) < 1e-9 {
			break
		}
	}
	return T
}

// run steps by Runge and Kutta's fourth-order rule until the film is dry or all but steady, and ends in one step. It
// returns how long that took and the temperature at the end.
func (d *drying) run() (t, T float64) {
	T, left := d.panel, d.film*d.leaves
	steady := d.steady()
	if d.flux(steady) <= 0 {
		return math.Inf(1), steady
	}
	// The slowest the film answers to a change is at its steady temperature, the fastest at its warmest.
	answer := 1 / max(-d.slope(steady), -d.slope(max(T, d.air)))
	settle := -1 / d.slope(steady)
	// Half of the fastest answer keeps the time within 0.02 % of what steps a tenth as long give.
	step, least := 0.5*answer, d.flux(steady)
	now := d.at(T)
	for range 2000 {
		if math.Abs(now.T-steady) < 0.02 && left > 8*settle*least {
			early := (now.flux - least) * settle // what it loses more while it settles
			return t + (left-early)/least, steady
		}
		next, lost := d.step(now, step)
		if lost >= left {
			return d.last(now, t, left, step, lost)
		}
		now, t, left = next, t+step, left-lost
	}
	return math.Inf(1), now.T
}

// A moment is the film at one temperature, with what leaves it then and dT/dt.
type moment struct{ T, flux, warming float64 }

func (d *drying) at(T float64) moment {
	flux, warming := d.rates(T)
	return moment{T, flux, warming}
}

// slope is how dT/dt falls with T.
func (d *drying) slope(T float64) float64 { return (d.warming(T+0.01) - d.warming(T-0.01)) / 0.02 }

// step goes dt seconds on: the film then, and the mass lost.
func (d *drying) step(now moment, dt float64) (next moment, lost float64) {
	k1 := now.warming
	k2 := d.warming(now.T + dt/2*k1)
	k3 := d.warming(now.T + dt/2*k2)
	k4 := d.warming(now.T + dt*k3)
	next = d.at(now.T + dt/6*(k1+2*k2+2*k3+k4))
	middle := (now.T+next.T)/2 + dt/8*(k1-next.warming) // Hermite, from both ends
	return next, dt / 6 * (now.flux + 4*d.flux(middle) + next.flux)
}

// last is the part of a step in which the rest of the liquid goes: when that is, and how warm the film is then.
func (d *drying) last(now moment, t, left, step, lost float64) (end, T float64) {
	part := step * left / lost
	for range 2 {
		next, gone := d.step(now, part)
		part += (left - gone) / next.flux
	}
	next, _ := d.step(now, part)
	return t + part, next.T
}
