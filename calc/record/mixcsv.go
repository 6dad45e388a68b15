package record

import (
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// MixCSV writes a log as a file for a spreadsheet.
func MixCSV() *calc.Calculator {
	return &calc.Calculator{
		ID:       "mix-csv",
		Title:    "The log as a file",
		Question: "What does the log look like as a file for a spreadsheet?",
		Range: "Up to 1000 mixes at a time, as comma-separated values by RFC 4180, with a point for decimals. Words that begin with = + - @ or a tab " +
			"get an apostrophe before them, so that no spreadsheet takes them for a formula; an apostrophe is what spreadsheets themselves put before text.",
		Inputs:     []calc.Input{written(), pouredTable(), field.CSVUnits},
		Outputs:    []calc.Output{csvHead, csvLines},
		Work:       mixCSV,
		Arithmetic: true,
	}
}

var (
	pouredLines = calc.Input{
		Key: "pour", Label: "Parts poured", Help: "Each with the number of the mix it went into", RowName: "part", Most: 6000, Optional: true,
	}
	csvHead  = calc.Output{Key: "csv_head", Label: "First line", Words: true}
	csvLines = calc.Output{Key: "csv_lines", Label: "Lines", Words: true, Main: true}
)

func written() calc.Input {
	in := logLines
	in.Rows = []calc.Input{
		loggedOn(), mixedAt, product, field.MixedVolume, field.MixedMass, density, vocContent, waterShare,
		cupAge, field.Booth, field.Painter, field.LeftMass,
	}
	return in
}

func pouredTable() calc.Input {
	in := pouredLines
	in.Rows = []calc.Input{field.PouredOf, field.PouredName, field.PouredMass, field.PouredVolume}
	return in
}

// A column of the file: its heading, and the unit that it is in where it holds numbers.
type column struct {
	heading  calc.Phrase
	si, us   unit.Unit
	decimals int
}

func columns() []column {
	return []column{
		{heading: "Day"}, {heading: "Mixed at"}, {heading: "Product"},
		{"Volume", unit.Litre, unit.Gallon, 4}, {"Weight", unit.Kilogram, unit.Pound, 4},
		{"VOC in a litre of the mix", unit.GramPerLitre, unit.PoundPerGalUS, 3}, {"VOC given off", unit.Kilogram, unit.Pound, 4},
		{heading: "Parts poured"}, {"Age of the cup", unit.Minute, unit.Minute, 0}, {"Left in the cup", unit.Kilogram, unit.Pound, 4},
		{heading: "Booth"}, {heading: "Who"},
	}
}

func mixCSV(w *calc.Working) {
	us := w.Picked(field.CSVUnits) == "us"
	cols := columns()
	var head line
	for i, c := range cols {
		if us {
			cols[i].si = c.us
		}
		says := w.Voiced(calc.Say(c.heading))
		if c.si != 0 {
			says += " (" + cols[i].si.Symbol() + ")"
		}
		head.cell(says)
	}
	parts, ok := partsOf(w, us)
	if !ok {
		return
	}
	var all strings.Builder
	for i, row := range w.Rows(logLines) {
		m := mix{Entry: row, volume: row.Given(field.MixedVolume), mass: row.Given(field.MixedMass)}
		m.complete(w)
		if i > 0 {
			all.WriteString(lineBreak)
		}
		all.WriteString(m.line(w, cols, parts[i]))
	}
	w.Tell(csvHead, calc.Say("{line}", calc.Words(head.String(), "line")))
	w.Tell(csvLines, calc.Say("{lines}", calc.Words(all.String(), "lines")))
}

// line writes one mix.
func (m *mix) line(w *calc.Working, cols []column, parts string) string {
	content := m.Given(field.VOC)
	if content.Given() {
		content = calc.N(m.content(w, content).V, unit.GramPerLitre)
	}
	nums := []calc.Num{3: m.volume, 4: m.mass, 5: content, 6: m.voc, 8: m.Given(cupAge), 9: m.Given(field.LeftMass)}
	said := []string{
		0: m.Words(field.MixedOn), 1: m.Words(field.Clock), 2: m.Words(field.Product), 7: parts, 10: m.Words(field.Booth), 11: m.Words(field.Painter),
	}
	var l line
	for i, c := range cols {
		if c.si == 0 {
			l.words(strings.ReplaceAll(said[i], "\r\n", "\n"))
			continue
		}
		l.cell(figure(nums[i], c.si, c.decimals))
	}
	return l.String()
}

// figure writes a number in a unit, or nothing where it is not known.
func figure(n calc.Num, u unit.Unit, decimals int) string {
	if !n.Given() {
		return ""
	}
	return strconv.FormatFloat(unit.Convert(n.V, n.Unit, u), 'f', decimals, 64)
}

// partsOf lists what was poured for each mix: "Paint 360.0 g; Hardener 90.0 g".
func partsOf(w *calc.Working, us bool) ([]string, bool) {
	parts := make([]string, len(w.Rows(logLines)))
	mass, volume, decimals := unit.Gram, unit.Millilitre, 2
	if us {
		mass, volume, decimals = unit.Pound, unit.Gallon, 4 // as the other columns have them
	}
	for _, row := range w.Rows(pouredLines) {
		n := int(row.Given(field.PouredOf).V)
		if n > len(parts) {
			row.Reject(field.PouredOf, calc.Impossible, "names no mix of the table", "The table has {n} mixes", calc.Words(strconv.Itoa(len(parts)), "n"))
			return nil, false
		}
		said := strings.TrimSpace(row.Words(field.PouredName))
		if m := row.Given(field.PouredMass); m.Given() {
			said += " " + figure(m, mass, decimals) + " " + mass.Symbol()
		} else if v := row.Given(field.PouredVolume); v.Given() {
			said += " " + figure(v, volume, decimals) + " " + volume.Symbol()
		}
		if parts[n-1] != "" {
			said = parts[n-1] + "; " + said
		}
		parts[n-1] = said
	}
	return parts, true
}
