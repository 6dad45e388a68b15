package browser

import (
	"os"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

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
	p.waitUntil("a blank field asks in the shop's unit", `document.querySelector('[name="air.unit"]').value === "degF"`)
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

// The states of the shelf that somebody should look at after a change of style, on each screen.
func TestTakePicturesOfTheShelf(t *testing.T) {
	if os.Getenv("SPRAYWRIGHT_SHOTS") == "" {
		t.Skip("SPRAYWRIGHT_SHOTS names no folder")
	}
	s := serve(t)
	for _, l := range []look{phone, phoneDark, desk, deskDark} {
		p := open(t, s, "shelf.html", l)
		p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
		p.shot("shelf-empty")
		p.shelve("data-sheet "+greyPrimer, "data-sheet "+ivoryBase, "gun gun_name=Gravity gun, 1.3 mm&gun=hvlp&pressure=27.5&pressure_most=29",
			"booth booth_name=Booth by the gate&air_speed=0.3&altitude=500", "shop shop=Trike workshop&cup_size=600")
		p.pressIn(`[data-kind="gun"]`, "Use")
		p.pressIn(`[data-kind="data-sheet"]`, "More")
		p.waitIn(".item-tools", "Rename")
		evaluate[bool](p, `(scrollTo(0, 0), true)`)
		p.shotWhole("shelf")
		p.gives(`{"spraywright": "shelf", "version": 1, "items": [{"kind": "data-sheet", "form": {"product": "Grey two-pack primer", "dry_film": "70"}}, {"kind": "gun", "form": {"gun_name": "Touch-up gun"}}]}`)
		p.waitIn(".import", "2 items are ticked.")
		p.shot("shelf-import")
		p.visit("wet-film.html#dry_film=80")
		p.pressIn(shelfLine, "Fill from the shelf")
		p.pressIn(shelfLine, "Grey two-pack primer Data sheet")
		p.waitIn(shelfLine, "Here the form says something else")
		p.shot("shelf-asks")
		p.visit("")
		p.waitIn(shelfLine, "Fill in what is in use")
		p.shot("shelf-offers")
		p.visit("shelf.html")
		p.pressIn(".shelf", "Grey two-pack primer")
		p.waitIn(shelfLine, "as it is on the shelf.")
		p.enter("dry_film", "70")
		p.waitIn(shelfLine, "with changes that are not kept.")
		evaluate[bool](p, `(scrollTo(0, 0), true)`)
		p.shot("sheet")
		p.shotWhole("sheet-whole")
	}
}
