package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// The pages for suppliers and trainers as they are used, and a calculator in a frame, in each look and at twice the size.
func TestWhatIsHandedOnIsAccessible(t *testing.T) {
	if testing.Short() {
		t.Skip("LONG=1 looks at these too")
	}
	s := serve(t)
	program := checker(t)
	pages := []struct{ path, stands string }{
		{"embed.html#frame.of=wet-film&frame.lock=coats,solids_for&frame.working=open&dry_film=60&volume_solids=45&coats=2", `document.querySelector("#card .out:not([hidden])") !== null`},
		{"embed.html#frame.of=job&frame.theme=booth", `document.querySelector("#needed:not([hidden])") !== null`},
		{"embed.html#frame.of=no-such", `document.body.innerText.includes("There is no calculator")`},
		{"customer-sheets.html#sender=Us&shop_note=Hello&sheet.1.product=Clear&sheet.1.dry_film=60", `document.getElementById("customer-link")?.checkVisibility() ?? false`},
		{"received.html#sender=Us&shop_note=Hello&sheet.1.product=Clear&sheet.1.dry_film=soon", `document.querySelector("main").dataset.ready === "yes"`},
		{"es/put-on-page.html#frame.of=wet-film&frame.lock=coats", `document.querySelectorAll("#maker-fields li").length > 2`},
		{"es/received.html#sender=Us&sheet.1.product=Clear", `document.querySelector("main").dataset.ready === "yes"`},
		{"es/shelf.html", `document.querySelector("main").dataset.ready === "yes"`},
	}
	for _, l := range []look{phone, deskDark, narrow} {
		p := open(t, s, "about.html", l)
		p.forgive("404", "axe-core")
		for _, page := range pages {
			p.visit("about.html")
			p.visit(page.path)
			p.waitUntil(page.path+" stands", page.stands)
			evaluate[bool](p, `document.querySelectorAll(".maker-fields, .handing-more, #received-sheets details").forEach((d) => d.open = true) ?? true`)
			if l != narrow {
				p.axe(program, page.path)
				continue
			}
			evaluate[string](p, `document.documentElement.style.fontSize = "212.5%"`)
			p.fitsFor(page.path + " text")
			assert.Empty(t, evaluate[[]string](p, cut), page.path)
			p.do(chromedp.EmulateViewport(narrow.width/2, 640, chromedp.EmulateMobile, chromedp.EmulateTouch, chromedp.EmulateScale(2)))
			p.do(chromedp.Reload())
			p.waitUntil(page.path+" stands", page.stands)
			p.fitsFor(page.path + " zoom")
			p.do(chromedp.EmulateViewport(narrow.width, 640, chromedp.EmulateMobile, chromedp.EmulateTouch, chromedp.EmulateScale(2)))
		}
	}
}
