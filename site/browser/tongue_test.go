package browser

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/menu"
	"spraywright/site/words"
)

var (
	phoneSpain  = look{"phone-spain", 390, 844, true, "light", "es-ES,es"}
	phoneMexico = look{"phone-mexico", 390, 844, true, "light", "es-MX,es"}
	phoneUS     = look{"phone-us", 390, 844, true, "light", "en-US,en"}
	deskSpain   = look{"desk-spain", 1280, 800, false, "dark", "es-ES,es"}
)

// inSpanish looks a text up in the catalogue. One that has no translation yet is shown in English.
func inSpanish(t *testing.T, english string) string {
	t.Helper()
	files, err := words.Read(os.DirFS("../words/es"))
	require.NoError(t, err)
	for _, ms := range files {
		for _, m := range ms {
			if m.ID == english && m.Context == "" && m.Text != "" {
				return m.Text
			}
		}
	}
	return english
}

func TestASpanishPageFilledInByHand(t *testing.T) {
	for _, l := range []look{phoneSpain, deskSpain} {
		p := open(t, serve(t), "es/wet-film.html", l)
		assert.Equal(t, "es", evaluate[string](p, "document.documentElement.lang"))
		assert.Equal(t, inSpanish(t, string(menu.Find("wet-film").Question)), p.text("h1"))
		p.enter("dry_film", "61,5")
		p.enter("volume_solids", "x")
		p.waitIn("#gathered", "«x»")
		p.enter("volume_solids", "45,5")
		p.enter("coats", "2")
		p.waitIn("#card", "68 µm") // 61.5 / 2 / 0.455 = 67.58
		p.tap(`[data-out="wet_film"] summary`)
		p.waitIn(`[data-out="wet_film"] .steps`, "67,582 µm")
		p.has(`[data-out="wet_film"] .steps`, "61,5 ÷ 2 ÷ (45,5 ÷ 100)")
		assert.Empty(t, p.inOneLine("#notices"), "a Spanish page offers Spanish")
		p.shot("spanish-" + l.name)
		p.shotWhole("spanish-whole-" + l.name)
	}
}

func TestTheSpanishJob(t *testing.T) {
	p := open(t, serve(t), "es/", phoneSpain)
	p.tap("#try a")
	p.waitIn("#card", inSpanish(t, "Call sheet"))
	p.has("#card", inSpanish(t, "Mix in all"), inSpanish(t, "Start pressure"))
	assert.Regexp(t, `\d,\d\d L`, p.inOneLine(`[data-out="to_mix_all"]`))
	assert.NotRegexp(t, `\d\.\d`, p.inOneLine(`[data-out="amounts"]`), "a point stands for a comma")
	p.fits()
	p.shotWhole("spanish-job")
}

// The region counts where the device has the page's language; otherwise answers have the mark of the page's own texts.
func TestTheMarkFollowsTheRegion(t *testing.T) {
	const air = "#air=29&humidity=72&panel=28&air_speed=0,3"
	p := open(t, serve(t), "es/"+air, phoneMexico)
	p.waitIn(`[data-out="dew_point"]`, "23.4 °C")
	p = open(t, serve(t), air, look{"phone-austria", 390, 844, true, "light", "de-AT"})
	p.waitIn(`[data-out="dew_point"]`, "23.4 °C")
	p = open(t, serve(t), "es/"+air, look{"phone-us", 390, 844, true, "light", "en-US"})
	p.waitIn(`[data-out="dew_point"]`, "23,4 °C")
}

func TestUSUnitsToBeginWithInTheUS(t *testing.T) {
	p := open(t, serve(t), "wet-film.html", phoneUS)
	p.waitUntil("the form asks in US units", `document.querySelector('.top [value="us"]').checked && document.querySelector('select.unit[data-of="dry_film"]').value === "mil"`)
	p.tap(`.top label:has([value="si"])`)
	p.visit("dry-film.html")
	p.waitUntil("the page is worked", `document.querySelector("#needed").textContent !== ""`)
	assert.False(t, evaluate[bool](p, `document.querySelector('.top [value="us"]').checked`), "the choice made is not kept")
}

func TestTheLanguageSwitchKeepsTheForm(t *testing.T) {
	const form = "coats=2&dry_film=60&volume_solids=45"
	p := open(t, serve(t), "wet-film.html", phone)
	p.enter("dry_film", "60")
	p.enter("volume_solids", "45")
	p.enter("coats", "2")
	p.waitIn("#card", "67 µm")
	p.tap(`#tongues [lang="es"]`)
	p.waitUntil("the page is Spanish", `document.documentElement?.lang === "es" && location.pathname.endsWith("/es/wet-film.html")`)
	p.waitIn("#card", "67 µm") // on a British device
	assert.Equal(t, "60", p.value("dry_film"))
	assert.Contains(t, p.link(), form)
	assert.Empty(t, p.inOneLine("#notices"), "the form is taken for another's")

	p.visit("dry-film.html#air=20") // the choice is remembered, also for links from others
	p.waitUntil("the page is Spanish", `document.documentElement?.lang === "es" && location.hash === "#air=20"`)
	p.visit("es/wet-film.html")
	p.tap(`#tongues [lang="en"]`)
	p.waitUntil("the page is English", `document.documentElement?.lang === "en" && !location.pathname.includes("/es/")`)
	p.waitIn("#card", "67 µm")
	p.visit("es/wet-film.html")
	p.waitUntil("the page is English", `document.documentElement?.lang === "en"`)
}

func TestSpanishIsOfferedWhereTheDeviceSpeaksIt(t *testing.T) {
	p := open(t, serve(t), "wet-film.html", phoneSpain)
	p.waitIn(`#notices [lang="es"]`, "Español")
	assert.Equal(t, "en", evaluate[string](p, "document.documentElement.lang"), "Spanish is forced on the person")
	p.shot("spanish-offered")
	p.presses(inSpanish(t, "Close"))
	p.visit("dry-film.html")
	p.waitUntil("the page is drawn", `document.querySelector("#kept").textContent.length > 40`)
	assert.Empty(t, p.inOneLine("#notices"), "it is offered again")

	p = open(t, serve(t), "wet-film.html#dry_film=60", phoneSpain)
	p.waitIn(`#notices [lang="es"]`, "Español")
	p.tap(`#notices [lang="es"] a`)
	p.waitUntil("the form has come along", `document.documentElement?.lang === "es" && document.querySelector('[name="dry_film"]')?.value === "60"`)
}

// What the build leaves out of a core's words, that core must never say.
func TestEveryCoreHasTheWordsItSays(t *testing.T) {
	serve(t) // which builds the site
	b, err := built()
	require.NoError(t, err)
	files, err := words.Read(os.DirFS("../words/es"))
	require.NoError(t, err)
	known := map[string]bool{}
	for _, ms := range files {
		for _, m := range ms {
			known[m.ID] = known[m.ID] || m.Text != "" && m.Text != m.ID
		}
	}
	for _, core := range menu.Cores() {
		text, err := os.ReadFile(filepath.Join(b.dist, "es", core.Name+".words"))
		require.NoError(t, err)
		has := map[string]bool{}
		for line := range strings.Lines(string(text)) {
			phrase, _, _ := strings.Cut(line, "\t")
			has[phrase] = true
		}
		listener := calc.Language{Words: func(_, phrase string) string {
			if known[phrase] && !has[phrase] {
				has[phrase] = true
				t.Errorf("%s says %q, which its Spanish words lack", core.Name, phrase)
			}
			return "⟦" + phrase + "⟧" // nothing that was put together passes for a phrase
		}}
		for _, topic := range core.Topics {
			for _, c := range topic.Calculators() {
				c.RunIn(listener, c.ExampleForm())
				c.RunIn(listener, calc.Form{})
				rows, err := check.Read(os.DirFS("../../testdata/published"), c)
				require.NoError(t, err)
				for _, row := range rows {
					c.RunIn(listener, row.Form)
				}
			}
		}
	}
}

func TestTheOneFileSpeaksSpanish(t *testing.T) {
	serve(t) // which passes the test over where there is no browser
	p := open(t, fromDisk(t), "es/wet-film.html", phoneSpain)
	p.waitUntil("the page is Spanish", `document.documentElement?.lang === "es"`)
	p.enter("dry_film", "61,5")
	p.enter("volume_solids", "45,5")
	p.enter("coats", "2")
	p.tap(`[data-out="wet_film"] summary`)
	p.waitIn(`[data-out="wet_film"] .steps`, "67,582 µm")
	p.has(`[data-out="wet_film"]`, inSpanish(t, "Wet film of one coat"))
	p.tap(`#tongues [lang="en"]`)
	p.waitUntil("the form has come along", `document.documentElement?.lang === "en" && document.querySelector('[name="dry_film"]')?.value === "61,5"`)
	p.waitIn(`[data-out="wet_film"]`, "Wet film of one coat")
	p.tap(`#tongues [lang="es"]`)
	p.waitUntil("the form has come along", `document.documentElement?.lang === "es" && document.querySelector('[name="dry_film"]')?.value === "61,5"`)
	p.visit("") // the choice is remembered
	p.waitUntil("the first page is Spanish", `document.documentElement?.lang === "es" && document.querySelector("main")?.dataset.calculator === "job"`)
}
