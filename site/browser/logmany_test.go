package browser

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
)

// manyNames puts 130 products into each of twelve months, 10 mL at 100 g/L each: 13 g of VOC a month, more lines than
// the core adds up at once.
const manyNames = `import("/scripts/db.js").then(async ({ put }) => {
	for (let m = 1; m <= 12; m++) {
		const day = "2026-" + String(m).padStart(2, "0") + "-03";
		await put("mix", ...Array.from({ length: 130 }, (_, i) => ({ id: day.slice(0, 7) + "x" + i, day, form: "mixed_on=" + day + "&product=Mix+" + i + "&mixed_volume=10&voc=100" })));
	}
	await put("mix", { id: "bad", day: "2026-02-04", form: "mixed_on=2026-02-04&product=Broken&mixed_volume=some" });
	return true;
})`

func TestManyProductNamesAddUp(t *testing.T) {
	p := open(t, serve(t), "log.html", phone)
	p.waitFor("Nothing is logged yet.")
	evaluate[bool](p, manyNames)
	p.waitUntil("the months can be chosen", `document.querySelectorAll("#log-which option").length >= 12`)
	choosesMonth(p, "2026-12")
	p.waitIn(`[data-out="year_volume"]`, "15.6 L") // 12 × 130 × 10 mL
	p.waitIn(`[data-out="month_voc"]`, "0.13 kg")  // 130 g
	assert.Equal(t, 130, evaluate[int](p, `document.querySelectorAll('[data-out="product_total"] tbody tr').length`))
	p.waitIn("#log-bad", "1 entry of 2026-02 cannot be read, and is not counted.")
	p.tap(`[data-out="product_total"] tbody tr:last-child td:last-child button`) // of another report than the first row's
	p.waitIn(`[data-out="product_total"] .beneath`, "in 12 months")
}

// What is added up is kept in full: 24.4 mL are no 24.
func TestASmallMixKeepsItsVolume(t *testing.T) {
	p := open(t, serve(t), "log.html", phone)
	got := evaluate[string](p, `import("/scripts/log-store.js").then(({ check }) => check(new Map([["mixed_on", "2026-11-25"], ["mixed_mass", "30"], ["mix_density", "1.23"]]))).then(({ form }) => form.get("mixed_volume"))`)
	assert.Equal(t, "24.3902439", got) // 30 g / 1.23 kg/L
}

func TestARecordInUSUnitsIsOfOneSystem(t *testing.T) {
	p := open(t, serve(t), "log.html", phone)
	p.waitFor("Nothing is logged yet.")
	evaluate[bool](p, `(localStorage.setItem("spraywright:units", "us"), true)`)
	p.visit("log.html")
	logMixes(p, "mixed_on=2026-11-25&clock=8:00&product=Clear&mixed_volume=1&mixed_volume.unit=gal&mixed_mass=8&mixed_mass.unit=lb&voc=3.5&voc.unit=lb/gal_voc")
	p.waitUntil("the month can be chosen", `document.querySelectorAll("#log-which option").length >= 1`)
	choosesMonth(p, "2026-11")
	p.waitIn(".log-row", "1.0000 gal VOC 3.500 lb")
	p.waitIn(`[data-out="month_voc"]`, "3.50 lb")
	p.waitIn(`[data-out="month_volume"]`, "1.00 gal")
	assert.Equal(t, "lb", p.value("mass_limit.unit"))
	assert.Equal(t, "us", evaluate[string](p, `document.querySelector('[name="csv_units"]:checked').value`))
	p.shotWhole("log-us")
}

// The button names the cup, and more than the card has are logged only when asked.
func TestNoMoreCupsAreLoggedThanTheCardHas(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.demo()
	several := `[...document.querySelectorAll(".pour-cup")].findIndex((c) => /cups 1 to/.test(c.textContent)) + 1`
	place := fmt.Sprintf(`[data-out="pour"] .pour-cup:nth-of-type(%d)`, evaluate[int](p, several))
	all := evaluate[int](p, fmt.Sprintf(`Number(document.querySelector(%s + " [data-log]").textContent.match(/of (\d+)$/)[1])`, quoted(place)))
	for n := 1; n <= all; n++ {
		p.waitIn(place, fmt.Sprintf("Log cup %d of %d", n, all))
		p.tap(place + " [data-log]")
		p.waitIn(place, fmt.Sprintf("Logged: %d of %d", n, all))
	}
	p.shot("log-cups")
	p.tap(place + " [data-log]")
	p.waitIn("#notices", fmt.Sprintf("All %d cups of this kind are logged already.", all))
	assert.Equal(t, all, evaluate[int](p, `import("/scripts/db.js").then(({ all }) => all("mix")).then((m) => m.length)`))
	p.tap("#notices .notice:last-child button") // Log one more
	p.waitIn(place, fmt.Sprintf("Logged: %d of %d", all+1, all))
	p.tap(`#notices .notice:last-child button:nth-of-type(2)`) // Undo
	p.waitIn(place, fmt.Sprintf("Logged: %d of %d", all, all))
}
