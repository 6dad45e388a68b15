package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// boardStands holds the bench to a board that can be read above the keys, all of both on the screen, wherever the page
// has been scrolled to.
func (p *tab) boardStands(says ...string) {
	p.t.Helper()
	for _, place := range []string{"0", "document.body.scrollHeight", "0"} {
		evaluate[bool](p, `(scrollTo(0, `+place+`), true)`)
		p.has("#gauge-board", says...)
		covered := evaluate[[]string](p, `[...document.querySelectorAll("#gauge-board p, .gauge-keys button")].filter((e) => {
			const r = e.getBoundingClientRect(), hit = document.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2);
			return r.top < 0 || r.bottom > innerHeight + 1 || !e.contains(hit);
		}).map((e) => e.innerText)`)
		assert.Empty(p.t, covered, "out of sight or covered")
	}
	assert.Empty(p.t, evaluate[[]string](p, `[...document.querySelectorAll("#gauge-board p")].filter((e) => e.scrollWidth > e.clientWidth + 1 || e.getBoundingClientRect().right > document.getElementById("gauge-board").getBoundingClientRect().right + 1).map((e) => e.innerText)`), "cut off")
}

// labelsCollide are the labels of the chart that stand on another.
const labelsCollide = `(() => {
	const all = [...document.querySelectorAll("#pictures svg text")].map((e) => [e.textContent, e.getBoundingClientRect()]);
	return all.flatMap(([a, r], i) => all.slice(i + 1).filter(([, s]) => r.left < s.right && s.left < r.right && r.top + 2 < s.bottom && s.top + 2 < r.bottom).map(([b]) => a + " on " + b));
})()`

func TestAReadingFarOffIsAskedAbout(t *testing.T) {
	for _, l := range []look{phone, narrow, desk} {
		p := bench(t, serve(t), l)
		pad(p, "105E1050E")
		p.waitIn("#gauge-doubt", "Reading 2: 1050 µm is more than 5 times the film specified, 100 µm.")
		p.boardStands("Last 1050 µm")
		assert.Empty(t, evaluate[[]string](p, labelsCollide))
		p.shot("gauge-doubt")
		p.fits()
		p.tap(`#gauge-doubt [data-do="out"]`)
		p.waitIn("#gauge-count", "1")
		p.waitUntil("nothing is asked", `document.getElementById("gauge-doubt").hidden`)
		pad(p, "4E9E")
		p.waitIn("#gauge-doubt", "Reading 2: 4 µm is less than a fifth of the film specified, 100 µm.")
		p.tap(`#gauge-doubt [data-do="keep"]`)
		p.waitIn("#gauge-doubt", "Reading 3: 9 µm")
		p.do(chromedp.Reload())
		p.waitIn("#gauge-doubt", "Reading 3: 9 µm") // what was kept is not asked again
		p.tap(`#gauge-doubt [data-do="keep"]`)
		p.waitUntil("nothing is asked", `document.getElementById("gauge-doubt").hidden`)
		p.waitIn("#gauge-count", "3")
		p.waitIn(`[data-out="film_lowest"]`, "4 µm")
	}
}
