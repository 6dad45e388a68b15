package engines

import (
	"encoding/json"
	"errors"
	"os"
	"os/exec"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// patience is how long a page may take to show what a test waits for.
const patience = 40 * time.Second

// A browser is one window of a browser with a profile of its own. What a person does is told in the form that WebDriver
// and WebDriver BiDi share: a list of sources of input with their actions (W3C WebDriver, "Actions").
type browser interface {
	visit(address string) error
	evaluate(script string) (json.RawMessage, error) // the value of an expression, or what a promise comes to
	act(sources []any) error
	quit()
}

var errMissing = errors.New("not on this machine")

// known are the browsers, each started in a fresh profile.
var known = []struct {
	name  string
	start func(t *testing.T) (browser, error)
}{{"Firefox", startFirefox}, {"WebKit", startWebKit}}

// each runs a test in every browser that is there, and says which are passed over.
func each(t *testing.T, test func(t *testing.T, w *window)) {
	if os.Getenv("SPRAYWRIGHT_ENGINES") == "" {
		t.Skip("make engines runs it")
	}
	for _, k := range known {
		t.Run(k.name, func(t *testing.T) {
			b, err := k.start(t)
			if errors.Is(err, errMissing) {
				t.Skipf("passed over: %v", err)
			}
			require.NoError(t, err)
			t.Cleanup(b.quit)
			test(t, &window{t, b})
		})
	}
}

// program finds one of some programs.
func program(names ...string) (string, error) {
	for _, name := range names {
		if path, err := exec.LookPath(name); err == nil {
			return path, nil
		}
	}
	return "", errors.Join(errMissing, errors.New(names[0]))
}

// A window is a browser in a test, with what people do there.
type window struct {
	t *testing.T
	browser
}

func (w *window) open(address string) { w.t.Helper(); require.NoError(w.t, w.visit(address)) }

// value runs a script in the page.
func value[T any](w *window, script string) (x T) {
	w.t.Helper()
	text, err := w.evaluate(script)
	require.NoError(w.t, err, script)
	require.NoError(w.t, json.Unmarshal(text, &x), "%s gives %s", script, text)
	return x
}

func (w *window) waitUntil(what, script string) {
	w.t.Helper()
	var says json.RawMessage
	var err error
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(50 * time.Millisecond) {
		if says, err = w.evaluate("Boolean(" + script + ")"); err == nil && string(says) == "true" {
			return
		}
	}
	text, _ := w.evaluate(`document.body.innerText.slice(0, 1500)`)
	require.FailNow(w.t, "waited in vain until "+what, "%v\n%s", err, text)
}

func (w *window) waitFor(selector, text string) {
	w.t.Helper()
	w.waitUntil(selector+" says “"+text+"”", `[...document.querySelectorAll(`+quoted(selector)+`)].some((e) => e.innerText.replace(/\s+/g, " ").includes(`+quoted(text)+`))`)
}

// enter types into the box of a form's key, key by key, and leaves it.
func (w *window) enter(name, text string) {
	w.t.Helper()
	box := `document.querySelector(` + quoted(`input[name="`+name+`"]`) + `)`
	w.waitUntil("there is a box "+name, box+`?.checkVisibility?.() ?? true`)
	value[bool](w, `(`+box+`.focus(), `+box+`.select(), true)`)
	w.keys(text)
	value[bool](w, `(document.activeElement.blur(), true)`)
}

func (w *window) keys(text string) {
	w.t.Helper()
	var actions []any
	for _, key := range text {
		actions = append(actions, map[string]any{"type": "keyDown", "value": string(key)}, map[string]any{"type": "keyUp", "value": string(key)})
	}
	require.NoError(w.t, w.act([]any{map[string]any{"type": "key", "id": "keys", "actions": actions}}))
}

// press clicks in the middle of the first element that a selector finds and that says a text.
func (w *window) press(selector, text string) {
	w.t.Helper()
	e := `[...document.querySelectorAll(` + quoted(selector) + `)].find((e) => e.getClientRects().length && e.innerText.includes(` + quoted(text) + `))`
	w.waitUntil("there is "+selector+" "+text, e)
	at := value[[]float64](w, `(async () => {
		const e = `+e+`;
		e.scrollIntoView({ block: "center", behavior: "instant" });
		await new Promise((done) => setTimeout(done, 100));
		const r = e.getClientRects()[0];
		return [r.x + r.width / 2, r.y + r.height / 2];
	})()`)
	require.NoError(w.t, w.act([]any{map[string]any{"type": "pointer", "id": "mouse", "actions": []any{
		map[string]any{"type": "pointerMove", "x": int(at[0]), "y": int(at[1])},
		map[string]any{"type": "pointerDown", "button": 0}, map[string]any{"type": "pointerUp", "button": 0}}}}))
}

func quoted(s string) string {
	b, _ := json.Marshal(s) // text always can be
	return string(b)
}
