package viscosity

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A Cup turns seconds into viscosity by nu = K (t - c), or where B is set by nu = K t - B/t, in mm²/s.
type Cup struct {
	key       string
	K, C, B   float64
	Low, High float64        // the seconds that its formula holds for
	from      *source.Source // set up before the cup is asked for
}

// Outside its seconds a cup is still read, with a warning, down to a third of the viscosity at the low end and up to
// one and a half times that at the high end. These two margins are ours.
const thinnest, thickest = 1. / 3, 1.5

// cups are the cups' constants as the standards print them: K, c, B and the seconds they hold for.
var cups = [...]Cup{
	{"din-4", 4.57, 0, 452, 25, 150, &din53211},
	{"iso-3", 0.443, 0, 200, 30, 100, &iso2431},
	{"iso-4", 1.37, 0, 200, 30, 100, &iso2431},
	{"iso-5", 3.28, 0, 220, 30, 100, &iso2431},
	{"iso-6", 6.9, 0, 570, 30, 100, &iso2431},
	{"ford-1", 0.49, 35, 0, 55, 100, &ford},
	{"ford-2", 1.44, 18, 0, 40, 100, &ford},
	{"ford-3", 2.31, 6.58, 0, 20, 100, &ford},
	{"ford-4", 3.85, 4.49, 0, 20, 100, &ford},
	{"ford-5", 12.1, 2, 0, 20, 100, &ford},
	{"zahn-1", 1.1, 29, 0, 35, 80, &dip},
	{"zahn-2", 3.5, 14, 0, 20, 80, &dip},
	{"zahn-3", 11.7, 7.5, 0, 20, 80, &dip},
	{"zahn-4", 14.8, 5, 0, 20, 80, &dip},
	{"zahn-5", 23, 0, 0, 20, 80, &dip},
	{"shell-1", 0.226, 13, 0, 20, 80, &dip},
	{"shell-2", 0.576, 5, 0, 20, 80, &dip},
	{"shell-2-5", 0.925, 3, 0, 20, 80, &dip},
	{"shell-3", 1.51, 2, 0, 20, 80, &dip},
	{"shell-3-5", 2.17, 1.5, 0, 20, 80, &dip},
	{"shell-4", 3.45, 1, 0, 20, 80, &dip},
	{"shell-5", 6.5, 1, 0, 20, 80, &dip},
	{"shell-6", 16.2, 0.5, 0, 20, 80, &dip},
}

// CupOf finds a cup by its key in field.FlowCup. It panics on any other key.
func CupOf(key string) *Cup {
	for i := range cups {
		if cups[i].key == key {
			return &cups[i]
		}
	}
	panic("viscosity: no cup " + key)
}

// Viscosity is the kinematic viscosity in mm²/s of what runs out of the cup in t s.
func (c *Cup) Viscosity(t float64) float64 { return c.K*(t-c.C) - c.B/t }

// Seconds is how long in s a liquid of viscosity nu mm²/s, nu > 0, takes to run out of the cup.
func (c *Cup) Seconds(nu float64) float64 {
	if c.B == 0 {
		return nu/c.K + c.C
	}
	return (nu + math.Sqrt(nu*nu+4*c.K*c.B)) / (2 * c.K)
}

// A Fit says where seconds lie in a cup's range.
type Fit = calc.Phrase

// The fits. Far is so far out that nothing is answered.
const (
	Inside Fit = "inside"
	Below  Fit = "below"
	Above  Fit = "above"
	Far    Fit = "far"
)

// Fit says where t s lies.
func (c *Cup) Fit(t float64) Fit {
	least, most := c.ends()
	switch {
	case t < least || t > most:
		return Far
	case t < c.Low-1e-9:
		return Below
	case t > c.High+1e-9:
		return Above
	}
	return Inside
}

// ends are the least and the most seconds that are read.
func (c *Cup) ends() (least, most float64) {
	return c.Seconds(thinnest * c.Viscosity(c.Low)), c.Seconds(thickest * c.Viscosity(c.High))
}

// Kinematic is the kinematic viscosity in mm²/s of paint that takes t s in a cup, given by its key.
func Kinematic(w *calc.Working, key string, t calc.Num) calc.Num {
	c := CupOf(key)
	x, label, K := c.Viscosity(t.V), calc.Phrase("Kinematic viscosity"), w.Constant("Constant of the cup", unit.One, *c.from, c.K)
	if c.B != 0 {
		return w.Step(label, "nu = A*t - B/t", unit.SquareMMPerSecond, *c.from, x, K, t, w.Constant("and its second", unit.One, *c.from, c.B))
	}
	return w.Step(label, "nu = K*(t - c)", unit.SquareMMPerSecond, *c.from, x, K, t, w.Constant("Seconds it is late by", unit.Second, *c.from, c.C))
}

// SecondsIn is how many seconds paint of kinematic viscosity nu, in mm²/s, takes in a cup, given by its key.
func SecondsIn(w *calc.Working, key string, nu calc.Num) calc.Num {
	c := CupOf(key)
	x, label, K := c.Seconds(nu.V), calc.Phrase("Seconds in the cup"), w.Constant("Constant of the cup", unit.One, *c.from, c.K)
	if c.B != 0 {
		return w.Step(label, "t = (nu + sqrt(nu*nu + 4*A*B))/(2*A)", unit.Second, *c.from, x, nu, K, w.Constant("and its second", unit.One, *c.from, c.B))
	}
	return w.Step(label, "t = nu/K + c", unit.Second, *c.from, x, nu, K, w.Constant("Seconds it is late by", unit.Second, *c.from, c.C))
}

// reads takes seconds from the form and refuses those that the cup tells nothing by.
func reads(w *calc.Working, in calc.Input, key string) (t calc.Num, ok bool) {
	t = w.Given(in)
	if !t.Given() || CupOf(key).Fit(t.V) != Far {
		return t, true
	}
	least, most := CupOf(key).ends()
	w.Reject(in, calc.Beyond, "must be {least} to {most} in this cup", "Use a cup with a smaller hole for thin paint, with a larger one for thick paint",
		calc.N(least, unit.Second).To(1, "least"), calc.N(most, unit.Second).To(0, "most"))
	return t, false
}

// judge says where seconds lie in a cup's range, and returns it. Good news is left out where quiet.
func judge(w *calc.Working, key string, t calc.Num, quiet bool) Fit {
	c := CupOf(key)
	fit, do := c.Fit(t.V), calc.Say("Compare seconds in this one cup only; for a viscosity use a cup with a smaller hole")
	args := []calc.Arg{calc.Term(label(key), "cup"), t.To(1, "t"), calc.N(c.Low, unit.Second).To(0, "low"), calc.N(c.High, unit.Second).To(0, "high")}
	switch fit {
	case Inside:
		if !quiet {
			w.Judge(calc.Go, calc.Say("{cup}: {t} lies within the {low} to {high} that the cup is made for", args...), calc.Say("Keep cup and paint at one temperature"))
		}
		return fit
	case Above:
		do = calc.Say("For a viscosity use a cup with a larger hole")
	}
	w.Judge(calc.Wait, calc.Say("{cup}: {t} lies outside the {low} to {high} that the cup is made for, so its viscosity is rough", args...), do)
	return fit
}

func label(key string) calc.Phrase {
	for _, c := range field.FlowCup.Choices {
		if c.Key == key {
			return c.Label
		}
	}
	return ""
}
