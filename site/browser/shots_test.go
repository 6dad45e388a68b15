package browser

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The states that somebody should look at after a change of style, on each screen.
func TestTakePictures(t *testing.T) {
	if os.Getenv("SPRAYWRIGHT_SHOTS") == "" {
		t.Skip("SPRAYWRIGHT_SHOTS names no folder")
	}
	s := serve(t)
	for _, l := range []look{phone, phoneDark, desk, deskDark} {
		p := open(t, s, "", l)
		p.waitFor("Still needed")
		p.shot("empty")

		half(p)
		p.choose("part.1.shape", "tube")
		p.enter("humidity", "88")
		p.waitIn("#verdict", "Wait")
		p.shot("partly-filled")
		p.shotWhole("partly-filled-whole")

		p.enter("air", "warm")
		p.enter("part.1.length", "1,250")
		p.waitIn("#gathered", "Air temperature")
		p.tap("#gathered a")
		p.shot("bad-input")
		evaluate[bool](p, `(scrollTo(0, 0), true)`)
		p.shot("bad-input-top")

		p.visit("about.html")
		p.visit("")
		p.tap("#empty")
		p.demo()
		evaluate[bool](p, `(scrollTo(0, 0), true)`)
		p.shot("demo-top")
		evaluate[bool](p, `(document.getElementById("card").scrollIntoView(), true)`)
		p.shot("demo-card")
		for _, opened := range []string{`[data-out="dew_point"] summary`, `[data-out="pour"] button.cell`} {
			p.tap(opened)
		}
		p.waitUntil("the working is open", `document.querySelector('[data-out="pour"] .beneath') !== null`)
		p.shot("working-open")
		p.shotWhole("demo-whole")
	}
}

// Today's settings has the longest words in its answers.
func TestTakePicturesOfTheSettings(t *testing.T) {
	if os.Getenv("SPRAYWRIGHT_SHOTS") == "" {
		t.Skip("SPRAYWRIGHT_SHOTS names no folder")
	}
	s := serve(t)
	for _, l := range []look{narrow, phoneDark, desk, deskDark} {
		p := open(t, s, "settings.html", l)
		p.waitFor("Still needed")
		p.shot("settings-empty")
		p.tap("#try a")
		p.waitUntil("there is an answer", `document.querySelectorAll("#card .figure").length > 6`)
		p.shotWhole("settings-whole")
		evaluate[bool](p, `(document.getElementById("card").scrollIntoView(), true)`)
		p.shot("settings")
		p.fits()
		assert.Equal(t, 1, evaluate[int](p, `new Set([...document.querySelectorAll(".places a")].map((a) => a.getBoundingClientRect().top)).size`), "a place stands alone on a line")
		p.enter("air", "38")
		p.waitIn("#verdict", "Stop")
		p.shot("settings-stop")
	}
}
