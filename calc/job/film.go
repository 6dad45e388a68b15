package job

import (
	"spraywright/calc"
	"spraywright/calc/film"
	"spraywright/calc/gun"
)

// filmOfCoats says how wet to spray each coat, what the comb shows, and how to move the gun for it.
func (j *job) filmOfCoats() {
	g := j.gun
	gap, _ := gun.Strokes(j.Working, g.fan, g.overlap)
	perPass := gun.FilmPerPass(j.Working, g.delivery, g.transfer, g.fan, g.overlap, g.speed)
	for _, c := range j.coats {
		c.wet = film.Wet(j.Working, c.dryFilm, c.solids, c.coats)
		wets, not := film.Comb(j.Working, c.wet, g.combStep)
		c.comb = wets
		exact, whole := gun.Passes(j.Working, c.wet, perPass)
		speed := gun.SpeedFor(j.Working, g.delivery, g.transfer, g.fan, g.overlap, c.wet, whole)
		j.List(films, c.told(),
			calc.Of(c.wet), calc.Of(wets), calc.Of(not), calc.Of(exact), calc.Of(whole), calc.Of(speed), calc.Of(gap))
	}
}
