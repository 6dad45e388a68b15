package main

import (
	"context"
	"net/http/httptest"
	"os"
	"strconv"

	"github.com/chromedp/chromedp"

	"spraywright/site/server"
)

// watched notes how long it takes from each key to the frame in which its answer stands.
const watched = `(() => {
	let pressed;
	globalThis.took = [];
	addEventListener("keydown", (event) => (pressed ??= event.timeStamp), true);
	addEventListener("answer", () => {
		const from = pressed;
		pressed = undefined;
		if (from === undefined) return;
		requestAnimationFrame(() => {
			const { port1, port2 } = new MessageChannel();
			port1.onmessage = () => took.push(performance.now() - from);
			port2.postMessage(0);
		});
	}, true);
	document.querySelector('input[name="humidity"]').focus();
	return true;
})()`

// keysToRepaint types into the humidity of a form that is filled in, key after key, and returns what each took in ms.
func keysToRepaint(ctx context.Context, folder, link string, keys int) ([]float64, error) {
	at := httptest.NewServer(server.New(os.DirFS(folder)))
	defer at.Close()
	tab, leave, err := newTab(ctx, 1)
	if err != nil {
		return nil, err
	}
	defer leave()
	if _, err := firstAnswer(tab, at.URL+"/#"+link); err != nil {
		return nil, err
	}
	if _, err := chromedp.Run(tab, chromedp.Evaluate[bool](watched)); err != nil {
		return nil, err
	}
	for i := range keys {
		key := strconv.Itoa(3 + i/2%5)
		if i%2 == 1 {
			key = "\b"
		}
		if err := chromedp.Do(tab, chromedp.KeyEvent(key)); err != nil {
			return nil, err
		}
		answered := `new Promise((done) => { const look = () => (took.length > ` + strconv.Itoa(i) + ` ? done(true) : setTimeout(look, 20)); look(); })`
		within, cancel := context.WithTimeout(tab, patience)
		_, err := chromedp.Run(within, chromedp.Evaluate[bool](answered, chromedp.EvalAwaitPromise))
		cancel()
		if err != nil {
			return nil, err
		}
	}
	return chromedp.Run(tab, chromedp.Evaluate[[]float64](`took`))
}
