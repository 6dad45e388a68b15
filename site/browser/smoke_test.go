package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTheSiteOpens(t *testing.T) {
	s := serve(t)
	for _, l := range screens() {
		t.Run(l.name, func(t *testing.T) {
			p := open(t, s, "", l)
			p.waitFor("Spraywright")
			p.shot("first")
			wide := evaluate[float64](p, `document.documentElement.scrollWidth - document.documentElement.clientWidth`)
			assert.LessOrEqual(t, wide, 0.0, "the page is wider than the screen by so many pixels")
		})
	}
}

func TestAnAnswerFollowsWhatIsTyped(t *testing.T) {
	p := open(t, serve(t), "wet-film.html", phone)
	wetFilm(p)
	p.shot("wet-film")
	p.enter("dry_film", "120")
	p.waitFor("133 µm")
	p.enter("dry_film", "damp")
	p.waitFor("Dry film wanted must be a number")
	p.enter("dry_film", "")
	p.waitFor("Dry film wanted is blank")
}

// wetFilm fills in a form whose answer is 60 µm / 2 / 0.45 = 67 µm, and waits for it.
func wetFilm(p *tab) {
	p.t.Helper()
	p.enter("dry_film", "60")
	p.enter("volume_solids", "45")
	p.enter("coats", "2")
	p.waitFor("67 µm")
}

// In a shop without a network the server is as good as gone.
func TestTheSiteAnswersOnceTheServerIsGone(t *testing.T) {
	s := serve(t)
	p := open(t, s, "", phone)
	p.waitUntil("the site is kept on the phone", `navigator.serviceWorker.ready.then(() => true)`)
	s.stop()
	p.visit("wet-film.html")
	wetFilm(p)
	s.start()
	p.visit("wet-film.html")
	p.waitFor("Spraywright")
}

// It is also how we know that the other tests would notice what the console says.
func TestThePageAsksNothingOfAnotherHost(t *testing.T) {
	p := open(t, serve(t), "", desk)
	p.forgive("example.org")
	asked := evaluate[string](p, `fetch("https://example.org/").then(() => "answered", () => "refused")`)
	assert.Equal(t, "refused", asked)
	p.waitForError("Content Security Policy")
}
