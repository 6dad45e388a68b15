package record

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// rolling is how the months are added up: at the end of each month, that month and the eleven before it.
var rolling = source.CFR63MMMM.At("63.3963(a)").By(source.Seen)

// yearMonths is how many months are added up.
const yearMonths = 12

// A book is a log as it is added up.
type book struct {
	*calc.Working
	mixes []mix
	last  int // the month to report on
}

// A total is the sum of some lines: how many mixes, and their volume (mL), mass (g) and VOC (g). What no line knows is
// not given.
type total struct {
	count, unknown    float64 // mixes, and how many of them have no VOC
	volume, mass, voc calc.Num
}

func (t total) cells() []calc.Cell {
	return []calc.Cell{calc.Of(t.volume), calc.Of(t.mass), calc.Of(t.voc)}
}

// inYear reports whether a line is of the twelve months up to one.
func (b *book) inYear(m *mix, month int) bool {
	return m.month <= month && m.month > month-yearMonths
}

// add sums up the lines that are wanted; of says what they are of, for the working.
func (b *book) add(of calc.Phrase, wanted func(*mix) bool) (t total) {
	var vs, ms, vocs []calc.Num
	for i := range b.mixes {
		if m := &b.mixes[i]; wanted(m) {
			t.count, t.unknown = t.count+m.count.V, t.unknown+m.unknown
			vs, ms, vocs = append(vs, m.volume), append(ms, m.mass), append(vocs, m.voc)
		}
	}
	which := calc.Term(of, "which")
	t.volume = sum(b.Working, b.Named("Volume {which}", which), "V", unit.Millilitre, source.AdditiveVolumes, vs)
	t.mass = sum(b.Working, b.Named("Weight {which}", which), "m", unit.Gram, source.Definition, ms)
	t.voc = sum(b.Working, b.Named("VOC {which}", which), "E", unit.Gram, rolling, vocs)
	return t
}

// listMonths adds up each of the twelve months, and the twelve up to each. It returns the twelve months up to the one
// reported, and the largest VOC (g) of any twelve, with the month it ends in.
func (b *book) listMonths() (year total, worst calc.Num, at int) {
	first := b.last
	for _, m := range b.mixes {
		first = min(first, m.month)
	}
	first = max(first, b.last-2*yearMonths+2)
	var one []total
	for month := first; month <= b.last; month++ {
		one = append(one, b.add("of the month", func(m *mix) bool { return m.month == month }))
		if month <= b.last-yearMonths {
			continue // counted in later sums alone
		}
		year = b.twelve(one[max(0, len(one)-yearMonths):])
		if year.count == 0 {
			continue
		}
		t := one[len(one)-1]
		cells := []calc.Cell{orDash(field.ShowMonth(month)), calc.Of(calc.N(t.count, unit.One)), calc.Of(calc.N(t.unknown, unit.One))}
		b.List(months, append(append(cells, t.cells()...), year.cells()...)...)
		if year.voc.Given() && !(year.voc.V <= worst.V) {
			worst, at = year.voc, month
		}
	}
	if first > b.last-yearMonths+1 {
		b.Caution("This record begins with {month}: there are no twelve months to add up yet.", calc.Words(field.ShowMonth(first), "month"))
	}
	this := one[len(one)-1]
	b.Result(monthVOC, this.voc.Or(0))
	b.Result(monthVolume, this.volume.Or(0))
	b.Result(yearVOC, year.voc.Or(0))
	b.Result(yearVolume, year.volume.Or(0))
	return year, worst, at
}

// twelve adds up to twelve months.
func (b *book) twelve(of []total) (t total) {
	var vs, ms, vocs []calc.Num
	for _, o := range of {
		t.count, t.unknown = t.count+o.count, t.unknown+o.unknown
		vs, ms, vocs = append(vs, o.volume), append(ms, o.mass), append(vocs, o.voc)
	}
	t.volume = sum(b.Working, volumeYear.Label, "V", unit.Millilitre, source.AdditiveVolumes, vs)
	t.mass = sum(b.Working, massYear.Label, "m", unit.Gram, source.Definition, ms)
	t.voc = sum(b.Working, vocYear.Label, "E", unit.Gram, rolling, vocs)
	return t
}

// judge holds the twelve months against the limit, where one is given, and tells what is missing.
func (b *book) judge(year total, worst calc.Num, at int) {
	if year.unknown > 0 {
		b.Judge(calc.Wait, calc.Say("{n} of the mixes have no VOC, so that the sums are too low", calc.N(year.unknown, unit.One).To(0, "n")),
			calc.Say("Enter their volume and VOC content"))
	}
	limit := b.Given(field.MassLimit)
	if !limit.Given() {
		return
	}
	sum := year.voc.Or(0)
	spare := b.Step(yearSpare.Label, "s = L - E / 1000", unit.Kilogram, source.Definition, limit.V-sum.V/1000, limit, sum)
	b.Result(yearSpare, spare)
	if worst.V > 1000*limit.V {
		worst = b.Step("Highest of any twelve months", "E_kg = E / 1000", unit.Kilogram, source.Definition, worst.V/1000, worst)
		b.Judge(calc.Stop, calc.Say("The 12 months up to {month} came to {worst}, and the limit is {limit}", calc.Words(field.ShowMonth(at), "month"),
			worst.To(1, "worst"), limit.As("limit")), calc.Say("Ask whoever gave you the limit what to do now"))
		return
	}
	b.Judge(calc.Go, calc.Say("{spare} is left below the limit of {limit}", spare.To(1, "spare"), limit.As("limit")),
		calc.Say("Log each mix as you make it, and plan ahead of the limit"))
}
