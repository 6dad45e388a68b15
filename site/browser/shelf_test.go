package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

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
	p.waitUntil("the unit is taken off the number", `document.querySelector('[name="dry_film"]').value === "2.4"`)
	p.waitIn(shelfLine, "“Grey primer”, with changes that are not kept.")
	p.shot("sheet-changed")
	p.fits()
	p.link() // the address has settled: a reload in the same moment would still take the one before
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
