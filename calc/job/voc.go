package job

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
	"spraywright/calc/voc"
)

// vocAndCost holds each product to the limit table chosen and adds up solvent and money.
func (j *job) vocAndCost() {
	if j.Picked(field.Limits) != "none" {
		j.Caution(caution.LocalRule)
	}
	var out, cost, waste calc.Num
	var unpriced []string
	for _, c := range j.coats {
		mass := voc.Emitted(j.Working, c.mix, c.materialVOC(j))
		limit, says := j.limit(c)
		paid := c.cost(j, "Cost of what is mixed", c.mix)
		out = j.sum("Solvent so far", unit.Gram, out, mass)
		if !paid.Given() {
			unpriced = append(unpriced, c.name)
		} else {
			cost = j.sum("Cost so far", unit.PlainMoney, cost, paid)
			waste = j.sum("Cost of left-over so far", unit.PlainMoney, waste, c.cost(j, "Cost of the left-over", c.left))
		}
		j.List(vocs, c.told(), calc.Of(c.Given(field.VOC)), calc.Of(limit), calc.Told(says), calc.Of(mass), calc.Of(paid))
	}
	if lost := j.Given(field.CleanerLost); lost.Given() {
		out = j.sum("Solvent with cleaning", unit.Gram, out, lost)
	}
	j.Result(vocAll, out)
	switch {
	case !cost.Given():
	case unpriced != nil:
		j.Caution("No price is entered for {names}, so the cost of the job is left out.", calc.Words(strings.Join(unpriced, ", "), "names"))
	default:
		j.Result(costAll, cost)
		j.Result(costWaste, waste)
		j.Result(costArea, j.Step("Cost of a square metre", "c = C / A", unit.PricePerSquareMetre, source.Definition, cost.V/j.whole.V, cost, j.whole))
	}
}

// sum adds x to a sum that may not have begun.
func (j *job) sum(label calc.Phrase, u unit.Unit, sum, x calc.Num) calc.Num {
	if !sum.Given() {
		return x
	}
	return j.Step(label, "S = a + b", u, source.Definition, sum.V+x.V, sum, x)
}

// materialVOC is grams in a litre of the mix as it is, water counted.
func (c *coat) materialVOC(j *job) calc.Num {
	stated := c.Given(field.VOC)
	if !c.waterborne {
		return stated
	}
	return voc.Actual(j.Working, stated, c.Given(waterShare))
}

// cost is what so many mL of the mix cost; not given where no price is.
func (c *coat) cost(j *job, label calc.Phrase, volume calc.Num) calc.Num {
	price := c.Given(field.Price)
	if !price.Given() {
		return price
	}
	return j.Step(label, "c = p * V / 1000", unit.PlainMoney, source.Definition, price.V*volume.V/1000, price, volume)
}

// limit finds what the chosen table allows for this product, and rules on it.
func (j *job) limit(c *coat) (calc.Num, calc.Text) {
	table := j.Picked(field.Limits)
	if table == "none" {
		return calc.Num{}, calc.Say("No table chosen")
	}
	content, with, ok := j.regulated(c, table)
	if !ok {
		return calc.Num{}, calc.Say("Judged with its clearcoat; the table of coats has none")
	}
	limit, ok := voc.LimitFor(table, c.Picked(field.Role), 2)
	if !ok {
		return calc.Num{}, calc.Say("This table has no limit for it")
	}
	most := limit.Allowed(j.Working)
	within, over, why := calc.Phrase("Within the limit"), calc.Phrase("Over the limit"), calc.Phrase("{name} holds {voc} of solvent, over the limit of {limit}")
	if with != "" {
		within, over, why = "Within the limit, averaged with {other}", "Over the limit, averaged with {other}", "{name} holds {voc} of solvent, averaged with {other}, over the limit of {limit}"
	}
	other := calc.Words(with, "other")
	if content.V <= most.V {
		return most, calc.Say(within, other)
	}
	j.Judge(calc.Stop, calc.Say(why, calc.Words(c.name, "name"), content.To(0, "voc"), other, most.To(0, "limit")), calc.Say("Use a product or reducer that keeps inside it"))
	return most, calc.Say(over, other)
}

// regulated is the content that the table limits. The US rule averages a basecoat with the clearcoat over it, which is
// then named.
func (j *job) regulated(c *coat, table string) (content calc.Num, with string, ok bool) {
	content = c.Given(field.VOC)
	role := c.Picked(field.Role)
	if table != "us" || role != "base" && role != "clear" {
		return content, "", true
	}
	other := "clear"
	if role == "clear" {
		other = "base"
	}
	for _, o := range j.coats {
		if o.Picked(field.Role) != other || c.colour != "" && o.colour != "" && o.colour != c.colour {
			continue
		}
		base, clear := content, o.Given(field.VOC)
		if role == "clear" {
			base, clear = clear, base
		}
		return voc.MultiStage(j.Working, base, nil, clear), o.name, true
	}
	return content, "", role == "clear"
}
