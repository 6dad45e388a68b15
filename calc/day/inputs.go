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
	jobs   = calc.Input{Key: "job", Place: placeJobs, Label: "Jobs", Help: "One row for parts that go through the day together", RowName: "job", Most: 120}
	coats  = calc.Input{Key: "coat", Place: placeCoats, Label: "Coats", Help: "One row for each product of each job, in the order you spray them", RowName: "round of coats", Most: 600}
	breaks = calc.Input{Key: "break", Place: placeBreaks, Label: "Breaks", Help: "When a painter does no work", RowName: "break", Most: 40, Optional: true}
	done   = calc.Input{Key: "done", Place: placeSoFar, Label: "Done", Help: "What is done or under way", RowName: "step that is done", Most: 600, Optional: true}
	pins   = calc.Input{Key: "pin", Place: placeSoFar, Label: "Held", Help: "Steps that keep their time, painter or place, whatever else moves", RowName: "step that is held", Most: 100, Optional: true}
)

// A group is fields under one heading.
type group struct {
	heading calc.Phrase
	fields  []*calc.Input
}

// The tables below hold nothing but addresses, so that they cost no code.
var (
	shopGroups = []group{
		{"", []*calc.Input{&field.Clock, &field.Aim}},
		{"People and places", []*calc.Input{&field.Painters, &field.Booths, &field.BoothRoom, &field.PrepBays, &field.Ovens}},
		{"Rinsing and walking", []*calc.Input{
			&field.RinseSame, &field.RinseDarker, &field.RinseLighter, &field.RinseClear, &field.CleanTime, &field.RinseInside, &field.WalkTime, &field.DoorTime,
		}},
		{"Cups", []*calc.Input{&field.CupSize, &field.Losses, &field.ShareCups}},
		{"How hard to look", []*calc.Input{&field.Tried}},
	}
	tables = []struct {
		table *calc.Input
		rows  []group
	}{
		{&paints, []group{{"", []*calc.Input{&field.Product, &field.Shade, &field.PotLife, &field.MixTime}}}},
		{&jobs, []group{
			{"", []*calc.Input{&field.JobName, &field.JobParts}},
			{"Times", []*calc.Input{&field.ReadyFrom, &field.PromisedBy, &field.Priority}},
			{"Prep and bake", []*calc.Input{&field.PrepTime, &field.PrepBy, &field.BakeTime, &field.BakeHeat}},
		}},
		{&coats, []group{
			{"", []*calc.Input{&field.OfJob, &field.Product, &field.Coats, &field.SprayTime, &field.CoatAmount}},
			{"Waiting", []*calc.Input{&field.Flash, &field.FlashLast, &field.RecoatWithin}},
			{"Cup and place", []*calc.Input{&field.NewCup, &field.MayLeave}},
		}},
		{&breaks, []group{{"", []*calc.Input{&field.BreakFrom, &field.BreakTo, &field.PainterNumber}}}},
		{&field.Now, nil},
		{&done, []group{{"", []*calc.Input{
			&field.OfJob, &field.DayStep, &field.CoatNumber, &field.StartedAt, &field.EndedAt, &field.PainterNumber, &field.PlaceNumber, &field.CupNumber, &field.MixedAt, &field.CupGone,
		}}}},
		{&pins, []group{{"", []*calc.Input{&field.OfJob, &field.DayStep, &field.CoatNumber, &field.HeldAt, &field.PainterNumber, &field.PlaceNumber}}}},
	}
	reworded = []struct {
		key          string
		label, help  calc.Phrase
		words        string
		example      float64
		mayStayBlank bool
	}{
		{key: "clock", label: "The day starts", help: "Time of day; a time before it counts as the next day"},
		{key: "cup_size", help: "What you mix at one time at the most; blank for any amount", mayStayBlank: true},
		{key: "paint.product", words: "Ivory"},
		{key: "paint.pot_life", help: "From the start of mixing, as warm as the booth is; blank for a one-pack product", mayStayBlank: true},
		{key: "job.bake_time", label: "Bake", help: "Heating up included; blank without a bake", example: 30},
		{key: "coat.product", help: "Named as in the products; blank where there is only one", words: "Ivory", mayStayBlank: true},
	}
)

// form puts groups of fields together.
func form(place calc.Phrase, groups []group) []calc.Input {
	var all []calc.Input
	for _, g := range groups {
		for i, in := range g.fields {
			all = append(all, *in)
			last := &all[len(all)-1]
			if last.Place = place; i == 0 {
				last.Heading = g.heading
			}
		}
	}
	return all
}

func inputs() []calc.Input {
	c := &calc.Calculator{Inputs: form(placeShop, shopGroups)}
	for i := range tables {
		t := *tables[i].table
		t.Rows = form("", tables[i].rows)
		if t.Place == "" {
			t.Place = placeSoFar
		}
		c.Inputs = append(c.Inputs, t)
	}
	for i := range reworded {
		r := &reworded[i]
		in := c.Input(r.key)
		in.Optional = in.Optional || r.mayStayBlank
		if r.label != "" {
			in.Label = r.label
		}
		if r.help != "" {
			in.Help = r.help
		}
		if r.words != "" {
			in.Words = r.words
		}
		if r.example != 0 {
			in.Example = r.example
		}
	}
	starts := c.Input("clock")
	starts.Optional, starts.Prefill = false, true
	c.Input("pin.day_step").Choices = heldSteps // what is held is most often a coat, what is done begins with prep
	return c.Inputs
}

var heldSteps = []calc.Choice{{Key: "spray", Label: "A coat"}, {Key: "prep", Label: "Prep"}, {Key: "bake", Label: "Bake"}}
