package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// Two tabs of one page each keep what was typed in them; a new tab shows the last and offers the other.
func TestTwoTabsKeepTheirOwnForms(t *testing.T) {
	p := open(t, serve(t), "air-state.html", phone)
	p.enter("air", "21")
	p.link()
	q := p.beside("air-state.html")
	q.waitUntil("the last form is there", `document.querySelector('[name="air"]').value === "21"`)
	assert.Empty(t, q.text("#notices"))
	q.enter("air", "31")
	q.enter("humidity", "60")
	q.link()

	p.front()
	p.do(chromedp.Reload())
	p.waitUntil("its own form is there", `document.querySelector('[name="air"]').value === "21"`)
	r := p.beside("air-state.html")
	r.waitUntil("the last typed is there, not the last loaded", `document.querySelector('[name="air"]').value === "31"`)
	assert.Empty(t, r.text("#notices"))

	p.front()
	p.enter("humidity", "45") // writes over what the second tab has typed
	p.link()
	v := p.beside("air-state.html")
	v.waitUntil("the last form is there", `document.querySelector('[name="humidity"]').value === "45"`)
	v.waitIn("#notices", "Another tab of this page held other numbers.")
	v.shot("tabs-other")
	v.presses("Show those")
	v.waitUntil("the other's form is there", `document.querySelector('[name="humidity"]').value === "60" && document.querySelector('[name="air"]').value === "31"`)
	v.presses("Put mine back")
	v.waitUntil("the first is back", `document.querySelector('[name="humidity"]').value === "45"`)
	q.front()
	q.do(chromedp.Reload())
	q.waitUntil("the second tab has its own still", `document.querySelector('[name="humidity"]').value === "60"`)
}

// A link opened in one tab leaves the other as it was.
func TestALinkInOneTabIsNoneOfTheOthers(t *testing.T) {
	p := open(t, serve(t), "air-state.html", phone)
	p.enter("air", "21")
	p.link()
	q := p.beside("air-state.html#air=9&humidity=90")
	q.waitIn("#notices", fromLink)
	p.front()
	p.enter("humidity", "50")
	p.do(chromedp.Reload())
	p.waitUntil("its own form is there", `document.querySelector('[name="humidity"]').value === "50" && document.querySelector('[name="air"]').value === "21"`)
	assert.Empty(t, p.text("#notices"), "it came from no link")
	q.front()
	q.do(chromedp.Reload())
	q.waitIn("#notices", fromLink)
	q.presses("Put mine back")
	q.waitUntil("what stood before the link is back", `document.querySelector('[name="air"]').value === "21"`)
}

// Of several notices the newest takes room; the others wait behind a button.
func TestNoticesTakeOneLineUntilTheyAreAskedFor(t *testing.T) {
	p := open(t, serve(t), "air-state.html#air=9&humidity=90", phone)
	p.waitIn("#notices", fromLink)
	evaluate[bool](p, `import(new URL("scripts/notices.js", document.baseURI).href).then(({ notify }) => (notify("Second"), notify("Third"), true))`)
	p.waitIn("#notices", "2 more")
	p.has("#notices", "Third")
	assert.NotContains(t, p.text("#notices"), "Second")
	p.presses("2 more")
	p.waitIn("#notices", "Second")
	p.has("#notices", fromLink, "The last alone")
	p.shot("notices-all")
	p.tap("#notices .notice:last-child button")
	p.waitUntil("the third is gone", `document.querySelectorAll("#notices .notice").length === 2`)
	p.has("#notices", "Second", fromLink)
	p.presses("The last alone")
	p.waitIn("#notices", "1 more")
	p.tap("#notices .notice:last-child button")
	p.waitUntil("one is left", `document.querySelectorAll("#notices .notice").length === 1`)
	assert.NotContains(t, p.text("#notices"), "more")
	p.fits()
}
