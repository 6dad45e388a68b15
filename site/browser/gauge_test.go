package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

// pad presses keys of the gauge bench, "E" for Enter, "<" for one digit back, "U" for undo.
func pad(p *tab, keys string) {
	p.t.Helper()
	for _, k := range keys {
		selector := `#gauge-pad [data-key="` + string(k) + `"]`
		switch k {
		case 'E':
			selector = `#gauge-pad [data-do="enter"]`
		case '<':
			selector = `#gauge-pad [data-do="back"]`
		case 'U':
			selector = `#gauge-pad [data-do="undo"]`
		}
		p.tap(selector)
	}
}

// bench opens the gauge bench and says what is specified: 100 µm, by SSPC-PA 2.
func bench(t *testing.T, s *server, l look) *tab {
	t.Helper()
	p := open(t, s, "menu.html", l)
	p.tap(`.menu a[href="gauge.html"]`)
	p.waitFor("Key in what the gauge shows")
	p.enter("dry_film", "100")
	p.tap(`label:has([name="gauge_rule"][value="pa2"])`)
	p.tap("#gauge-given summary")
	p.waitIn("#gauge-spec", "100 µm, SSPC-PA 2")
	return p
}

func TestReadingsAreKeyedInWithOneThumb(t *testing.T) {
	for _, l := range screens() {
		p := bench(t, serve(t), l)
		pad(p, "105E95E11<03E")
		p.waitIn(`[data-out="film_mean"]`, "101 µm") // (105 + 95 + 103) / 3
		p.waitIn(`[data-out="film_lowest"]`, "95 µm")
		p.has("#card", "Readings 3", "Wait", "It wants three readings on each of five spots")
		p.boardStands("Wait", "Mean 101 µm", "Lowest 95 µm", "Last 103 µm")
		assert.True(t, p.sees("#pictures svg circle.ink-mark"))
		p.has("#pictures", "3 readings from 95 µm to 105 µm, 0 of them outside the dashed lines")
		p.waitIn(`[data-out="spot"]`, "101 µm")
		assert.Empty(t, evaluate[[]string](p, `[...document.querySelectorAll("#gauge-pad .gauge-keys button")].filter((b) => b.getBoundingClientRect().height < 64 || b.getBoundingClientRect().width < 64).map((b) => b.textContent)`), "too small for a gloved thumb")
		assert.True(t, evaluate[bool](p, `document.getElementById("gauge-pad").getBoundingClientRect().bottom <= innerHeight + 1`))
		p.fits()
		p.shot("gauge")

		pad(p, "50E")
		p.waitIn(`[data-out="film_lowest"]`, "50 µm")
		p.has("#pictures", "1 of them outside the dashed lines")
		assert.True(t, p.sees("#pictures svg circle.ink-outside"))
		p.boardStands("Wait", "Lowest 50 µm", "Last 50 µm")
		pad(p, "7U") // what is half keyed goes first
		assert.Empty(t, p.text("#gauge-now"))
		pad(p, "U")
		p.waitIn(`[data-out="film_lowest"]`, "95 µm")
		p.waitIn("#notices", "Reading 50 taken out.")
	}
}

func TestFifteenReadingsAreJudgedByTheRuleChosen(t *testing.T) {
	p := bench(t, serve(t), phone)
	p.do(chromedp.Focus(chromedp.CSS("#main")))
	for range 15 { // by keyboard
		p.keys("10")
		p.keys("2")
		p.keys(kb.Backspace)
		p.keys("4")
		p.keys(kb.Enter)
	}
	p.waitIn("#gauge-count", "15")
	p.waitIn("#verdict", "Go Spots from 104 µm to 104 µm, area means from 104 µm to 104 µm")
	p.shotWhole("gauge-go")
	for range 3 {
		pad(p, "60E")
	}
	p.waitIn("#verdict", "Wait It wants three readings")
	p.tap("#gauge-given summary")
	p.tap(`label:has([name="gauge_rule"][value="iso"])`)
	p.waitIn("#verdict", "Stop The lowest reading, 60 µm, is below 80 % of the film, 80 µm")
	p.tap("#gauge-given summary")
	evaluate[bool](p, `(scrollTo(0, 0), true)`)
	p.shot("gauge-stop")
	assert.Empty(t, evaluate[[]string](p, faint))
}

// pasteInto puts text in as a paste does.
func pasteInto(p *tab, selector, text string) {
	p.t.Helper()
	evaluate[bool](p, `(() => { const d = new DataTransfer(); d.setData("text", `+quoted(text)+`); return document.querySelector(`+quoted(selector)+`).dispatchEvent(new ClipboardEvent("paste", { clipboardData: d, bubbles: true, cancelable: true })) || true; })()`)
}

func TestAColumnOfReadingsIsPasted(t *testing.T) {
	p := bench(t, serve(t), phone)
	pasteInto(p, "#main", "105\r\n98,6\n102 µm\t4.2 mil\n")
	p.waitIn("#gauge-count", "4")
	p.waitIn(`[data-out="film_lowest"]`, "99 µm") // 98.6
	p.tap("#gauge-column summary")
	p.do(chromedp.Focus(chromedp.CSS("#gauge-text")))
	p.paste("110\n111 112")
	p.tap("#gauge-take")
	p.waitIn("#gauge-count", "7")
	pasteInto(p, "#main", "1x\n1,250")
	p.waitIn("#gauge-wrong", "Reading “1,250” can be read two ways")
	p.has("#gauge-wrong", "eading 8: ", "eading 9: ")
	assert.Equal(t, 2, evaluate[int](p, `document.querySelectorAll("#gauge-readings .bad").length`))
	p.shot("gauge-bad")
	p.tap("#gauge-readings .bad button")
	p.waitIn("#gauge-count", "8")
	p.tap("#gauge-readings .bad button")
	p.waitUntil("nothing is wrong", `document.getElementById("gauge-wrong").hidden`)
}

func TestTheBenchStandsAfterAReloadAndWithoutANetwork(t *testing.T) {
	s := serve(t)
	p := bench(t, s, phone)
	p.waitUntil("the site is kept", `navigator.serviceWorker.ready.then(() => true)`)
	pad(p, "105E98E")
	p.waitIn(`[data-out="film_mean"]`, "102 µm") // 101.5
	s.stop()
	p.do(chromedp.Reload())
	p.waitIn("#gauge-count", "2")
	p.waitIn(`[data-out="film_mean"]`, "102 µm")
	pad(p, "109E")
	p.waitIn(`[data-out="film_mean"]`, "104 µm")
	p.tap(`a[href="gauge-readings.html"]`)
	p.waitIn("h1", "Do these gauge readings pass?")
	p.waitIn(`[data-out="film_mean"]`, "104 µm")
	p.waitIn(`[data-out="ruling"]`, "IMO MSC.215(82)")
	p.tap(`a[href="gauge.html"]`)
	p.waitIn("h1", "Gauge bench")
	p.waitIn("#gauge-count", "3")
	p.waitIn(`[data-out="film_mean"]`, "104 µm") // the answer has moved what stands below it
	p.tap("#gauge-clear")
	p.waitIn("#gauge-count", "0")
	p.tap("#notices button")
	p.waitIn("#gauge-count", "3")
	p.media("print")
	assert.False(t, p.sees("#gauge-pad"))
	p.has("#gauge-paper", "105 µm; 98 µm; 109 µm")
}

func TestALinkBringsReadings(t *testing.T) {
	s := serve(t)
	p := open(t, s, "gauge.html#dry_film=4&dry_film.unit=mil&gauge_rule=iso&reading.gauge_reading.unit=mil&reading.1.gauge_reading=4.1&reading.2.gauge_reading=3,9", phone)
	p.waitIn(`[data-out="film_mean"]`, "4.0 mil")
	p.has("#verdict", "Stop 50 % of the readings are below 4 mil")
	assert.Equal(t, "mil", evaluate[string](p, `document.getElementById("gauge-unit").value`))
	evaluate[bool](p, `(location.href = "menu.html", true)`)
	p.waitFor("All calculators")
	p.visit("gauge.html#dry_film=100&reading.1.gauge_reading=90")
	p.waitIn("#notices", "These readings came from a link.")
	p.has("#gauge-count", "1")
	p.tap("#notices button")
	p.waitIn("#gauge-count", "2")
}
