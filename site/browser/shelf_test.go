package browser

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

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
	evaluate[bool](p, `(() => { document.querySelector(".press-next")?.classList.remove("press-next"); `+find+`.classList.add("press-next"); return true; })()`)
	p.tap(".press-next")
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
	q.do(chromedp.EmulateViewport(p.look.width, p.look.height, chromedp.EmulateMobile, chromedp.EmulateTouch))
	q.listen()
	q.visit(path)
	p.t.Cleanup(q.blame)
	return q
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
	p.enter("dry_film", "70")
	p.waitIn(shelfLine, "with changes that are not kept.")
	q.enter("dry_film", "80")
	q.enter("coats", "")
	q.pressIn(shelfLine, "Keep changes")
	q.waitIn(shelfLine, "as it is on the shelf.")

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

	q.waitIn(shelfLine, "was changed elsewhere")
	q.pressIn(shelfLine, "Compare both")
	q.pressIn(shelfLine, "Show the one on the shelf")
	q.waitUntil("it is the other's", `document.querySelector('[name="dry_film"]').value === "70"`)
	q.waitIn(shelfLine, "as it is on the shelf.")
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

func TestASheetFillsAForm(t *testing.T) {
	p := open(t, serve(t), "wet-film.html", phone)
	assert.False(t, p.sees(".shelf-offer button"), "there is nothing on the shelf yet")
	p.shelve("data-sheet "+greyPrimer, "data-sheet "+ivoryBase)
	p.do(chromedp.Reload())
	p.pressIn(shelfLine, "Fill from the shelf")
	p.shot("picker")
	p.fits()
	p.pressIn(shelfLine, "Ivory waterborne base Data sheet")
	p.waitIn("#notices", "Filled in from Ivory waterborne base.")
	p.waitUntil("the film is there in its own unit", `document.querySelector('[name="dry_film"]').value === "0.7" && document.querySelector('[name="dry_film.unit"]').value === "mil"`)
	p.waitIn(`[data-out="wet_film"]`, "mil") // which is what the sheet speaks
	p.presses("Undo")
	p.waitUntil("it is as it was", `document.querySelector('[name="dry_film"]').value === ""`)

	p.enter("dry_film", "80 um")
	p.pressIn(shelfLine, "Fill from the shelf")
	p.pressIn(shelfLine, "Grey two-pack primer Data sheet")
	p.waitIn(shelfLine, "Here the form says something else than “Grey two-pack primer”: Dry film wanted 80 µm → 60 µm")
	assert.Equal(t, []string{"80", "44"}, []string{p.value("dry_film"), p.value("volume_solids")}, "blank fields are filled at once, others not")
	p.shot("asks-before-it-changes")
	p.pressIn(shelfLine, "Change the ticked ones")
	p.waitUntil("it has changed", `document.querySelector('[name="dry_film"]').value === "60"`)
	p.presses("Undo")
	p.waitUntil("it is as it was", `document.querySelector('[name="dry_film"]').value === "80"`)
}

// Some facts of a sheet mean what they say only beside others.
func TestWhatDoesNotFitIsLeftOut(t *testing.T) {
	s := serve(t)
	p := open(t, s, "shelf.html", phone)
	p.shelve("data-sheet " + strings.Replace(ivoryBase, "volume_solids=20", "volume_solids=25&solids_for=unthinned", 1))
	for page, blank := range map[string]string{"job-cost.html": "volume_solids", "spreading-rate.html": "ratio"} {
		p.visit(page)
		p.pressIn(shelfLine, "Fill from the shelf")
		p.pressIn(shelfLine, "Ivory waterborne base Data sheet")
		p.waitUntil("the film is there", `document.querySelector('[name="dry_film"]').value === "0.7"`)
		assert.Empty(t, p.value(blank), page)
	}
}

func TestRowsOfTheJobComeFromTheShelfAndGoThere(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.shelve("data-sheet "+greyPrimer, "data-sheet "+ivoryBase)
	p.visit("")
	coats := `[data-table="coat"]`
	p.pressIn(coats, "Add from the shelf")
	for _, n := range []string{"2", "1"} { // the base first
		p.tap(coats + ` .found li:nth-child(` + n + `) input`)
	}
	p.pressIn(coats, "Add the ticked ones")
	p.waitIn(`[data-row="coat.1"]`, "Ivory waterborne base, 100:20 by weight, 20 % solids")
	p.waitIn(`[data-row="coat.2"]`, "Grey two-pack primer, 4:1:1 by volume, 44 % solids, 60 µm in 2 coats")

	p.tap(coats + " .add")
	p.waitUntil("a third row is open", `document.activeElement.name === "coat.3.product"`)
	p.pressIn(`[data-row="coat.3"]`, "From the shelf")
	p.pressIn(coats, "Grey two-pack primer 4:1:1")
	p.waitIn(`[data-row="coat.3"]`, "Grey two-pack primer, 4:1:1 by volume")
	p.opens("coat.3")
	p.shot("row-from-shelf")
	p.fits()
	p.enter("coat.3.dry_film", "75")
	p.pressIn(`[data-row="coat.3"]`, "Keep as a data sheet")
	p.waitIn("#notices", "“Grey two-pack primer” is on the shelf already and says something else.")
	p.presses("Close")
	p.enter("coat.3.product", "Grey primer, thick")
	p.enter("coat.3.on_colour", "ivory")
	p.pressIn(`[data-row="coat.3"]`, "Keep as a data sheet")
	p.waitIn("#notices", "“Grey primer, thick” is on the shelf now.")
	sheet := p.shelved()["Grey primer, thick"]
	assert.Contains(t, sheet, "dry_film=75")
	assert.NotContains(t, sheet, "on_colour")
}

func TestWhatIsInUseIsOfferedByOneTap(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.shelve("gun gun_name=Gravity gun&gun=hvlp&pressure=27.5&pressure_most=29&pair.1.air=35&pair.1.humidity=20&pair.1.pressure_worked=23",
		"booth booth_name=Booth by the gate&air_speed=0.3&altitude=500", "shop shop=Trike workshop&units=si&cup_size=600&unit_temperature=degf&unit_film=mil&scale_step=0.1")
	for _, kind := range []string{"gun", "booth", "shop"} {
		p.pressIn(`[data-kind="`+kind+`"]`, "Use")
		p.waitIn(`[data-kind="`+kind+`"]`, "In use")
	}
	p.shot("shelf-in-use")
	p.fits()
	p.visit("")
	p.waitIn(shelfLine, "Fill in what is in use: Gravity gun, Booth by the gate, Trike workshop")
	assert.Empty(t, p.value("pressure"), "nothing is filled in by itself")
	p.shot("in-use-offered")
	p.tap(".shelf-offer .action")
	p.waitUntil("it is filled in", `document.querySelector('[name="pressure"]').value === "27.5" && document.querySelector('[name="cup_size"]').value === "600" && document.querySelector('[name="altitude"]').value === "500"`)
	p.waitUntil("there is nothing more to offer", `document.querySelector(".shelf-offer .action").hidden`)

	p.visit("settings.html")
	p.tap(".shelf-offer .action")
	p.waitIn(`[data-row="pair.1"]`, "Pair")

	// The shop's units are those of the answers, and of the fields that are still blank.
	p.visit("wet-film.html#dry_film=60&coats=2&volume_solids=50")
	p.waitIn(`[data-out="wet_film"]`, "2.4 mil") // 60 µm
	p.visit("condensation.html")
	assert.Equal(t, "degF", p.value("air.unit"))
	p.visit("condensation.html?units#air=22&humidity=55&panel=21&units.temperature=degC")
	p.waitIn(`[data-out="dew_point"]`, "°C")
}

func TestReadingsOfTheDayAreOffered(t *testing.T) {
	p := open(t, serve(t), "flash-time.html", phone)
	p.enter("air", "72F")
	p.enter("humidity", "55")
	p.waitUntil("the reading is kept", `(localStorage.getItem("spraywright:readings") ?? "").includes("humidity=55") && localStorage.getItem("spraywright:readings").includes("air=72&")`)
	p.visit("air-state.html")
	p.waitIn(".read-today", "Booth as read at")
	p.has(".read-today", "Air temperature 72 °F; Relative humidity 55 %.")
	p.shot("read-today")
	p.pressIn(".read-today", "Fill in")
	p.waitUntil("the readings are there", `document.querySelector('[name="air"]').value === "72" && document.querySelector('[name="humidity"]').value === "55"`)
	p.waitUntil("they are not offered again", `document.querySelector(".read-today").hidden`)
	p.visit("compressed-air-water.html")
	p.waitIn(".bar-needed", "Still needed")
	assert.False(t, p.sees(".read-today"), "the compressor draws other air")

	evaluate[bool](p, `(localStorage.setItem("spraywright:readings", localStorage.getItem("spraywright:readings").replace(/at=\d+/g, "at=1000")), true)`)
	p.visit("condensation.html")
	p.waitIn(".bar-needed", "Still needed")
	assert.False(t, p.sees(".read-today"), "it was another day")
}

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
