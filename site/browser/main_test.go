package browser

import (
	"context"
	"os"
	"slices"
	"strconv"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// atEnd is what to clean up once all tests have run, the last first.
var atEnd []func()

func TestMain(m *testing.M) {
	code := m.Run()
	for _, clean := range slices.Backward(atEnd) {
		clean()
	}
	os.Exit(code)
}

// The browser is started once, by the first test that needs it; each tab has a profile of its own in it.
var (
	starting sync.Mutex
	running  context.Context
)

func browser(t *testing.T) context.Context {
	t.Helper()
	starting.Lock()
	defer starting.Unlock()
	if running != nil {
		return running
	}
	allocator, stop := chromedp.NewExecAllocator(context.Background(), options()...) // in a fresh folder, removed at the end
	ctx, cancel := chromedp.NewContext(allocator)
	require.NoError(t, chromedp.Do(ctx), "starting %s", chromium())
	running = ctx
	atEnd = append(atEnd, stop, cancel, func() { chromedp.Cancel(ctx) })
	return running
}

// options are how a browser is started.
func options() []chromedp.ExecAllocatorOption {
	return append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(chromium()), chromedp.NoSandbox, chromedp.DisableGPU,
		// With its back-forward cache Chromium 156 now and then no longer answers about a page that it has just come to.
		chromedp.Flag("disable-features", "Translate,BlinkGenPropertyTrees,BackForwardCache"),
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-component-update", true),
		chromedp.Flag("accept-lang", "en-GB")) // SI units and a decimal point to begin with
}

// times is how often something is done by chance: what a variable of the environment says, or a few.
func times(t *testing.T, variable string, few int) int {
	t.Helper()
	text := os.Getenv(variable)
	if text == "" {
		return few
	}
	n, err := strconv.Atoi(text)
	require.NoError(t, err, variable)
	return n
}
