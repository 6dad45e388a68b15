package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTheMakerShowsWhatItMakes(t *testing.T) {
	s := serve(t)
	for _, l := range []look{phone, phoneDark, desk, deskDark} {
		p := open(t, s, "put-on-page.html#frame.of=wet-film&frame.lock=coats&coats=2&volume_solids=45&dry_film=60", l)
		p.waitUntil("the frame is as high as its page", `document.querySelector("#maker-frame iframe")?.height !== "480"`)
		p.fits()
		p.tap(".maker-fields summary")
		p.waitUntil("the fields are listed", `document.querySelectorAll("#maker-fields li").length > 2`)
		assert.Contains(t, p.value2("#maker-script"), `data-show="frame.of=wet-film&amp;frame.lock=coats&amp;`)
		p.shotWhole("maker")
	}
}

func TestTheSuppliersPage(t *testing.T) {
	s := serve(t)
	for _, l := range []look{phone, phoneDark, desk, deskDark} {
		p := open(t, s, "customer-sheets.html#sender=Trike+paint+counter&shop_note=Ask+<us>+https://example.org&sheet.1.product=Grey+primer&sheet.1.dry_film=60&sheet.1.coats=2&sheet.2.product=Ivory+base&sheet.2.sheet_dated=2026-01", l)
		p.waitIn("#handing", "Copy the link")
		p.fits()
		p.tap(`[data-hand="code"]`)
		p.waitUntil("the code is drawn", `document.querySelector("#customer-code .code") !== null`)
		p.tap("#customer-preview summary")
		p.waitUntil("the frame is there", `document.querySelector("#customer-frame iframe") !== null`)
		p.shotWhole("customer-sheets")
		p.visit(p.value2("#customer-link")[len(s.url("")):])
		p.waitIn("#received-from", "From: Trike paint counter")
		p.fits()
		p.shot("received")
		p.pressIn("#received-tools", "Keep on this device")
		p.waitIn(".import", "Would be added: 2")
		p.shotWhole("received-keep")
		p.visit("shelf.html")
		p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
		p.shotWhole("shelf-site")
	}
}
