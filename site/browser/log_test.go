package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// aMix is 480 mL of paint at 1.2 kg/L and 120 mL of hardener at 1.0 kg/L: 696 g.
const aMix = "mix.html#ratio=4:1&ratio_by=volume&amount=600&pour_by=scale&density_a=1.2&density_b=1"

// logMixes writes entries as another page would have, each the text of its form.
func logMixes(p *tab, forms ...string) {
	p.t.Helper()
	for _, form := range forms {
		evaluate[bool](p, `import("/scripts/db.js").then(({ put, freshId }) => put("mix", { id: freshId(), day: new URLSearchParams(`+quoted(form)+`).get("mixed_on"), form: `+quoted(form)+` })).then(() => true)`)
	}
}

const clear25 = "mixed_on=2026-11-25&clock=8:00&product=Two-pack+clear&mixed_volume=600&mixed_mass=720&voc=420&painter=Second+painter"

func TestAMixIsLoggedByOneTap(t *testing.T) {
	s := serve(t)
	p := open(t, s, aMix, phone)
	p.waitIn("#card", "696.0 g")
	p.tap(`#card [data-log]:not([data-first])`)
	p.waitIn("#notices", "Logged: 600 mL of a product without a name.")
	p.shot("log-tapped")
	p.tap("#notices .notice:last-child button") // Name it
	p.waitUntil("the entry is open", `document.querySelector('[name="mixed_volume"]')?.value === "600"`)
	p.waitIn(".log-save", "Save the change")
	p.enter("product", "Two-pack clear")
	p.enter("voc", "420")
	p.enter("booth_name", "Booth 1")
	p.waitIn(`[data-out="voc_mass"]`, "252 g") // 0.6 L at 420 g/L
	p.shotWhole("log-entry")
	p.tap(".log-save .action")
	p.waitIn("#notices", "Saved in the log.")
	p.tap(`.log-save a[href="log.html"]`)
	p.waitIn(".log-row", "Two-pack clear 600 mL VOC 252 g")
	p.waitIn(`[data-out="month_voc"]`, "0.25 kg")
	p.tap(".log-entry summary")
	p.waitIn(".log-open", "Weight 696.0 g")
	p.has(".log-open", "Booth Booth 1", "Poured First part, Second part")

	p.visit("menu.html") // where and who carry over
	p.visit(aMix)
	p.tap(`#card [data-first="change"]`)
	p.waitUntil("booth and volume are there", `document.querySelector('[name="booth_name"]')?.value === "Booth 1" && document.querySelector('[name="poured_part.1.poured_mass"]') === null`)
	p.waitIn("#card", "Log this mix")
	p.waitIn(`[data-out="mix_volume"]`, "600 mL")
	assert.Equal(t, 1, evaluate[int](p, `import("/scripts/db.js").then(({ all }) => all("mix")).then((m) => m.length)`), "logged before it was changed")
}

// Each cup of the job card, with what the job's form knows of the product.
func TestACupOfTheJobCardIsLogged(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	assert.True(t, evaluate[bool](p, `document.querySelectorAll(".pour-cup").length === document.querySelectorAll(".pour-cup [data-log]:not([data-first])").length`))
	p.tap(".pour-cup [data-log]")
	p.waitIn("#notices", "of Grey two-pack primer.")
	form := evaluate[string](p, `import("/scripts/db.js").then(({ all }) => all("mix")).then(([m]) => m.form)`)
	for _, has := range []string{"product=Grey+two-pack+primer", "voc=510", "volume_solids=44", "poured_part.1.poured_name=Paint", "poured_part.3.poured_name=Thinner", "mixed_mass.unit=g"} {
		assert.Contains(t, form, has)
	}
	p.tap(`#notices .notice:last-child button:nth-of-type(2)`) // Undo
	p.waitIn("#notices", "Taken out of the log.")
	assert.Equal(t, 0, evaluate[int](p, `import("/scripts/db.js").then(({ all }) => all("mix")).then((m) => m.length)`))
}

func choosesMonth(p *tab, month string) {
	p.t.Helper()
	evaluate[bool](p, `(() => { const s = document.getElementById("log-which"); s.value = `+quoted(month)+`; s.dispatchEvent(new Event("change", { bubbles: true })); return s.value === `+quoted(month)+`; })()`)
}

func TestMonthsAndTwelveMonthsAddUp(t *testing.T) {
	for _, l := range screens() {
		p := fiveMixes(t, l)
		p.has("#log-days .log-day:nth-child(1)", "2026-11-25 2 mixes, 1.60 L, VOC 0.75 kg", "14:30 Grey primer 1000 mL VOC 500 g", "8:00 Two-pack clear 600 mL VOC 252 g")
		p.has("#log-days .log-day:nth-child(2)", "2026-11-03 1 mix, 0.40 L, VOC 0.17 kg")
		p.waitIn(`[data-out="month_voc"]`, "0.92 kg") // 252 + 500 + 168 g
		p.waitIn(`[data-out="year_mass"]`, "5.9 kg")  // and 5 kg of January; November 2025 is out
		p.has(`[data-out="product_total"]`, "Two-pack clear", "Grey primer")
		p.tap(".log-months summary")
		p.waitIn(`[data-out="month_total"]`, "2025-12")
		p.has(`[data-out="month_total"]`, "2026-11")
		p.enter("mass_limit", "5.5")
		p.waitIn("#verdict", "Stop The 12 months up to 2026-01 came to 55.0 kg, and the limit is 5.5 kg") // 50 kg of November 2025 and 5 of January
		p.enter("mass_limit", "much")
		p.waitIn("#w-mass_limit", "Limit for 12 months must be a number")
		p.enter("mass_limit", "100")
		p.waitIn("#verdict", "Go 94.1 kg is left below the limit of 100 kg")
		p.tap(`[data-out="year_mass"] summary`)
		p.waitIn(`[data-out="year_mass"] .steps`, "40 CFR part 63, subpart MMMM")
		p.tap(`[data-out="year_mass"] summary`)
		p.shotWhole("log")
		evaluate[bool](p, `(scrollTo(0, 0), true)`)
		p.shot("log-top")
		p.fits()
		assert.Empty(t, evaluate[[]string](p, faint))
		assert.Equal(t, "100", reloaded(p), "the limit is forgotten")
	}
}

func reloaded(p *tab) string {
	p.t.Helper()
	p.do(chromedp.Reload())
	p.waitIn("#verdict", "Go")
	return p.value("mass_limit")
}

// fiveMixes opens the log on November 2026 with mixes of three months.
func fiveMixes(t *testing.T, l look) *tab {
	t.Helper()
	p := open(t, serve(t), "log.html", l)
	p.waitFor("Nothing is logged yet.")
	p.shot("log-empty")
	logMixes(p, clear25, "mixed_on=2026-11-25&clock=14:30&product=Grey+primer&mixed_volume=1&mixed_volume.unit=L&voc=500&booth_name=Booth+1",
		"mixed_on=2026-11-03&product=two-pack+clear&mixed_volume=400&voc=420", "mixed_on=2026-01-09&product=Grey+primer&mixed_volume=10&mixed_volume.unit=L&voc=500",
		"mixed_on=2025-11-30&product=Grey+primer&mixed_volume=100&mixed_volume.unit=L&voc=500")
	p.waitUntil("the months can be chosen", `document.querySelectorAll("#log-which option").length >= 3`)
	choosesMonth(p, "2026-11")
	p.waitIn("#log-days", "2026-11-25")
	return p
}

func TestAMixIsTakenOutAndPutBack(t *testing.T) {
	p := fiveMixes(t, phone)
	p.waitIn(`[data-out="month_voc"]`, "0.92 kg")
	p.tap(".log-row:nth-child(2) summary")
	p.tap(`.log-open [data-do="remove"]`)
	p.waitIn("#notices", "Two-pack clear of 2026-11-25 is out of the log.")
	p.waitIn(`[data-out="month_voc"]`, "0.67 kg") // the kept total of the month has gone with it
	p.tap("#notices .notice:last-child button")
	p.waitIn(`[data-out="month_voc"]`, "0.92 kg")
	p.waitIn("#log-days", "8:00 Two-pack clear 600 mL")
}

// 120 g of 720 g are left: 500 mL at 45 % on 3.6 m² at 50 µm are 80 %.
func TestWhatIsLeftTellsTheTransferEfficiency(t *testing.T) {
	s := serve(t)
	p := open(t, s, "log.html", phone)
	p.waitFor("Nothing is logged yet.")
	evaluate[bool](p, `import("/scripts/db.js").then(({ put }) => put("profile", { id: "g", kind: "gun", name: "Gravity gun", form: "gun_name=Gravity+gun&transfer_efficiency=50" })).then(() => true)`)
	logMixes(p, clear25+"&area=3.6&dry_film=50&volume_solids=45&film_by=measured&film_spread=5")
	p.waitUntil("the month can be chosen", `document.querySelectorAll("#log-which option").length >= 1`)
	choosesMonth(p, "2026-11")
	p.waitIn("#log-days", "Two-pack clear")
	p.tap(".log-entry summary")
	p.enter("left_mass", "720")
	p.tap(".log-left .action")
	p.waitIn("#w-left_mass", "Left in the cup must be less than was mixed, 720 g")
	p.enter("left_mass", "120")
	p.tap(".log-left .action")
	p.waitIn(".log-open", "Go 80 % of the solids stayed on the part; 72 % to 88 % is what the film's spread leaves open")
	p.shot("log-left")
	p.tap(`.log-open [data-do="next"]`)
	p.waitIn("#notices", "now offer 80 %")
	p.tap("#notices .notice:last-child button") // Keep it with Gravity gun
	p.waitIn("#notices", "Gravity gun now has 80 % on the shelf.")
	assert.Contains(t, evaluate[string](p, `import("/scripts/db.js").then(({ get }) => get("profile", "g")).then((g) => g.form)`), "transfer_efficiency=80")
	p.visit("paint-needed.html")
	p.waitFor("Take 80 % from your last weighed cup")
	p.tap(".log-transfer")
	p.waitUntil("it is filled in", `document.querySelector('[name="transfer_efficiency"]').value === "80"`)
	p.waitUntil("it is no longer offered", `document.querySelector(".log-transfer") === null`)
}

func TestAChangeInAnotherTabIsTold(t *testing.T) {
	p := fiveMixes(t, phone)
	p.tap(".log-row:nth-child(2) summary")
	p.tap(`.log-open [data-do="change"]`)
	p.waitIn(".log-save", "Save the change")
	evaluate[bool](p, `import("/scripts/db.js").then(async ({ all, put }) => { const m = (await all("mix")).find((m) => m.form.includes("720")); await put("mix", { ...m, form: m.form.replace("600", "650") }); return true; })`)
	p.enter("mixed_volume", "610")
	p.waitIn(`[data-out="mix_volume"]`, "610 mL")
	p.tap(".log-save .action")
	p.waitIn("#notices", "This entry has been changed in another tab since you opened it. Yours is not saved yet.")
	p.tap(`#notices .notice:last-child button:nth-of-type(2)`) // Show the other
	p.waitUntil("the other is shown", `document.querySelector('[name="mixed_volume"]').value === "650"`)
	p.enter("mixed_volume", "610")
	p.waitIn(`[data-out="mix_volume"]`, "610 mL")
	p.tap(".log-save .action")
	p.waitIn("#notices", "Saved in the log.")
}
