package browser

import (
	"context"
	"encoding/json"
	"errors"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// patience is how long a page may take to show what a test waits for. A loaded machine is slow; a quick one does
// not wait.
const patience = 20 * time.Second

// A tab is one page open in the browser, with storage of its own.
type tab struct {
	t      *testing.T
	ctx    context.Context
	server *server
	look   look

	mu       sync.Mutex
	errors   []string // what the console reported
	forgiven []string
}

// open shows a page of the site, "" for the first, in a new profile. When the test ends, anything that the console
// reported as an error, among it every breach of the content security policy, fails it.
func open(t *testing.T, s *server, path string, l look) *tab {
	t.Helper()
	ctx, cancel := chromedp.NewContext(browser(t), chromedp.WithNewBrowserContext())
	t.Cleanup(cancel)
	p := &tab{t: t, ctx: ctx, server: s}
	p.listen()
	if s.file != "" {
		p.asksNothing()
	}
	p.wear(l)
	if l.speaks != "" {
		_, err := chromedp.Call(ctx, emulation.SetUserAgentOverride, emulation.SetUserAgentOverrideParams{
			UserAgent: evaluate[string](p, "navigator.userAgent"), AcceptLanguage: l.speaks})
		require.NoError(t, err)
	}
	p.visit(path)
	t.Cleanup(p.blame) // runs before the tab is closed
	return p
}

// listen gathers what goes wrong on the page, from before it is loaded.
func (p *tab) listen() {
	messages := chromedp.Console(p.ctx)
	go func() {
		for m, err := range messages {
			if err != nil {
				return // the tab is closed
			}
			if m.IsException() || m.Type == chromedp.ConsoleError {
				p.mu.Lock()
				p.errors = append(p.errors, m.String()+" ("+m.URL+")")
				p.mu.Unlock()
			}
		}
	}()
}

// forgive lets errors pass that contain one of these texts: a request that fails is no fault once the server is gone.
func (p *tab) forgive(texts ...string) { p.forgiven = append(p.forgiven, texts...) }

// reported is what went wrong on the page so far.
func (p *tab) reported() []string {
	p.mu.Lock()
	defer p.mu.Unlock()
	return slices.Clone(p.errors)
}

// waitForError waits until the console reports an error with a text in it.
func (p *tab) waitForError(text string) {
	p.t.Helper()
	require.Eventually(p.t, func() bool {
		return slices.ContainsFunc(p.reported(), func(e string) bool { return strings.Contains(e, text) })
	}, patience, 30*time.Millisecond, "the console never says “%s”", text)
}

func (p *tab) blame() {
	for _, e := range p.reported() {
		if !slices.ContainsFunc(p.forgiven, func(s string) bool { return strings.Contains(e, s) }) {
			p.t.Errorf("the console of the page says: %s", e)
		}
	}
}

func (p *tab) do(steps ...chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	require.NoError(p.t, chromedp.Do(ctx, steps...))
}

// visit goes to a page of the site, "calculator.html#air=31".
func (p *tab) visit(path string) { p.t.Helper(); p.do(chromedp.Navigate(p.server.url(path))) }

// evaluate runs a script in the page and returns its value. Tests read the page with it; what a person does, they do
// with keys and clicks.
func evaluate[T any](p *tab, script string) T {
	p.t.Helper()
	x, err := ask[T](p, script)
	require.NoError(p.t, err, script)
	return x
}

// ask runs a script in the page. Now and then the browser never answers on a page that it has just come to: then it is
// asked once more.
func ask[T any](p *tab, script string) (T, error) {
	ctx, cancel := context.WithTimeout(p.ctx, patience/2)
	defer cancel()
	x, err := chromedp.Run(ctx, chromedp.Evaluate[T](script, chromedp.EvalAwaitPromise))
	if !errors.Is(err, context.DeadlineExceeded) {
		return x, err
	}
	p.t.Logf("asked again: %.80s", script)
	again, stop := context.WithTimeout(p.ctx, patience)
	defer stop()
	return chromedp.Run(again, chromedp.Evaluate[T](script, chromedp.EvalAwaitPromise))
}

// enter types text into the box of a form's key, in place of what is there, and leaves the box.
func (p *tab) enter(name, text string) {
	p.t.Helper()
	box := chromedp.CSS(`input[name="` + name + `"]`)
	p.do(chromedp.WaitVisible(box), chromedp.Focus(box))
	evaluate[bool](p, `document.activeElement.select() ?? true`)
	if text == "" {
		text = "\b"
	}
	p.do(chromedp.KeyEvent(text))
	evaluate[bool](p, `document.activeElement.blur() ?? true`)
}

// choose makes a choice for a form's key, in a list or among radio buttons.
func (p *tab) choose(name, choice string) {
	p.t.Helper()
	done := evaluate[bool](p, `(() => {
		const e = document.querySelector('select[name=`+quoted(name)+`]') ?? document.querySelector('input[name=`+quoted(name)+`][value=`+quoted(choice)+`]');
		if (!e) return false;
		if (e.matches("select")) { e.value = `+quoted(choice)+`; e.dispatchEvent(new Event("input", {bubbles: true})); e.dispatchEvent(new Event("change", {bubbles: true})); }
		else e.click();
		return e.value === `+quoted(choice)+`;
	})()`)
	require.True(p.t, done, "%s offers no %s", name, choice)
}

func (p *tab) click(selector string) {
	p.t.Helper()
	p.do(chromedp.WaitVisible(chromedp.CSS(selector)), chromedp.Click(chromedp.CSS(selector)))
}

// text is what a person can read in the first element that a selector finds.
func (p *tab) text(selector string) string {
	p.t.Helper()
	return evaluate[string](p, `document.querySelector(`+quoted(selector)+`)?.innerText ?? ""`)
}

// waitFor waits until a person can read a text on the page. Every kind of space counts as a space.
func (p *tab) waitFor(text string) {
	p.t.Helper()
	p.waitUntil("the page says “"+text+"”", `(document.body?.innerText ?? "").replace(/\s+/g, " ").includes(`+quoted(text)+`)`)
}

// waitUntil waits until a script gives true, and tells what for when it does not.
func (p *tab) waitUntil(what, script string) {
	p.t.Helper()
	for end := time.Now().Add(patience); !p.holds(script); time.Sleep(30 * time.Millisecond) {
		if time.Now().After(end) {
			p.shot("failed-" + strings.NewReplacer("/", "-", " ", "-").Replace(p.t.Name()))
			require.FailNow(p.t, "waited in vain until "+what, "to put right: %s\nthe card: %.1500s", p.inOneLine("#gathered"), p.inOneLine("#card"))
		}
	}
}

// holds reports whether a script gives true. On a page that is just being left it does not.
func (p *tab) holds(script string) bool {
	p.t.Helper()
	yes, err := ask[bool](p, script)
	if err != nil && strings.Contains(err.Error(), "Inspected target navigated") {
		return false
	}
	require.NoError(p.t, err, script)
	return yes
}

// quoted writes a text as a script does.
func quoted(s string) string {
	b, _ := json.Marshal(s) // text always can be
	return string(b)
}
