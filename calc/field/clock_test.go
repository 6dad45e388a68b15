package field_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc/field"
)

func TestTimesOfDay(t *testing.T) {
	for text, want := range map[string]int{
		"8": 480, "8:00": 480, "08:00": 480, "8.30": 510, "0815": 495, "815": 495, "8h30": 510, "8h": 480, " 14:30 ": 870,
		"0:00": 0, "23:59": 1439, "3:15 pm": 915, "3pm": 900, "12 am": 0, "12:30 AM": 30, "12 PM": 720, "11:59pm": 1439,
	} {
		got, ok := field.ReadClock(text)
		assert.True(t, ok, text)
		assert.Equal(t, want, got, text)
		assert.Nil(t, field.CheckClock(text), text)
	}
}

func TestWhatIsNoTimeOfDay(t *testing.T) {
	for _, text := range []string{"", "24:00", "8:60", "8:5", "8:005", "-8:00", "+8:00", "8:-5", "0:30 am", "13 pm", "noon", "8:00:00", "12345", "٨:٠٠", "8 30"} {
		_, ok := field.ReadClock(text)
		assert.False(t, ok, "%q", text)
		assert.NotNil(t, field.CheckClock(text), "%q", text)
	}
}

func TestATimeShownReadsBack(t *testing.T) {
	for m := range 1440 {
		got, ok := field.ReadClock(field.ShowClock(m))
		assert.True(t, ok)
		assert.Equal(t, m, got)
	}
	assert.Equal(t, "0:05 +1 d", field.ShowClock(1445))
}

func FuzzReadClock(f *testing.F) {
	for _, s := range []string{"8:00", "3:15 pm", "0815", "h", ".:", "pm"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		if m, ok := field.ReadClock(s); ok && (m < 0 || m >= 1440) {
			t.Errorf("%q is minute %d of the day", s, m)
		}
	})
}
