package calc

import (
	"strings"

	"spraywright/calc/phrase"
)

// A Phrase is text that the program says; see [phrase.Phrase].
type Phrase = phrase.Phrase

// First, at the start of a caution, puts it before the others: it says what to wear.
const First = "\x01"

// A Language is what reports are worded in. The zero Language is English with a decimal point.
type Language struct {
	// Words is the phrase in the language, or blank where the catalogue has none. key is the input or output that the
	// phrase labels, "part.name" for a column, or blank; it may need another word than the same English elsewhere.
	Words func(key, phrase string) string
	Comma bool // decimals follow a comma instead of a point
}

// ParseWords reads words as the build writes them: on each line a phrase, a tab and the words for it. A phrase that
// means something else where it labels a field follows the field's key and a vertical bar.
func ParseWords(text string) func(key, phrase string) string {
	words := map[string]string{}
	for line := range strings.Lines(text) {
		phrase, said, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "\t")
		words[phrase] = said
	}
	return func(key, phrase string) string {
		if said := words[key+"|"+phrase]; said != "" {
			return said
		}
		return words[phrase]
	}
}

// word is a phrase in the language.
//
//go:noinline
func (l Language) word(p Phrase) string { return l.label("", p) }

// label is the phrase that labels an input or output.
//
//go:noinline
func (l Language) label(key string, p Phrase) string {
	if l.Words != nil && p != "" {
		if said := l.Words(key, string(p)); said != "" {
			return said
		}
	}
	return string(p)
}

// number gives a number written with a point the language's own mark.
//
//go:noinline
func (l Language) number(s string) string {
	if l.Comma {
		return strings.Replace(s, ".", ",", 1)
	}
	return s
}

// Trouble is the report for a form that no calculator could answer.
func (l Language) Trouble(id string, message, fix Phrase) Report {
	return Report{Calculator: id, Problems: Problems{{Code: Impossible, Message: l.word(message), Fix: l.word(fix)}}}
}
