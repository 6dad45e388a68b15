package browser

import (
	"encoding/csv"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// savedFile keeps what a page saves for the test to read.
const savedFile = `{ const real = URL.createObjectURL.bind(URL); URL.createObjectURL = (blob) => { globalThis.saved = blob.arrayBuffer().then((b) => new TextDecoder("utf-8", { ignoreBOM: true }).decode(b)); return real(blob); }; }`

func TestTheLogIsSavedAsCSV(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(savedFile)
	p.visit("log.html")
	p.waitFor("Nothing is logged yet.")
	logMixes(p, clear25+"&poured_part.1.poured_name=Paint&poured_part.1.poured_mass=576&poured_part.2.poured_name=Hardener&poured_part.2.poured_mass=144",
		"mixed_on=2026-11-26&product=%3DHYPERLINK(%22x%22)&mixed_volume=1&mixed_volume.unit=L", "mixed_on=2026-10-02&product=Grau,+matt+%E2%80%9CÄ%E2%80%9D&mixed_mass=2&mixed_mass.unit=kg", "mixed_on=2026-11-20&product=Broken&mixed_volume=some")
	p.waitUntil("the months can be chosen", `document.querySelectorAll("#log-which option").length >= 2`)
	choosesMonth(p, "2026-11")
	p.waitIn("#log-bad", "1 entry of 2026-11 cannot be read, and is not counted.")
	p.waitIn(`[data-out="month_volume"]`, "1.6 L")
	p.tap(`[data-csv="all"]`)
	p.waitIn("#notices", "Saved as mix-log-2026-10-to-2026-11.csv. 1 entries could not be read and are not in it.")
	text := evaluate[string](p, `saved`)
	require.True(t, strings.HasPrefix(text, "\uFEFF"))
	rows, err := csv.NewReader(strings.NewReader(strings.TrimPrefix(text, "\uFEFF"))).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 4)
	assert.Equal(t, []string{"Day", "Mixed at", "Product", "Volume (L)"}, rows[0][:4])
	assert.Equal(t, []string{"2026-10-02", "", "Grau, matt “Ä”", "", "2.0000"}, rows[1][:5])
	assert.Equal(t, []string{"2026-11-25", "8:00", "Two-pack clear", "0.6000", "0.7200", "420.000", "0.2520", "Paint 576.00 g; Hardener 144.00 g"}, rows[2][:8])
	assert.Equal(t, `'=HYPERLINK("x")`, rows[3][2])
}

func TestTheMonthIsPrintedForTheInspector(t *testing.T) {
	p := fiveMixes(t, phoneDark)
	p.waitIn(`[data-out="month_voc"]`, "0.92 kg")
	p.media("print")
	p.waitIn("#log-paper", "Mixes of 2026-11")
	p.has("#log-paper", "2026-11-25", "Two-pack clear", "600 mL", "Second painter", "Signed")
	assert.False(t, p.sees(".log-out"))
	assert.False(t, p.sees("#log-days"))
	p.shotWhole("log-print")
}

const nothingKept = `Object.defineProperty(globalThis, "indexedDB", { get() { throw new Error("refused"); } }); Object.defineProperty(globalThis, "localStorage", { get() { throw new Error("refused"); } });`

func TestARefusedStorageIsTold(t *testing.T) {
	p := open(t, serve(t), "about.html", phone)
	p.before(nothingKept)
	p.visit("log.html")
	p.waitFor("This browser keeps nothing: what you log here is gone with the page.")
	p.visit(aMix)
	p.waitIn("#card", "696.0 g")
	p.tap(`#card [data-log]:not([data-first])`)
	p.waitIn("#notices", "Logged: 600 mL")
}

func TestTheLogWorksWithoutANetwork(t *testing.T) {
	s := serve(t)
	p := open(t, s, "", phone)
	p.waitUntil("the site is kept on the phone", `navigator.serviceWorker.ready.then(() => true)`)
	s.stop()
	p.visit(aMix)
	p.waitIn("#card", "696.0 g")
	p.tap(`#card [data-log]:not([data-first])`)
	p.waitIn("#notices", "Logged: 600 mL")
	p.tap(`#notices a[href="log.html"]`)
	p.waitIn(".log-row", "600 mL")
	p.waitIn(`[data-out="month_volume"]`, "0.6 L")
}

// Fifty thousand mixes over four years: the month shown comes at once, and the second time the totals do too.
func TestALongLogIsQuick(t *testing.T) {
	if testing.Short() {
		t.Skip("fifty thousand mixes")
	}
	p := open(t, serve(t), "log.html", phone)
	p.waitFor("Nothing is logged yet.")
	evaluate[bool](p, `new Promise((done) => { const r = indexedDB.open("spraywright"); r.onsuccess = () => {
		const t = r.result.transaction("mix", "readwrite"), mixes = t.objectStore("mix");
		for (let i = 0; i < 50000; i++) {
			const m = i % 48, d = 1 + i % 28, day = (2023 + Math.floor(m / 12)) + "-" + String(m % 12 + 1).padStart(2, "0") + "-" + String(d).padStart(2, "0");
			mixes.put({ id: "m" + String(i).padStart(6, "0"), day, rev: 1, at: 1, form: "mixed_on=" + day + "&clock=8:00&product=Product+" + i % 12 + "&mixed_volume=600&mixed_mass=720&voc=420" });
		}
		t.oncomplete = () => { r.result.close(); done(true); };
	}; })`)
	evaluate[bool](p, `(localStorage.setItem("spraywright:log-month", "2026-12"), true)`)
	times := []time.Duration{}
	for range 2 {
		from := time.Now()
		p.do(chromedp.Reload())
		p.waitUntil("the month is listed", `document.querySelectorAll(".log-row").length > 1000`)
		listed := time.Since(from)
		end := time.Now().Add(3 * time.Minute)
		for !evaluate[bool](p, `document.querySelector('[data-out="year_mass"] .num')?.textContent === "3148.0"`) && time.Now().Before(end) { // 12 × 1041 mixes of 252 g
			time.Sleep(100 * time.Millisecond)
		}
		times = append(times, listed, time.Since(from))
	}
	fmt.Println("listed and added up, first and second time:", times)
	p.has(`[data-out="year_mass"]`, "3148.0 kg")
	assert.Less(t, times[3], 10*time.Second, "the totals of past months are worked out again")
}

func TestTheLogAndTheBenchInUseAreAccessible(t *testing.T) {
	program := checker(t)
	for _, l := range []look{phone, deskDark} {
		p := fiveMixes(t, l)
		p.waitIn(`[data-out="month_voc"]`, "0.92 kg")
		p.tap(".log-row:nth-child(2) summary")
		p.waitIn(".log-entry[open] .log-open", "Weight 720.0 g")
		p.tap(".log-months summary")
		p.axe(program, "the log with an entry open")
		p.tap(`.log-open [data-do="change"]`)
		p.waitIn(".log-save", "Save the change")
		p.axe(program, "an entry of the log")
		p = bench(t, serve(t), l)
		pad(p, "105E95E50E")
		p.waitIn(`[data-out="film_lowest"]`, "50 µm")
		p.axe(program, "the bench with readings")
	}
}
