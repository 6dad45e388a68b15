package browser

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// oldLink is a link as the first release wrote it.
const oldLink = "wet-film.html#fields=4&coats=2&dry_film=60&units=si&volume_solids=45&fields=4"

// seen is what a page shows of the release it is of, and of what went wrong.
type seen struct {
	Page, Style, Core, Says string
	Parts                   []string
	Torn, Kept              bool
}

const lookAtPage = `(() => {
	const answer = document.querySelector('[data-out="wet_film"]')?.innerText ?? "", root = document.documentElement;
	return {
		page: root.dataset.build ?? "", style: getComputedStyle(root).getPropertyValue("--release").trim(), core: answer.replace(/\s+/g, " "),
		parts: [...(globalThis.parts ?? [])], torn: document.getElementById("torn")?.hidden === false, says: document.getElementById("notices")?.innerText ?? "",
		kept: navigator.serviceWorker.controller !== null,
	};
})()`

// settled is when a page has answered, or has said why it does not.
const settled = `!!(document.querySelector('[data-out="wet_film"]')?.innerText.includes("67") || document.getElementById("torn")?.hidden === false
	|| document.getElementById("notices")?.innerText.includes("did not answer"))`

// whole holds a page to be of one release, or to say that it is not. It reports whether it works.
func (p *tab) whole() bool {
	p.t.Helper()
	p.waitUntil("the page has answered, or said why not", settled)
	s := evaluate[seen](p, lookAtPage)
	if s.Torn || strings.Contains(s.Says, "did not answer") {
		return false
	}
	assert.Equal(p.t, []string{s.Page}, s.Parts, "scripts of more than one release, or of another than the page")
	assert.Equal(p.t, s.Page, s.Style, "the styles are of another release than the page")
	assert.Contains(p.t, s.Core, "Wet film of release"+s.Page[:1]+" 67 µm", "the core is of another release than the page")
	return true
}

// unharmed holds what is kept to what was.
func (p *tab) unharmed() {
	p.t.Helper()
	assert.Equal(p.t, "gun_name=Old+gun", evaluate[string](p, `new Promise((done, fail) => {
		const request = indexedDB.open("spraywright");
		request.onerror = () => fail(request.error);
		request.onsuccess = () => {
			const read = request.result.transaction("profile").objectStore("profile").get("old");
			read.onsuccess = () => (request.result.close(), done(read.result?.form ?? "gone"));
		};
	})`))
	assert.Equal(p.t, "air=21", evaluate[string](p, `localStorage.getItem("spraywright:form:air-state")`))
}

// Whatever is put on the host, and however much of it, a page is of one release or says that it is not; nothing kept is
// lost; old links open; and once a release is whole on the host, a reload is all it takes.
func TestDeploysAndReloadsInAnyOrder(t *testing.T) {
	b := serve(t).build
	var releases []release
	for n := range 3 {
		releases = append(releases, releaseOf(t, b.dist, n))
	}
	worked, torn := 0, 0
	for seed := range times(t, "SPRAYWRIGHT_DEPLOYS", 2) {
		random := rand.New(rand.NewPCG(uint64(seed), 8))
		h, s := hosting(t, b, releases[random.IntN(3)])
		p := open(t, s, oldLink, phone)
		p.forgive("") // much of what is done here the console has to complain of
		require.True(t, p.whole())
		evaluate[bool](p, `import(new URL("scripts/db.js", document.baseURI)).then((db) => db.put("profile", { id: "old", kind: "gun", name: "Old gun", form: "gun_name=Old+gun" }))
			.then(() => (localStorage.setItem("spraywright:form:air-state", "air=21"), true))`)
		steps, kept := []string{}, random.IntN(2) == 0
		if kept { // a device that has been here before
			p.waitIn("#kept", "works without a network")
		}
		for i := range 4 {
			steps = append(steps, befalls(p, h, random, releases))
			kept = kept && !strings.Contains(steps[i], "forgets")
			p.visit(fmt.Sprintf("?%d-%d", seed, i)) // away
			p.visit(oldLink)
			if p.whole() {
				worked++
			} else {
				torn++
				assert.False(t, kept, "the device has a whole copy of a release, and does not work with it")
			}
			p.unharmed()
		}
		h.put(releases[random.IntN(3)], all)
		h.set(false, "")
		p.visit(oldLink)
		for tries := 0; !p.whole(); tries++ {
			require.Less(t, tries, 3, "seed %d: %v: %+v", seed, steps, evaluate[seen](p, lookAtPage))
			evaluate[bool](p, `globalThis.before = true`)
			p.does("Use it", "Reload")
			p.waitUntil("the page is loaded anew", `globalThis.before === undefined`)
		}
		p.unharmed()
		require.False(t, t.Failed(), "seed %d: %v", seed, steps)
	}
	t.Logf("%d pages worked, %d said that they were torn", worked, torn)
}

// does presses the button that the page offers for what is wrong: one of some labels, the first first.
func (p *tab) does(labels ...string) {
	p.t.Helper()
	for range 100 {
		for _, label := range labels {
			if p.holds(`[...document.querySelectorAll(".notice button")].some((b) => b.innerText === ` + quoted(label) + ` && b.getClientRects().length > 0 && (b.click(), true))`) {
				return
			}
		}
		time.Sleep(100 * time.Millisecond)
	}
	p.do(chromedp.Reload())
}

// befalls does one thing by chance to the host or the browser's copy, and says which.
func befalls(p *tab, h *webHost, random *rand.Rand, releases []release) string {
	p.t.Helper()
	r := random.IntN(len(releases))
	next := releases[r]
	switch random.IntN(10) {
	case 0, 1:
		h.put(next, all)
		return fmt.Sprint("all of ", r)
	case 2, 3:
		share := random.Float64()
		h.put(next, func(string) bool { return random.Float64() < share })
		return fmt.Sprintf("%.0f %% of %d", 100*share, r)
	case 4:
		h.put(next, func(name string) bool { return name == "sw.js" })
		return fmt.Sprint("the service worker of ", r)
	case 5:
		withheld := []string{"", "sw.js", "scripts/page.js", "scripts/extras.js"}[random.IntN(4)]
		h.set(random.IntN(2) == 0, withheld)
		return "without " + withheld
	case 6:
		evaluate[bool](p, `(async () => {
			for (const r of await navigator.serviceWorker.getRegistrations()) await r.unregister();
			for (const name of await caches.keys()) await caches.delete(name);
			return true;
		})()`)
		return "the browser forgets the site"
	case 7, 8:
		return evaluate[string](p, `Promise.race([
			navigator.serviceWorker.getRegistration().then(async (r) => {
				await r?.update().catch(() => {});
				for (let n = 0; r && !r.waiting && n < 30; n++) await new Promise((done) => setTimeout(done, 100));
				if (!r?.waiting) return "there is no new release to use";
				const taken = new Promise((done) => navigator.serviceWorker.addEventListener("controllerchange", done));
				r.waiting.postMessage("use");
				await taken;
				return "the person uses the new release";
			}),
			new Promise((done) => setTimeout(() => done("a new release does not come"), 5000)),
		])`)
	}
	share := random.Float64()
	evaluate[bool](p, fmt.Sprintf(`(async () => {
		for (const name of await caches.keys()) {
			const cache = await caches.open(name);
			for (const [i, request] of (await cache.keys()).entries()) if (i * 7919 %% 100 < %f) await cache.delete(request);
		}
		return true;
	})()`, 100*share))
	return fmt.Sprintf("the browser forgets %.0f %% of its copy", 100*share)
}
