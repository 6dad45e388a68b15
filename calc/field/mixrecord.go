package field

import (
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// What a log keeps of each mix, besides what its data sheet says.
var (
	MixedOn = calc.Input{
		Key: "mixed_on", Label: "Day", Words: "2026-11-25",
		Help:  "Year, month and day, as 2026-11-25",
		Check: CheckDay,
	}
	PouredName = calc.Input{
		Key: "poured_name", Label: "Part", Words: "Hardener",
		Help: "As you call it in the shop",
	}
	PouredMass = calc.Input{
		Key: "poured_mass", Label: "Weight poured", Symbol: "m", Unit: unit.Gram, Optional: true,
		Help:   "This part alone",
		Limits: between(0, 1e6), Example: 120,
	}
	PouredVolume = calc.Input{
		Key: "poured_volume", Label: "Volume poured", Symbol: "V", Unit: unit.Millilitre, Optional: true,
		Help:   "This part alone",
		Limits: between(0, 1e7), Example: 100,
	}
	MixedVolume = calc.Input{
		Key: "mixed_volume", Label: "Volume mixed", Symbol: "V", Unit: unit.Millilitre, Optional: true,
		Help:   "Ready to spray; blank to add up the parts, or to follow from weight and density",
		Limits: between(0.1, 1e8), Example: 600,
	}
	MixedMass = calc.Input{
		Key: "mixed_mass", Label: "Weight mixed", Symbol: "m", Unit: unit.Gram, Optional: true,
		Help:   "Ready to spray; blank to add up the parts, or to follow from volume and density",
		Limits: between(0.1, 1e8), Example: 720,
	}
	Booth = calc.Input{
		Key: "booth_name", Label: "Booth", Words: "Booth 1", Optional: true,
		Help: "Where it was sprayed, as you call it in the shop",
	}
	Painter = calc.Input{
		Key: "painter", Label: "Who", Words: "Second painter", Optional: true,
		Help: "Who mixed it; initials will do",
	}
	MixCount = calc.Input{
		Key: "mixes", Label: "Mixes", Unit: unit.One, Whole: true, Optional: true,
		Help:   "How many mixes this line stands for; blank for one",
		Limits: between(1, 1e6), Example: 1,
	}
	VOCUnknown = calc.Input{
		Key: "voc_unknown", Label: "Mixes without VOC", Unit: unit.One, Whole: true, Optional: true,
		Help:   "How many of them have no VOC; blank for a single mix",
		Limits: between(0, 1e6), Example: 0,
	}
	VOCWeighed = calc.Input{
		Key: "voc_weighed", Label: "VOC of this line", Symbol: "m_v", Unit: unit.Gram, Optional: true,
		Help:   "Where it is known already; blank to follow from volume and VOC content",
		Limits: between(0, 1e9), Example: 250,
	}
	LogMonth = calc.Input{
		Key: "log_month", Label: "Month to report", Words: "2026-11", Optional: true,
		Help:  "Year and month, as 2026-11; blank for the last one in the record",
		Check: CheckMonth,
	}
	LeftMass = calc.Input{
		Key: "left_mass", Label: "Left in the cup", Symbol: "m_0", Unit: unit.Gram, Optional: true,
		Help:   "Weight of what was not sprayed; blank if you did not weigh it",
		Limits: between(0, 1e6), Example: 120,
	}
	FilmBy = calc.Input{
		Key: "film_by", Label: "That film is", Prefill: true,
		Help:    "A film read with the gauge makes the figure much surer",
		Choices: []calc.Choice{{Key: "planned", Label: "The one planned"}, {Key: "measured", Label: "Measured"}},
	}
	CSVUnits = calc.Input{
		Key: "csv_units", Label: "Units of the file", Prefill: true,
		Help:    "The headings name them",
		Choices: []calc.Choice{{Key: "si", Label: "Litres and kilograms"}, {Key: "us", Label: "Gallons and pounds"}},
	}
	PouredOf = calc.Input{
		Key: "poured_of", Label: "Mix it belongs to", Unit: unit.One, Whole: true,
		Help:   "1 for the first mix in the table above",
		Limits: between(1, 9999), Example: 1,
	}
)

// ReadDay reads a day such as 2026-11-25, or a month such as 2026-11 with day 0 (ISO 8601-1:2019, calendar dates in
// extended format). The months run on from year 0, so that neighbouring ones differ by 1.
func ReadDay(s string) (month, day int, ok bool) {
	parts := strings.Split(strings.TrimSpace(s), "-")
	if len(parts) < 2 || len(parts) > 3 || len(parts[0]) != 4 {
		return 0, 0, false
	}
	var ns [3]int
	for i, p := range parts {
		n, err := strconv.ParseUint(p, 10, 16)
		if err != nil || i > 0 && len(p) != 2 {
			return 0, 0, false
		}
		ns[i] = int(n)
	}
	y, m, d := ns[0], ns[1], ns[2]
	if m < 1 || m > 12 || len(parts) == 3 && (d < 1 || d > daysIn(y, m)) {
		return 0, 0, false
	}
	return 12*y + m - 1, d, true
}

func daysIn(y, m int) int {
	switch {
	case m == 2 && y%4 == 0 && (y%100 != 0 || y%400 == 0):
		return 29
	case m == 2:
		return 28
	case m == 4 || m == 6 || m == 9 || m == 11:
		return 30
	}
	return 31
}

// ShowMonth writes a month as ReadDay counts it: 2026-11.
func ShowMonth(month int) string {
	return strconv.Itoa(10000 + month/12)[1:] + "-" + strconv.Itoa(101 + month%12)[1:]
}

// CheckDay says what is wrong with a day.
func CheckDay(s string) *calc.Fault {
	if _, d, ok := ReadDay(s); !ok || d == 0 {
		return &calc.Fault{Message: "is not a day of the calendar", Fix: "Write year, month and day, like 2026-11-25"}
	}
	return nil
}

// CheckDayOrMonth says what is wrong with a day or a month.
func CheckDayOrMonth(s string) *calc.Fault {
	if _, _, ok := ReadDay(s); !ok {
		return &calc.Fault{Message: "is not a day of the calendar", Fix: "Write year, month and day, like 2026-11-25"}
	}
	return nil
}

// CheckMonth says what is wrong with a month.
func CheckMonth(s string) *calc.Fault {
	if _, d, ok := ReadDay(s); !ok || d != 0 {
		return &calc.Fault{Message: "is not a month of the calendar", Fix: "Write year and month, like 2026-11"}
	}
	return nil
}
