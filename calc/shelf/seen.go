package shelf

import (
	"strings"

	"spraywright/calc"
)

// seen rejects words with signs in them that cannot be seen: with them a text can look like another. It reports whether
// there are none.
func seen(e *calc.Entry, ins ...calc.Input) bool {
	ok := true
	for _, in := range ins {
		if strings.ContainsFunc(e.Words(in), unseen) {
			e.Reject(in, calc.Unclear, "has signs in it that cannot be seen", "Type it anew instead of pasting it, in letters and figures alone")
			ok = false
		}
	}
	return ok
}

// unseenSigns are the first and the last of each run of signs that leave no mark: controls, line and paragraph separators,
// those that turn the direction of what follows, and Default_Ignorable_Code_Point (Unicode 15, DerivedCoreProperties;
// known from memory).
const unseenSigns = "\x00\x1f\x7f\u009f\u00ad\u00ad\u034f\u034f\u061c\u061c\u115f\u1160\u17b4\u17b5\u180b\u180f\u200b\u200f\u2028\u202e\u2060\u206f" +
	"\u3164\u3164\ufe00\ufe0f\ufeff\ufeff\uffa0\uffa0\ufff0\ufff8\ufffd\ufffd\U0001bca0\U0001bca3\U0001d173\U0001d17a\U000e0000\U000e0fff"

func unseen(r rune) bool {
	var first rune
	for i, last := range []rune(unseenSigns) {
		if i%2 == 0 {
			first = last
		} else if first <= r && r <= last {
			return true
		}
	}
	return false
}

// spoken is a name as names are compared: however it is spaced, and in small letters.
func spoken(name string) string { return strings.ToLower(strings.Join(strings.Fields(name), " ")) }
