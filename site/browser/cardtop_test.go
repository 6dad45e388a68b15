package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A job's card is long: what is done with it stands at its top, and a part of it that is folded away stays so.
func TestTheCardBeginsWithItsTools(t *testing.T) {
	s := serve(t)
	for _, l := range []look{phone, deskDark} {
		for _, page := range []string{"", "es/"} {
			p := open(t, s, page, l)
			p.tap("#try a")
			p.waitUntil("there is an answer", `document.querySelector(".pour-cup [data-log]") !== null`)
			evaluate[bool](p, `(document.getElementById("card").scrollIntoView({ behavior: "instant" }), true)`)
			assert.Equal(t, 4, evaluate[int](p, `[...document.querySelectorAll("#paper-tools > *")].filter((e) => e.getBoundingClientRect().bottom < innerHeight / 2).length`), "print, labels, share and timers")
			p.shot("card-top-" + map[string]string{"": "en", "es/": "es"}[page])
			p.fits()
			p.tap(`#card .card-place[open] > summary`)
			p.waitUntil("it is folded", `!document.querySelector("#card details.card-place").open`)
			p.reload()
			p.waitIn("#card", "11") // litres in all
			assert.False(t, evaluate[bool](p, `document.querySelector("#card details.card-place").open`), "the fold is forgotten")
		}
	}
}

func TestTheSpanishLogFits(t *testing.T) {
	for _, l := range []look{phoneSpain, deskSpain} {
		p := open(t, serve(t), "es/log.html", l)
		p.waitFor(inSpanish(t, "Nothing is logged yet."))
		logMixes(p, clear25, "mixed_on=2026-11-20&product=Broken&mixed_volume=some")
		p.waitUntil("the months can be chosen", `document.querySelectorAll("#log-which option").length >= 1`)
		choosesMonth(p, "2026-11")
		p.waitIn("#log-bad", "1 anotación de 2026-11 no se puede leer")
		p.waitIn(`[data-out="month_voc"]`, "0,25")
		p.shotWhole("log-es")
		p.fits()
	}
}
