package browser

import (
	"testing"

	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

// tabTo presses Tab until the focus is on something that a selector finds.
func (p *tab) tabTo(selector string) {
	p.t.Helper()
	for range 200 {
		if evaluate[bool](p, `document.activeElement.matches(`+quoted(selector)+`)`) {
			return
		}
		p.keys(kb.Tab)
	}
	p.t.Fatalf("Tab never comes to %s", selector)
}

// Every figure opens to its formula, the numbers put in, what comes out, and where it is from. With keys alone.
func TestWorkingOpensAndClosesByKeyboard(t *testing.T) {
	p := open(t, serve(t), "#air=29&humidity=72&panel=28&air_speed=0.3&altitude=100", desk)
	p.waitIn("#verdict", "above dew point")
	evaluate[bool](p, `document.getElementById("card").focus() ?? true`)
	margin := `[data-out="margin"]`
	p.tabTo(margin + " summary")
	assert.False(t, p.sees(margin+" .step"))
	p.keys(kb.Enter)
	p.waitUntil("the working is open", `document.querySelector('`+margin+` details').open && document.querySelector('`+margin+` .step') !== null`)
	p.has(margin+" .step:first-child", "Air temperature", "29 °C")
	p.has(margin+" .step:last-child", "4.5612 °C", "28 − 23.439", "panel temperature, 28 °C")
	for _, part := range []string{".step-head b", ".formula", ".numbers", ".legend", ".source"} {
		assert.NotEmpty(t, p.inOneLine(margin+" .step:last-child "+part), part)
	}
	p.keys(" ")
	p.waitUntil("the working is closed", `!document.querySelector('`+margin+` details').open`)
	assert.False(t, p.sees(margin+" .step"))

	evaluate[bool](p, `document.getElementById("card").focus() ?? true`)
	p.tabTo("#verdict .why-steps summary")
	p.keys(kb.Enter)
	p.waitIn("#verdict .steps", "ASHRAE")
}

// A figure in a list opens beneath its row. Both stay open while the answer changes.
func TestWorkingOfAListOpensBeneathItsRow(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	cell := `[data-out="pour"] button.cell`
	p.tap(cell)
	p.waitUntil("the working is beneath", `document.querySelector('[data-out="pour"] .beneath .formula') !== null`)
	assert.Equal(t, "true", evaluate[string](p, `document.querySelector('`+cell+`').getAttribute("aria-expanded")`))
	p.has(`[data-out="pour"] .beneath`, "=")
	p.enter("losses", "120")
	p.waitUntil("the answer has changed", `document.querySelector('[data-out="to_mix_all"] .num').textContent !== "11.33"`)
	p.waitUntil("what was open is open again", `[...document.querySelectorAll('[data-out="pour"] .beneath .formula')].some((e) => e.checkVisibility())`)
	p.tap(cell)
	p.waitUntil("the working is gone", `document.querySelector('[data-out="pour"] .beneath') === null`)

	p.tap(`[data-out="pour"] .pour-part`)
	p.enter("air", "28.9")
	p.waitIn(`[data-out="dew_point"]`, "23.3")
	assert.True(t, evaluate[bool](p, `document.querySelector('[data-out="pour"] input').checked`), "what was poured is forgotten")
}
