package browser

import "testing"

// Pictures of what is long or fine, to be looked at.
func TestPicturesOfLongCards(t *testing.T) {
	s := serve(t)
	for _, l := range []look{phone, deskDark} {
		for _, page := range []string{"", "es/"} {
			p := open(t, s, page, l)
			p.tap("#try a")
			p.waitUntil("there is an answer", `document.querySelector(".pour-cup [data-log]") !== null`)
			name := "card-en"
			if page != "" {
				name = "card-es"
			}
			p.shotWhole(name)
			evaluate[bool](p, `(document.getElementById("card").scrollIntoView(), true)`)
			p.shot(name + "-top")
			p.fits()
		}
	}
}
