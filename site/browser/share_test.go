package browser

import (
	"bytes"
	"image/png"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// scan reads the QR code that the sheet shows off a picture of the screen, as a camera would.
func (p *tab) scan() string {
	p.t.Helper()
	p.waitUntil("the code is drawn", `document.querySelector("#share-code .code path") !== null`)
	shot, err := chromedp.Run(p.ctx, chromedp.Screenshot(chromedp.CSS("#share-code .code")))
	require.NoError(p.t, err)
	img, err := png.Decode(bytes.NewReader(shot))
	require.NoError(p.t, err)
	bitmap, err := gozxing.NewBinaryBitmapFromImage(img)
	require.NoError(p.t, err)
	read, err := qrcode.NewQRCodeReader().Decode(bitmap, nil)
	require.NoError(p.t, err)
	return read.GetText()
}

// A phone that scans the code has the same card, word for word.
func TestTheCodeOnTheScreenLeadsToTheSameCard(t *testing.T) {
	s := serve(t)
	for _, l := range []look{phoneDark, desk} {
		p := open(t, s, "", l)
		p.demo()
		p.enter("air", "28")
		p.waitIn("#verdict", "Air 28")
		p.tap("#share")
		p.waitIn("#share-verdict", "A phone camera reads this QR code")
		p.has("#share-verdict", "some mail and chat programs cut a link")
		link := p.scan()
		assert.True(t, strings.HasPrefix(link, s.url("#1:")), link)
		p.shot("share")
		p.tap(`[data-share="close"]`)

		other := open(t, s, "about.html", phone)
		other.do(chromedp.Navigate(link))
		other.waitIn("#card", "Call sheet")
		other.waitIn("#notices", fromLink)
		assert.NotContains(t, other.text("#notices"), damaged)
		assert.Equal(t, p.card(), other.card())
		assert.True(t, strings.HasPrefix(other.link(), s.url("#fields=135&air=28&")), "the address is not written out")
	}
}

// The site in one file can be put on any host, one without headers of its own: its codes name the page within it.
func TestACodeOfTheOneFileLeadsToItsPage(t *testing.T) {
	b := serve(t).build
	host := httptest.NewServer(http.FileServer(http.Dir(b.dist)))
	t.Cleanup(host.Close)
	s := &server{t: t, build: b, address: host.Listener.Addr().String()}
	p := open(t, s, "spraywright.html#page=wet-film", phone)
	wetFilm(p)
	p.tap("#share")
	link := p.scan()
	assert.True(t, strings.HasPrefix(link, s.url("spraywright.html#1:")), link)
	other := open(t, s, "spraywright.html#page=about", phone)
	other.do(chromedp.Navigate("about:blank"), chromedp.Navigate(link))
	other.waitIn("#card", "67 µm")
	assert.NotContains(t, other.text("#notices"), damaged)
}

func TestTheSheetWorksByKeys(t *testing.T) {
	p := open(t, serve(t), "wet-film.html", desk)
	wetFilm(p)
	p.do(chromedp.Focus(chromedp.CSS("#share")))
	p.keys(kb.Enter)
	p.waitUntil("the sheet is open", `document.getElementById("share-sheet").open && document.activeElement.dataset.share === "copy"`)
	assert.Equal(t, "Share this form", evaluate[string](p, `document.getElementById(document.getElementById("share-sheet").getAttribute("aria-labelledby")).innerText`))
	assert.Contains(t, p.value2("#share-link"), "wet-film.html#fields=3&coats=2&dry_film=60&volume_solids=45&fields=3")
	p.waitUntil("the code says what it is", `document.querySelector("#share-code [role=img]")?.getAttribute("aria-label").includes("QR code that holds the link") ?? false`)
	assert.False(t, p.sees(`[data-share="long"]`), "the link is short, and yet another is offered")
	p.keys(kb.Escape)
	p.waitUntil("the sheet is gone, and the focus back", `!document.getElementById("share-sheet").open && document.activeElement.id === "share"`)
	assert.Empty(t, p.text("#notices"))
}

// value2 is what stands in a box that is no field of the form.
func (p *tab) value2(selector string) string {
	p.t.Helper()
	return evaluate[string](p, `document.querySelector(`+quoted(selector)+`).value`)
}

func TestALinkIsGivenToAnotherProgram(t *testing.T) {
	p := open(t, serve(t), "wet-film.html", phone)
	wetFilm(p)
	evaluate[bool](p, `(navigator.share = async (what) => { globalThis.shared = what; }, true)`)
	p.tap("#share")
	p.tap(`[data-share="send"]`)
	p.waitUntil("it is handed on", `globalThis.shared?.url.includes("#fields=3&") && !document.getElementById("share-sheet").open`)
}

func TestALongFormIsHandedOnByItsShortLink(t *testing.T) {
	s := serve(t)
	p := open(t, s, "", phone)
	p.demo()
	evaluate[bool](p, `(navigator.clipboard.writeText = async (s) => { globalThis.copied = s; }, true)`)
	p.tap("#share")
	p.waitUntil("the short link stands there", `document.getElementById("share-link").value.includes("#1:")`)
	p.tap(`[data-share="copy"]`)
	p.waitIn("#share-says", "Link copied.")
	short := evaluate[string](p, `copied`)
	assert.Less(t, len(short), 1000)
	p.tap(`[data-share="long"]`)
	p.waitUntil("the readable link is copied", `copied.includes("#fields=")`)
	p.fits()
	// Pasted into an open page, it is followed as any other link is.
	other := open(t, s, "", phone)
	other.enter("air", "19")
	other.link()
	evaluate[bool](other, `(location.href = `+quoted(short)+`, true)`)
	other.waitIn("#card", "Call sheet")
	other.presses("Put mine back")
	other.waitUntil("the own form is back", `document.querySelector('[name="air"]').value === "19"`)
}

// Nothing that a code can hold breaks the page, and a form of one's own stays.
func TestHostileCodesSayTheyCannotBeRead(t *testing.T) {
	s := serve(t)
	for _, bad := range []string{"1:ABC", "3:910XJNUM7FNY91", "1:910XJNUM7FNY9", "1:::::::", "1:%3Cscript%3E"} {
		p := open(t, s, "wet-film.html", phone)
		wetFilm(p)
		p.link()
		p.visit("menu.html")
		p.visit("wet-film.html#" + bad)
		p.waitIn("#notices", "cannot be read: it is damaged, or was made by a newer version. Scan the code again, or ask for the link itself.")
		p.waitIn("#card", "67 µm")
	}
}

func TestTheSheetFitsEveryScreen(t *testing.T) {
	s := serve(t)
	for _, l := range screens() {
		p := open(t, s, "", l)
		p.demo()
		p.tap("#share")
		p.waitUntil("the code is drawn", `document.querySelector("#share-code .code") !== null`)
		p.fits()
		assert.LessOrEqual(t, evaluate[float64](p, `(({left, right, bottom}) => Math.max(-left, right - innerWidth, bottom - innerHeight))(document.getElementById("share-sheet").getBoundingClientRect())`), 0.0, "the sheet is larger than the screen")
		p.shot("share-sheet")
		if l == narrow {
			evaluate[string](p, `document.documentElement.style.fontSize = "212.5%"`)
			p.fits()
			assert.LessOrEqual(t, evaluate[float64](p, `document.getElementById("share-sheet").scrollWidth - document.getElementById("share-sheet").clientWidth`), 0.0)
			p.shot("share-sheet-large")
		}
	}
}
