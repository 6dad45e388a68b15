package job

import (
	"math"
	"slices"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/gun"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// An event is one line of the call sheet. Times are minutes after the start of the first mixing.
type event struct {
	kind        string // "rinse", "mix", "coat", "flash", "dry", "bake"
	from, until calc.Num
	what, mind  calc.Text
	product     int
	useBy       calc.Num // of a cup; given for a two-pack mix
	timer       *calc.Timer
}

// A sheet lays the events of the job out in time: one painter, products in the order of the table.
type sheet struct {
	*job
	start  int // minutes after midnight
	events []event
	free   calc.Num   // when the painter is
	ready  []calc.Num // when each part may be sprayed again
	last   []sprayed  // the coat that each part had last
	began  calc.Num   // when the coat being sprayed began
}

func (j *job) callSheet() {
	zero := j.Constant("Start of the first mixing", unit.Minute, source.Definition, 0)
	s := &sheet{job: j, start: j.startClock(), free: zero}
	for range j.parts {
		s.ready, s.last = append(s.ready, zero), append(s.last, sprayed{})
	}
	for i, c := range j.coats {
		s.product(i, c)
	}
	end := zero
	for _, r := range s.ready {
		end = s.later("All parts ready", end, r)
	}
	start := s.start
	// In whole minutes, like the times that it lies between.
	j.Result(takes, j.Step(takes.Label, "T = ceil(t - 0.000000001)", unit.Minute, source.Definition, up(end.V), end))
	j.Tell(doneAt, j.done(start, end))
	for _, e := range s.events {
		j.List(timeline, calc.Told(clock(start, e.from)), calc.Told(clock(start, e.until)), calc.Told(e.what).Timed(e.timer), calc.Told(e.mind))
	}
	j.Draw(s.chart(start, end.V))
}

func (j *job) startClock() int {
	start, _ := field.ReadClock(j.Words(field.Clock))
	return start
}

// clock shows minutes after the start as a time of day, to the minute that has then begun.
func clock(start int, t calc.Num) calc.Text {
	return calc.Say("{clock}", calc.Words(field.ShowClock(start+int(up(t.V))), "clock"), t.As("t"))
}

// done is the time of day, or how long after the start where no clock was given: to the minute that has then begun, as the
// call sheet says of its last line.
func (j *job) done(start int, end calc.Num) calc.Text {
	minutes := int(math.Ceil(end.V - 1e-9))
	if j.Words(field.Clock) != "" {
		return calc.Say("{clock}", calc.Words(field.ShowClock(start+minutes), "clock"), end.As("t"))
	}
	return calc.Say("{h} h {m} min after you start", whole(minutes/60, "h"), whole(minutes%60, "m"), end.As("t"))
}

// deadline is clock for a time that must not be passed: to the minute before.
func deadline(start int, t calc.Num) calc.Text {
	return calc.Say("{clock}", calc.Words(field.ShowClock(start+int(down(t.V))), "clock"), t.As("t"))
}

func whole(n int, name string) calc.Arg { return calc.N(float64(n), unit.One).To(0, name) }

// later is the later of two times.
func (s *sheet) later(label calc.Phrase, a, b calc.Num) calc.Num {
	if a.V == b.V {
		return a
	}
	return s.Step(label, "t = max(a, b)", unit.Minute, source.Definition, max(a.V, b.V), a, b)
}

// after is a time some minutes after another.
func (s *sheet) after(label calc.Phrase, t, minutes calc.Num) calc.Num {
	return s.Step(label, "t = a + b", unit.Minute, source.Definition, t.V+minutes.V, t, minutes)
}

// product puts one product on: rinse, then cup by cup with flash-off between coats, then what dries it.
func (s *sheet) product(i int, c *coat) {
	name := calc.Words(c.name, "name")
	if i > 0 && s.gun.rinseTime.V > 0 {
		until := s.after("Gun clean", s.free, s.gun.rinseTime)
		s.add(event{kind: "rinse", from: s.free, until: until, product: i, what: calc.Say("Rinse the gun for {name}", name),
			mind: calc.Say("In the gun washer; no solvent mist in the shop")})
		s.free = until
	}
	ready := s.free
	for p := range s.parts {
		if s.on(c, p) {
			ready = s.later(s.Named("Parts ready for {name}", name), ready, s.ready[p])
		}
	}
	for k, cup := range c.cups {
		ready = s.cup(i, k, c, cup, ready)
	}
	s.dry(i, c)
}

func (s *sheet) on(c *coat, p int) bool { return c.colour == "" || c.colour == s.parts[p].colour }

// add puts an event in its place in time, after those that start with it.
func (s *sheet) add(e event) {
	i := len(s.events)
	for i > 0 && s.events[i-1].from.V > e.from.V {
		i--
	}
	s.events = slices.Insert(s.events, i, e)
}

// cup mixes one cup so that it is ready when the parts are, and sprays it. It returns when the coat after its
// last may start.
func (s *sheet) cup(i, k int, c *coat, cup cup, ready calc.Num) calc.Num {
	start := s.Step("Start mixing", "t = max(free, ready - m)", unit.Minute, source.Definition,
		max(s.free.V, ready.V-s.gun.mixTime.V), s.free, ready, s.gun.mixTime)
	mixed := s.after("Cup mixed", start, s.gun.mixTime)
	e := event{kind: "mix", from: start, until: mixed, product: i, what: calc.Say("Mix {cup}: {v}", cupNamed(c, k).As("cup"), cup.volume.To(0, "v")),
		mind: calc.Say("One-pack: no pot life; keep the lid on")}
	if c.noPotLife {
		e.mind = calc.Say("Not yet: its pot life is not known in this heat")
	}
	if c.pot.Given() {
		e.useBy = s.after("Use the cup by", start, c.pot)
		e.timer = c.Timer(calc.PotLife, s.Voiced(cupFirst(c, k)), calc.Num{}, calc.Num{}, c.pot)
		e.mind = calc.Say("Use by {t}", deadline(s.start, e.useBy).As("t"))
	}
	if last := len(c.cups) - 1; last > 0 && k == last {
		e.mind = calc.Say("{by}. First see how far the others went: on average {left} would be left over", e.mind.As("by"), c.left.To(0, "left"))
	}
	s.add(e)
	now := mixed
	for n, sp := range cup.sprays {
		if n > 0 {
			now = s.later("Next coat may start", now, ready)
		}
		v := calc.N(sp.volume, unit.Millilitre).Called("Sprayed in this coat from this cup")
		done := s.after("Coat on", now, gun.SprayTime(s.Working, v, s.gun.delivery, s.gun.trigger))
		s.add(event{kind: "coat", from: now, until: done, product: i,
			what: calc.Say("{name}, coat {i} of {n}", calc.Words(c.name, "name"), whole(sp.coat, "i"), whole(int(c.coats.V), "n")),
			mind: calc.Say("{wet} wet; comb wets {comb}", c.wet.To(0, "wet"), c.comb.To(0, "comb"))})
		if s.coatBegins(c, k, n) {
			s.began = now
		}
		now, ready = done, done
		if s.coatEnds(c, k, n) {
			s.recoated(c, now)
			if k < len(c.cups)-1 || n < len(cup.sprays)-1 {
				ready = s.flash(i, c, now)
			}
		}
	}
	s.free = now
	return ready
}

// coatBegins reports whether a spray is the first of its coat.
func (s *sheet) coatBegins(c *coat, k, n int) bool {
	coat := c.cups[k].sprays[n].coat
	if n > 0 {
		return c.cups[k].sprays[n-1].coat != coat
	}
	before := c.cups[max(0, k-1)].sprays
	return k == 0 || before[len(before)-1].coat != coat
}

// coatEnds reports whether a spray is the last of its coat.
func (s *sheet) coatEnds(c *coat, k, n int) bool {
	coat := c.cups[k].sprays[n].coat
	if n+1 < len(c.cups[k].sprays) {
		return c.cups[k].sprays[n+1].coat != coat
	}
	return k+1 == len(c.cups) || c.cups[k+1].sprays[0].coat != coat
}

// flash waits out the longest flash-off.
func (s *sheet) flash(i int, c *coat, now calc.Num) calc.Num {
	until := s.after("Flashed off", now, c.flashMost)
	s.add(event{kind: "flash", from: now, until: until, product: i, timer: c.flashTimer(), what: calc.Say("{name} flashes off", calc.Words(c.name, "name")),
		mind: calc.Say("{range} in this air; touch-test a masked edge", span(c.flash, c.flashMost).As("range"))})
	return until
}

// span is a range of times, or one where both ends read alike.
func span(low, high calc.Num) calc.Text {
	if math.Round(low.V) == math.Round(high.V) {
		return calc.Say("{t}", high.To(0, "t"))
	}
	return calc.Say("{low} to {high}", low.To(0, "low"), high.To(0, "high"))
}

// dry is what follows the last coat. A bake holds the booth, and so the painter; air drying does not.
func (s *sheet) dry(i int, c *coat) {
	ended := s.free
	name := calc.Words(c.name, "name")
	if c.Picked(field.Drying) == "air" {
		ready := s.after("Dry", ended, c.dry)
		s.add(event{kind: "dry", from: ended, until: ready, product: i, what: calc.Say("{name} dries in the air", name), mind: calc.Say("Keep dust and water off")})
		s.leave(c, ready)
		return
	}
	ready := s.flash(i, c, ended)
	if c.Picked(field.Drying) == "bake" {
		hot := s.after("Metal at temperature", ready, c.Given(heatUp))
		done := s.after("Baked", hot, c.dry)
		baked := calc.N(done.V-ready.V, unit.Minute)
		s.add(event{kind: "bake", from: ready, until: done, product: i, timer: c.Timer(calc.Bake, c.name, calc.Num{}, calc.Num{}, baked), what: calc.Say("Bake {name}", name),
			mind: calc.Say("{t} metal temperature for {m}, after heating up", c.Given(dryAt).To(0, "t"), c.dry.To(0, "m"))})
		ready, s.free = done, done
	}
	s.leave(c, ready)
}

// leave notes on every part the product is on when it may be sprayed again.
func (s *sheet) leave(c *coat, ready calc.Num) {
	for p := range s.parts {
		if s.on(c, p) {
			s.ready[p] = ready
		}
	}
}
