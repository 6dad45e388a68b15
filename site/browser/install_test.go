package browser

import (
	"encoding/json"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestTheManifestLetsAPhoneInstallIt(t *testing.T) {
	p := open(t, serve(t), "", phone)
	answer, err := chromedp.Call(p.ctx, page.GetInstallabilityErrors, cdp.Empty{})
	require.NoError(t, err)
	for _, e := range answer.InstallabilityErrors {
		assert.Equal(t, "in-incognito", e.ErrorID, "the browser would not install it") // every test has a profile of its own
	}
	b, err := built()
	require.NoError(t, err)
	text, err := os.ReadFile(filepath.Join(b.dist, "manifest.webmanifest"))
	require.NoError(t, err)
	var m struct {
		StartURL  string                                 `json:"start_url"`
		Icons     []struct{ Src, Sizes, Purpose string } `json:"icons"`
		Shortcuts []struct{ Name, URL string }           `json:"shortcuts"`
	}
	require.NoError(t, json.Unmarshal(text, &m))
	purposes := map[string]bool{}
	for _, i := range m.Icons {
		assert.FileExists(t, filepath.Join(b.dist, i.Src))
		purposes[i.Purpose] = true
	}
	assert.True(t, purposes["maskable"])
	require.Len(t, m.Shortcuts, 3)
	for _, s := range m.Shortcuts {
		file, _ := strings.CutPrefix(s.URL, "./")
		if file == "" {
			file = "index.html"
		}
		assert.FileExists(t, filepath.Join(b.dist, file), s.Name)
	}
}

// The home screen opens the start address, perhaps in a shop without a network.
func TestItStartsFromTheHomeScreenWithoutANetwork(t *testing.T) {
	s := serve(t)
	p := open(t, s, "help.html", phone)
	p.waitIn("#kept", "Kept on this device: works without a network.")
	p.visit("about.html") // the next page is the service worker's
	s.stop()
	for _, start := range []string{"./", "timers.html", "mix.html"} {
		p.visit(strings.TrimPrefix(start, "./"))
		p.waitFor("Spraywright")
	}
	p.visit("")
	p.waitIn(".bar-needed", "Still needed")
}

// The browser's own offer waits for the button.
func TestTheInstallButton(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.waitIn("#kept", "works without a network")
	assert.False(t, p.sees("#install"))
	evaluate[bool](p, `dispatchEvent(Object.assign(new Event("beforeinstallprompt", {cancelable: true}), {prompt: async () => { globalThis.asked = true; }}))`)
	p.tap("#install button")
	p.waitUntil("the browser asks", `globalThis.asked === true`)
	p.waitUntil("the button is gone, since it works once", `document.getElementById("install").hidden`)
}

func TestPhonesThatInstallByTheirShareMenuAreTold(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(`Object.defineProperty(Navigator.prototype, "standalone", {get: () => false, configurable: true})`)
	p.visit("")
	p.waitIn("#install", "To have it on the home screen: Share, then Add to Home Screen.")
	assert.False(t, p.sees("#install button"), "a button that can do nothing")
	p.before(`Object.defineProperty(Navigator.prototype, "standalone", {get: () => true, configurable: true})`)
	p.visit("?1")
	p.waitIn("#kept", "works without a network")
	assert.False(t, p.sees("#install"), "it is installed already")
}

// lasting stands in for a browser that has not promised to keep what is stored, and does when it is asked.
const lasting = `
	globalThis.times = 0;
	let promised = false;
	Object.defineProperty(StorageManager.prototype, "persisted", {value: async () => promised});
	Object.defineProperty(StorageManager.prototype, "persist", {value: async () => { times++; return promised = true; }});`

func TestTheBrowserIsAskedToKeepTheFirstThingKept(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(lasting)
	p.visit("")
	p.waitIn("#kept", "This browser may clear your forms and records when it runs short of room.")
	p.enter("air", "20")
	p.link()
	assert.Zero(t, evaluate[int](p, `times`), "nobody wants to be asked for a number typed")
	keep := `import(new URL("scripts/db.js", document.baseURI)).then((db) => db.put("profile", {id: db.freshId(), kind: "gun", name: "Gun"})).then(() => true)`
	evaluate[bool](p, keep)
	p.waitIn("#kept", "This browser keeps your forms and records until you remove them.")
	evaluate[bool](p, keep)
	assert.Equal(t, 1, evaluate[int](p, `times`), "once is enough")
}

// A new version comes while a form is half filled in and a timer runs: nothing moves until the person says so.
func TestANewVersionWaits(t *testing.T) {
	s := serveCopy(t)
	p := open(t, s, "", phone)
	p.waitIn("#kept", "works without a network")
	p.do(chromedp.Reload())
	half(p)
	evaluate[bool](p, `globalThis.same = true`)
	evaluate[bool](p, `import(new URL("scripts/db.js", document.baseURI)).then((db) => db.put("timer", {id: "one", name: "Pot life", until: Date.now() + 3600000})).then(() => true)`)
	sw := filepath.Join(s.build.dist, "sw.js")
	text, err := os.ReadFile(sw)
	require.NoError(t, err)
	next := regexp.MustCompile(`version = "[^"]*"`).ReplaceAll(text, []byte(`version = "the-next-one"`))
	require.NoError(t, os.WriteFile(sw, next, 0o644))
	evaluate[bool](p, `navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => true)`)
	p.waitIn("#notices", "A new version is ready. What you typed and your timers stay.")
	p.enter("panel", "27")
	assert.True(t, evaluate[bool](p, `new Promise((done) => setTimeout(() => done(globalThis.same === true), 1500))`), "the page was taken away from under the hands")
	p.presses("Use it")
	p.waitUntil("the new version is in use", `globalThis.same !== true && document.readyState === "complete" && caches.keys().then((all) => all.length === 1 && all[0].endsWith("the-next-one"))`)
	p.waitIn("#verdict", "above dew point")
	assert.Equal(t, []string{"29", "72", "27"}, []string{p.value("air"), p.value("humidity"), p.value("panel")})
	assert.Equal(t, "Pot life", evaluate[string](p, `import(new URL("scripts/db.js", document.baseURI)).then((db) => db.get("timer", "one")).then((r) => r.name)`))
}

// serveCopy serves a copy of the site, which a test may change.
func serveCopy(t *testing.T) *server {
	t.Helper()
	s := serve(t)
	s.stop()
	dist := filepath.Join(t.TempDir(), "dist")
	require.NoError(t, os.CopyFS(dist, os.DirFS(s.build.dist)))
	s.build.dist, s.address = dist, "127.0.0.1:0"
	s.start()
	return s
}
