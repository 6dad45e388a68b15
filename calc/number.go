package calc

import (
	"math"
	"strconv"
	"strings"
	"unicode"
)

// A badNumber says why text is no number.
type badNumber int

const (
	fine badNumber = iota
	noNumber
	ambiguous // 1,250 may be one and a quarter or one thousand two hundred and fifty
)

// Tidy writes signs, spaces and fractions as keyboards and pasted text have them in plain characters.
func Tidy(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch r {
		case '−', '–':
			b.WriteByte('-')
		case '\u00a0', '\u202f', '\u2009':
			b.WriteByte(' ')
		case '：', '∶':
			b.WriteByte(':')
		case '％':
			b.WriteByte('%')
		case '＋':
			b.WriteByte('+')
		case '½':
			b.WriteString(" 1/2")
		case '¼':
			b.WriteString(" 1/4")
		case '¾':
			b.WriteString(" 3/4")
		case '⅛':
			b.WriteString(" 1/8")
		case '⅜':
			b.WriteString(" 3/8")
		case '⅝':
			b.WriteString(" 5/8")
		case '⅞':
			b.WriteString(" 7/8")
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// splitNumber cuts what a person typed into the number and the unit after it: "3/4 qt", "72F", "12,5".
func splitNumber(text string) (number, suffix string) {
	text = strings.TrimSpace(Tidy(text))
	end := 0
	for i, r := range text {
		switch {
		case unicode.IsDigit(r) && r < 128, strings.ContainsRune(".,", r):
			end = i + 1
		case strings.ContainsRune("+-", r) && i == 0, r == '/' && i > 0 && end == i, r == ' ':
		default:
			return text[:end], strings.TrimSpace(text[end:])
		}
	}
	return text, ""
}

// parseNumber reads a plain number with a point or a comma, a fraction, or a whole number and a fraction.
func parseNumber(s string) (float64, badNumber) {
	s = strings.TrimSpace(s)
	if num, den, ok := strings.Cut(s, "/"); ok {
		whole, top, mixed := strings.Cut(strings.TrimSpace(num), " ")
		if !mixed {
			whole, top = "0", num
		}
		w, a, b := parseWhole(whole), parseWhole(strings.TrimSpace(top)), parseWhole(strings.TrimSpace(den))
		if !(w >= 0 && a >= 0 && b > 0) {
			return 0, noNumber
		}
		return w + a/b, fine
	}
	points, commas := strings.Count(s, "."), strings.Count(s, ",")
	switch comma := strings.IndexByte(s, ','); {
	case commas == 1 && points == 0:
		if before := strings.TrimLeft(s[:comma], "+-"); len(s)-comma == 4 && before != "" && before != "0" && len(before) <= 3 {
			return 0, ambiguous
		}
		s = strings.Replace(s, ",", ".", 1)
	case commas == 1 && points == 1: // 1.250,5 or 1,250.5, but not 1.25,5
		point := strings.IndexByte(s, '.')
		if max(comma, point)-min(comma, point) != 4 {
			return 0, ambiguous
		}
		if comma > point {
			s = strings.Replace(strings.Replace(s, ".", "", -1), ",", ".", 1)
		}
		s = strings.Replace(s, ",", "", 1)
	case commas > 0 || points > 1:
		return 0, ambiguous
	}
	if strings.Trim(s, "+-.0123456789") != "" || len(s) > 40 {
		return 0, noNumber
	}
	x, err := strconv.ParseFloat(s, 64)
	if err != nil || math.IsInf(x, 0) || math.IsNaN(x) {
		return 0, noNumber
	}
	return x, fine
}

// parseWhole reads digits alone; anything else is -1.
func parseWhole(s string) float64 {
	if s == "" || len(s) > 9 || strings.Trim(s, "0123456789") != "" {
		return -1
	}
	n, _ := strconv.Atoi(s)
	return float64(n)
}

// plain writes x as a person would type it: six significant digits, no exponent, an ASCII minus.
func plain(x float64) string { return significant(x, 6) }

func significant(x float64, digits int) string {
	if x == 0 || math.IsNaN(x) || math.IsInf(x, 0) {
		return strconv.FormatFloat(x, 'f', -1, 64)
	}
	places := digits - 1 - int(math.Floor(math.Log10(math.Abs(x))))
	s := strconv.FormatFloat(x, 'f', min(max(places, 0), 12), 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

// fixed writes x with d decimals, never as minus zero.
func fixed(x float64, d int) string {
	s := strconv.FormatFloat(x, 'f', d, 64)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	return s
}
