package browser

import (
	"context"
	"fmt"
	"net/url"
	"strconv"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// thirtyJobs is a day that a big shop might have.
func thirtyJobs() string {
	form := url.Values{"painters": {"3"}, "booths": {"2"}, "ovens": {"1"}}
	for i, product := range []string{"Primer", "Ivory", "Moss green", "Night blue", "Clear"} {
		row := fmt.Sprintf("paint.%d.", i+1)
		form.Set(row+"product", product)
		form.Set(row+"pot_life", strconv.Itoa(60+10*i))
	}
	for j := range 30 {
		row, name := fmt.Sprintf("job.%d.", j+1), fmt.Sprintf("Job %d", j+1)
		form.Set(row+"job_name", name)
		form.Set(row+"bake_time", "20")
		for i, product := range []string{"Primer", []string{"Ivory", "Moss green", "Night blue"}[j%3], "Clear"} {
			row := fmt.Sprintf("coat.%d.", 3*j+i+1)
			form.Set(row+"of_job", name)
			form.Set(row+"product", product)
			form.Set(row+"coats", "1")
			form.Set(row+"spray_time", strconv.Itoa(4+(j+i)%5))
			form.Set(row+"flash", "10")
		}
	}
	return form.Encode()
}

// How long a core takes that the page has warmed, in the browser: for its first plan of thirty jobs, for that plan's
// report, and for slices of the search. Machines that test are slow and busy, so that only what is far off fails here;
// make bars measures what is promised.
func TestTheDaysFirstPlanIsThereAtOnce(t *testing.T) {
	p := open(t, serve(t), "about.html", desk)
	ctx, cancel := context.WithTimeout(p.ctx, 6*patience)
	defer cancel()
	ms, err := chromedp.Run(ctx, chromedp.Evaluate[map[string]float64](`(async () => {
		const [{ Core }, { warm }] = await Promise.all(["core.js", "day-warm.js"].map((file) => import(new URL("scripts/" + file, location.href))));
		const form = `+quoted(thirtyJobs())+`, look = (n) => new URLSearchParams({day_form: form + "&tried=" + n}).toString();
		const time = async (core, id, text) => {
			const began = performance.now(), r = await core.report(id, text);
			if (r.problems.length > 0) throw new Error(JSON.stringify(r.problems));
			return performance.now() - began;
		};
		const least = {};
		const note = (what, ms) => { least[what] = Math.min(least[what] ?? Infinity, ms); };
		for (let i = 0; i < 3; i++) {
			const cold = new Core("day.wasm", 60000), warmed = new Core("day.wasm", 60000);
			await cold.report("day", ""); // it is loaded and compiled
			note("first plan, cold", await time(cold, "day-look", look(0)));
			await warmed.report("day", "");
			await warm(warmed);
			note("first plan", await time(warmed, "day-look", look(0)));
			note("its report", await time(warmed, "day", form + "&tried=0"));
			for (let n = 5000; n <= 20000; n += 5000) note("5000 steps more", await time(warmed, "day-look", look(n)));
		}
		return least;
	})()`, chromedp.EvalAwaitPromise))
	require.NoError(t, err)
	t.Logf("30 jobs in Chromium, ms, the least of several, the crossing included: %v", ms)
	assert.Less(t, ms["first plan"], 500.0, "ten times what is promised")
	assert.Less(t, ms["its report"], 1000.0)
}
