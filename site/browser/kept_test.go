package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// half fills in a part of a job, and what follows from it.
func half(p *tab) {
	p.t.Helper()
	p.enter("air", "29")
	p.enter("humidity", "72")
	p.enter("panel", "28,4")
	p.enter("air_speed", "0.3")
	p.enter("part.1.name", "Fork leg — left")
	p.waitIn("#verdict", "above dew point")
}

// stands holds a page to what half has filled in.
func stands(p *tab) {
	p.t.Helper()
	p.waitIn("#verdict", "above dew point")
	assert.Equal(p.t, []string{"29", "72", "28,4"}, []string{p.value("air"), p.value("humidity"), p.value("panel")})
	p.waitIn(`[data-row="part.1"]`, "Fork leg — left")
}

func TestAFormStandsAfterAReload(t *testing.T) {
	p := open(t, serve(t), "", phone)
	half(p)
	p.do(chromedp.Reload())
	stands(p)
	p.link() // by now the address holds the form as well
	p.do(chromedp.Focus(chromedp.CSS(box("altitude"))))
	p.keys("7")
	typed := p.value("altitude")
	p.do(chromedp.Reload()) // in the middle of a number, before the address is up to date
	p.waitIn("#verdict", "above dew point")
	assert.Equal(t, typed, p.value("altitude"))
	stands(p)
}

func TestAFormStandsInAFreshTabWithoutItsLink(t *testing.T) {
	s := serve(t)
	p := open(t, s, "", phone)
	half(p)
	p.visit("menu.html")
	p.visit("")
	stands(p)
	p.visit("wet-film.html")
	p.waitIn(".bar-needed", "Still needed")
	assert.Empty(t, p.value("dry_film"), "one page's form is not another's")
}

// deafCore has workers pass over the next so many questions.
const deafCore = `{
	globalThis.deaf = 0, globalThis.asked = 0;
	const Real = Worker;
	globalThis.Worker = class extends Real {
		postMessage(m) {
			if (m.id) asked++;
			if (m.id && deaf > 0) return void deaf--;
			super.postMessage(m);
		}
	};
}`

func TestACoreThatDoesNotAnswerIsStartedAgain(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(deafCore)
	p.visit("")
	half(p)
	evaluate[int](p, `deaf = 1`)
	p.enter("air", "30")
	p.waitIn(`[data-out="dew_point"]`, "24.4") // of 30 °C and 72 %
	assert.Empty(t, p.text("#notices"), "one silent worker is nobody's business")
}

func TestAFormStandsWhenTheCoreIsDead(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(deafCore)
	p.visit("")
	half(p)
	evaluate[int](p, `deaf = 1000`)
	p.enter("margin_needed", "4")
	p.waitIn("#notices", "The core did not answer. What you typed is kept")
	assert.False(t, p.sees("#verdict"), "an answer to other numbers is still shown")
	assert.Contains(t, evaluate[string](p, `getComputedStyle(document.getElementById("bar"), "::before").content`), "No answer")
	assert.Equal(t, "29", p.value("air"))
	evaluate[int](p, `deaf = 0`)
	p.enter("margin_needed", "5")
	p.waitUntil("there is an answer again", `!document.body.classList.contains("stale")`)
	stands(p)
	assert.Equal(t, "5", p.value("margin_needed"))
}

// A link is the whole job: another device shows the same card, word for word.
func TestALinkMakesTheSameCardOnAnotherDevice(t *testing.T) {
	s := serve(t)
	p := open(t, s, "", phone)
	p.demo()
	p.enter("air", "84,2F")
	p.waitUntil("the card follows", `document.querySelector("#verdict").innerText.includes("°F")`)
	link := p.link()
	other := open(t, s, "", desk)
	other.do(chromedp.Navigate("about:blank"), chromedp.Navigate(link))
	other.waitIn("#card", "Call sheet")
	assert.Equal(t, p.card(), other.card())
	assert.Equal(t, link, other.link())
}

// In a shop without a network all of it works, not only what was opened before.
func TestTheDemoAndTheMenuWorkOnceTheServerIsGone(t *testing.T) {
	s := serve(t)
	p := open(t, s, "", phone)
	p.waitFor("Kept on this device: works without a network.")
	s.stop()
	p.do(chromedp.Reload())
	p.demo()
	p.has("#card", "Cup by cup", "Call sheet")
	p.tap(`.top a[href="menu.html"]`)
	p.tap(`.menu a[href="wet-film.html"]`)
	wetFilm(p)
}
