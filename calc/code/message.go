package code

import (
	"strings"

	"rsc.io/qr/gf256"
)

// A message is what a code says: bytes, and after them letters that pack closer.
type message struct{ bytes, letters string }

// packed are the 45 characters of the alphanumeric mode, by value (ISO/IEC 18004, table 5).
const packed = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"

// newMessage puts the end of a text into letters where that is shorter.
func newMessage(text string) message {
	at := len(text)
	for at > 0 && strings.IndexByte(packed, text[at-1]) >= 0 {
		at--
	}
	m := message{text[:at], text[at:]}
	if whole := (message{bytes: text}); whole.bits(lastVersion) <= m.bits(lastVersion) {
		return whole
	}
	return m
}

// lengthBits is how many bits tell the length, of bytes and of letters (ISO/IEC 18004, table 3).
func lengthBits(version int) (forBytes, forLetters int) {
	switch {
	case version < 10:
		return 8, 9
	case version < 27:
		return 16, 11
	}
	return 16, 13
}

// bits is how many bits the message takes in a code of a version.
func (m message) bits(version int) int {
	n := 0
	forBytes, forLetters := lengthBits(version)
	if m.bytes != "" {
		n += 4 + forBytes + 8*len(m.bytes)
	}
	if m.letters != "" {
		n += 4 + forLetters + (11*len(m.letters)+1)/2
	}
	return n
}

// data writes the message into the bytes that a code of a version and level has for it.
func (m message) data(version int, l level) []byte {
	b := &bitWriter{b: make([]byte, 0, codewords[version])}
	forBytes, forLetters := lengthBits(version)
	if m.bytes != "" {
		b.write(4, 4)
		b.write(len(m.bytes), forBytes)
		for i := range len(m.bytes) {
			b.write(int(m.bytes[i]), 8)
		}
	}
	if m.letters != "" {
		b.write(2, 4)
		b.write(len(m.letters), forLetters)
		rest := m.letters
		for ; len(rest) > 1; rest = rest[2:] {
			b.write(45*strings.IndexByte(packed, rest[0])+strings.IndexByte(packed, rest[1]), 11)
		}
		if rest != "" {
			b.write(strings.IndexByte(packed, rest[0]), 6)
		}
	}
	room := holds(version, l)
	b.write(0, min(4, 8*room-b.n)) // the end of the message
	for pad := 0xEC; len(b.b) < room; pad ^= 0xEC ^ 0x11 {
		b.b = append(b.b, byte(pad))
	}
	return b.b
}

// A bitWriter puts numbers together bit by bit, the highest first.
type bitWriter struct {
	b []byte
	n int
}

func (w *bitWriter) write(x, bits int) {
	for i := bits - 1; i >= 0; i-- {
		if w.n%8 == 0 {
			w.b = append(w.b, 0)
		}
		w.b[w.n/8] |= byte(x>>i&1) << (7 - w.n%8)
		w.n++
	}
}

// corrected parts the data into blocks, works out the bytes for correction of each, and takes the blocks' bytes in turn
// (ISO/IEC 18004, 7.5 and 7.6).
func corrected(data []byte, version int, l level) []byte {
	n, check := int(blocks[l][version].n), int(blocks[l][version].check)
	encoder := gf256.NewRSEncoder(gf256.NewField(0x11D, 2), check)
	parts, checks := make([][]byte, n), make([][]byte, n)
	for i := range n {
		size := len(data) / (n - i) // the last blocks are a byte longer where they cannot be alike
		parts[i], data = data[:size], data[size:]
		checks[i] = make([]byte, check)
		encoder.ECC(parts[i], checks[i])
	}
	return append(inTurn(parts), inTurn(checks)...)
}

func inTurn(parts [][]byte) []byte {
	var all []byte
	for i := range parts[len(parts)-1] {
		for _, p := range parts {
			if i < len(p) {
				all = append(all, p[i])
			}
		}
	}
	return all
}
