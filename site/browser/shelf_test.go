package browser

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Invented products.
const (
	greyPrimer = "product=Grey two-pack primer&role=surfacer&pack=two&carrier=solvent&solvent=butyl-acetate&ratio=4:1:1&ratio_by=volume&" +
		"density_a=1.48&density_b=1.02&density_c=0.87&volume_solids=44&dry_film=60&coats=2&pot_life=90&pot_life_at=20&flash=10&flash_at=20&" +
		"latest_recoat=48&recoat_at=20&drying=air&dry_time=90&dry_at=20&air_lowest=10&air_highest=35&voc=510&price=31"
	ivoryBase = "product=Ivory waterborne base&role=base&pack=one&carrier=water&ratio=100:20&ratio_by=weight&density_a=1.18&density_b=1&" +
		"volume_solids=20&dry_film=0.7&dry_film.unit=mil&coats=2&flash=8&flash_at=23&flash_humidity=50&drying=flash&voc=395&water_share=66"
)

// pressIn presses the button in an element that reads so.
func (p *tab) pressIn(selector, label string) {
	p.t.Helper()
	find := `[...document.querySelectorAll(` + quoted(selector+" button, "+selector+" a") + `)].find((b) => b.innerText.trim().replace(/\s+/g, " ") === ` + quoted(label) + ` && b.getClientRects().length > 0)`
	p.waitUntil(selector+" offers “"+label+"”", `Boolean(`+find+`)`)
	at := evaluate[[]float64](p, `(async () => {
		for (let was = ""; ; await new Promise((done) => setTimeout(done, 40))) {
			const b = `+find+`; // the list may have been drawn anew
			b?.scrollIntoView({block: "center", behavior: "instant"});
			const r = b?.getClientRects()[0], at = r && [r.x + r.width / 2, r.y + r.height / 2];
			if (at && was === String(at) && b.contains(document.elementFromPoint(...at))) return at;
			was = String(at);
		}
	})()`)
	p.do(chromedp.TapXY(at[0], at[1]))
}

// shelve puts things on the shelf, as "kind form", and returns their ids.
func (p *tab) shelve(items ...string) []string {
	p.t.Helper()
	type item struct{ Kind, Form string }
	var all []item
	for _, s := range items {
		kind, form, _ := strings.Cut(s, " ")
		all = append(all, item{kind, form})
	}
	list, err := json.Marshal(all)
	require.NoError(p.t, err)
	return evaluate[[]string](p, `(async () => {
		const at = (name) => import(new URL("scripts/" + name, document.baseURI).href);
		const [{ put }, { itemFrom }, { parse }] = await Promise.all(["db.js", "shelf-store.js", "state.js"].map(at));
		const kept = await put("profile", ...`+string(list)+`.map(({ Kind, Form }) => itemFrom(Kind, parse(Form))));
		return kept.map((r) => r.id);
	})()`)
}

// shelved is what the shelf holds: the form of each item by its name.
func (p *tab) shelved() map[string]string {
	p.t.Helper()
	return evaluate[map[string]string](p, `(async () => {
		const { all } = await import(new URL("scripts/db.js", document.baseURI).href);
		return Object.fromEntries((await all("profile")).map((r) => [r.name, r.form]));
	})()`)
}

// beside opens a second tab of the same person, on a phone.
func (p *tab) beside(path string) *tab {
	p.t.Helper()
	ctx, cancel := chromedp.NewContext(p.ctx)
	p.t.Cleanup(cancel)
	q := &tab{t: p.t, ctx: ctx, server: p.server, look: p.look}
	q.listen()
	q.do(chromedp.EmulateViewport(p.look.width, p.look.height, chromedp.EmulateMobile, chromedp.EmulateTouch))
	q.visit(path)
	p.t.Cleanup(q.blame)
	return q
}

// front brings a tab before the others, where alone a finger reaches it.
func (p *tab) front() {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, page.BringToFront, cdp.Empty{})
	require.NoError(p.t, err)
}

const shelfLine = ".shelf-line"

func TestADataSheetIsKeptAndChanged(t *testing.T) {
	p := open(t, serve(t), "data-sheet.html", phone)
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn("#notices", "Give it a name first.")
	assert.Equal(t, "product", p.focused())
	p.enter("product", "Grey primer")
	p.waitIn("#verdict", "For a job card it still lacks")
	p.waitIn(shelfLine, "This is not on the shelf.")
	p.enter("volume_solids", "44")
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn(shelfLine, "“Grey primer”, as it is on the shelf.")

	p.enter("dry_film", "2.4 mil")
	p.waitIn(shelfLine, "“Grey primer”, with changes that are not kept.")
	p.shot("sheet-changed")
	p.fits()
	p.do(chromedp.Reload())
	p.waitIn(shelfLine, "“Grey primer”, with changes that are not kept.")
	p.pressIn(shelfLine, "Keep changes")
	p.waitIn(shelfLine, "“Grey primer”, as it is on the shelf.")
	assert.Equal(t, map[string]string{"Grey primer": "dry_film=2.4&dry_film.unit=mil&product=Grey+primer&volume_solids=44"}, p.shelved())

	p.enter("product", "Black primer")
	p.pressIn(shelfLine, "Keep as another")
	p.waitIn(shelfLine, "“Black primer”, as it is on the shelf.")
	p.enter("coats", "3")
	p.pressIn(shelfLine, "Put back")
	p.waitIn(shelfLine, "“Black primer”, as it is on the shelf.")
	assert.Empty(t, p.value("coats"))
	p.tap("#empty")
	p.waitIn(shelfLine, "Fill it in and keep it")
	p.enter("product", "grey primer ")
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn(shelfLine, "“Grey primer” is on the shelf already.")
	p.has(shelfLine, "Volume solids 44 % → blank")
	p.pressIn(shelfLine, "Show the one on the shelf")
	p.waitUntil("the sheet is there", `document.querySelector('[name="volume_solids"]').value === "44"`)
	assert.Len(t, p.shelved(), 2)
}

func TestWhatTwoTabsChangeIsNeverOverwritten(t *testing.T) {
	p := open(t, serve(t), "data-sheet.html#"+greyPrimer, phone)
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn(shelfLine, "as it is on the shelf.")
	q := p.beside("shelf.html")
	q.pressIn(".shelf", "Grey two-pack primer")
	q.waitIn(shelfLine, "as it is on the shelf.")
	p.front()
	p.enter("dry_film", "70")
	p.waitIn(shelfLine, "with changes that are not kept.")
	q.front()
	q.enter("dry_film", "80")
	q.enter("coats", "")
	q.pressIn(shelfLine, "Keep changes")
	q.waitIn(shelfLine, "as it is on the shelf.")

	p.front()
	p.waitIn(shelfLine, "was changed elsewhere since it was shown here.")
	p.pressIn(shelfLine, "Compare both")
	p.has(shelfLine, "Dry film wanted 80 µm → 70 µm", "Coats blank → 2")
	p.shot("conflict")
	p.fits()
	assert.Contains(t, p.shelved()["Grey two-pack primer"], "dry_film=80&", "nothing is written before the person has chosen")
	p.do(chromedp.Reload())
	p.pressIn(shelfLine, "Compare both")
	p.pressIn(shelfLine, "Keep this form")
	p.waitIn(shelfLine, "as it is on the shelf.")
	assert.Contains(t, p.shelved()["Grey two-pack primer"], "coats=2&")

	q.front()
	q.waitIn(shelfLine, "was changed elsewhere")
	q.pressIn(shelfLine, "Compare both")
	q.pressIn(shelfLine, "Show the one on the shelf")
	q.waitUntil("it is the other's", `document.querySelector('[name="dry_film"]').value === "70"`)
	q.waitIn(shelfLine, "as it is on the shelf.")
	p.front()
	p.pressIn(shelfLine, "To the shelf")
	p.pressIn(".item", "More")
	p.pressIn(".item-tools", "Remove")
	q.waitIn(shelfLine, "was taken off the shelf elsewhere.")
}

// A sheet sent by a link is not the one that the page showed last.
func TestALinkedSheetIsNoChangeOfTheOneShown(t *testing.T) {
	p := open(t, serve(t), "data-sheet.html#"+greyPrimer, phone)
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn(shelfLine, "as it is on the shelf.")
	p.visit("?away")
	p.visit("data-sheet.html#" + ivoryBase)
	p.waitIn(shelfLine, "This is not on the shelf.")
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn(shelfLine, "“Ivory waterborne base”, as it is on the shelf.")
	assert.Len(t, p.shelved(), 2)
}

// Some facts of a sheet mean what they say only beside others.
func TestThingsOnTheShelfAreRenamedDuplicatedAndRemoved(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.shelve("data-sheet "+greyPrimer, "gun gun_name=Gravity gun")
	p.pressIn(`[data-kind="gun"]`, "Use")
	p.waitIn(`[data-kind="gun"]`, "In use")
	sheets := `[data-kind="data-sheet"]`
	p.has(sheets, "Data sheets 1", "Primer or surfacer · 4:1:1 · Volume")
	p.pressIn(sheets, "More")
	p.shot("shelf-item-open")
	p.pressIn(sheets, "Duplicate")
	p.waitIn(sheets, "Grey two-pack primer, another")
	p.pressIn(sheets, "More")
	p.pressIn(sheets, "Rename")
	p.do(chromedp.KeyEvent("Light grey primer\r"))
	p.waitIn(sheets, "Light grey primer")
	assert.Contains(t, p.shelved()["Light grey primer"], "product=Light+grey+primer")

	p.pressIn(`[data-kind="gun"]`, "More")
	p.pressIn(`[data-kind="gun"]`, "Remove")
	p.waitIn(`[data-kind="gun"]`, "Gravity gun removed.")
	assert.NotContains(t, p.shelved(), "Gravity gun")
	p.pressIn(`[data-kind="gun"]`, "Undo")
	p.waitIn(`[data-kind="gun"]`, "In use")
	assert.Equal(t, "gun_name=Gravity+gun", p.shelved()["Gravity gun"])
}

func TestFiveThousandSheetsAreSearchedWithinASecond(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	var items []string
	for i := range 5000 {
		items = append(items, fmt.Sprintf("data-sheet product=Invented paint %d%s&", i, map[bool]string{true: " of Küstenblau"}[i == 4321])+strings.SplitN(greyPrimer, "&", 2)[1])
	}
	for i := 0; i < len(items); i += 1000 {
		p.shelve(items[i : i+1000]...)
	}
	p.visit("shelf.html")
	p.waitIn(`[data-kind="data-sheet"]`, "Data sheets 5000")
	took := evaluate[float64](p, `(async () => {
		const box = document.querySelector('#shelf-search input'), begin = performance.now();
		for (const typed of ["k", "ku", "kust", "kuste", "kustenblau paint"]) {
			box.value = typed;
			box.dispatchEvent(new Event("input", {bubbles: true}));
			document.querySelector("main").getBoundingClientRect();
		}
		const took = performance.now() - begin;
		if (document.querySelectorAll(".item").length !== 1) throw new Error(document.querySelectorAll(".item").length + " found");
		return took;
	})()`)
	t.Logf("five keys pressed among 5000 sheets took %.0f ms", took)
	assert.Less(t, took, 1000.0)
	p.waitIn("#shelf-search", "Found: 1")
	p.visit("wet-film.html")
	p.pressIn(shelfLine, "Fill from the shelf")
	p.waitIn(shelfLine, "Invented paint 0")
	assert.LessOrEqual(t, evaluate[int](p, `document.querySelectorAll(".found li").length`), 40)
}

func TestTheShelfWorksOnceTheServerIsGone(t *testing.T) {
	s := serve(t)
	p := open(t, s, "data-sheet.html", phone)
	p.waitFor("works without a network")
	s.stop()
	p.visit("data-sheet.html#" + greyPrimer)
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn(shelfLine, "as it is on the shelf.")
	p.pressIn(shelfLine, "To the shelf")
	p.pressIn(".item", "Grey two-pack primer")
	p.waitIn(shelfLine, "as it is on the shelf.")
	p.visit("wet-film.html")
	p.pressIn(shelfLine, "Fill from the shelf")
	p.pressIn(shelfLine, "Grey two-pack primer Data sheet")
	p.waitIn(`[data-out="wet_film"]`, "Wet film of one coat")
}

func TestWhereNothingIsKeptThePageSaysSo(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(`indexedDB.open = () => { throw new DOMException("refused", "SecurityError"); };`)
	p.visit("data-sheet.html#" + greyPrimer)
	p.waitIn("#notices", "This browser keeps nothing: what is on the shelf lasts only until you leave this page.")
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn(shelfLine, "as it is on the shelf.")
	p.pressIn(shelfLine, "Export")

	q := open(t, p.server, "data-sheet.html#"+greyPrimer, phone)
	q.waitIn(shelfLine, "This is not on the shelf.")
	evaluate[bool](q, `(IDBObjectStore.prototype.put = () => { throw new DOMException("full", "QuotaExceededError"); }, true)`)
	q.pressIn(shelfLine, "Keep on the shelf")
	q.waitIn("#notices", "It could not be kept: this browser refused to write.")
	assert.Equal(t, "44", q.value("volume_solids"), "nothing typed is lost")
	q.waitIn(shelfLine, "This is not on the shelf.")
}
