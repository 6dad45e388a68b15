package film

import (
	"math"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Where the distribution of the amount comes from. A figure typed in is taken as the middle one: as often more as
// less. Film and transfer efficiency multiply, so their errors add as logarithms; the sum with the losses is
// taken as log-normal again, with its own mean and standard deviation.
var (
	products = source.LogNormal.At("product of log-normal factors")
	moments  = source.Fenton1960.By(source.SecondHand)
	partial  = source.LogNormal.At("partial expectation")
)

// lossSpread is how far, in percent, the paint left in cup, filter and gun varies about the figure given. Nobody
// has published it; a quarter is taken because the film of paint in a cup depends on its thickness and its wait.
const lossSpread = 25

// Demand is the paint in mL that must leave the gun to cover area m² with a dry film dft in µm, from the volume
// solids vs of the sprayed mix and the transfer efficiency te, both in percent. It is the middle figure: half
// of all jobs take more. Valid for area, dft > 0 and 0 < vs, te <= 100. (1 m² × 1 µm is 1 mL.)
func Demand(w *calc.Working, area, dft, vs, te calc.Num) calc.Num {
	return w.Step("Paint through the gun (1 µm on 1 m² is 1 mL)", "q = A * DFT / (VS / 100) / (TE / 100)", unit.Millilitre, source.Definition,
		area.V*dft.V/(vs.V/100)/(te.V/100), area, dft, vs, te).Called("Paint through the gun")
}

// ToMix is how much to mix so as to run short in no more than 100−confidence jobs of a hundred, and how much is
// left over on average, both in mL. demand is the paint through the gun and losses what stays in cup, filter
// and gun, in mL; filmSpread and transferSpread are standard deviations in percent of the figure itself. Valid
// for demand > 0, losses >= 0, spreads from 0 to 40, confidence from 50 to 99. Held against integration with
// losses of up to ten times the demand, the amount is within 0.7 % up to 95 % sure and 2 % at 99 % with spreads
// of up to 25 %; with 40 % within 3 % and 5 %. Beyond that it is too small by more.
func ToMix(w *calc.Working, demand, losses, filmSpread, transferSpread, confidence calc.Num) (amount, leftover calc.Num) {
	mean, spread := need(w, demand, losses, filmSpread, transferSpread)
	p, m, s := confidence.V, mean.V, spread.V
	z := w.Solve("Standard deviations above the middle", "z", "0.5 * (1 + erf(z / sqrt(2))) = p / 100", unit.One, source.LogNormal,
		math.Sqrt2*math.Erfinv(2*p/100-1), confidence)
	amount = w.Step("Amount to mix", "Q = m * exp(z * s_2 - s_2 * s_2 / 2)", unit.Millilitre, moments,
		m*math.Exp(z.V*s-s*s/2), mean, z, spread)
	leftover = w.Step("Left over on average", "L = max(0, Q * p / 100 - m * 0.5 * (1 + erf((z - s_2) / sqrt(2))))", unit.Millilitre, partial,
		max(0, amount.V*p/100-m*0.5*(1+math.Erf((z.V-s)/math.Sqrt2))),
		amount, confidence, mean, z, spread)
	return amount, leftover
}

// need is the mean in mL of demand and losses together, and the standard deviation of its logarithm.
func need(w *calc.Working, demand, losses, filmSpread, transferSpread calc.Num) (mean, spread calc.Num) {
	s := w.Step("Spread of the demand, as a logarithm", "s = sqrt(ln(1 + pow(u_f / 100, 2)) + ln(1 + pow(u_t / 100, 2)))", unit.One, products,
		math.Sqrt(math.Log(1+math.Pow(filmSpread.V/100, 2))+math.Log(1+math.Pow(transferSpread.V/100, 2))),
		filmSpread, transferSpread)
	m1 := w.Step("Mean demand", "m_1 = q * exp(s * s / 2)", unit.Millilitre, products,
		demand.V*math.Exp(s.V*s.V/2), demand, s)
	d1 := w.Step("Standard deviation of the demand", "d_1 = m_1 * sqrt(exp(s * s) - 1)", unit.Millilitre, products,
		m1.V*math.Sqrt(math.Exp(s.V*s.V)-1), m1, s)
	u := w.Constant("Losses vary by", unit.Percent, source.CommonPractice, lossSpread)
	mH := w.Step("Mean losses", "m_H = H * sqrt(1 + pow(u_H / 100, 2))", unit.Millilitre, products,
		losses.V*math.Sqrt(1+math.Pow(u.V/100, 2)), losses, u)
	mean = w.Step("Mean of demand and losses", "m = m_1 + m_H", unit.Millilitre, moments,
		m1.V+mH.V, m1, mH)
	spread = w.Step("Spread of both, as a logarithm", "s_2 = sqrt(ln(1 + (d_1 * d_1 + pow(m_H * u_H / 100, 2)) / (m * m)))", unit.One, moments,
		math.Sqrt(math.Log(1+(d1.V*d1.V+math.Pow(mH.V*u.V/100, 2))/(mean.V*mean.V))),
		d1, mH, u, mean)
	return mean, spread
}
