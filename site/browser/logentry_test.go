package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A link, or an emptied form, is another mix than the entry that was open on the page before.
func TestALinkedMixIsNoChangeOfTheEntryShown(t *testing.T) {
	p := fiveMixes(t, phone)
	p.tap(".log-row:nth-child(2) summary")
	p.tap(`.log-open [data-do="change"]`)
	p.waitIn(".log-save", "Save the change")
	p.visit("?away")
	p.visit("mix-record.html#mixed_on=2026-11-24&product=Ivory+base&mixed_volume=300&voc=420")
	p.waitIn("#notices", fromLink)
	p.waitIn(".log-save", "Log this mix")
	p.tap(".log-save .action")
	p.waitUntil("it is logged", `document.getElementById("notices").textContent.includes("Logged.")`) // another notice may have come on top
	assert.Equal(t, 6, evaluate[int](p, `import("/scripts/db.js").then(async ({ all }) => (await all("mix")).length)`))
	p.tap("#empty")
	p.waitIn(".log-save", "Log this mix")
}

func TestTwoQuickTapsLogOneMix(t *testing.T) {
	p := open(t, serve(t), aMix, phone)
	p.waitUntil("the mix can be logged", `document.querySelector("[data-log]") !== null`)
	evaluate[bool](p, `(document.querySelector("[data-log]").click(), document.querySelector("[data-log]").click(), true)`)
	p.waitIn("#notices", "Logged: ")
	assert.Equal(t, 1, evaluate[int](p, `import("/scripts/db.js").then(async ({ all }) => (await all("mix")).length)`))
}
