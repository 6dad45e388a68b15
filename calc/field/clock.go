package field

import (
	"strconv"
	"strings"

	"spraywright/calc"
)

// ReadClock reads a time of day such as 8:00, 8.30, 0815 or 3:15 pm as minutes after midnight.
func ReadClock(s string) (minutes int, ok bool) {
	s = strings.ToLower(strings.TrimSpace(s))
	half := ""
	for _, suffix := range []string{"am", "pm"} {
		if rest, found := strings.CutSuffix(s, suffix); found {
			s, half = strings.TrimSpace(rest), suffix
		}
	}
	hours, mins, parted := strings.Cut(strings.ReplaceAll(strings.ReplaceAll(s, ".", ":"), "h", ":"), ":")
	if !parted && len(s) > 2 {
		hours, mins = s[:len(s)-2], s[len(s)-2:]
	}
	h, err := strconv.ParseUint(hours, 10, 8)
	if err != nil || h > 23 || len(hours) > 2 {
		return 0, false
	}
	m := uint64(0)
	if mins != "" {
		if m, err = strconv.ParseUint(mins, 10, 8); err != nil || m > 59 || len(mins) != 2 {
			return 0, false
		}
	}
	if half != "" && (h == 0 || h > 12) {
		return 0, false
	}
	if half != "" {
		h %= 12
	}
	if half == "pm" {
		h += 12
	}
	return int(h*60 + m), true
}

// CheckClock says what is wrong with a time of day.
func CheckClock(s string) *calc.Fault {
	if _, ok := ReadClock(s); !ok {
		return &calc.Fault{Message: "is not a time of day", Fix: "Write it like 8:00 or 14:30"}
	}
	return nil
}

// ShowClock writes minutes after midnight as a time of day; past midnight it says the day.
func ShowClock(minutes int) string {
	day := minutes / 1440
	minutes %= 1440
	s := strconv.Itoa(minutes/60) + ":" + strconv.Itoa(minutes%60/10) + strconv.Itoa(minutes%10)
	if day > 0 {
		s += " +" + strconv.Itoa(day) + " d"
	}
	return s
}
