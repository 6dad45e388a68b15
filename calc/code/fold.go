package code

import (
	"strconv"
	"strings"
)

// A link says all of a form in words that a person can read. A code for a camera has to be small, so a link may also
// be folded: names that every form has become one byte each, what the entry before has said already is left out, and
// the bytes are written with the capital letters and signs that a code packs most closely. Unfolding gives back the
// very text that was folded.

// folding stands before a folded text and names the list of tokens it was folded with. Another list takes another number.
const folding = "1:"

// Fold writes the text of a form, "air=31&part.1.length=20", as short as a code wants it. ok is false for a text that
// would not come back as it was: one that no form is written as.
func Fold(text string) (folded string, ok bool) {
	folded = folding + toLetters(shorten(factor(text)))
	again, ok := Unfold(folded)
	return folded, ok && again == text
}

// Unfold gives back the text that was folded. ok is false for letters that no text was folded to.
func Unfold(folded string) (text string, ok bool) {
	letters, ok := strings.CutPrefix(folded, folding)
	if !ok || len(letters) > mostLetters {
		return "", false
	}
	packed, ok := fromLetters(letters)
	if !ok {
		return "", false
	}
	factored, ok := lengthen(packed)
	if !ok {
		return "", false
	}
	return expand(factored)
}

// mostLetters is more than any code holds (ISO/IEC 18004, version 40-L: 4,296 letters).
const mostLetters = 4296

// factor starts each entry with "&" and writes the row that entries share, "part.1", once before them: an entry
// without "=". A unit of the value before is "unit", and a value that the row before has too is again.
func factor(text string) string {
	var b strings.Builder
	row, last, said := "", "", map[string]string{}
	for pair := range strings.SplitSeq(text, "&") {
		key, value, _ := strings.Cut(pair, "=")
		if r := rowOf(key); r != row {
			row = r
			b.WriteString("&" + row)
		}
		name := strings.TrimPrefix(key[len(row):], ".")
		if column := columnOf(row, name); row != "" && said[column] == value {
			value = again
		} else {
			said[column] = value
		}
		if ofLast(last) && key == last+".unit" {
			name = "unit"
		}
		b.WriteString("&" + name + "=" + value)
		last = key
	}
	return b.String()
}

// again stands for a value that the row before has too. No form writes a quotation mark as it is.
const again = `"`

// expand undoes factor. ok is false for a row that no form has.
func expand(factored string) (text string, ok bool) {
	var b strings.Builder
	row, last, said := "", "", map[string]string{}
	for pair := range strings.SplitSeq(strings.TrimPrefix(factored, "&"), "&") {
		name, value, isEntry := strings.Cut(pair, "=")
		if !isEntry {
			if row = pair; row != "" && (len(row) > longestRow || rowOf(row+".") != row) {
				return "", false
			}
			continue
		}
		key := name
		switch {
		case name == "unit" && ofLast(last):
			key = last + ".unit"
		case row != "":
			key = row + "." + name
		}
		column := columnOf(row, strings.TrimPrefix(key[len(row):], "."))
		if value == again {
			value = said[column]
		}
		said[column] = value
		if b.Len() > 0 {
			b.WriteByte('&')
		}
		b.WriteString(key + "=" + value)
		if b.Len() > longestText {
			return "", false
		}
		last = key
	}
	return b.String(), true
}

// columnOf is what an entry is called in every row of its table, "part.length".
func columnOf(row, name string) string {
	table, _, _ := strings.Cut(row, ".")
	return table + "." + name
}

// longestRow, and longestText, keep a hostile code from growing into a text that no phone can hold.
const (
	longestRow  = 40
	longestText = 1 << 17
)

// ofLast reports whether a unit may belong to the entry before; that of a unit never does.
func ofLast(last string) bool { return last != "" && !strings.HasSuffix(last, ".unit") }

// rowOf is the row that a key belongs to, "part.1" of "part.1.length", or blank.
func rowOf(key string) string {
	table, rest, _ := strings.Cut(key, ".")
	n, _, inRow := strings.Cut(rest, ".")
	if _, err := strconv.Atoi(n); err != nil || !inRow {
		return ""
	}
	return table + "." + n
}
