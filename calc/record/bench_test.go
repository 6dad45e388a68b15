package record

import (
	"strconv"
	"testing"

	"spraywright/calc"
)

// A month's totals are asked for 200 mixes at a time.
func BenchmarkMixLog(b *testing.B) {
	form := calc.Form{"log_month": "2026-11", "working": "none"}
	for i := range 200 {
		row := "mix." + strconv.Itoa(i+1) + "."
		form[row+"mixed_on"], form[row+"product"] = "2026-11-"+strconv.Itoa(110 + i%20)[1:], "Product "+strconv.Itoa(i%40)
		form[row+"mixed_volume"], form[row+"mixed_mass"], form[row+"voc"] = "600", "720", "420"
	}
	c := MixLog()
	for b.Loop() {
		_ = c.Run(form).JSON()
	}
}
