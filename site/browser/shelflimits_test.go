package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

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
