package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestNoTwoGunsOfOneName(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	p.shelve("gun gun_name=Gravity gun&fan_width=250", "gun gun_name=Spare gun")
	p.visit("gun.html")
	p.enter("gun_name", "gravity gun")
	p.enter("fan_width", "300")
	p.pressIn(shelfLine, "Keep on the shelf")
	p.waitIn(shelfLine, "is on the shelf already.")
	p.pressIn(shelfLine, "Keep this form as another")
	p.waitIn("#notices", "It is kept as “gravity gun (2)”, because the other name is taken.")
	p.waitUntil("the form has the name", `document.querySelector('[name="gun_name"]').value === "gravity gun (2)"`)
	p.enter("gun_name", "Spare gun")
	p.pressIn(shelfLine, "Keep changes")
	p.waitIn("#notices", "“Spare gun” is on the shelf already. Choose another name.")
	assert.Len(t, p.shelved(), 3)
}

// A file whose id stands here for something else is taken in all the same, under an id of its own.
func TestAnImportWithATakenIdIsNoLoop(t *testing.T) {
	p := open(t, serve(t), "shelf.html", phone)
	p.waitUntil("the page is ready", `document.querySelector("main").dataset.ready === "yes"`)
	id := p.shelve("gun gun_name=Gravity gun")[0]
	p.gives(fmt.Sprintf(shelfFile, `{"id": "`+id+`", "kind": "booth", "form": {"booth_name": "Booth 1"}}`))
	p.waitIn(".import", "Would be added: 1")
	p.pressIn(".import", "Do what is ticked")
	p.waitIn("#notices", "Added: 1. Changed: 0.")
	assert.Len(t, p.shelved(), 2)
}

// A newer page has changed how records are kept: the old one says in one line what to do.
func TestAnOldTabAsksToBeReloaded(t *testing.T) {
	p := open(t, serve(t), "gun.html", phone)
	p.enter("gun_name", "Gravity gun")
	p.waitIn(shelfLine, "This is not on the shelf.")
	const says = "This page is older than the site in another tab: reload this page. Nothing was kept."
	for _, again := range []bool{false, true} {
		if again {
			p.reload() // the files are still the old ones
			p.waitIn(shelfLine, "This is not on the shelf.")
		} else {
			evaluate[bool](p, `new Promise((done) => { const r = indexedDB.open("spraywright", 99); r.onsuccess = () => { r.result.close(); done(true); }; })`)
		}
		p.pressIn(shelfLine, "Keep on the shelf")
		p.waitIn("#notices", says)
		assert.Equal(t, 1, strings.Count(p.inOneLine("#notices"), says))
		assert.NotContains(t, p.inOneLine("#notices"), "refused")
	}
}
