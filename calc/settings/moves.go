package settings

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// atSameFilm tries what leaves the film of a coat as it is, and returns the wet time with all of it.
func (c *comparison) atSameFilm(now calc.Num) calc.Num {
	best, all, L := now, c.own, c.own[distance]
	if all[pressure] = c.start; c.start.V != c.ref.V {
		best = c.move(calc.Say("Pressure from {a} to {b}", c.ref.To(1, "a"), c.start.To(1, "b")), &all)
	}
	near := c.nearer(now.V)
	if suits(now.V) || near >= L.V {
		return best
	}
	one := c.own
	one[distance] = c.Constant("Distance, changed", L.Unit, ourSteps, near)
	one[speed] = c.Step("Gun speed for the same film", "v = v_0 * L_0 / L", unit.MetrePerSecond, paintSpent, c.own[speed].V*L.V/near, c.own[speed], L, one[distance])
	best = c.move(calc.Say("Distance from {a} to {b}, gun at {v} to lay the same film", L.To(0, "a"), one[distance].To(0, "b"), one[speed].To(2, "v")), &one)
	if c.start.V != c.ref.V {
		all[distance], all[speed] = one[distance], one[speed]
		best = c.try(calc.Say("Pressure and distance together, gun at {v}", all[speed].To(2, "v")), &all)
	}
	return best
}

// nearer is the distance in mm that a dry film is sprayed from, in steps that a hand can keep to.
func (c *comparison) nearer(share float64) float64 {
	L, near := c.own[distance].V, 1.0
	if c.Picked(field.Gun) == "conventional" {
		near = 2
	}
	return towards(L, math.Max(near*nearest, L*math.Max(leastNear, share/100)), 10)
}

// otherFilm tries coats that lay more where they dry too fast, and less where too slowly, and returns the wet time of the
// better. It is a move only where it lays less: more film than the sheet bears is no cure.
func (c *comparison) otherFilm(now calc.Num) (best calc.Num) {
	o, v := c.own[overlap].V, c.own[speed].V
	film, to := calc.Phrase("Thinner coats"), [...]float64{overlap: math.Min(o, math.Max(leastLap, 100-(100-o)/leastFilm)), speed: math.Max(v, math.Min(fastest, v/leastFilm))}
	thinner := now.V > 100
	if !thinner {
		film, to[overlap], to[speed] = "Or wetter coats, if the sheet bears them", 100-(100-o)/mostFilm, math.Min(v, math.Max(slowest, v/mostFilm))
	}
	best, most := now, calc.Text{}
	for i := overlap; i <= speed; i++ {
		from, x := c.own[i], towards(c.own[i].V, to[i], steps[i])
		if x == from.V {
			continue
		}
		one := c.own
		one[i] = c.Constant(c.Named("{what}, changed", calc.Term(from.Label, "what")), from.Unit, ourSteps, x)
		decimals := 2 * (i - overlap)
		says := calc.Say("{film}: {what} from {a} to {b}", calc.Term(film, "film"), calc.Say(from.Label).Within("what"), from.To(decimals, "a"), one[i].To(decimals, "b"))
		if wet := c.try(says, &one); apart(wet.V, now.V) > apart(best.V, now.V) {
			best, most = wet, says
		}
	}
	if thinner && most.Template != "" {
		c.rank(most, best)
	}
	return best
}

// steps are what a hand can keep to.
var steps = [...]float64{overlap: 5, speed: 0.05}

// towards goes from x to y, but only as far as whole steps take it.
func towards(x, y, step float64) float64 {
	if y < x {
		return math.Min(x, math.Ceil(y/step-1e-9)*step)
	}
	return math.Max(x, math.Floor(y/step+1e-9)*step)
}

// move tries a setup that may be advised.
func (c *comparison) move(says calc.Text, s *setup) calc.Num {
	wet := c.try(says, s)
	c.rank(says, wet)
	return wet
}

// rank puts a move before those that do less.
func (c *comparison) rank(says calc.Text, wet calc.Num) {
	c.moves = append(c.moves, move{says, wet})
	for i := len(c.moves) - 1; i > 0 && apart(wet.V, c.wetNow.V) > apart(c.moves[i-1].wet.V, c.wetNow.V); i-- {
		c.moves[i-1], c.moves[i] = c.moves[i], c.moves[i-1]
	}
}
