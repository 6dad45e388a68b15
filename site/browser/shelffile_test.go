package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// gives hands the shelf's page a file.
func (p *tab) gives(text string) {
	p.t.Helper()
	evaluate[bool](p, `(() => {
		const files = new DataTransfer();
		files.items.add(new File([`+quoted(text)+`], "shelf.json", {type: "application/json"}));
		const input = document.getElementById("shelf-file");
		input.files = files.files;
		input.dispatchEvent(new Event("change", {bubbles: true}));
		return true;
	})()`)
}

const shelfFile = `{"spraywright": "shelf", "version": 1, "items": [%s]}`

func sheetIn(pairs string) string { return `{"kind": "data-sheet", "form": {` + pairs + `}}` }

func TestAFileIsLookedAtBeforeItIsTaken(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	p.shelve("data-sheet product=Grey primer&dry_film=60&coats=2", "data-sheet product=Clear&dry_film=50")
	p.gives(fmt.Sprintf(shelfFile, strings.Join([]string{
		sheetIn(`"product": "Grey primer", "dry_film": "2.4", "dry_film.unit": "mil", "volume_solids": "44"`),
		sheetIn(`"product": "Clear", "dry_film": "50"`),
		sheetIn(`"product": "Sealer", "dry_film": "soon", "nonsense": "<img src=x onerror=alert(1)>"`),
		sheetIn(`"product": "Ivory base", "volume_solids": "20"`),
		`{"kind": "gun", "form": {"gun_name": "Gravity gun", "pair.1.air": "35", "pair.1.humidity": "20", "pair.1.pressure_worked": "23"}}`,
	}, ",")))
	p.waitIn(".import", "Would be changed: 1")
	p.has(".import", "Would be added: 3", "Stay as they are: 1", "3 items are ticked.",
		"Dry film wanted 60 µm → 2.4 mil", "Coats 2 → blank", "Volume solids blank → 44 %",
		"Dry film wanted must be a number in µm, like 60", "Not known here, and of no effect: nonsense")
	p.shot("import-preview")
	p.fits()
	assert.Len(t, p.shelved(), 2, "nothing is written before the person says so")
	p.tap(".group-add li:nth-child(2) .tick-one") // not the base
	p.waitIn(".import", "2 items are ticked.")
	p.pressIn(".import", "Do what is ticked")
	p.waitIn("#notices", "Added: 1. Changed: 1.")
	kept := p.shelved()
	assert.Equal(t, "dry_film=2.4&dry_film.unit=mil&product=Grey+primer&volume_solids=44", kept["Grey primer"])
	assert.Contains(t, kept, "Gravity gun")
	assert.Len(t, kept, 3)
}

func TestTheShelfGoesOutAndComesBack(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	p.shelve("data-sheet "+greyPrimer, "data-sheet "+ivoryBase, "shop shop=Trike workshop&units=us&unit_film=mil")
	before := p.shelved()
	text := evaluate[string](p, `(async () => {
		const at = (name) => import(new URL("scripts/" + name, document.baseURI).href);
		const [{ all }, { fileText }] = await Promise.all(["db.js", "shelf-file.js"].map(at));
		return fileText(await all("profile"));
	})()`)
	assert.Contains(t, text, `"version": 1,`)
	assert.Contains(t, text, `"dry_film.unit": "mil"`)

	other := open(t, p.server, "shelf.html", desk)
	other.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	other.gives(text)
	other.waitIn(".import", "Would be added: 3")
	other.pressIn(".import", "Do what is ticked")
	other.waitIn("#notices", "Added: 3. Changed: 0.")
	assert.Equal(t, before, other.shelved())
	other.gives(text)
	other.waitIn(".import", "Stay as they are: 3")
	other.waitIn(".import", "Nothing is ticked.")
}

// Whatever a file holds, it is refused as a whole with a line that says why, and nothing of it is kept or run.
func TestAHostileFileIsRefused(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	good := sheetIn(`"product": "Clear"`)
	for file, says := range map[string]string{
		`{"spraywright": "shelf", "version": 2, "items": []}`:   "is of another version",
		`{"spraywright": "shelf", "version": "1", "items": []}`: "is of another version",
		`{"version": 1, "items": []}`:                           "is not a shelf",
		`[]`:                                                    "is not a shelf",
		`null`:                                                  "is not a shelf",
		`{"spraywright": "shelf", "version": 1, "items": [`: "cannot be read",
		"\x00\x01binary": "cannot be read",
		`{"spraywright": "shelf", "version": 1, "items": {"length": 1}}`:         "has no list of items",
		`{"spraywright": "shelf", "version": 1, "run": "alert(1)", "items": []}`: "has “run”, which has no place there",
		fmt.Sprintf(shelfFile, ""):                                                              "is an empty shelf",
		fmt.Sprintf(shelfFile, good+",7"):                                                       "Item 2 is nothing that the shelf holds",
		fmt.Sprintf(shelfFile, `{"kind": "__proto__", "form": {}}`):                             "Item 1 is nothing that the shelf holds",
		fmt.Sprintf(shelfFile, `{"kind": "constructor", "form": {}}`):                           "Item 1 is nothing that the shelf holds",
		fmt.Sprintf(shelfFile, `{"kind": "gun", "form": []}`):                                   "Item 1 is nothing that the shelf holds",
		fmt.Sprintf(shelfFile, `{"kind": "gun", "form": {"gun": "hvlp"}}`):                      "Item 1 does not say what it is called",
		fmt.Sprintf(shelfFile, `{"kind": "gun", "form": {"gun_name": 7}}`):                      "has an entry that no form has: “gun_name”",
		fmt.Sprintf(shelfFile, `{"id": "../x", "kind": "gun", "form": {}}`):                     "Item 1 has no name of its own in the file",
		fmt.Sprintf(shelfFile, good+","+sheetIn(`"__proto__": "x", "product": "X"`)):            "has an entry that no form has: “__proto__”",
		fmt.Sprintf(shelfFile, sheetIn(`"product": {"toString": "x"}`)):                         "has an entry that no form has: “product”",
		fmt.Sprintf(shelfFile, sheetIn(`"product": "`+strings.Repeat("x", 201)+`"`)):            "has an entry that no form has: “product”",
		fmt.Sprintf(shelfFile, sheetIn(`"product&air": "x"`)):                                   "has an entry that no form has: “product&air”",
		`{"__proto__": {"polluted": "yes"}, "spraywright": "shelf", "version": 1, "items": []}`: "has “__proto__”, which has no place there",
	} {
		p.gives(file)
		p.waitIn("#notices", says)
		evaluate[bool](p, `(document.getElementById("notices").replaceChildren(), true)`)
	}
	assert.Empty(t, p.shelved())
	assert.True(t, evaluate[bool](p, `({}).polluted === undefined && document.querySelector(".import") === null`))
}
