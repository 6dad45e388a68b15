package code

import (
	"slices"
	"strconv"
	"strings"
)

// A link says all of a form in words that a person can read. A code for a camera has to be small, so a link may also
// be folded: names that every form has become one byte each, what the entry before has said already is left out, and
// the bytes are written with the capital letters and signs that a code packs most closely. Unfolding gives back the
// very text that was folded.

// A folding is one way to fold, for as long as there are codes on paper.
type folding struct {
	mark   string // stands before a folded text
	tokens string
	refers bool // whether a value that has been said before, in whatever column, is told by its number
}

var foldings = [...]folding{{"1:", tokens, false}, {"2:", dayTokens, true}}

// Fold writes the text of a form, "air=31&part.1.length=20", as short as a code wants it. ok is false for a text that
// would not come back as it was: one that no form is written as.
func Fold(text string) (folded string, ok bool) {
	for _, f := range foldings {
		short := f.mark + toLetters(shorten(f.factor(text), f.tokens))
		again, comes := Unfold(short)
		if comes = comes && again == text; folded == "" || comes && (!ok || len(short) < len(folded)) {
			folded = short
		}
		ok = ok || comes
	}
	return folded, ok
}

// Unfold gives back the text that was folded. ok is false for letters that no text was folded to.
func Unfold(folded string) (text string, ok bool) {
	for _, f := range foldings {
		letters, ok := strings.CutPrefix(folded, f.mark)
		if !ok || len(letters) > mostLetters {
			continue
		}
		packed, ok := fromLetters(letters)
		if !ok {
			return "", false
		}
		factored, ok := lengthen(packed, f.tokens)
		if !ok {
			return "", false
		}
		return f.expand(factored)
	}
	return "", false
}

// mostLetters is more than any code holds (ISO/IEC 18004, version 40-L: 4,296 letters).
const mostLetters = 4296

// factor starts each entry with "&" and writes the row that entries share, "part.1", once before them: an entry
// without "=". A unit of the value before is "unit", and a value that the row before has too is again.
func (f folding) factor(text string) string {
	var b strings.Builder
	row, last, said, values := "", "", map[string]string{}, []string{}
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
			value, values = f.refer(value, values)
		}
		if ofLast(last) && key == last+".unit" {
			name = "unit"
		}
		b.WriteString("&" + name + "=" + value)
		last = key
	}
	return b.String()
}

// reference stands before the number of a value that has been said. No form writes it as it is.
const reference = "^"

// worth is how long a value is at least that gets a number.
const worth = 3

// refer writes a value by its number, or gives it one.
func (f folding) refer(value string, values []string) (string, []string) {
	if !f.refers || len(value) < worth {
		return value, values
	}
	if i := slices.Index(values, value); i >= 0 {
		return reference + strconv.Itoa(i), values
	}
	return value, append(values, value)
}

// again stands for a value that the row before has too. No form writes a quotation mark as it is.
const again = `"`

// expand undoes factor. ok is false for a row that no form has.
func (f folding) expand(factored string) (text string, ok bool) {
	var b strings.Builder
	row, last, said, values := "", "", map[string]string{}, []string{}
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
		if number, refers := strings.CutPrefix(value, reference); refers && f.refers {
			i, err := strconv.Atoi(number)
			if err != nil || i < 0 || i >= len(values) {
				return "", false
			}
			value = values[i]
		} else if value == again {
			value = said[column]
		} else {
			_, values = f.refer(value, values)
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
