package browser

import (
	"testing"

	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// typeIn goes to the box of a form's key by Tab and types.
func (p *tab) typeIn(pairs ...string) {
	p.t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		p.tabTo(box(pairs[i]))
		p.keys(pairs[i+1])
	}
}

// arrowTo goes to a list or a group of buttons by Tab and makes the choice with the arrow keys.
func (p *tab) arrowTo(name, choice string) {
	p.t.Helper()
	p.tabTo(box(name))
	for range 30 {
		if evaluate[bool](p, `(({activeElement: e}) => e.value === `+quoted(choice)+` && (e.type !== "radio" || e.checked))(document)`) {
			return
		}
		if evaluate[bool](p, `(({activeElement: e}) => e.value === `+quoted(choice)+`)(document)`) {
			p.keys(" ")
		} else {
			p.keys(kb.ArrowDown)
		}
	}
	require.FailNow(p.t, name+" never comes to "+choice)
}

// A whole job without a pointer: Tab, Enter, Space and the arrow keys.
func TestAJobByKeyboardAlone(t *testing.T) {
	p := open(t, serve(t), "", desk)
	p.waitIn("#needed", "Still needed")
	p.keys(kb.Tab)
	assert.True(t, evaluate[bool](p, `document.activeElement.matches(".skip")`), "the first stop skips to the content")
	p.next()
	assert.Equal(t, "main", evaluate[string](p, `document.activeElement.id`))
	p.typeIn("part.1.name", "Mudguard")
	p.arrowTo("part.1.shape", "flat")
	p.typeIn("part.1.length", "700", "part.1.width", "90")
	p.arrowTo("part.1.sides", "two")
	p.typeIn("part.1.count", "24")
	p.waitIn(`[data-row="part.1"]`, "24 pieces, 0.126 m² each")
	p.tabTo(`[data-row="part.1"] [data-do="close"]`)
	p.next()
	p.waitUntil("the row is closed and its line has the focus", `document.activeElement.matches('[data-row="part.1"] summary')`)

	p.tabTo(`[data-table="coat"] .add`)
	p.keys(" ")
	p.waitUntil("a coat can be filled in", `document.activeElement.name === "coat.1.product"`)
	p.keys("Topcoat")
	p.coatByKeys()
	p.typeIn("air", "22", "humidity", "50", "panel", "21,5", "air_speed", "0.3")
	p.waitIn("#verdict", "Go Panel")
	p.gunByKeys()
	p.waitUntil("nothing is missing", `document.getElementById("needed").hidden`)
	p.waitIn("#card", "Call sheet")

	p.tabTo("#card details.figure > summary")
	p.next()
	p.waitUntil("the working is open", `document.querySelector("#card details.figure[open] .step") !== null`)
	p.tabTo(".pour-part input")
	p.keys(" ")
	assert.True(t, evaluate[bool](p, `document.activeElement.checked`), "what is poured is not ticked")
	p.tabTo("#card button.cell")
	p.next()
	p.waitUntil("the working is open", `document.querySelector("#card .beneath .step") !== null`)
	p.tabTo("#themes input")
	p.keys(kb.ArrowRight)
	p.keys(kb.ArrowRight)
	assert.Equal(t, "dark", evaluate[string](p, `document.documentElement.dataset.theme`))
	p.tabTo(`.foot nav a[href="help.html"]`)
	p.next()
	p.waitFor("How to use it")
}

func (p *tab) coatByKeys() {
	p.t.Helper()
	// In the order in which they stand.
	for _, name := range evaluate[[]string](p, `[...new Set([...document.querySelectorAll('[data-row="coat.1"] .edit input, [data-row="coat.1"] .edit select:not(.unit)')].map((e) => e.name))]`) {
		p.coatField(name)
	}
	p.waitIn(`[data-row="coat.1"]`, "Topcoat, 4:1 by volume, 40 % solids, 50 µm in 2 coats")
}

// coatField answers one question about the coat, if it is asked and byHandCoat answers it.
func (p *tab) coatField(name string) {
	p.t.Helper()
	choices := map[string]string{"role": "topcoat", "pack": "one", "carrier": "solvent", "solvent": "xylene", "ratio_by": "volume", "drying": "air"}
	numbers := map[string]string{"ratio": "4:1", "density_a": "1,25", "density_b": "0.87", "volume_solids": "40", "dry_film": "50", "coats": "2",
		"flash": "10", "flash_at": "20", "dry_time": "60", "dry_at": "20", "voc": "480"}
	key := name[len("coat.1."):]
	if !evaluate[bool](p, `document.querySelector(`+quoted(box(name))+`).checkVisibility()`) {
		return
	}
	if choice := choices[key]; choice != "" {
		p.arrowTo(name, choice)
	} else if number := numbers[key]; number != "" {
		p.typeIn(name, number)
	}
}

func (p *tab) gunByKeys() {
	p.t.Helper()
	choices := map[string]string{"gun": "conventional", "limits": "none"}
	numbers := map[string]string{"pressure": "40", "pressure_most": "60", "delivery": "200", "fan_width": "250", "gun_distance": "200", "gun_speed": "0.4",
		"overlap": "50", "transfer_efficiency": "40", "cup_size": "600", "clock": "8:00"}
	after := evaluate[[]string](p, `(() => { const all = [...new Set([...document.querySelectorAll("#form > details input, #form > details select:not(.unit)")].filter((e) => e.checkVisibility()).map((e) => e.name))]; return all.slice(all.indexOf("air_speed") + 1); })()`)
	for _, name := range after {
		if choices[name] != "" {
			p.arrowTo(name, choices[name])
		} else if numbers[name] != "" {
			p.tabTo(box(name))
			evaluate[bool](p, `document.activeElement.select() ?? true`)
			p.keys(numbers[name])
		}
	}
}

// Wherever Tab stops, it can be seen where: something is drawn around it, and the bar does not lie over it (WCAG 2.2,
// 2.4.7 and 2.4.11).
func TestTheFocusCanBeSeen(t *testing.T) {
	s := serve(t)
	for _, l := range []look{phone, deskDark} {
		p := open(t, s, "", l)
		p.demo()
		evaluate[bool](p, `(scrollTo(0, 0), document.activeElement.blur(), true)`)
		assert.Zero(t, evaluate[int](p, `document.querySelectorAll('[tabindex]:not([tabindex="0"], [tabindex="-1"])').length`), "the order is not that of the page")
		stops := 0
		for ; stops < 120; stops++ {
			p.keys(kb.Tab)
			lost := evaluate[string](p, `(({activeElement: e}) => {
				if (e === document.body) return "end";
				const drawn = (x) => x && (getComputedStyle(x).outlineStyle !== "none" || getComputedStyle(x).boxShadow !== "none");
				if (!drawn(e) && !drawn(e.nextElementSibling)) return "nothing drawn around " + e.outerHTML.slice(0, 150);
				const r = (e.closest("label") ?? e).getBoundingClientRect(), bar = document.getElementById("bar").getBoundingClientRect();
				if (bar.height > 0 && !e.closest("#bar") && r.top >= bar.top) return "under the bar: " + e.outerHTML.slice(0, 150);
				return "";
			})(document)`)
			if lost == "end" {
				break
			}
			assert.Empty(t, lost, l.name)
		}
		assert.Greater(t, stops, 50)
	}
}
