//go:build unix

package browser

import (
	"context"
	"math/rand/v2"
	"os/exec"
	"strconv"
	"sync"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// keepsWriting goes on from round n without end: two items of the shelf in one step, a mix, a timer, one old mix removed, and
// the form on a page. A round that is done is told.
const keepsWriting = `(async (n) => {
	const at = (name) => import(new URL("scripts/" + name, document.baseURI).href);
	const [{ get, put, remove }, { store }] = await Promise.all(["db.js", "state.js"].map(at));
	const revs = Object.fromEntries(await Promise.all([["profile", "a"], ["profile", "b"], ["timer", "t"]].map(async ([kind, id]) => [id, (await get(kind, id))?.rev])));
	for (;;) {
		n++;
		const pair = ["a", "b"].map((id) => ({ id, rev: revs[id], kind: "gun", name: id, form: whole(n) }));
		for (const r of await put("profile", ...pair)) revs[r.id] = r.rev;
		await put("mix", { id: "m" + n, rev: (await get("mix", "m" + n))?.rev, day: "2026-" + String(n % 12 + 1).padStart(2, "0") + "-03", form: whole(n) });
		[{ rev: revs.t }] = await put("timer", { id: "t", rev: revs.t, form: whole(n) });
		store.set("form:air-state", "air=" + n + "&humidity=" + n);
		await remove("mix", "m" + (n - 20));
		await told(n);
	}
})`

// whole makes a text of many sizes that shows when a part of it is missing.
const whole = `globalThis.whole = (n) => n + ":" + String(n).padStart(7, "0").repeat(n * 7919 % 3000) + ":" + n`

// stored is what is there: the rounds of the items, those of the mixes in order, and what is not as it was written.
const stored = `(async () => {
	const { all, get } = await import(new URL("scripts/db.js", document.baseURI).href);
	const round = (r) => (r === undefined ? 0 : r.form === whole(Number(r.form.split(":")[0])) ? Number(r.form.split(":")[0]) : -1);
	const mixes = await all("mix"), months = new Set((await all("month")).map((m) => m.id));
	const typed = /^air=(\d+)&humidity=\1$/.exec(localStorage.getItem("spraywright:form:air-state") ?? "air=0&humidity=0");
	return {
		a: round(await get("profile", "a")), b: round(await get("profile", "b")), timer: round(await get("timer", "t")), typed: Number(typed?.[1] ?? -1),
		mixes: mixes.map((r) => (r.id === "m" + round(r) ? round(r) : -1)).sort((x, y) => x - y),
		lost: mixes.filter((r) => !months.has(r.day.slice(0, 7))).map((r) => r.id),
	};
})()`

type storedNow struct {
	A, B, Timer, Typed int
	Mixes              []int
	Lost               []string
}

// Nothing that was saved is lost, whenever the browser is killed: SIGKILL to all its processes, in the middle of writing.
func TestAKilledBrowserLosesNothingSaved(t *testing.T) {
	s, profile := serve(t), t.TempDir()
	random := rand.New(rand.NewPCG(1, 2))
	done, oldest := 0, 0
	for range times(t, "SPRAYWRIGHT_KILLS", 2) {
		p, kill := openIn(t, s, profile, "about.html")
		oldest = holds(p, done, oldest)
		done = writesUntilKilled(p, kill, done, time.Duration(random.IntN(500))*time.Millisecond)
	}
	p, kill := openIn(t, s, profile, "about.html")
	defer kill()
	holds(p, done, oldest)
	t.Logf("%d rounds written", done)
	p.waitIn("#kept", "works without a network") // the site itself was kept while browsers died
	s.stop()
	p.visit("wet-film.html")
	wetFilm(p)
}

// holds compares what is stored with the last round that was told as done. It returns the round of the form last typed.
func holds(p *tab, done, typed int) int {
	p.t.Helper()
	evaluate[bool](p, `(`+whole+`, true)`)
	now := evaluate[storedNow](p, stored)
	for what, round := range map[string]int{"one item": now.A, "the timer": now.Timer} {
		assert.GreaterOrEqual(p.t, round, done, "%s is older than what was saved", what)
		assert.LessOrEqual(p.t, round, done+1, what)
	}
	assert.Equal(p.t, now.A, now.B, "of two items written in one step only one was")
	for i, round := range now.Mixes {
		assert.Equal(p.t, now.Mixes[0]+i, round, "a mix is torn, or missing among %v", now.Mixes)
	}
	if done > 0 {
		last := now.Mixes[len(now.Mixes)-1]
		assert.True(p.t, last == done || last == done+1, "the last mix is %d, not %d", last, done)
		assert.LessOrEqual(p.t, len(now.Mixes), 21, "a mix that was removed is back")
	}
	assert.Empty(p.t, now.Lost, "mixes without the record of their month")
	// A form half typed is for localStorage, which browsers write a few seconds late: it may be an older one, never a torn one.
	assert.GreaterOrEqual(p.t, now.Typed, typed)
	require.False(p.t, p.t.Failed(), "%+v after round %d", now, done)
	return now.Typed
}

// writesUntilKilled writes from a round on, and kills the browser some time after the first round is done. It returns the
// last round that was.
func writesUntilKilled(p *tab, kill func(), done int, after time.Duration) int {
	p.t.Helper()
	var last atomic.Int64
	last.Store(int64(done))
	began := make(chan bool, 1)
	p.do(chromedp.ExposeFunc("told", func(_ context.Context, n int64) (bool, error) {
		last.Store(n)
		select {
		case began <- true:
		default:
		}
		return true, nil
	}))
	evaluate[bool](p, `(`+keepsWriting+`(`+strconv.Itoa(done)+`).catch((e) => console.error(e.stack)), true)`)
	select {
	case <-began:
	case <-time.After(patience):
		require.FailNow(p.t, "nothing is written", "%v", p.reported())
	}
	time.Sleep(after)
	kill()
	return int(last.Load())
}

// openIn opens a page in a browser of its own, with a profile that stays, and says how to kill it.
func openIn(t *testing.T, s *server, profile, path string) (*tab, func()) {
	t.Helper()
	var started *exec.Cmd
	allocator, stop := chromedp.NewExecAllocator(context.Background(), append(options(), chromedp.UserDataDir(profile), chromedp.ModifyCmdFunc(func(cmd *exec.Cmd) {
		if cmd.SysProcAttr == nil {
			cmd.SysProcAttr = new(syscall.SysProcAttr)
		}
		cmd.SysProcAttr.Setpgid = true
		started = cmd
	}))...)
	ctx, cancel := chromedp.NewContext(allocator)
	p := &tab{t: t, ctx: ctx, server: s, look: phone}
	p.listen()
	kill := sync.OnceFunc(func() {
		syscall.Kill(-started.Process.Pid, syscall.SIGKILL)
		cancel()
		stop()
	})
	t.Cleanup(kill)
	p.visit(path)
	return p, kill
}
