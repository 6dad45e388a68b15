package calc

import (
	"cmp"
	"slices"
	"strconv"
	"strings"
)

// A Form is what a person filled in, and what a link carries. "air" is what was typed for that input and
// "air.unit" the unit it is in; "part.2.length" is the length in the table's row 2, "part.length.unit" the
// unit of that column and "part.2.length.unit" of one cell. "units" may be "si" or "us", the units answers
// are given in, and "units.temperature" the unit for one quantity. "working" may be "none" for an answer that nobody reads,
// such as a sum to be added up further, or "later" for one whose steps are asked for when somebody opens them: writing them
// down takes longer than all else. With "later" a figure with working behind it names some step, whichever.
type Form map[string]string

// ParseForm reads a form from text such as "air=31&air.unit=degC". Percent signs escape bytes and a plus is
// a space, as in the query of a URL (RFC 3986; WHATWG URL, application/x-www-form-urlencoded). Anything can be
// parsed: broken escapes stand as they are. A key given twice keeps its first value. Pairs may also stand on lines
// of their own, as in a file; a line without an equals sign is passed over.
func ParseForm(text string) Form {
	form := Form{}
	for pair := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == '&' || r == '\n' || r == '\r' }) {
		key, value, _ := strings.Cut(pair, "=")
		key, value = unescape(key), unescape(value)
		if _, taken := form[key]; !taken && key != "" && value != "" {
			form[key] = value
		}
	}
	return form
}

func unescape(s string) string {
	if !strings.ContainsAny(s, "%+") {
		return strings.ToValidUTF8(s, "\uFFFD")
	}
	b := make([]byte, 0, len(s))
	for i := 0; i < len(s); i++ {
		c := s[i]
		if c == '%' && i+2 < len(s) {
			if x, err := strconv.ParseUint(s[i+1:i+3], 16, 8); err == nil {
				b, i = append(b, byte(x)), i+2
				continue
			}
		}
		if c == '+' {
			c = ' '
		}
		b = append(b, c)
	}
	return strings.ToValidUTF8(string(b), "\uFFFD")
}

// String writes the form as [ParseForm] reads it, keys in order.
func (form Form) String() string {
	keys := make([]string, 0, len(form))
	for k := range form {
		keys = append(keys, k)
	}
	sortKeys(keys)
	var b strings.Builder
	for i, k := range keys {
		if i > 0 {
			b.WriteByte('&')
		}
		escape(&b, k)
		b.WriteByte('=')
		escape(&b, form[k])
	}
	return b.String()
}

// sortKeys sorts by merging halves; the standard library's generic sort would add 7 kB to what is downloaded.
func sortKeys(keys []string) {
	if len(keys) < 2 {
		return
	}
	half := len(keys) / 2
	a, b := slices.Clone(keys[:half]), keys[half:]
	sortKeys(a)
	sortKeys(b)
	for i := range keys {
		if len(a) == 0 {
			return
		}
		if len(b) == 0 || compareKeys(a[0], b[0]) <= 0 {
			keys[i], a = a[0], a[1:]
		} else {
			keys[i], b = b[0], b[1:]
		}
	}
}

// compareKeys puts row 2 before row 10, and rows before names.
func compareKeys(a, b string) int {
	for {
		p, restA, moreA := strings.Cut(a, ".")
		q, restB, moreB := strings.Cut(b, ".")
		if p != q || !moreA || !moreB {
			return cmp.Or(cmp.Compare(row(p), row(q)), strings.Compare(p, q), len(a)-len(b))
		}
		a, b = restA, restB
	}
}

// row is the number that a piece of a key is, or one past every row.
func row(piece string) uint64 {
	n, err := strconv.ParseUint(piece, 10, 32)
	if err != nil {
		return 1 << 32
	}
	return n
}

const hexDigits = "0123456789ABCDEF"

// escape leaves what a fragment may hold as it is (RFC 3986, 3.5), so that a person can read and edit a link.
func escape(b *strings.Builder, s string) {
	for i := 0; i < len(s); i++ {
		switch c := s[i]; {
		case 'a' <= c && c <= 'z', 'A' <= c && c <= 'Z', '0' <= c && c <= '9', strings.IndexByte("-._~:/,@!$'()*;", c) >= 0:
			b.WriteByte(c)
		case c == ' ':
			b.WriteByte('+')
		default:
			b.WriteByte('%')
			b.WriteByte(hexDigits[c>>4])
			b.WriteByte(hexDigits[c&15])
		}
	}
}

// mostRow is the largest row number that counts.
const mostRow = 9999

// Rows lists the row numbers that a form has for a table, "part", in order. Only plain numbers from 1 to 9999 count:
// no sign, no leading zero.
func (form Form) Rows(table string) []string {
	var present [mostRow + 1]bool
	for key := range form {
		rest, ok := strings.CutPrefix(key, table+".")
		if !ok {
			continue
		}
		row, _, ok := strings.Cut(rest, ".")
		if n := int(parseWhole(row)); ok && n > 0 && n <= mostRow && row[0] != '0' {
			present[n] = true
		}
	}
	var ns []string
	for n, is := range present {
		if is {
			ns = append(ns, strconv.Itoa(n))
		}
	}
	return ns
}
