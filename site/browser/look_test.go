package browser

import (
	"os"
	"path/filepath"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// A look is the screen that a page is opened on.
type look struct {
	name          string // in names of screenshots
	width, height int64
	touch         bool
	scheme        string // "light" or "dark"
	speaks        string // the languages of the device, "es-ES,es"; blank for British English
}

var (
	phone     = look{"phone", 390, 844, true, "light", ""}
	phoneDark = look{"phone-dark", 390, 844, true, "dark", ""}
	narrow    = look{"narrow", 360, 640, true, "light", ""}
	desk      = look{"desk", 1280, 800, false, "light", ""}
	deskDark  = look{"desk-dark", 1280, 800, false, "dark", ""}
)

// screens is every screen where somebody will look at the pictures, and otherwise those that have to differ.
func screens() []look {
	if os.Getenv("SPRAYWRIGHT_SHOTS") == "" {
		return []look{narrow, desk}
	}
	return []look{narrow, phone, phoneDark, desk, deskDark}
}

// wear gives the page another screen.
func (p *tab) wear(l look) {
	p.t.Helper()
	p.look = l
	options := []chromedp.EmulateViewportOption{}
	if l.touch {
		options = append(options, chromedp.EmulateMobile, chromedp.EmulateTouch, chromedp.EmulateScale(2))
	}
	p.do(chromedp.EmulateViewport(l.width, l.height, options...))
	_, err := chromedp.Call(p.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{
		{Name: "prefers-color-scheme", Value: l.scheme}, {Name: "prefers-reduced-motion", Value: "reduce"}}})
	require.NoError(p.t, err)
}

// shot keeps a picture of what is on the screen, where SPRAYWRIGHT_SHOTS says.
func (p *tab) shot(name string) { p.keep(name, chromedp.CaptureScreenshot()) }

// shotWhole keeps a picture of the whole page.
func (p *tab) shotWhole(name string) { p.keep(name, chromedp.FullScreenshot(100)) }

func (p *tab) keep(name string, take chromedp.Action[[]byte]) {
	p.t.Helper()
	dir := os.Getenv("SPRAYWRIGHT_SHOTS")
	if dir == "" {
		return
	}
	png, err := chromedp.Run(p.ctx, take)
	require.NoError(p.t, err)
	require.NoError(p.t, os.MkdirAll(dir, 0o755))
	require.NoError(p.t, os.WriteFile(filepath.Join(dir, name+"-"+p.look.name+".png"), png, 0o644))
}
