package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

const (
	fromLink = "This form came from a link. Compare it with the data sheet before you mix."
	damaged  = "This link is incomplete or damaged"
)

// presses taps the button of a notice that is shown.
func (p *tab) presses(label string) {
	p.t.Helper()
	p.waitIn("#notices", label)
	selector := evaluate[string](p, `(() => {
		const all = [...document.querySelectorAll("#notices button")], i = all.findIndex((b) => b.innerText === `+quoted(label)+` && b.getClientRects().length > 0);
		document.getElementById("pressed-next")?.removeAttribute("id");
		all[i]?.setAttribute("id", "pressed-next");
		return i < 0 ? "" : "#pressed-next";
	})()`)
	if assert.NotEmpty(p.t, selector, "no notice offers %s", label) {
		p.tap(selector)
	}
}

// A link opened in the morning must not cost anybody the job they typed the evening before.
func TestALinkPutsTheOwnFormAside(t *testing.T) {
	p := open(t, serve(t), "", phone)
	half(p)
	p.visit("menu.html")
	p.visit("?1#air=18&humidity=40&panel=17&air_speed=0.2")
	p.waitIn("#notices", fromLink)
	assert.Equal(t, "18", p.value("air"))
	p.do(chromedp.Reload())
	p.waitIn("#notices", fromLink)
	assert.Equal(t, "18", p.value("air"))
	p.enter("air", "19") // the other form goes on safe while this one is changed
	p.link()
	p.visit("menu.html")
	p.visit("")
	p.waitIn("#notices", fromLink)
	assert.Equal(t, "19", p.value("air"))
	p.presses("Put mine back")
	stands(p)
	p.waitIn("#notices", "Your own form is back.")
	p.do(chromedp.Reload())
	stands(p)
	assert.NotContains(t, p.text("#notices"), "link")
}

func TestALinkIsKeptWhenThePersonSaysSo(t *testing.T) {
	p := open(t, serve(t), "", phone)
	half(p)
	p.visit("?1#air=18&humidity=40")
	p.visit("?2#air=17&humidity=41") // still undecided: it is the own form that stays aside
	p.presses("Put mine back")
	stands(p)
	p.presses("Show the link’s again")
	p.waitUntil("the link's form is there", `document.querySelector('[name="air"]')?.value === "17"`)
	p.presses("Keep it")
	p.waitUntil("nothing is left to choose", `!document.getElementById("notices").innerText.includes("link")`)
	p.visit("menu.html")
	p.visit("")
	p.waitUntil("the form is there", `document.querySelector('[name="air"]')?.value === "17"`)
	assert.Empty(t, p.text("#notices"))
	assert.Empty(t, evaluate[string](p, `localStorage.getItem("spraywright:aside:job") ?? ""`))
}

// A link pasted into the address of an open page does not load it anew.
func TestAPastedLinkPutsTheOwnFormAsideToo(t *testing.T) {
	p := open(t, serve(t), "", phone)
	half(p)
	p.link()
	evaluate[string](p, `location.hash = "#air=18&humidity=40"`)
	p.waitIn("#notices", fromLink)
	p.do(chromedp.Reload())
	p.presses("Put mine back")
	stands(p)
}

func TestASheetFromALinkSaysSoOnAnEmptyPhone(t *testing.T) {
	p := open(t, serve(t), "#air=18&humidity=40", phone)
	p.waitIn("#notices", fromLink)
	assert.NotContains(t, p.text("#notices"), "Put mine back", "there is nothing to put back")
	p.presses("Close")
	p.do(chromedp.Reload())
	p.waitUntil("the form is there", `document.querySelector('[name="air"]').value === "18"`)
	assert.Empty(t, p.text("#notices"))
}

// handsOn copies the link from the sheet that Share opens, and puts the sheet away.
func handsOn(p *tab) string {
	p.t.Helper()
	evaluate[bool](p, `(navigator.share = undefined, navigator.clipboard.writeText = async (s) => { globalThis.copied = s; }, true)`)
	p.tap("#share")
	p.tap(`[data-share="copy"]`)
	p.waitIn("#share-says", "Link copied.")
	p.tap(`[data-share="close"]`)
	return evaluate[string](p, `copied`)
}

// What messengers and mail make of a link.
func TestADamagedLinkIsNotPassedOver(t *testing.T) {
	s := serve(t)
	p := open(t, s, "", phone)
	half(p)
	link := handsOn(p)
	_, form, _ := strings.Cut(link, "#")
	assert.True(t, strings.HasPrefix(form, "fields=5&") && strings.HasSuffix(form, "&fields=5"), form)

	other := open(t, s, "?whole#"+form, phone)
	stands(other)
	assert.NotContains(t, other.text("#notices"), damaged)
	other.enter("air", "28")
	assert.NotContains(t, other.link(), "fields", "the count is no part of the form")

	for _, bad := range []string{
		form[:len(form)-12],
		form[:len(form)/2],
		strings.Replace(form, "&humidity=72", "", 1),
		strings.ReplaceAll(form, "&", "&amp;"),
		strings.NewReplacer("&", "%26", "=", "%3D").Replace(form),
		"air=20&humidty=50",
		"part.1.lenght=20",
		"part.01.length=20",
		"%61ir%3D20",
	} {
		other.afresh("#" + bad)
		other.waitIn("#notices", damaged)
	}
	for _, good := range []string{"air=20&air.unit=degF&units=us&units.temperature=degC&dew_point.unit=degF", "part.1.length=20&part.length.unit=in", "card", "units=us"} {
		other.afresh("#" + good)
		other.waitIn(".bar-needed", "Still needed")
		assert.NotContains(t, other.text("#notices"), damaged, good)
	}
}

func TestALinkIsShownWhereNothingCanBeCopied(t *testing.T) {
	p := open(t, serve(t), "", phone)
	half(p)
	evaluate[bool](p, `(navigator.share = undefined, Object.defineProperty(navigator, "clipboard", {value: undefined}), true)`)
	p.tap("#share")
	p.tap(`[data-share="copy"]`)
	p.waitIn("#share-says", "Copy it by hand")
	p.waitUntil("the link can be copied", `(({activeElement: e}) => e.readOnly && e.selectionEnd === e.value.length && e.value.includes("#fields=5&air=29"))(document)`)
	p.fits()
	p.shot("copy-by-hand")
}
