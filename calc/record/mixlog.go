package record

import (
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// MixLog adds a log up: by day, by product, by month, and over the twelve months that permits count.
func MixLog() *calc.Calculator {
	return &calc.Calculator{
		ID:       "mix-log",
		Title:    "Totals of the log",
		Question: "What did we mix, and how much VOC is that in the month and in twelve?",
		Range: "Up to 1000 lines: single mixes, or a product's total of a month. Twelve months are a month and the eleven before it, " +
			"as US rules for coating shops count them. A mix without VOC is counted, and told.",
		Inputs: []calc.Input{logged(), field.LogMonth, field.MassLimit},
		Outputs: []calc.Output{
			monthVOC, monthVolume, yearVOC, yearVolume, yearSpare, entries, days, products, months,
		},
		Work:       mixLog,
		Cautions:   []calc.Phrase{keep, caution.LocalRule},
		Arithmetic: true,
	}
}

var logLines = calc.Input{Key: "mix", Label: "Mixes", Help: "One row for each mix", RowName: "mix", Most: 1000}

// loggedOn is a day, or a month where the line is the total of one.
var loggedOn = func() calc.Input {
	in := field.MixedOn
	in.Label, in.Help, in.Check = "Day or month", "As 2026-11-25; 2026-11 for a month's total", field.CheckDayOrMonth
	return in
}

func logged() calc.Input {
	in := logLines
	in.Rows = []calc.Input{
		loggedOn(), mixedAt, product, field.MixedVolume, field.MixedMass, density, vocContent, waterShare,
		field.LeftMass, field.Booth, field.Painter, field.MixCount, field.VOCWeighed, field.VOCUnknown,
	}
	return in
}

var (
	monthVOC    = calc.Output{Key: "month_voc", Label: "VOC in the month", Unit: unit.Kilogram, Decimals: 2, Main: true}
	monthVolume = calc.Output{Key: "month_volume", Label: "Mixed in the month", Unit: unit.Litre, Decimals: 1}
	yearVOC     = calc.Output{Key: "year_mass", Label: "VOC in the 12 months", Unit: unit.Kilogram, Decimals: 1, Main: true}
	yearVolume  = calc.Output{Key: "year_volume", Label: "Mixed in the 12 months", Unit: unit.Litre, Decimals: 1}
	yearSpare   = calc.Output{Key: "year_spare", Label: "Left below the limit", Unit: unit.Kilogram, Decimals: 1, Optional: true}

	entries = calc.Output{Key: "entry", Label: "Mixes of the month", Optional: true, Columns: []calc.Output{
		{Key: "time", Label: "Mixed at", Words: true}, {Key: "product", Label: "Product", Words: true},
		{Key: "volume", Label: "Volume", Unit: unit.Millilitre}, {Key: "mass", Label: "Weight", Unit: unit.Gram, Decimals: 1},
		{Key: "voc_mass", Label: "VOC", Unit: unit.Gram}, {Key: "left", Label: "Left in the cup", Unit: unit.Gram},
		{Key: "booth", Label: "Booth", Words: true}, {Key: "who", Label: "Who", Words: true},
	}}
	days = calc.Output{Key: "day_total", Label: "By day", Optional: true, Columns: []calc.Output{
		{Key: "day", Label: "Day", Words: true}, mixCount, volumeSum, massSum, vocSum,
	}}
	products = calc.Output{Key: "product_total", Label: "By product", Optional: true, Columns: []calc.Output{
		{Key: "product", Label: "Product", Words: true}, mixCount, unknownCount, volumeSum, massSum, vocSum, volumeYear, massYear, vocYear,
	}}
	months = calc.Output{Key: "month_total", Label: "Month by month", Optional: true, Columns: []calc.Output{
		{Key: "log_month", Label: "Month", Words: true}, mixCount, unknownCount, volumeSum, massSum, vocSum, volumeYear, massYear, vocYear,
	}}
	mixCount     = calc.Output{Key: "mixes", Label: "Mixes", Unit: unit.One}
	unknownCount = calc.Output{Key: "voc_unknown", Label: "Mixes without VOC", Unit: unit.One}
	volumeSum    = calc.Output{Key: "volume", Label: "Volume", Unit: unit.Litre, Decimals: 2}
	massSum      = calc.Output{Key: "mass", Label: "Weight", Unit: unit.Kilogram, Decimals: 2}
	vocSum       = calc.Output{Key: "voc_mass", Label: "VOC", Unit: unit.Kilogram, Decimals: 2}
	volumeYear   = calc.Output{Key: "twelve_volume", Label: "Volume, 12 months up to it", Unit: unit.Litre, Decimals: 1}
	massYear     = calc.Output{Key: "twelve_mass", Label: "Weight, 12 months up to it", Unit: unit.Kilogram, Decimals: 1}
	vocYear      = calc.Output{Key: "twelve", Label: "VOC, 12 months up to it", Unit: unit.Kilogram, Decimals: 1}
)

func mixLog(w *calc.Working) {
	b := readBook(w)
	b.listEntries()
	b.listDays()
	b.listProducts()
	year, worst, at := b.listMonths()
	b.judge(year, worst, at)
}

// readBook reads the lines of the log.
func readBook(w *calc.Working) *book {
	b := &book{Working: w}
	for _, row := range w.Rows(logLines) {
		m := mix{Entry: row, product: strings.TrimSpace(row.Words(field.Product)), count: row.Given(field.MixCount).Or(1)}
		m.month, m.day, _ = field.ReadDay(row.Words(field.MixedOn))
		m.volume, m.mass = row.Given(field.MixedVolume), row.Given(field.MixedMass)
		m.complete(w)
		if known := row.Given(field.VOCWeighed); known.Given() {
			m.voc = known
		}
		if m.unknown = row.Given(field.VOCUnknown).V; !m.voc.Given() {
			m.unknown = max(m.unknown, m.count.V)
		}
		b.mixes, b.last = append(b.mixes, m), max(b.last, m.month)
	}
	if month, _, ok := field.ReadDay(w.Words(field.LogMonth)); ok {
		b.last = month
	}
	return b
}

func (b *book) listEntries() {
	for _, m := range b.mixes {
		if m.month == b.last && m.day > 0 {
			b.List(entries, orDash(m.Words(field.Clock)), orDash(m.product), calc.Of(m.volume), calc.Of(m.mass), calc.Of(m.voc),
				calc.Of(m.Given(field.LeftMass)), orDash(m.Words(field.Booth)), orDash(m.Words(field.Painter)))
		}
	}
}

// orDash is a cell for words that may be blank.
func orDash(words string) calc.Cell {
	if strings.TrimSpace(words) == "" {
		words = "—"
	}
	return calc.Told(calc.Say("{words}", calc.Words(words, "words")))
}

// listDays adds up each day of the month, the latest first.
func (b *book) listDays() {
	for d := 31; d > 0; d-- {
		t := b.add("of the day", func(m *mix) bool { return m.month == b.last && m.day == d })
		if t.count > 0 {
			day := field.ShowMonth(b.last) + "-" + strconv.Itoa(100 + d)[1:]
			b.List(days, append([]calc.Cell{orDash(day), calc.Of(calc.N(t.count, unit.One))}, t.cells()...)...)
		}
	}
}

// listProducts adds up each product in the month, and in the twelve months up to it.
func (b *book) listProducts() {
	seen := map[string]bool{}
	for i := range b.mixes {
		name := fold(b.mixes[i].product)
		if seen[name] {
			continue
		}
		seen[name] = true
		t := b.add("of the product", func(m *mix) bool { return m.month == b.last && fold(m.product) == name })
		y := b.add("of the product in 12 months", func(m *mix) bool { return b.inYear(m, b.last) && fold(m.product) == name })
		if y.count > 0 {
			cells := []calc.Cell{orDash(b.mixes[i].product), calc.Of(calc.N(t.count, unit.One)), calc.Of(calc.N(t.unknown, unit.One))}
			b.List(products, append(append(cells, t.cells()...), y.cells()...)...)
		}
	}
}

// fold makes "Clear " and "clear" one product.
func fold(s string) string { return strings.ToLower(s) }
