package browser

import (
	"io"
	"net/http"
	"net/http/httptest"
	"net/http/httputil"
	"net/url"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A reporter is the site behind a server that browsers report every breach of the policy to, those that no page hears of too.
type reporter struct {
	mu      sync.Mutex
	breaks  []string
	reports *httptest.Server
}

func reporting(t *testing.T) (*reporter, *server) {
	t.Helper()
	s, r := serve(t), &reporter{}
	target, err := url.Parse(s.url(""))
	require.NoError(t, err)
	proxy := httputil.NewSingleHostReverseProxy(target)
	proxy.ModifyResponse = func(response *http.Response) error {
		policy := response.Header.Get("Content-Security-Policy")
		response.Header.Set("Content-Security-Policy", policy+"; report-uri /reports")
		return nil
	}
	r.reports = httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, q *http.Request) {
		if q.URL.Path != "/reports" {
			proxy.ServeHTTP(w, q)
			return
		}
		text, _ := io.ReadAll(q.Body)
		r.mu.Lock()
		defer r.mu.Unlock()
		r.breaks = append(r.breaks, string(text))
	}))
	t.Cleanup(r.reports.Close)
	return r, &server{t: t, build: s.build, address: strings.TrimPrefix(r.reports.URL, "http://")}
}

func (r *reporter) reported() []string {
	r.mu.Lock()
	defer r.mu.Unlock()
	return append([]string{}, r.breaks...)
}

// watchful has every page note breaches of the policy, and what would show that a text was taken for more than a text.
const watchful = `
	globalThis.breaches = [];
	addEventListener("securitypolicyviolation", (e) => breaches.push(e.violatedDirective + " " + e.blockedURI + " " + e.sample));
	globalThis.ran = undefined;
	globalThis.alert = globalThis.confirm = globalThis.prompt = () => { globalThis.ran = "a dialogue"; };`

// harm is what a hostile text has done to the page, in words; blank for nothing.
const harm = `(async () => {
	const found = [...breaches];
	if (globalThis.ran !== undefined) found.push("a script ran: " + ran);
	for (const key in {}) found.push("every object has " + key);
	if ({}.polluted !== undefined || Object.prototype.hasOwnProperty("0") || [].polluted !== undefined) found.push("a prototype has changed");
	for (const e of document.querySelectorAll("body script, [onerror], [onload], [onclick], img[src='x'], iframe, base, object, embed")) if (!/^\/+embed\.html$/.test(new URL(e.src || "about:blank").pathname)) found.push("the page has " + e.outerHTML.slice(0, 80));
	for (const a of document.querySelectorAll("a[href]")) if (!/^(https?|blob|file|data):$/.test(a.protocol)) found.push("a link leads to " + a.href.slice(0, 80));
	for (const { name } of await indexedDB.databases()) found.push(...await new Promise((done, fail) => {
		const request = indexedDB.open(name);
		request.onerror = () => fail(request.error);
		request.onsuccess = async () => {
			const db = request.result, kinds = [...db.objectStoreNames], counts = [];
			for (const kind of kinds) counts.push(await new Promise((ok) => { db.transaction(kind).objectStore(kind).count().onsuccess = (e) => ok(e.target.result); }));
			db.close();
			done(kinds.filter((_, i) => counts[i] > 0).map((kind) => "kept: " + kind));
		};
	}));
	return found.join("; ");
})()`

// kinds of pages that read a link, each with a form that it takes, and what shows that it has read one.
var linkKinds = []struct{ page, begin, read string }{
	{"index.html", "", `document.querySelector(".bar-needed")?.innerText`},
	{"received.html", "sheet.1.product=Clear&", `document.querySelector("main").dataset.ready`},
	{"exercises.html", "q.1.of=wet-film&", `document.querySelector("main").innerText.length > 100`},
	{"embed.html", "frame.of=job&", `document.querySelector("#needed, #card, main p")`},
	{"put-on-page.html", "frame.of=job&", `document.querySelector("main").innerText`},
	{"day.html", "", `document.querySelector(".bar-needed")?.innerText`},
	{"wet-film.html", "", `document.querySelector(".bar-needed")?.innerText`},
	{"data-sheet.html", "", `document.querySelector(".bar-needed")?.innerText`},
	{"customer-sheets.html", "", `document.querySelector(".bar-needed")?.innerText`},
	{"exercise-set.html", "q.1.of=wet-film&", `document.querySelector("#exercises")?.innerText.length > 20`},
}

// everyField has a script in every field of the page, its tables, and of every link there is.
const everyField = `(() => {
	const names = new Set(["sender", "shop_note", "opens", "sheet.1.product", "sheet.1.sheet_dated", "title", "note", "tasks", "seed", "q.1.of", "q.1.ask", "frame.title", "frame.theme", "frame.lock", "page", "fields", "units", "tried"]);
	const take = (root) => { for (const e of root.querySelectorAll("[name]")) names.add(e.name.replace(/\.0\./, ".1.")); for (const t of root.querySelectorAll("template")) take(t.content); };
	take(document);
	const bad = ["<script>ran=1</"+"script>", "<img src=x onerror=ran=2>", "javascript:ran=3", "\"'><svg onload=ran=4>", "{{constructor.constructor('ran=5')()}}", "</textarea><script>ran=6</"+"script>"];
	return [...names].map((name, i) => encodeURIComponent(name) + "=" + encodeURIComponent(bad[i % bad.length])).join("&");
})()`

// hostileForms are forms that somebody means ill with; each is the expression of a text.
var hostileForms = map[string]struct {
	text  string
	large bool
}{
	"script in every field": {everyField, false},
	"prototypes": {`["__proto__", "constructor", "__proto__.polluted", "constructor.prototype.polluted", "part.__proto__.polluted", "part.1.__proto__", "coat.1.constructor", "sheet.1.__proto__", "sheet.__proto__.product", "q.1.__proto__", "q.__proto__.of",
		"frame.__proto__", "hasOwnProperty", "toString", "units.__proto__", "part.length.unit"].map((k) => k + "=__proto__").join("&")`, false},
	"halves of surrogates and marks of direction": {`["air", "part.1.name", "coat.1.product", "sheet.1.product", "sender", "title", "q.1.ask", "product", "frame.title"].map((k) => k + "=\ud800x\udc00\u202egnp.exe\u2066\u0000\u200b").join("&") + "&part.2.name=%ED%A0%80%C0%AF%FF"`, false},
	"deep names":                 {`"part.1".repeat(20000) + "=1&" + "[".repeat(50000) + "=" + "{".repeat(50000)`, false},
	"another version":            {`"9:" + "A".repeat(1000)`, false},
	"a bomb":                     {`"1:" + "0".repeat(200000)`, false},
	"a bomb for the day":         {`"2:" + "Z".repeat(200000)`, false},
	"10 MB":                      {`"air=" + "9".repeat(10e6)`, true},
	"a hundred thousand entries": {`Array.from({ length: 100000 }, (_, i) => "part." + i + ".name=a").join("&")`, true},
}

// In links of every kind: nothing runs, nothing is kept, no object gets another nature, the policy is not even tried, and
// the page goes on working.
func TestHostileLinksOfEveryKind(t *testing.T) {
	r, s := reporting(t)
	p := open(t, s, "about.html", phone)
	p.before(watchful)
	for _, kind := range linkKinds[:times(t, "SPRAYWRIGHT_HOSTILE", 2)] {
		p.visit(kind.page + "#" + strings.TrimSuffix(kind.begin, "&"))
		ready := `document.readyState === "complete" && Boolean(` + kind.read + `)`
		p.waitUntil(kind.page+" is ready", ready)
		for name, form := range hostileForms {
			if form.large && kind.page != "index.html" {
				continue
			}
			begin := time.Now()
			evaluate[bool](p, `(() => {
				const text = `+form.text+`;
				location.hash = "#" + (/^\d:/.test(text) ? text : `+quoted(kind.begin)+` + text);
				return true;
			})()`)
			// Some pages are loaded anew for another form; the others have taken it up by the next task but one.
			p.waitUntil(kind.page+" has read "+name, `new Promise((done) => setTimeout(() => setTimeout(done, 50, true), 50))`)
			p.waitUntil(kind.page+" is ready after "+name, ready)
			assert.Empty(t, evaluate[string](p, harm), "%s in %s", name, kind.page)
			t.Logf("%s %s: %v", kind.page, name, time.Since(begin))
		}
	}
	assert.Empty(t, r.reported())
	p.visit("wet-film.html#units=si")
	wetFilm(p)
}

// The listener hears of a breach: else its silence would say nothing.
func TestABreachOfThePolicyIsReported(t *testing.T) {
	r, s := reporting(t)
	p := open(t, s, "about.html", phone)
	p.forgive("Content Security Policy", "Content-Security-Policy")
	p.before(watchful)
	p.visit("wet-film.html")
	evaluate[bool](p, `(document.body.append(Object.assign(document.createElement("img"), { src: "https://example.org/x.png" })), true)`)
	p.waitUntil("the page hears of it", `breaches.some((b) => b.startsWith("img-src"))`)
	require.Eventually(t, func() bool { return strings.Contains(strings.Join(r.reported(), " "), "img-src") }, patience, patience/100)
}
