package code

// A level is how much of a code may be spoiled and still be read back.
type level int

const (
	low    level = iota // L: about 7 %
	medium              // M: about 15 %
)

// letter is what ISO/IEC 18004 calls the level.
func (l level) letter() string { return "LM"[l : l+1] }

// lastVersion is the largest code there is, of 177 by 177 modules.
const lastVersion = 40

// side is how many modules a code of a version has along one side.
func side(version int) int { return 17 + 4*version }

// codewords is how many bytes a code of each version takes, those for correction among them (ISO/IEC 18004, table 1).
var codewords = [lastVersion + 1]int16{
	0, 26, 44, 70, 100, 134, 172, 196, 242, 292, 346, 404, 466, 532, 581, 655, 733, 815, 901, 991, 1085,
	1156, 1258, 1364, 1474, 1588, 1706, 1828, 1921, 2051, 2185, 2323, 2465, 2611, 2761, 2876, 3034, 3196, 3362, 3532, 3706,
}

// blocks says into how many blocks the bytes are parted, and how many bytes of each are for correction (ISO/IEC 18004,
// table 9).
var blocks = [2][lastVersion + 1]struct{ n, check uint8 }{
	low: {
		{}, {1, 7}, {1, 10}, {1, 15}, {1, 20}, {1, 26}, {2, 18}, {2, 20}, {2, 24}, {2, 30}, {4, 18},
		{4, 20}, {4, 24}, {4, 26}, {4, 30}, {6, 22}, {6, 24}, {6, 28}, {6, 30}, {7, 28}, {8, 28},
		{8, 28}, {9, 28}, {9, 30}, {10, 30}, {12, 26}, {12, 28}, {12, 30}, {13, 30}, {14, 30}, {15, 30},
		{16, 30}, {17, 30}, {18, 30}, {19, 30}, {19, 30}, {20, 30}, {21, 30}, {22, 30}, {24, 30}, {25, 30},
	},
	medium: {
		{}, {1, 10}, {1, 16}, {1, 26}, {2, 18}, {2, 24}, {4, 16}, {4, 18}, {4, 22}, {5, 22}, {5, 26},
		{5, 30}, {8, 22}, {9, 22}, {9, 24}, {10, 24}, {10, 28}, {11, 28}, {13, 26}, {14, 26}, {16, 26},
		{17, 26}, {17, 28}, {18, 28}, {20, 28}, {21, 28}, {23, 28}, {25, 28}, {26, 28}, {28, 28}, {29, 28},
		{31, 28}, {33, 28}, {35, 28}, {37, 28}, {38, 28}, {40, 28}, {43, 28}, {45, 28}, {47, 28}, {49, 28},
	},
}

// holds is how many bytes are left for what the code says.
func holds(version int, l level) int {
	b := blocks[l][version]
	return int(codewords[version]) - int(b.n)*int(b.check)
}

// smallest is the smallest version that holds a message, and M as its level where that still fits. ok is false when
// none does.
func smallest(m message) (version int, l level, ok bool) {
	for v := 1; v <= lastVersion; v++ {
		switch n := m.bits(v); {
		case n <= 8*holds(v, medium):
			return v, medium, true
		case n <= 8*holds(v, low):
			return v, low, true
		}
	}
	return 0, 0, false
}
