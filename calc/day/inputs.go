package day

import (
	"spraywright/calc"
	"spraywright/calc/field"
)

// The places of the form.
const (
	placeShop     = "The shop"
	placeProducts = "Products"
	placeJobs     = "Jobs"
	placeCoats    = "Coats"
	placeBreaks   = "Breaks"
	placeSoFar    = "So far"
)

// The tables, without their columns: what Work needs to find their rows.
var (
	paints = calc.Input{Key: "paint", Place: placeProducts, Label: "Products", Help: "One row for each colour or other product", RowName: "product", Most: 60}
	jobs   = calc.Input{Key: "job", Place: placeJobs, Label: "Jobs", Help: "One row for parts that go through the day together", RowName: "job", Most: 60}
	coats  = calc.Input{Key: "coat", Place: placeCoats, Label: "Coats", Help: "One row for each product of each job, in the order you spray them", RowName: "round of coats", Most: 300}
	breaks = calc.Input{Key: "break", Place: placeBreaks, Label: "Breaks", Help: "When a painter does no work", RowName: "break", Most: 40, Optional: true}
	done   = calc.Input{Key: "done", Place: placeSoFar, Label: "Done", Help: "What is done or under way", RowName: "step that is done", Most: 600, Optional: true}
	pins   = calc.Input{Key: "pin", Place: placeSoFar, Label: "Held", Help: "Steps that keep their time, painter or place, whatever else moves", RowName: "step that is held", Most: 100, Optional: true}
	tried  = field.Tried
)

// Fields of other forms that need less here.
func cupSize() calc.Input {
	in := field.CupSize.Maybe()
	in.Help = "What you mix at one time at the most; blank for any amount"
	return in
}

func potLife() calc.Input {
	in := field.PotLife.Maybe()
	in.Help = "From the start of mixing, as warm as the booth is; blank for a one-pack product"
	return in
}

func bakeTime() calc.Input {
	in := field.BakeTime
	in.Label, in.Help, in.Example = "Bake", "Heating up included; blank without a bake", 30
	return in
}

func product() calc.Input {
	in := field.Product
	in.Words = "Ivory"
	return in
}

func productOf() calc.Input {
	in := product().Maybe()
	in.Help = "Named as in the products; blank where there is only one"
	return in
}

func inputs() []calc.Input {
	withPaints, withJobs, withCoats, withBreaks, withDone, withPins := paints, jobs, coats, breaks, done, pins
	withPaints.Rows = []calc.Input{product(), field.Shade, potLife(), field.MixTime}
	withJobs.Rows = []calc.Input{
		field.JobName, field.JobParts, field.ReadyFrom.Under("Times"), field.PromisedBy, field.Priority,
		field.PrepTime.Under("Prep and bake"), field.PrepBy, bakeTime(), field.BakeHeat,
	}
	withCoats.Rows = []calc.Input{
		field.OfJob, productOf(), field.Coats, field.SprayTime, field.CoatAmount,
		field.Flash.Under("Waiting"), field.FlashLast, field.RecoatWithin, field.NewCup.Under("Cup and place"), field.MayLeave,
	}
	withBreaks.Rows = []calc.Input{field.BreakFrom, field.BreakTo, field.PainterNumber}
	withDone.Rows = []calc.Input{
		field.OfJob, field.DayStep, field.CoatNumber, field.StartedAt, field.EndedAt, field.PainterNumber, field.PlaceNumber, field.CupNumber, field.MixedAt,
	}
	withPins.Rows = []calc.Input{field.OfJob, field.DayStep, field.CoatNumber, field.HeldAt, field.PainterNumber, field.PlaceNumber}
	shop := []calc.Input{
		field.DayStarts, field.Aim,
		field.Painters.Under("People and places"), field.Booths, field.BoothRoom, field.PrepBays, field.Ovens,
		field.RinseSame.Under("Rinsing and walking"), field.RinseDarker, field.RinseLighter, field.RinseClear, field.CleanTime, field.RinseInside, field.WalkTime, field.DoorTime,
		cupSize().Under("Cups"), field.Losses, field.ShareCups,
		field.Tried.Under("How hard to look"),
	}
	for i := range shop {
		shop[i].Place = placeShop
	}
	return append(shop, withPaints, withJobs, withCoats, withBreaks, field.Now.In(placeSoFar), withDone, withPins)
}
