package code

import (
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"rsc.io/qr/coding"
)

// filling is a message of bytes and letters that fills a code of a version and level.
func filling(version int, l level, random *rand.Rand) message {
	m := message{bytes: strings.Repeat("a#", version/3+1)}
	for {
		more := message{m.bytes, m.letters + string(packed[random.IntN(len(packed))])}
		if more.bits(version) > 8*holds(version, l) {
			return m
		}
		m = more
	}
}

// The library that the terminal's code is drawn with draws every version, level and mask the same, module by module.
func TestEveryCodeIsDrawnAsTheLibraryDrawsIt(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for v := 1; v <= lastVersion; v++ {
		for _, l := range []level{low, medium} {
			m := filling(v, l, random)
			s := draw(m, v, l)
			matched := -1
			for mask := range masks {
				plan, err := coding.NewPlan(coding.Version(v), coding.Level(l), coding.Mask(mask))
				require.NoError(t, err)
				theirs, err := plan.Encode(segments(m)...)
				require.NoError(t, err)
				require.Equal(t, theirs.Size, s.size)
				if same(s, theirs) {
					matched = mask
				}
			}
			assert.GreaterOrEqual(t, matched, 0, "version %d-%s is like none of the library's masks", v, l.letter())
		}
	}
}

func segments(m message) []coding.Encoding {
	all := []coding.Encoding{coding.String(m.bytes)}
	if m.letters != "" {
		all = append(all, coding.Alpha(m.letters))
	}
	return all
}

func same(s *symbol, theirs *coding.Code) bool {
	for y := range s.size {
		for x := range s.size {
			if s.dark[s.at(x, y)] != theirs.Black(x, y) {
				return false
			}
		}
	}
	return true
}

// ISO/IEC 18004:2015, table 7 (from memory): bytes and letters that the smallest and largest codes hold.
func TestCodesHoldWhatTheStandardSays(t *testing.T) {
	for _, tt := range []struct {
		version        int
		l              level
		bytes, letters int
	}{{1, low, 17, 25}, {1, medium, 14, 20}, {2, low, 32, 47}, {10, medium, 213, 311}, {25, low, 1273, 1853}, {40, low, 2953, 4296}, {40, medium, 2331, 3391}} {
		room := 8 * holds(tt.version, tt.l)
		for n, fits := range map[int]bool{0: true, 1: false} {
			assert.Equal(t, fits, message{bytes: strings.Repeat("x", tt.bytes+n)}.bits(tt.version) <= room, "%d-%s", tt.version, tt.l.letter())
			assert.Equal(t, fits, message{letters: strings.Repeat("X", tt.letters+n)}.bits(tt.version) <= room, "%d-%s", tt.version, tt.l.letter())
		}
	}
}
