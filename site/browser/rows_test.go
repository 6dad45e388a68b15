package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// names lists the rows of a table by what they are called.
func names(p *tab, table string) []string {
	p.t.Helper()
	return evaluate[[]string](p, `[...document.querySelectorAll('[data-table="`+table+`"] .row [data-slot="says"]')].map((e) => e.innerText.split(",")[0])`)
}

// opens opens a row and waits for its fields.
func (p *tab) opens(row string) {
	p.t.Helper()
	fields := `document.querySelector('[data-row="` + row + `"] .edit [data-field]') !== null`
	if !evaluate[bool](p, fields) {
		p.tap(`[data-row="` + row + `"] summary`)
	}
	p.waitUntil(row+" is open", fields)
}

// does presses one of the buttons of an open row.
func does(p *tab, row, button string) {
	p.t.Helper()
	if !evaluate[bool](p, `document.querySelector('[data-row="`+row+`"] details').open`) {
		p.tap(`[data-row="` + row + `"] summary`)
	}
	p.tap(`[data-row="` + row + `"] [data-do="` + button + `"]`)
}

func TestRowsAreAddedDuplicatedMovedAndTakenOut(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	p.has(`[data-row="part.1"]`, "Cargo-box lid, box 800 mm × 600 mm × 120 mm, 12 pieces, 0.816 m² each")
	p.has(`[data-row="coat.4"]`, "Two-pack clear, 2:1+10% by volume, 47 % solids, 50 µm in 2 coats")

	p.tap(`[data-table="part"] .add`)
	p.waitUntil("the new row is ready", `document.activeElement.name === "part.3.name"`)
	p.keys("Fork leg")
	p.waitIn(`[data-row="part.3"]`, "Still needed: Shape")
	p.waitIn(".bar-needed", "Still needed: 2 next: Shape")

	does(p, "part.2", "copy")
	p.waitUntil("there are four parts", `document.querySelectorAll('[data-table="part"] .row').length === 4`)
	p.waitIn(`[data-row="part.3"]`, "Mudguard, flat 700 mm × 90 mm, both sides, 24 pieces, 0.126 m² each")
	p.enter("part.2.name", "Front mudguard")
	p.waitIn(`[data-row="part.2"] summary`, "Front mudguard")
	assert.Equal(t, []string{"Cargo-box lid", "Front mudguard", "Mudguard", "Fork leg"}, names(p, "part"))

	does(p, "part.2", "up")
	p.waitIn(`[data-row="part.1"] summary`, "Front mudguard")
	does(p, "part.1", "down")
	p.waitIn(`[data-row="part.2"] summary`, "Front mudguard")
	does(p, "part.2", "up")
	p.waitUntil("the row has moved", `document.querySelector('[name="part.1.name"]')?.value === "Front mudguard"`)
	assert.Equal(t, []string{"Front mudguard", "Cargo-box lid", "Mudguard", "Fork leg"}, names(p, "part"))
	assert.Contains(t, p.link(), "part.1.name=Front+mudguard")

	area := p.inOneLine(`[data-out="area_all"]`)
	does(p, "part.4", "remove")
	p.waitIn(".undo", "Fork leg removed.")
	p.waitUntil("only whole parts are left", `document.querySelector('[data-out="area_all"]').innerText.length > 10`)
	does(p, "part.1", "remove")
	p.waitIn(".undo", "Front mudguard removed.")
	assert.Equal(t, []string{"Cargo-box lid", "Mudguard"}, names(p, "part"))
	p.waitUntil("the area is of two parts", `document.querySelector('[data-out="area_all"]').innerText.includes("12.82")`) // 12 x 0.816 + 24 x 0.126
	p.shot("row-removed")
	p.tap(`.undo [data-do="undo"]`)
	p.waitIn(`[data-row="part.1"]`, "Front mudguard, flat 700 mm × 90 mm, both sides, 24 pieces, 0.126 m² each")
	p.waitUntil("the area is whole again", `document.querySelector('[data-out="area_all"]').innerText.includes("15.84")`)
	assert.NotContains(t, area, "15.84", "a part that is not filled in yet was counted")
	assert.Equal(t, []string{"Front mudguard", "Cargo-box lid", "Mudguard"}, names(p, "part"))

	before := p.card()
	p.tap("#empty")
	p.waitIn("#notices", "The form is empty.")
	assert.Equal(t, []string{"Part"}, names(p, "part"))
	p.tap("#notices button")
	p.waitIn("#card", "Call sheet")
	assert.Equal(t, before, p.card(), "the form has not come back as it was")
}
