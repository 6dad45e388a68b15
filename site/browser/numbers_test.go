package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A calculator's page leads to its own values, opened; each stands beside what comes out.
func TestEveryNumberCanBeTracedToItsPrint(t *testing.T) {
	s := serve(t)
	for _, l := range []look{phone, desk, phoneDark, deskDark} {
		p := open(t, s, "wet-film.html", l)
		p.tap(".grounds a")
		p.waitUntil("the calculator's values are open", `document.querySelector("main.checked-numbers") !== null && document.getElementById("of-wet-film")?.closest("details").open === true`)
		of := `details:has(#of-wet-film) `
		p.has(of, "Wet film for a dry film", "9 rows, 4 from outside; the largest deviation uses", "Handy-calculation note of the coatings trade", "as another work quotes it: handy-calculation note",
			"Filled in: Dry film wanted 125 µm; Coats 1; Volume solids 71 %", "176 µm", "176.06 µm", "+0.06 (0.03 %)", "± 0.5")
		p.has("main", "Where every number comes from")
		p.fits()
		p.shot("numbers")
		assert.Equal(t, 1, evaluate[int](p, `document.querySelectorAll("details[open]").length`))
	}
	p := open(t, s, "es/numbers.html", phone)
	evaluate[bool](p, `(document.querySelectorAll("details").forEach((d) => { d.open = true; }), true)`)
	p.waitFor("+0,06 (0,03 %)")
	p.fits()
}
