package browser

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// A bars is what the planner is measured with in the browser: a page that holds it, and the processor time of the page.
type bars struct{ *tab }

// The planner in Chromium against what is asked of it. SPRAYWRIGHT_BARS says how many days of each kind to prove, and
// make bars prints the table; times are processor time of the page's own thread, so that other work does not count.
func TestTheBarsOfThePlanner(t *testing.T) {
	days, err := strconv.Atoi(os.Getenv("SPRAYWRIGHT_BARS"))
	if err != nil {
		t.Skip("SPRAYWRIGHT_BARS names no number of days")
	}
	b := bars{open(t, serve(t), "about.html", desk)}
	b.firstPlans()
	b.load()
	for _, name := range []string{"ft06", "la01", "la02", "la03", "la04", "la05", "ft10"} {
		b.shop(name)
	}
	files, err := filepath.Glob("../../testdata/days/4-*.csv")
	require.NoError(t, err)
	for _, file := range files {
		b.proof("file", read(t, file), filepath.Base(file))
	}
	for _, kind := range []string{"ordinary", "odd"} {
		for seed := range days {
			what := fmt.Sprintf("4 %d", seed)
			b.proof(kind, what, kind+" "+what)
		}
	}
	b.eights()
}

func read(t *testing.T, file string) string {
	t.Helper()
	text, err := os.ReadFile(file)
	require.NoError(t, err)
	return string(text)
}

// Whose processor time is taken: the pages' own threads, or those of their workers.
const pages, workers = "pages", "workers"

// busy is the processor time that such threads of this program's own browser have had.
func busy(t *testing.T, whose string) time.Duration {
	t.Helper()
	all := time.Duration(0)
	files, err := filepath.Glob("/proc/[0-9]*/task/*/schedstat")
	require.NoError(t, err)
	for _, file := range files {
		part := strings.Split(file, "/")
		pid, thread := part[2], part[4]
		line, err := os.ReadFile("/proc/" + pid + "/cmdline")
		if err != nil || !strings.Contains(string(line), "--type=renderer") || !ours(pid) {
			continue
		}
		name, _ := os.ReadFile(filepath.Join(filepath.Dir(file), "comm"))
		if works := strings.HasPrefix(string(name), "DedicatedWorker"); whose == workers && !works || whose == pages && thread != pid {
			continue
		}
		if text, err := os.ReadFile(file); err == nil {
			ns, _ := strconv.ParseInt(strings.Fields(string(text))[0], 10, 64)
			all += time.Duration(ns)
		}
	}
	return all
}

// ours reports whether this program has started a process, or one that has.
func ours(pid string) bool {
	for own := strconv.Itoa(os.Getpid()); pid != own; {
		stat, err := os.ReadFile("/proc/" + pid + "/stat")
		if err != nil {
			return false
		}
		after := string(stat[strings.LastIndexByte(string(stat), ')')+1:])
		if pid = strings.Fields(after)[1]; pid == "0" {
			return false
		}
	}
	return true
}

func (b bars) row(bar, measured string) {
	b.t.Helper()
	b.t.Logf("%-46s %s", bar, measured)
}

func ms(d time.Duration) string { return fmt.Sprintf("%.0f ms", float64(d.Microseconds())/1000) }

// firstPlans times what the page of the day asks its core for: the first plan of 30 jobs, and its report.
func (b bars) firstPlans() {
	took := func(script string) time.Duration {
		before := busy(b.t, workers)
		require.Empty(b.t, b.long(script))
		return busy(b.t, workers) - before
	}
	form := thirtyJobs()
	look := quoted(url.Values{"day_form": {form + "&tried=0"}}.Encode())
	asks := func(id, text string) string {
		return `globalThis.core.report("` + id + `", ` + text + `).then((r) => r.problems.map((p) => p.message).join())`
	}
	for _, first := range []string{"", `await (await import(new URL("scripts/day-warm.js", location.href))).warm(globalThis.core);`} {
		for range 5 {
			require.Empty(b.t, b.long(`(async () => {
				const { Core } = await import(new URL("scripts/core.js", location.href));
				globalThis.core = new Core("day.wasm", 60000);
				await globalThis.core.report("day", "");
				`+first+`
				return "";
			})()`))
			what := map[bool]string{true: "30 jobs, the core as it was loaded", false: "30 jobs, the core as the page warms it"}[first == ""]
			b.row(what, "first plan "+ms(took(asks("day-look", look)))+", its report "+ms(took(asks("day", quoted(form+"&tried=0")))))
		}
	}
}

// long runs a script in the page that may take minutes.
func (b bars) long(script string) string {
	b.t.Helper()
	text, err := chromedp.Run(b.ctx, chromedp.Evaluate[string](script, chromedp.EvalAwaitPromise))
	require.NoError(b.t, err)
	return text
}

// load opens a page that holds the planner and nothing else.
func (b bars) load() {
	dir := b.t.TempDir()
	build := exec.Command("go", "build", "-trimpath", "-ldflags=-s -w", "-o", filepath.Join(dir, "planner.wasm"), "spraywright/calc/day/plan/bars/inpage")
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	text, err := build.CombinedOutput()
	require.NoError(b.t, err, "%s", text)
	root, err := exec.Command("go", "env", "GOROOT").Output()
	require.NoError(b.t, err)
	glue := read(b.t, filepath.Join(strings.TrimSpace(string(root)), "lib/wasm/wasm_exec.js"))
	require.NoError(b.t, os.WriteFile(filepath.Join(dir, "wasm_exec.js"), []byte(glue), 0o644))
	require.NoError(b.t, os.WriteFile(filepath.Join(dir, "page.html"), []byte(`<!doctype html><title>Planner</title><link rel="icon" href="data:,"><script src="wasm_exec.js"></script>`), 0o644))
	server := httptest.NewServer(http.FileServer(http.Dir(dir)))
	b.t.Cleanup(server.Close)
	b.do(chromedp.Navigate(server.URL + "/page.html"))
	require.Empty(b.t, b.long(`(async () => {
		const go = new Go(), { instance } = await WebAssembly.instantiateStreaming(fetch("planner.wasm"), go.importObject);
		go.run(instance);
		return "";
	})()`))
}

// solve has the planner look until it has proven its plan, has one of the cost wanted, or has had so much processor time.
func (b bars) solve(kind, what string, seed, wanted int, within time.Duration) (cost int, proven bool, took time.Duration) {
	const stride = 2000
	start := busy(b.t, pages)
	ask := func(script string) {
		at := b.long(`JSON.stringify(` + script + `)`)
		_, err := fmt.Sscanf(strings.NewReplacer("[", "", "]", "", ",", " ").Replace(at), "%d %t", &cost, &proven)
		require.NoError(b.t, err, at)
		took = busy(b.t, pages) - start
	}
	ask(fmt.Sprintf("solve(%s, %s, %d)", quoted(kind), quoted(what), seed))
	for !proven && cost != wanted && took < within {
		ask(fmt.Sprintf("improve(%d)", stride))
	}
	return cost, proven, took
}

func (b bars) shop(name string) {
	within, wanted := 2*time.Second, -1
	if name == "ft10" {
		within, wanted = 30*time.Second, 930
	}
	for seed := 1; seed <= 3; seed++ {
		cost, proven, took := b.solve("shop", read(b.t, "../../testdata/instances/"+name+".txt"), seed, wanted, within)
		b.row(fmt.Sprintf("%s, seed %d", name, seed), fmt.Sprintf("%d, proven %t, %s", cost, proven, ms(took)))
	}
}

func (b bars) proof(kind, what, says string) {
	if _, proven, took := b.solve(kind, what, 1, -1, 10*time.Second); !proven || took > time.Second {
		b.row(says, fmt.Sprintf("proven %t, %s", proven, ms(took)))
	} else {
		b.row(says, "proven within 1 s: "+ms(took))
	}
}

// eights sets the plans of 8 jobs after a second beside the best that are known.
func (b bars) eights() {
	for _, line := range strings.Split(read(b.t, "../../testdata/days/best.csv"), "\n") {
		f := strings.Split(line, ",")
		if len(f) != 5 || strings.HasPrefix(line, "#") {
			continue
		}
		best, err := strconv.Atoi(f[2])
		require.NoError(b.t, err)
		cost, _, took := b.solve(f[0], "8 "+f[1], 1, best, time.Second)
		b.row(fmt.Sprintf("8 jobs, %s %s", f[0], f[1]), fmt.Sprintf("%.2f %% above %d after %s", 100*float64(cost-best)/float64(best), best, ms(took)))
	}
}
