package engines

import (
	"path/filepath"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The air of the demo, a panel too cold for it, and the film of a coat: 60 µm / 2 / 0.45 is 67 µm.
func TestTheMainJob(t *testing.T) {
	each(t, func(t *testing.T, w *window) {
		s := serve(t)
		w.open(s.address)
		w.waitFor(".bar-needed", "Still needed")
		w.press("#try a", "")
		w.waitFor("#card", "Call sheet")
		w.waitFor("#card", "Cup by cup")
		w.enter("panel", "12")
		w.waitUntil("a cold panel stops the job", `document.querySelector("#verdict .stop, #verdict [class*=stop]") !== null`)
		link := value[string](w, `new Promise((done) => setTimeout(() => done(location.href), 600))`)
		w.open("about:blank")
		w.open(link)
		w.waitFor("#card", "Call sheet")
		assert.Equal(t, "12", value[string](w, `document.querySelector('[name="panel"]').value`))
		w.open(s.address + "wet-film.html#units=si")
		wetFilm(w)
		w.press(`.switch label`, "US")
		w.waitFor("#card", "mil")
	})
}

func wetFilm(w *window) {
	w.t.Helper()
	w.waitFor(".bar-needed", "Still needed") // what is typed before the page works is not seen
	w.enter("dry_film", "60")
	w.enter("volume_solids", "45")
	w.enter("coats", "2")
	w.waitFor("#card", "67 µm")
}

func TestItStartsWithoutANetwork(t *testing.T) {
	each(t, func(t *testing.T, w *window) {
		s := serve(t)
		w.open(s.address)
		w.waitFor("#kept", "Kept on this device: works without a network.")
		s.stop()
		for _, page := range []string{"timers.html", "wet-film.html#units=si"} {
			w.open(s.address + page)
			w.waitFor("body", "Spraywright")
		}
		wetFilm(w)
	})
}

// A timer from one tap on an answer counts down, and stands through a reload and on another page.
func TestTimers(t *testing.T) {
	each(t, func(t *testing.T, w *window) {
		s := serve(t)
		w.open(s.address + "pot-life.html#pot_life=60&pot_life_at=20&pot_life_second=30&pot_life_second_at=30&air=20&units=si")
		w.waitFor("#kept", "works without a network") // the page stands still
		w.press(`[data-out="pot_life_low"] .time`, "")
		w.waitFor(".strip", "Use up by")
		left := `document.querySelector(".strip-count").innerText.trim().split(":").reduce((s, n) => s * 60 + Number(n), 0)`
		begin := value[int](w, left)
		assert.InDelta(t, 3600, begin, 20)
		w.waitUntil("it counts down", left+" < "+strconv.Itoa(begin))
		w.open(s.address + "timers.html")
		w.waitFor("#timers", "Use up by")
		assert.InDelta(t, begin, value[int](w, `document.querySelector(".mark-left").innerText.trim().split(":").reduce((s, n) => s * 60 + Number(n), 0)`), 60)
		w.press(`.timer [data-do="remove"]`, "")
		w.waitFor("#notices", "removed.")
		w.press("#notices button", "Undo")
		w.waitFor("#timers", "Use up by")
	})
}

func TestTheOneFile(t *testing.T) {
	each(t, func(t *testing.T, w *window) {
		file := "file://" + filepath.ToSlash(filepath.Join(serve(t).dist, "spraywright.html"))
		w.open(file + "#page=wet-film&units=si")
		wetFilm(w)
	})
}
