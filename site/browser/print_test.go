package browser

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A sheet is a size of paper, in inches as the browser takes it.
type sheet struct {
	name          string
	width, height float64
}

var (
	a4     = sheet{"a4", 210 / 25.4, 297 / 25.4}
	letter = sheet{"letter", 8.5, 11}
)

// onPaper prints the page as it stands and returns how many pages it takes.
func (p *tab) onPaper(name string, s sheet) int {
	p.t.Helper()
	pdf, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: s.width, PaperHeight: s.height, PreferCSSPageSize: new(true), PrintBackground: new(false)})
	require.NoError(p.t, err)
	if dir := os.Getenv("SPRAYWRIGHT_SHOTS"); dir != "" {
		require.NoError(p.t, os.MkdirAll(dir, 0o755))
		require.NoError(p.t, os.WriteFile(filepath.Join(dir, name+"-"+s.name+".pdf"), pdf.Data, 0o644))
	}
	return len(regexp.MustCompile(`/Type\s*/Page\b`).FindAll(pdf.Data, -1))
}

// prints presses the keys for printing, and waits until the sheet is ready.
func (p *tab) prints() {
	p.t.Helper()
	evaluate[bool](p, `(globalThis.printed = 0, globalThis.print = () => printed++, true)`)
	p.do(chromedp.KeyEvent("p", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	p.waitUntil("the sheet is ready", `printed === 1`)
}

// enterIn types into a box that is no field of the form.
func (p *tab) enterIn(selector, text string) {
	p.t.Helper()
	p.tap(selector)
	p.keys(text)
}

func TestTheJobCardIsOnePage(t *testing.T) {
	served := serve(t)
	p := open(t, served, "", phone)
	p.demo()
	p.prints()
	for _, s := range []sheet{a4, letter} {
		assert.Equal(t, 1, p.onPaper("card", s), s.name)
	}
	p = open(t, served, "es/", phone)
	p.tap("#try a")
	p.waitUntil("there is an answer", `document.querySelector(".pour-cup [data-log]") !== null`)
	p.prints()
	for _, s := range []sheet{a4, letter} {
		assert.Equal(t, 1, p.onPaper("card-es", s), "Spanish, "+s.name)
	}
	p.choose("units", "us") // and longer numbers
	p.waitIn("#card", "gal")
	p.prints()
	for _, s := range []sheet{a4, letter} {
		assert.Equal(t, 1, p.onPaper("card-es-us", s), "Spanish, US units, "+s.name)
	}
}

func TestALabelForEachCupOfTheJob(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	evaluate[bool](p, `(globalThis.print = () => {}, true)`)
	p.tap("#cup-labels")
	p.enterIn("#label-job", "Trikes 4 to 9")
	p.shot("labels-sheet")
	p.tap(`[data-label="print"]`)
	assert.Equal(t, 5+3+1+4, evaluate[int](p, `document.querySelectorAll("#labels .label").length`))
	p.media("print")
	p.has("#labels .label:nth-child(2)", "Grey two-pack primer", "Cup 2 of 5", "Paint 911.0 g", "Hardener 1067.9 g", "Thinner 1201.8 g", "Mixed at", "Use by", "Pot life today 53 min", "Trikes 4 to 9")
	p.has("#labels .label:nth-child(6)", "Ivory waterborne base", "Cup 1 of 3", "ivory")
	p.media("")
	assert.Equal(t, 3, p.onPaper("labels", a4), "six to a sheet")
	p.tap("#cup-labels")
	p.tap(`[data-label="print"]`)
	assert.Equal(t, 3, p.onPaper("labels", letter), "six to a sheet")
	p.tap("#cup-labels")
	p.choose("label-paper", "label-roll")
	p.tap(`[data-label="print"]`)
	assert.Equal(t, 13, p.onPaper("label-roll", a4), "one to a page")
	p.prints()
	assert.Equal(t, 1, p.onPaper("card-after-labels", a4), "labels are left on the sheet")
}

func TestALabelForAMix(t *testing.T) {
	p := open(t, serve(t), "mix.html", desk)
	p.tap("#try a")
	evaluate[bool](p, `(globalThis.print = () => {}, true)`)
	p.tap("#cup-labels")
	p.enterIn("#label-product", "Grey primer")
	p.enterIn("#label-thinner", "slow")
	p.shot("labels-sheet-mix")
	p.tap(`[data-label="print"]`)
	p.media("print")
	p.has("#labels .label", "Grey primer", "Thinner slow", "Mixed at")
	p.media("")
	assert.Equal(t, 1, p.onPaper("label-mix", a4))
}

func TestADataSheetIsOnePage(t *testing.T) {
	p := open(t, serve(t), "data-sheet.html", phone)
	p.tap("#try a")
	p.waitUntil("there is an answer", `document.querySelector("#card .out:not([hidden])") !== null`)
	p.prints()
	for _, s := range []sheet{a4, letter} {
		assert.Equal(t, 1, p.onPaper("data-sheet", s), s.name)
	}
	p.media("print")
	assert.True(t, p.sees("#paper .code"), "no code leads back to the form")
	p.shotWhole("data-sheet-print")
}
