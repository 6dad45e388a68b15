package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The file on a disk has no address for others: the sheet says why there is no code, and what works.
func TestTheOneFileSaysWhyThereIsNoLink(t *testing.T) {
	if chromium() == "" {
		t.Skip("no Chromium here")
	}
	for _, l := range []look{phone, deskDark} {
		p := open(t, fromDisk(t), "wet-film.html", l)
		wetFilm(p)
		p.tap("#share")
		p.waitIn("#share-sheet", "so there is no link and no QR code.")
		p.has("#share-sheet", "Text to put behind the address", "Copy the text")
		assert.True(t, strings.HasPrefix(p.value2("#share-link"), "#"), p.value2("#share-link"))
		p.shot("share-file")
		p.fits()
	}
}

// On a small screen the code of a large form is too fine; the sheet must not say that a camera reads it.
func TestACodeTooFineForTheScreenSaysSo(t *testing.T) {
	var form strings.Builder
	for n := range 24 {
		fmt.Fprintf(&form, "&part.%d.name=Piece+%c%d&part.%d.shape=box&part.%d.length=%d&part.%d.width=%d&part.%d.height=%d&part.%d.faces=five&part.%d.count=%d",
			n+1, 'A'+n, 7*n, n+1, n+1, 811+17*n, n+1, 301+13*n, n+1, 101+11*n, n+1, n+1, 3+n)
	}
	p := open(t, serve(t), "#"+form.String()[1:], narrow)
	p.waitUntil("the parts are there", `document.querySelectorAll('[data-row^="part."]').length >= 24`)
	p.tap("#share")
	p.waitIn("#share-verdict", "At this size the QR code is too fine for most phones to read")
	assert.NotContains(t, p.inOneLine("#share-verdict"), "A phone camera reads this QR code")
	p.has("#share-verdict", "Print it, show it on a larger screen, or hand on the link above")
	p.shot("share-fine")
}
