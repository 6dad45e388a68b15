package browser

import (
	"encoding/json"
	"strings"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// Invented products.
const (
	greyPrimer = "product=Grey two-pack primer&role=surfacer&pack=two&carrier=solvent&solvent=butyl-acetate&ratio=4:1:1&ratio_by=volume&" +
		"density_a=1.48&density_b=1.02&density_c=0.87&volume_solids=44&dry_film=60&coats=2&pot_life=90&pot_life_at=20&flash=10&flash_at=20&" +
		"latest_recoat=48&recoat_at=20&drying=air&dry_time=90&dry_at=20&air_lowest=10&air_highest=35&voc=510&price=31"
	ivoryBase = "product=Ivory waterborne base&role=base&pack=one&carrier=water&ratio=100:20&ratio_by=weight&density_a=1.18&density_b=1&" +
		"volume_solids=20&dry_film=0.7&dry_film.unit=mil&coats=2&flash=8&flash_at=23&flash_humidity=50&drying=flash&voc=395&water_share=66"
)

// pressIn presses the button in an element that reads so.
func (p *tab) pressIn(selector, label string) {
	p.t.Helper()
	find := `[...document.querySelectorAll(` + quoted(selector+" button, "+selector+" a") + `)].find((b) => b.innerText.trim().replace(/\s+/g, " ") === ` + quoted(label) + ` && b.getClientRects().length > 0)`
	p.waitUntil(selector+" offers “"+label+"”", `Boolean(`+find+`)`)
	at := evaluate[[]float64](p, `(async () => {
		for (let was = ""; ; await new Promise((done) => setTimeout(done, 40))) {
			const b = `+find+`; // the list may have been drawn anew
			b?.scrollIntoView({block: "center", behavior: "instant"});
			const r = b?.getClientRects()[0], at = r && [r.x + r.width / 2, r.y + r.height / 2];
			if (at && was === String(at) && b.contains(document.elementFromPoint(...at))) return at;
			was = String(at);
		}
	})()`)
	p.do(chromedp.TapXY(at[0], at[1]))
}

// shelve puts things on the shelf, as "kind form", and returns their ids.
func (p *tab) shelve(items ...string) []string {
	p.t.Helper()
	type item struct{ Kind, Form string }
	var all []item
	for _, s := range items {
		kind, form, _ := strings.Cut(s, " ")
		all = append(all, item{kind, form})
	}
	list, err := json.Marshal(all)
	require.NoError(p.t, err)
	return evaluate[[]string](p, `(async () => {
		const at = (name) => import(new URL("scripts/" + name, document.baseURI).href);
		const [{ put }, { itemFrom }, { parse }] = await Promise.all(["db.js", "shelf-store.js", "state.js"].map(at));
		const kept = await put("profile", ...`+string(list)+`.map(({ Kind, Form }) => itemFrom(Kind, parse(Form))));
		return kept.map((r) => r.id);
	})()`)
}

// shelved is what the shelf holds: the form of each item by its name.
func (p *tab) shelved() map[string]string {
	p.t.Helper()
	return evaluate[map[string]string](p, `(async () => {
		const { all } = await import(new URL("scripts/db.js", document.baseURI).href);
		return Object.fromEntries((await all("profile")).map((r) => [r.name, r.form]));
	})()`)
}

// beside opens a second tab of the same person, on a phone.
func (p *tab) beside(path string) *tab {
	p.t.Helper()
	ctx, cancel := chromedp.NewContext(p.ctx)
	p.t.Cleanup(cancel)
	q := &tab{t: p.t, ctx: ctx, server: p.server, look: p.look}
	q.listen()
	q.do(chromedp.EmulateViewport(p.look.width, p.look.height, chromedp.EmulateMobile, chromedp.EmulateTouch))
	q.visit(path)
	p.t.Cleanup(q.blame)
	return q
}

// front brings a tab before the others, where alone a finger reaches it.
func (p *tab) front() {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, page.BringToFront, cdp.Empty{})
	require.NoError(p.t, err)
}

const shelfLine = ".shelf-line"
