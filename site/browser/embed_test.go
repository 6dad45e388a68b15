package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

// 60 µm dry in two coats at 45 % by volume: 60 / 2 / 0.45 is 66.7 µm wet.
func TestAFrameOnAnotherSiteTellsItsAnswer(t *testing.T) {
	h := host(t, "plain.html", "", phone)
	h.answers(0, "wet_film", "67 µm")
	first := evaluate[map[string]any](h.tab, `heard.find((m) => m.kind === "ready")`)
	assert.Equal(t, "wet-film", first["of"])
	assert.Contains(t, first["fields"], map[string]any{"key": "volume_solids", "label": "Volume solids"})
	told := evaluate[map[string]any](h.tab, `heard.findLast((m) => m.kind === "answer")`)
	assert.EqualValues(t, 1, told["spraywright"])
	assert.Equal(t, "coats=2&dry_film=60&volume_solids=45", told["form"])
	figure := told["figures"].([]any)[0].(map[string]any)
	assert.Equal(t, []any{"wet_film", "Wet film of one coat", "67", "um", "µm"}, []any{figure["key"], figure["label"], figure["text"], figure["unit_id"], figure["unit"]})
	assert.NotEmpty(t, figure["typed"])
	assert.Empty(t, told["problems"])
	h.shot("embed-plain")

	// The learner's keys reach it, and the host hears what follows from them.
	h.keys(kb.Tab)
	h.keys("80")
	h.answers(0, "wet_film", "89 µm")
	h.keys("soon")
	h.waitUntil("the host hears of what is wrong", `heard.findLast((m) => m.kind === "answer").problems.some((p) => p.field === "dry_film" && p.code !== "missing" && p.message.includes("80soon"))`)
}

func TestAFrameInASandboxAnswers(t *testing.T) {
	h := host(t, "sandbox.html", "", phone)
	h.answers(0, "wet_film", "67 µm")
	h.answers(1, "wet_film", "67 µm")
	assert.Equal(t, "null", evaluate[string](h.tab, `heard.find((m) => m.kind === "answer").origin`))
	assert.Equal(t, "Película húmeda de una capa", evaluate[string](h.tab, `heard.findLast((m) => m.kind === "answer" && m.frame === 1).figures[0].label`))
	h.keys(kb.Tab)
	h.keys("80")
	h.answers(0, "wet_film", "89 µm")
	h.shot("embed-sandbox")
}

// The script makes each frame as high as its page, names it, and passes on what it hears; the host's policy forbids none
// of that, and its own styles not at all.
func TestSeveralFramesOnAStrictHost(t *testing.T) {
	for _, l := range []look{desk, phoneDark} {
		h := host(t, "several.html", strict, l)
		h.waitUntil("the last is ready", `heard.some((m) => m.kind === "answer" && m.frame === 2)`)
		h.tells(2, `{spraywright: 1, kind: "fill", form: "dry_film=120"}`)
		h.answers(2, "wet_film", "133 µm")
		h.waitUntil("each has answered", `[0, 1].every((i) => heard.some((m) => m.kind === "answer" && m.frame === i))`)
		h.waitUntil("each has its height", `[...document.querySelectorAll("iframe")].every((f, i) => f.height === String(heard.findLast((m) => m.kind === "height" && m.frame === i)?.height))`)
		assert.Equal(t, []string{"wet-film", "Rendimiento", "Our first coat"}, evaluate[[]string](h.tab, `[...document.querySelectorAll("iframe")].map((f) => f.title)`))
		assert.Contains(t, evaluate[string](h.tab, `document.querySelector("iframe").dataset.told`), "ready")
		assert.Equal(t, "Rendimiento teórico", evaluate[string](h.tab, `heard.findLast((m) => m.kind === "answer" && m.frame === 1).figures[0].label`))
		h.shotWhole("embed-several")
		assert.Empty(t, evaluate[[]string](h.tab, `forbidden`))
	}
}

// Frames of one page share what they load: it is sent once, and after that only asked whether it has changed.
func TestSeveralFramesShareOneDownload(t *testing.T) {
	h := host(t, "shared.html", strict, desk)
	for frame, film := range []string{"67 µm", "100 µm"} {
		h.answers(frame, "wet_film", film)
	}
	h.waitUntil("the third answers", `heard.some((m) => m.kind === "answer" && m.frame === 2)`)
	for _, file := range []string{"embed.js", "embed.html", "embedded.js", "site.css", "bench.wasm", "wet-film.html", "spreading-rate.html"} {
		assert.Equal(t, 1, h.count(file), file)
	}
	h.mu.Lock()
	defer h.mu.Unlock()
	assert.LessOrEqual(t, len(h.asked), 20, "a frame asks for six files")
}

// tells has a frame hear a message of the host.
func (h *hosted) tells(frame int, message string) {
	h.t.Helper()
	evaluate[bool](h.tab, fmt.Sprintf(`(document.querySelectorAll("iframe")[%d].contentWindow.postMessage(%s, "*"), true)`, frame, message))
}

// What is locked stays as the frame was opened with, whatever the host says later.
func TestTheHostFillsWhatIsNotLocked(t *testing.T) {
	h := host(t, "locked.html", "", phone)
	h.answers(0, "wet_film", "67 µm")
	h.tells(0, `{spraywright: 1, kind: "fill", form: "dry_film=90&coats=9&volume_solids=10&volume_solids.unit=pct"}`)
	h.answers(0, "wet_film", "100 µm")
	last := `heard.findLast((m) => m.kind === "answer").form`
	assert.Equal(t, "coats=2&dry_film=90&volume_solids=45", evaluate[string](h.tab, last))
	evaluate[bool](h.tab, `((f) => { f.src = f.src.replace("frame.lock", "frame.locked").replace("coats=2", "coats=9").replace("dry_film=60", "dry_film=30"); return true; })(document.querySelector("iframe"))`)
	h.answers(0, "wet_film", "33 µm")
	assert.Equal(t, "coats=2&dry_film=30&volume_solids=45", evaluate[string](h.tab, last), "another address has lifted a lock")
	h.tells(0, `{spraywright: 1, kind: "fill", form: "dry_film="}`)
	h.waitUntil("the field is blank", last+` === "coats=2&volume_solids=45"`)
}

func TestMessagesThatNobodyKnowsArePassedOver(t *testing.T) {
	h := host(t, "locked.html", "", phone)
	h.answers(0, "wet_film", "67 µm")
	for _, message := range []string{
		`null`, `"fill"`, `7`, `[]`, `{}`, `{kind: "fill", form: "dry_film=1"}`, `{spraywright: 2, kind: "fill", form: "dry_film=1"}`, `{spraywright: "1", kind: "fill", form: "dry_film=1"}`,
		`{spraywright: 1}`, `{spraywright: 1, kind: "fill"}`, `{spraywright: 1, kind: "fill", form: 7}`, `{spraywright: 1, kind: "fill", form: {dry_film: "1"}}`,
		`{spraywright: 1, kind: "fill", form: "dry_film=1&x=" + "y".repeat(1e5)}`, `{spraywright: 1, kind: "theme", theme: {}}`, `{spraywright: 1, kind: "theme", theme: "<b>"}`,
		`{spraywright: 1, kind: "run", script: "alert(1)"}`, `{spraywright: 1, kind: "__proto__"}`, `{spraywright: 1, kind: "constructor"}`, `new Map([["spraywright", 1]])`,
	} {
		h.tells(0, message)
	}
	evaluate[bool](h.tab, `(heard.length = 0, true)`)
	h.tells(0, `{spraywright: 1, kind: "ask"}`)
	h.answers(0, "wet_film", "67 µm")
	assert.Equal(t, []string{"ready", "height", "answer"}, evaluate[[]string](h.tab, `heard.map((m) => m.kind)`), "asked, it says all once more")
	// Another frame of the same page is not the page around it.
	evaluate[bool](h.tab, `(heard.length = 0, document.body.append(document.createElement("iframe")), frames[1].eval('parent.frames[0].postMessage({spraywright: 1, kind: "fill", form: "dry_film=1"}, "*")'), true)`)
	h.tells(0, `{spraywright: 1, kind: "ask"}`)
	h.answers(0, "wet_film", "67 µm")
	evaluate[bool](h.tab, `(document.querySelectorAll("iframe")[1].remove(), true)`)
	// The host's script passes on nothing but what its own frame tells.
	evaluate[bool](h.tab, `(document.querySelector("iframe").dataset.told = "", postMessage({spraywright: 1, kind: "height", height: 9}, "*"), true)`)
	h.tells(0, `{spraywright: 1, kind: "theme", theme: "dark"}`)
	h.tells(0, `{spraywright: 1, kind: "ask"}`)
	h.waitUntil("the frame has told it again", `document.querySelector("iframe").dataset.told.includes("answer")`)
	assert.Equal(t, "ready height answer", evaluate[string](h.tab, `document.querySelector("iframe").dataset.told`))
	assert.NotEqual(t, "9", evaluate[string](h.tab, `document.querySelector("iframe").height`))
}

// Pages of the site itself cannot be framed: what is kept on a device is never within a stranger's reach.
func TestOrdinaryPagesCannotBeFramed(t *testing.T) {
	h := host(t, "plain.html", "", phone)
	h.answers(0, "wet_film", "67 µm")
	h.forgive("frame-ancestors")
	for i, page := range []string{"wet-film.html", "shelf.html", "received.html", "put-on-page.html"} {
		evaluate[bool](h.tab, `((f) => { f.src = new URL("`+page+`", document.querySelector("iframe").src.split("#")[0]).href; document.body.append(f); return true; })(document.createElement("iframe"))`)
		refused := func() bool { return strings.Count(strings.Join(h.reported(), "\n"), "frame-ancestors") == i+1 }
		assert.Eventually(t, refused, patience, patience/100, page)
	}
}

// Many hosts of files send no headers. There a page that is framed shows a way out and nothing else.
func TestOrdinaryPagesShowNothingInAFrameWithoutHeaders(t *testing.T) {
	s := servedFrom(t, serve(t).build.dist)
	p := open(t, s, "about.html", phone)
	for _, page := range []string{"wet-film.html", "shelf.html", "received.html", "es/exercise-set.html"} {
		evaluate[bool](p, `((f) => { f.id = "inner"; f.src = `+quoted(page)+`; document.getElementById("inner")?.remove(); document.body.append(f); return true; })(document.createElement("iframe"))`)
		p.waitUntil(page+" shows a way out alone", `((d) => d?.body?.children.length === 1 && d.querySelector("main > p > a[target=_blank]")?.href.endsWith(`+quoted(page)+`) && !d.querySelector("form, input"))(document.getElementById("inner").contentDocument)`)
	}
}

func TestExercisesInAFrameTellHowFarTheLearnerIs(t *testing.T) {
	h := host(t, "exercises.html", strict, phone)
	h.waitUntil("the set has opened", `heard.some((m) => m.kind === "exercise" && m.tasks === 1 && m.answered === 0 && m.complete === false)`)
	h.waitUntil("it has its height", `document.querySelector("iframe").height === String(heard.findLast((m) => m.kind === "height").height)`)
	h.waitUntil("the task stands", `heard.findLast((m) => m.kind === "height").height > 600`)
	h.shotWhole("embed-exercises")
	for _, key := range []string{kb.Tab, kb.Tab, kb.Tab, "1 µm", kb.Enter} { // past the notice and the task's number to the box for the answer
		h.keys(key)
	}
	h.waitUntil("it is judged", `heard.some((m) => m.kind === "exercise" && m.answered === 1)`)
	told := evaluate[map[string]any](h.tab, `heard.findLast((m) => m.kind === "exercise")`)
	assert.Equal(t, []any{true, 1.0, 0.0}, []any{told["complete"], told["answered"], told["right"]})
	assert.Empty(t, evaluate[[]string](h.tab, `forbidden`))
}
