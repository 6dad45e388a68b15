package browser

import (
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// Anybody can write a link. Whatever is in it is text: nothing of it runs, and nothing on the page breaks. The console
// is held to silence by open.
var hostile = []string{
	`part.1.name=<script>ran=1</script>&part.1.colour=<img src=x onerror=ran=1>`,
	`part.1.name=%3Cscript%3Eran%3D1%3C%2Fscript%3E&coat.1.product=%3Csvg%20onload%3Dran%3D1%3E`,
	`air=javascript:ran=1&gun=%22%3E%3Cscript%3Eran=1%3C/script%3E&coat.1.role=%27%3E%3Cb%3E`,
	`__proto__=1&__proto__.ran=1&constructor.prototype.ran=1&part.__proto__.name=1&part.1.__proto__=1&toString=1&hasOwnProperty=1`,
	`air=%&humidity=%E0%A4%A&panel=%zz&part.1.name=%FF%FE&%=%`,
	`part.1.name=` + "\u202e\u0000\ufeff" + `&part.1.colour=%00%0A%0D`,
	`part.0.name=a&part.-1.name=b&part.1e3.name=c&part.99999999999.name=d&part..name=e&part.1.=f&.=.&part.01.name=g`,
	`air.unit=<b>&part.length.unit=__proto__&units=<script>&units.temperature=constructor&air=20`,
	`"][data-x="=1&part.1.name"]=2&\=\\&air="];ran=1;["`,
	`&&&===&=air&air&#air=3&?=?`,
	strings.Repeat("part.1.name.", 2000) + "=x",
}

func TestAHostileLinkIsOnlyText(t *testing.T) {
	p := open(t, serve(t), "", phone)
	p.waitIn(".bar-needed", "Still needed")
	evaluate[bool](p, `addEventListener("securitypolicyviolation", () => ran = 1), addEventListener("unhandledrejection", () => ran = 1), true`)
	for _, link := range append(hostile, `part.1.name=\ud800&coat.1.product=\udc00x`) {
		mark := `location.hash = "#" + ` + jsText(link)
		evaluate[string](p, mark)
		p.waitUntil("the core has answered", `!document.body.classList.contains("stale") && document.querySelector(".bar-needed .next") !== null`)
		p.tap("#empty")
		p.waitUntil("the form is empty", `document.querySelector('[name="air"]').value === ""`)
		assert.False(t, evaluate[bool](p, `"ran" in window || "ran" in {} || document.querySelector("#form script, #card script, #form img, #notices script, #card b > b") !== null`), link)
	}
	p.enter("air", "20")
	p.enter("humidity", "50")
	p.enter("panel", "20")
	p.enter("air_speed", "0")
	p.waitIn("#verdict", "above dew point")
}

// The page also opens on such a link, and says in plain text what it holds.
func TestThePageOpensOnAHostileLink(t *testing.T) {
	s := serve(t)
	p := open(t, s, "about.html", phone)
	for i, link := range hostile {
		p.do(chromedp.Navigate(s.url("?" + strconv.Itoa(i) + "#" + link))) // another query, so that the page is loaded anew
		p.waitUntil("the core has answered", `document.querySelector(".bar-needed .next") !== null`)
		assert.False(t, evaluate[bool](p, `"ran" in window || "ran" in {} || document.querySelector("#form script, #form img, #card script") !== null`), link)
	}
	p.visit("#" + `part.1.name=%3Cscript%3Eran%3D1%3C%2Fscript%3E&part.1.shape=flat&part.1.length=1000&part.1.width=500&part.1.sides=one&part.1.count=1`)
	p.waitIn(`[data-row="part.1"]`, "<script>ran=1</script>, flat 1000 mm × 500 mm, 1 piece")
}

// jsText writes a text as a script does, its own \u escapes left to work.
func jsText(s string) string { return strings.ReplaceAll(quoted(s), `\\u`, `\u`) }
