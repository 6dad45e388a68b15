package browser

import "testing"

// A page whose scripts are of another build says so at its top, and its button gets it whole.
func TestATornPageSaysSo(t *testing.T) {
	b := serve(t).build
	first, second := releaseOf(t, b.dist, 1), releaseOf(t, b.dist, 2)
	for _, l := range []look{phone, deskDark} {
		h, s := hosting(t, b, first)
		h.put(second, func(name string) bool { return name == "scripts/words.js" })
		p := open(t, s, oldLink, l)
		p.forgive("")
		p.waitIn("#torn", "Parts of this page did not come, or are of two versions of the site. Nothing that was kept is lost.")
		p.fits()
		p.shot("torn")
		h.put(second, all)
		p.tap("#torn button")
		p.waitIn(`[data-out="wet_film"]`, "Wet film of release2 67 µm")
	}
}
