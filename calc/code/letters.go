package code

import "strings"

// letters are those that a code packs two to 11 bits (ISO/IEC 18004, alphanumeric mode) and that the fragment of
// an address may hold (RFC 3986, 3.5): 41 of its 45, which leaves out space, %, + and the full stop. As with the 45 of
// RFC 9285, two bytes make three letters, because 41³ is more than 2¹⁶, and a last single byte makes two.
const letters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ$*-/:"

const base = len(letters)

func toLetters(packed []byte) string {
	var b strings.Builder
	for i := 0; i < len(packed); i += 2 {
		n, digits := int(packed[i]), 2
		if i+1 < len(packed) {
			n, digits = n<<8+int(packed[i+1]), 3
		}
		for range digits {
			b.WriteByte(letters[n%base])
			n /= base
		}
	}
	return b.String()
}

// fromLetters undoes toLetters. ok is false for other letters, and for three that stand for more than two bytes.
func fromLetters(s string) (packed []byte, ok bool) {
	for len(s) > 0 {
		take, most := 3, 1<<16
		if len(s) < 3 {
			take, most = 2, 1<<8
		}
		if len(s) < take {
			return nil, false
		}
		n := 0
		for i := take - 1; i >= 0; i-- {
			digit := strings.IndexByte(letters, s[i])
			if digit < 0 {
				return nil, false
			}
			n = n*base + digit
		}
		if n >= most {
			return nil, false
		}
		if take == 3 {
			packed = append(packed, byte(n>>8))
		}
		packed = append(packed, byte(n))
		s = s[take:]
	}
	return packed, true
}
