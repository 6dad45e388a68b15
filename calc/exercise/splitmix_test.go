package exercise

import (
	"hash/fnv"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The first numbers of the reference implementation, from memory: of the streams that 0 and 1234567 seed.
func TestSplitMix64(t *testing.T) {
	const step = 0x9e3779b97f4a7c15 // what the state grows by
	assert.Equal(t, uint64(0xe220a8397b1dcdaf), mix(0))
	assert.Equal(t, uint64(0x6e789e6aa1b965f4), mix(step))
	var state uint64 = 1234567
	for _, want := range []uint64{6457827717110365317, 3203168211198807973, 9817491932198370423} {
		assert.Equal(t, want, mix(state))
		state += step
	}
}

func TestHash(t *testing.T) {
	h := fnv.New64a()
	h.Write([]byte("7|wet-film|"))
	assert.Equal(t, h.Sum64(), hash("7", "wet-film"))
	assert.NotEqual(t, hash("a", "bc"), hash("ab", "c"))
}

// Ten thousand draws of one die fall on each side about as often as they should: within four standard deviations.
func TestDrawsAreEven(t *testing.T) {
	var count [6]int
	for i := range 10000 {
		count[pick(6, "seed", string(rune('a'+i%26)), string(rune(i)))]++
	}
	for side, n := range count {
		assert.InDelta(t, 10000./6, n, 4*37.3, "side %d", side)
	}
}

func TestBands(t *testing.T) {
	for text, want := range map[string][]string{
		"60": {"60"}, "40..60 by 10": {"40", "50", "60"}, "0.5..0.7 by 0.1": {"0.5", "0.6", "0.7"}, "40;60 ; 80": {"40", "60", "80"},
		"1..9": {"1", "2", "3", "4", "5", "6", "7", "8", "9"}, "-5..5 by 5": {"-5", "0", "5"}, "1/2": {"1/2"}, "2,5..3,5 by 0,5": {"2.5", "3.0", "3.5"}, "7..7": {"7"},
	} {
		b, ok := readBand(text)
		if !assert.True(t, ok, text) {
			continue
		}
		var got []string
		for k := range b.n {
			got = append(got, b.text(k))
		}
		assert.Equal(t, want, got, text)
	}
	for _, text := range []string{"", "a", "1..", "..2", "5..1", "1..2 by", "1..2 by 0", "1..2 by -1", "1..2 by x", "0..1e9", "0..999999999 by 0.001", "1;;2", "1,250..2", "1..2..3"} {
		_, ok := readBand(text)
		assert.False(t, ok, text)
	}
}

func TestNiceNumbers(t *testing.T) {
	for x, want := range map[float64]float64{7: 5, 10: 10, 0.3: 0.2, 0.05: 0.05, 1: 1, 4.99: 2, 0: 0, 1e-7: 0, 123456: 100000} {
		assert.Equal(t, want, nice(x), "%v", x)
	}
}

func FuzzReadBand(f *testing.F) {
	for _, s := range []string{"40..95 by 5", "60", "40; 60", "1/2..3/4", "1..2by", ";..", "-1..-0.5 by 0.1"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		b, ok := readBand(s)
		if !ok {
			return
		}
		assert.Positive(t, b.n, s)
		assert.LessOrEqual(t, b.n, int(most)+1, s)
		if b.list == nil {
			for _, k := range []int{0, b.n - 1} {
				assert.NotContains(t, b.text(k), "N", s)
			}
			again, ok := readBand(b.String())
			if b.step >= 1e-6 && b.low > -1e9 && b.low < 1e9 {
				assert.True(t, ok, "%s is written %s", s, b)
				_ = again
			}
		}
	})
}
