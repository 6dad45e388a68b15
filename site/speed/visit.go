package main

import (
	"context"
	"net/http"
	"net/http/httptest"
	"os"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	"spraywright/site/server"
)

// A condition is what a visit is made under.
type condition struct {
	name      string
	slower    float64 // times that the page's own thread is slowed down
	roundTrip time.Duration
	speed     float64 // bytes a second; 0 for as fast as it goes
}

var conditions = []condition{
	{"unthrottled", 1, 0, 0},
	{"processor 4 times slower", 4, 0, 0},
	{"1.6 Mbit/s, 150 ms", 1, 150 * time.Millisecond, 200_000},
	{"both", 4, 150 * time.Millisecond, 200_000},
}

// visits are the times in ms to the first answer, on the first visit and on the next in the same browser.
type visits struct{ cold, warm float64 }

// inTurns visits two sites again and again, one after the other, so that what else the machine does meets both alike.
func inTurns(ctx context.Context, sites [2]string, link string, c condition, runs int) (first, second visits, err error) {
	var cold, warm [2][]float64
	for range runs {
		for i, folder := range sites {
			v, err := visit(ctx, folder, link, c)
			if err != nil {
				return visits{}, visits{}, err
			}
			cold[i], warm[i] = append(cold[i], v.cold), append(warm[i], v.warm)
		}
	}
	return visits{median(cold[0]), median(warm[0])}, visits{median(cold[1]), median(warm[1])}, nil
}

func visit(ctx context.Context, folder, link string, c condition) (v visits, err error) {
	var site http.Handler = server.New(os.DirFS(folder))
	if c.speed > 0 {
		site = &line{site: site, roundTrip: c.roundTrip, speed: c.speed}
	}
	at := httptest.NewServer(site)
	defer at.Close()
	tab, leave, err := newTab(ctx, c.slower)
	if err != nil {
		return visits{}, err
	}
	defer leave()
	if v.cold, err = firstAnswer(tab, at.URL+"/#"+link); err != nil {
		return visits{}, err
	}
	if err = settle(tab); err != nil {
		return visits{}, err
	}
	v.warm, err = firstAnswer(tab, at.URL+"/#"+link)
	return v, err
}

// clock notes on every page when its first answer has been painted: a frame has begun, and the next task is on.
const clock = `addEventListener("answer", () => requestAnimationFrame(() => {
	const { port1, port2 } = new MessageChannel();
	port1.onmessage = () => (globalThis.answeredAt ??= performance.now());
	port2.postMessage(0);
}), { capture: true, once: true });`

// firstAnswer is how long it takes from the navigation, in ms.
func firstAnswer(tab context.Context, address string) (float64, error) {
	ctx, cancel := context.WithTimeout(tab, patience)
	defer cancel()
	if err := chromedp.Do(ctx, chromedp.Navigate("about:blank"), chromedp.Navigate(address)); err != nil {
		return 0, err
	}
	return chromedp.Run(ctx, chromedp.Evaluate[float64](`new Promise((done) => {
		const look = () => (globalThis.answeredAt ? done(answeredAt) : setTimeout(look, 20));
		look();
	})`, chromedp.EvalAwaitPromise))
}

// settle waits until everything is kept for the next visit.
func settle(tab context.Context) error {
	ctx, cancel := context.WithTimeout(tab, patience)
	defer cancel()
	_, err := chromedp.Run(ctx, chromedp.Evaluate[bool](`navigator.serviceWorker.ready.then(() => true)`, chromedp.EvalAwaitPromise))
	return err
}

func startBrowser(ctx context.Context) (browser context.Context, stop func(), err error) {
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(os.Getenv("CHROMIUM")), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("disable-features", "Translate,BlinkGenPropertyTrees,BackForwardCache"), chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-component-update", true))
	allocator, end := chromedp.NewExecAllocator(ctx, options...)
	browser, cancel := chromedp.NewContext(allocator)
	if err := chromedp.Do(browser); err != nil {
		cancel()
		end()
		return nil, nil, err
	}
	return browser, func() { chromedp.Cancel(browser); cancel(); end() }, nil
}

// newTab is a tab with a profile of its own.
func newTab(browser context.Context, slower float64) (tab context.Context, leave func(), err error) {
	tab, leave = chromedp.NewContext(browser, chromedp.WithNewBrowserContext())
	if err := chromedp.Do(tab); err != nil {
		leave()
		return nil, nil, err
	}
	if _, err = chromedp.Call(tab, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: clock}); err == nil {
		_, err = chromedp.Call(tab, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: slower})
	}
	if err != nil {
		leave()
		return nil, nil, err
	}
	return tab, leave, nil
}
