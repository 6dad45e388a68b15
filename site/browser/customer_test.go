package browser

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// handed is the supplier's page with two sheets of the shelf in it, and the link for the customer.
func handed(t *testing.T, s *server) (*tab, string) {
	t.Helper()
	p := open(t, s, "shelf.html", phone)
	p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	p.shelve("data-sheet "+greyPrimer, "data-sheet "+ivoryBase, "data-sheet product=Not this one")
	p.visit("customer-sheets.html")
	p.waitIn("#handing", "The link stands here once the form is complete.")
	p.enter("sender", "Trike paint counter")
	p.enter("shop_note", "Ask for <the sheet> at https://example.org")
	p.pressIn(`[data-table="sheet"]`, "Add from the shelf")
	for _, n := range []string{"1", "2"} {
		p.tap(`[data-table="sheet"] .found li:nth-child(` + n + `) input`)
	}
	p.pressIn(`[data-table="sheet"]`, "Add the ticked ones")
	p.waitIn("#card", "data sheets in it: 2")
	return p, strings.TrimPrefix(p.value2("#customer-link"), s.url(""))
}

func TestASupplierHandsSheetsToACustomer(t *testing.T) {
	s := serve(t)
	p, link := handed(t, s)
	assert.True(t, strings.HasPrefix(link, "received.html#fields="), link)
	assert.Contains(t, p.value2("#customer-tag"), "&amp;sender=Trike+paint+counter")
	assert.Contains(t, p.value2("#customer-script"), `data-show="frame.of=job&amp;`)

	q := open(t, s, link, phone)
	q.waitIn("#received-from", "From: Trike paint counter")
	q.has(".sender", "Note: Ask for <the sheet> at https://example.org", "Nobody has checked this")
	assert.Zero(t, evaluate[int](q, `document.querySelectorAll(".sender a, .sender the").length`), "what a link says has become more than text")
	assert.Empty(t, q.shelved(), "kept unasked")
	q.tap("#received-sheets summary")
	q.has("#received-sheets", "Dry film wanted 60 µm", "Mix ratio 4:1:1")
	q.pressIn("#received-tools", "Keep on this device")
	q.waitIn(".import", "Would be added: 2")
	assert.Empty(t, q.shelved())
	q.pressIn(".import", "Do what is ticked")
	q.waitIn("#notices", "Added: 2. Changed: 0.")
	mine, theirs := p.shelved(), q.shelved()
	assert.Len(t, theirs, 2)
	for name, form := range theirs {
		assert.Equal(t, mine[name], form)
	}
	q.pressIn("#received-tools", "Open “Job card” with them")
	q.waitIn(`[data-row="coat.1"]`, "Grey two-pack primer, 4:1:1 by volume, 44 % solids, 60 µm in 2 coats")
	q.waitIn(`[data-row="coat.2"]`, "Ivory waterborne base")
	q.waitIn("#notices", "This form came from a link.")
	assert.NotContains(t, q.text("#notices"), damaged)
}

// What is on the customer's shelf is never changed unseen.
func TestALinkChangesNothingUnseen(t *testing.T) {
	s := serve(t)
	_, link := handed(t, s)
	q := open(t, s, "shelf.html", phone)
	q.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	q.shelve("data-sheet product=grey two-pack primer&dry_film=70&coats=2")
	q.visit(link)
	q.pressIn("#received-tools", "Keep on this device")
	q.waitIn(".import", "Would be changed: 1")
	q.has(".import", "Would be added: 1", "Dry film wanted 70 µm → 60 µm", "grey two-pack primer → Grey two-pack primer")
	q.shot("received-changes")
	q.pressIn(".import", "Keep nothing")
	assert.Equal(t, map[string]string{"grey two-pack primer": "coats=2&dry_film=70&product=grey+two-pack+primer"}, q.shelved())
	q.pressIn("#received-tools", "Keep on this device")
	q.waitIn(".import", "Would be changed: 1")
	q.tap(".group-change .tick-one")
	q.pressIn(".import", "Do what is ticked")
	q.waitIn("#notices", "Added: 1. Changed: 0.")
	assert.Contains(t, q.shelved(), "grey two-pack primer")
}

// A form of the customer's own is put aside, as by any link.
func TestSheetsOpenInWhatTheSupplierChose(t *testing.T) {
	s := serve(t)
	p := open(t, s, "received.html#opens=wet-film&sender=Us&units=us&sheet.1.product=Clear&sheet.1.dry_film=2&sheet.1.dry_film.unit=mil&sheet.1.volume_solids=45&sheet.1.coats=2&sheet.2.product=Base&sheet.2.dry_film=20", phone)
	p.waitIn("#received-tools", "Open “Wet film” with Base")
	p.pressIn("#received-tools", "Open “Wet film” with Clear")
	p.waitIn("#card", "2.2 mil") // 2 / 2 / 0.45
	assert.Equal(t, "2", p.value("dry_film"))
}

func TestTheCounterCardIsOneSheetOfA6(t *testing.T) {
	s := serve(t)
	p, link := handed(t, s)
	evaluate[bool](p, `(globalThis.print = () => {}, true)`)
	p.tap(`[data-hand="card"]`)
	p.waitUntil("the card is laid out", `document.querySelector("#counter-card .code path") !== null`)
	p.media("print")
	p.has("#counter-card", "Trike paint counter", "Grey two-pack primer", "Ivory waterborne base", "Point your phone’s camera at the code", "Ask for <the sheet> at https://example.org")
	p.media("")
	pdf, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{PreferCSSPageSize: new(true), PrintBackground: new(true)})
	require.NoError(t, err)
	assert.Len(t, regexp.MustCompile(`/Type\s*/Page\b`).FindAll(pdf.Data, -1), 1)
	assert.Regexp(t, `/MediaBox \[0 0 29[78][.\d]* (419|420)[.\d]*\]`, string(pdf.Data), "105 mm by 148 mm, in points")
	if dir := os.Getenv("SPRAYWRIGHT_SHOTS"); dir != "" {
		require.NoError(t, os.WriteFile(filepath.Join(dir, "counter-card.pdf"), pdf.Data, 0o644))
	}
	// The same code, on the screen, leads to the customer's page.
	p.tap(`[data-hand="code"]`)
	p.waitIn("#customer-verdict", "A phone camera reads this QR code")
	evaluate[string](p, `document.getElementById("customer-code").id = "share-code"`)
	read := p.scan()
	assert.True(t, strings.HasPrefix(read, s.url("received.html#1:")), read)
	q := open(t, s, strings.TrimPrefix(read, s.url("")), phone)
	q.waitIn("#received-from", "From: Trike paint counter")
	assert.Equal(t, strings.TrimPrefix(link, "received.html"), evaluate[string](q, `location.hash`))
}

// Anybody can write a link to the customer's page.
func TestAHostileHandoverIsOnlyText(t *testing.T) {
	s := serve(t)
	for _, c := range []struct{ link, says string }{
		{"sender=<img src=x onerror=ran=1>&sheet.1.product=<script>ran=1</script>", "From: <img src=x onerror=ran=1>"},
		{"sender=a%E2%80%AEmoc.elpmaxe&sheet.1.product=Clear", "has signs in it that cannot be seen"},
		{"sender=Us&sheet.1.product=Cle%E2%80%8Bar", "Product has signs in it that cannot be seen"},
		{"sender=Us&sheet.1.product=Clear&sheet.1.sheet_dated=2024%E2%80%AE5", "Edition of the sheet has signs in it that cannot be seen"},
		{"sender=" + strings.Repeat("Trust+me+", 40) + "&sheet.1.product=Clear", "Who it is from is 359 characters long"},
		{"sender=Us&sheet.1.product=Clear&sheet.1.dry_film=soon", "Dry film wanted must be a number"},
		{"sender=Us&sheet.1.product=Clear&sheet.2.product=clear%20", "stands in it twice"},
		{"sender=Us&shop_note=Hm&sheet.1.product=Clear&sheet.1.dry_film=soon", "From: Us Note: Hm"},
		{"sender=Us&fields=9&sheet.1.product=Clear&fields=9", "This link is incomplete or damaged"},
		{"sender=Us&sheet.1.product=Clear&__proto__=1&sheet.1.constructor=2&sheet.x.product=3", "This link is incomplete or damaged"},
		{"sender=Us&opens=..%2Fshelf&sheet.1.product=Clear", "has no answer “../shelf”"},
		{"sender=Us", "has no rows"},
	} {
		p := open(t, s, "received.html#"+c.link, phone)
		p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
		p.waitFor(c.says)
		assert.False(t, evaluate[bool](p, `"ran" in window || "ran" in {} || document.querySelector("#received script, #received img, .sender a") !== null`), c.link)
		assert.Empty(t, p.shelved())
		p.fits()
	}
}

// A sheet that has a problem is not kept from a link, not even where all are ticked at once.
func TestASheetWithAProblemIsNotKept(t *testing.T) {
	p := open(t, serve(t), "received.html#sender=Us&sheet.1.product=Clear&sheet.2.product=Cle%E2%80%8Bar&sheet.3.product=Base", phone)
	p.pressIn("#received-tools", "Keep on this device")
	p.waitIn(".import", "2 items are ticked.")
	p.tap(".import .tick-all input")
	p.tap(".import .tick-all input")
	assert.Equal(t, []bool{false, true, false}, evaluate[[]bool](p, `[...document.querySelectorAll(".import .tick-one")].map((box) => box.disabled)`))
	p.pressIn(".import", "Do what is ticked")
	p.waitIn("#notices", "Added: 2. Changed: 0.")
	assert.Equal(t, map[string]string{"Clear": "product=Clear", "Base": "product=Base"}, p.shelved())
}

func TestNothingInTheLinkSaysSo(t *testing.T) {
	p := open(t, serve(t), "received.html", phone)
	p.waitFor("There is nothing in this link.")
}

// What the site offers is laid on its shelf page by the build, so that it is there without a network.
func TestTheSitesOwnSheetsAreKeptWhenThePersonSaysSo(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	p.has("#site-sheets", "From this site", "Grey two-pack primer (invented)", "Gravity gun, 1.3 mm (invented) Gun")
	p.shelve("data-sheet product=Ivory waterborne base (invented)&coats=3")
	evaluate[bool](p, `[...document.querySelectorAll("#site-sheets li button")][1].click() ?? true`)
	p.waitIn(".import", "Would be changed: 1")
	p.has(".import", "Coats 3 → 2")
	assert.Len(t, p.shelved(), 1)
	p.pressIn(".import", "Keep nothing")
	p.pressIn("#site-sheets", "Keep all of these")
	p.waitIn(".import", "Would be added: 2")
	p.pressIn(".import", "Do what is ticked")
	p.waitIn("#notices", "Added: 2. Changed: 1.")
	assert.Len(t, p.shelved(), 3)
	p.pressIn("#site-sheets", "Gravity gun, 1.3 mm (invented)")
	p.waitUntil("it opens as a form", `document.querySelector('[name="gun_name"]')?.value === "Gravity gun, 1.3 mm (invented)"`)
}

// The one file has what the site offers, too, and reads links; no other page can frame it.
func TestSheetsInTheOneFile(t *testing.T) {
	if chromium() == "" {
		t.Skip("no Chromium here")
	}
	s := fromDisk(t)
	p := open(t, s, "shelf.html", phone)
	p.waitUntil("the page is ready", `document.querySelector("main")?.dataset.ready === "yes"`)
	evaluate[bool](p, `document.querySelectorAll("#site-sheets li button")[2].click() ?? true`)
	p.waitIn(".import", "Would be added: 1")
	p.pressIn(".import", "Do what is ticked")
	p.waitIn("[data-kind=gun]", "Gravity gun, 1.3 mm (invented)")

	p.visit("received.html#sender=Us&opens=wet-film&sheet.1.product=Clear&sheet.1.dry_film=60&sheet.1.volume_solids=45&sheet.1.coats=2")
	p.waitIn("#received-from", "From: Us")
	p.pressIn("#received-tools", "Open “Wet film” with Clear")
	p.waitIn("#card", "67 µm")
	p.visit("customer-sheets.html#sender=Us&sheet.1.product=Clear")
	p.waitIn("#handing", "Copy the link")
	assert.Equal(t, "#page=received&", p.value2("#customer-link")[:15])
	assert.NotContains(t, p.text("#handing")+evaluate[string](p, `[...document.querySelectorAll("#handing input, #handing textarea")].map((c) => c.value).join()`), "file:", "the path of somebody's disk")
	assert.Zero(t, evaluate[int](p, `document.querySelectorAll("#handing textarea, #handing iframe").length`))
	p.visit("put-on-page.html")
	p.waitFor("This is the site in one file, which other pages cannot frame.")
}

// Once the site has been opened, what it offers needs no network.
func TestTheSitesOwnSheetsNeedNoNetwork(t *testing.T) {
	s := serve(t)
	p := open(t, s, "shelf.html", phone)
	p.waitUntil("the site is kept", `navigator.serviceWorker.ready.then(() => true)`)
	p.visit("menu.html")
	p.waitUntil("the worker answers", `Boolean(navigator.serviceWorker.controller)`)
	s.stop()
	p.forgive("Failed to load", "ERR_", "Failed to fetch", "sw.js")
	p.visit("shelf.html")
	p.waitIn("#site-sheets", "Ivory waterborne base (invented)")
	p.visit("received.html#sender=Us&sheet.1.product=Clear")
	p.waitIn("#received-from", "From: Us")
	p.visit("embed.html#frame.of=wet-film&dry_film=60&volume_solids=45&coats=2")
	p.waitIn("#card", "67 µm")
	assert.Equal(t, 200, evaluate[int](p, `fetch("sheets.json").then((r) => r.status)`))
}
