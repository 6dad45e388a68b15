package day

import (
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/day/plan/checkplan"
	"spraywright/calc/field"
)

// demo is the invented day, one key=value a line as in a link.
func demo(t testing.TB) calc.Form {
	text, err := os.ReadFile("../../testdata/demo/day.txt")
	require.NoError(t, err)
	_, pairs, _ := strings.Cut(string(text), "\n") // after the comment
	return calc.ParseForm(pairs)
}

// run plans a form in a session of its own.
func run(form calc.Form) (*day, calc.Report) {
	s := &session{}
	r := s.day().Run(form)
	return s.last, r
}

// changedTo is a form with some answers changed; a blank takes one out.
func changedTo(form calc.Form, changes string) calc.Form {
	for _, pair := range strings.Split(changes, "&") {
		key, text, _ := strings.Cut(pair, "=")
		if form[key] = text; text == "" {
			delete(form, key)
		}
	}
	return form
}

func TestTheDemoDayIsPlanned(t *testing.T) {
	form := demo(t)
	d, r := run(form)
	require.Empty(t, r.Problems)
	assert.Equal(t, form, calc.ParseForm(form.String()), "the day survives being a link")
	assert.Equal(t, calc.Go, r.Verdict[0].Level)
	assert.Empty(t, checkplan.Check(&d.model, &d.plan))
	c := (&session{}).day()
	for key := range form {
		parts := strings.SplitN(key, ".", 3)
		if len(parts) == 3 {
			key = parts[0] + "." + parts[2]
		}
		assert.NotNil(t, c.Input(key), "the day has no %s", key)
	}
}

func TestSmallestDay(t *testing.T) {
	_, r := run(calc.ParseForm("paint.1.product=Ivory&job.1.job_name=Lids&coat.1.coats=2&coat.1.spray_time=8&coat.1.flash=10"))
	require.Empty(t, r.Problems)
	assert.Equal(t, "8:44", r.Figures[0].Text)
	assert.Equal(t, "All is done at 8:44", r.Verdict[0].Why)
}

// A link shows the same plan, whether the page came to its number of steps one slice after the other or at once.
func TestTheSamePlanWhicheverWayItWasReached(t *testing.T) {
	asked := func(s *session, tried string) string {
		return s.day().Ask(calc.Language{}, changedTo(demo(t), "tried="+tried)).JSON()
	}
	slices := &session{}
	for _, tried := range []string{"", "1500", "2000", "7000", "7001", "30000"} {
		assert.Equal(t, asked(&session{}, tried), asked(slices, tried), "%s steps", tried)
	}
	best := asked(slices, "42000")
	assert.Equal(t, asked(&session{}, "2000"), asked(slices, "2000"), "back to fewer steps")
	assert.Equal(t, best, asked(slices, "42000"))
	slices.day().Run(calc.ParseForm("clock=9:00")) // a form without a plan between two
	assert.Equal(t, best, asked(slices, "42000"))
}

// A page asks for the report only where the mark of the plan has changed; it must then be another one, and only then.
func TestTheMarkOfAPlanChangesWithTheReport(t *testing.T) {
	s, c := &session{}, Core()
	without := func(r calc.Report) string {
		r.Steps = nil // one of them is the number of steps typed
		r.Figures = slices.DeleteFunc(r.Figures, func(f calc.Figure) bool { return strings.HasPrefix(f.Key, "tried_") })
		return r.JSON()
	}
	mark, report, changes := "", "", 0
	for tried := 0; tried <= 60000; tried += 4000 {
		form := changedTo(demo(t), "tried="+strconv.Itoa(tried))
		look := c.Find("day-look").Run(calc.Form{"day_form": form.String()})
		require.Empty(t, look.Problems)
		now, is := without(s.day().Run(form)), look.Figures[len(look.Figures)-1].Text
		assert.Equal(t, is == mark, now == report, "%d steps", tried)
		if is != mark {
			changes++
		}
		mark, report = is, now
	}
	assert.Greater(t, changes, 1)
}

func TestMoreStepsAreNeverWorse(t *testing.T) {
	s := &session{}
	before := -1
	for tried := 0; tried <= 60000; tried += 10000 {
		s.day().Run(changedTo(demo(t), "tried="+strconv.Itoa(tried)))
		if cost := s.last.plan.Cost; before >= 0 {
			assert.LessOrEqual(t, cost, before)
		}
		before = s.last.plan.Cost
		assert.LessOrEqual(t, s.last.bound.Finish, s.last.plan.Finish)
		assert.LessOrEqual(t, s.last.bound.Cost, before)
	}
}

func TestTimesOfDayBeforeTheStartAreOfTheNextDay(t *testing.T) {
	d := &day{start: 22 * 60}
	assert.Equal(t, 23*60, d.at("23:00"))
	assert.Equal(t, aDay+60, d.at("1:00"))
	assert.Equal(t, 21*60, d.since("21:00", early), "an hour before the start")
	assert.Equal(t, aDay+15*60, d.since("15:00", early))
	assert.Equal(t, 10*60, d.since("10:00", waiting), "half a day before the start")
	assert.Equal(t, aDay+9*60, d.since("9:00", waiting), "more than half a day before it")
	assert.Equal(t, 22*60, d.since("22:00", early))
	d.start = 8 * 60
	assert.Equal(t, 4*60, d.since("4:00", early), "planned at breakfast")
	assert.Equal(t, aDay+30, d.since("0:30", early), "half past midnight of a long day")
	assert.Equal(t, 0, d.since("0:00", waiting))
	assert.Equal(t, aDay+7*60, d.at("7:00"))
}

// random is a form whose rows name each other rightly: one to five jobs with a little of everything.
func random(seed uint64) calc.Form {
	r := checkplan.Dice(seed)
	form := calc.Form{}
	put := func(key string, n int) { form[key] = strconv.Itoa(n) }
	maybe := func(one int, key string, n int) {
		if r.Roll(one) == 0 {
			put(key, n)
		}
	}
	put("painters", 1+r.Roll(3))
	put("booths", 1+r.Roll(2))
	put("ovens", r.Roll(3))
	maybe(2, "cup_size", 600+100*r.Roll(5))
	maybe(3, "booth_room", 1+r.Roll(3))
	form["share_cups"], form["aim"] = []string{"yes", "no"}[r.Roll(2)], []string{"promises", "home", "waste"}[r.Roll(3)]
	for i := range 3 {
		row := "paint." + strconv.Itoa(i+1) + "."
		form[row+"product"], form[row+"shade"] = "Paint "+strconv.Itoa(i+1), shades[r.Roll(len(shades))]
		maybe(2, row+"pot_life", 60+r.Roll(60))
	}
	coat := 0
	for j := range 1 + r.Roll(5) {
		row, name := "job."+strconv.Itoa(j+1)+".", "Job "+strconv.Itoa(j+1)
		form[row+"job_name"] = name
		maybe(3, row+"prep_time", 5+r.Roll(30))
		maybe(2, row+"bake_time", 20+10*r.Roll(2))
		if r.Roll(2) == 0 {
			form[row+"promised_by"] = field.ShowClock(9*60 + r.Roll(300))
		}
		if r.Roll(3) == 0 {
			form[row+"ready_from"] = field.ShowClock(8*60 + r.Roll(120))
		}
		for range 1 + r.Roll(2) {
			coat++
			row := "coat." + strconv.Itoa(coat) + "."
			form[row+"of_job"], form[row+"product"] = strings.ToUpper(name), " paint "+strconv.Itoa(1+r.Roll(3))
			put(row+"coats", 1+r.Roll(2))
			put(row+"spray_time", 3+r.Roll(10))
			put(row+"coat_amount", 50+r.Roll(300))
			put(row+"flash", 5+r.Roll(12))
			maybe(3, row+"flash_last", 10+r.Roll(20))
			maybe(3, row+"recoat_within", 45+r.Roll(90))
			form[row+"may_leave"] = []string{"yes", "no"}[r.Roll(2)]
		}
	}
	if r.Roll(3) == 0 {
		form["break.1.break_from"], form["break.1.break_to"] = "9:30", "9:45"
	}
	return form
}

// days is how many random forms a test tries.
const days = 150

func TestRandomDaysAreSound(t *testing.T) {
	planned := 0
	for seed := range uint64(days) {
		form := random(seed)
		d, r := run(form)
		if d.solver == nil {
			require.NotEmpty(t, r.Problems, "%s", form)
			continue
		}
		planned++
		require.Empty(t, checkplan.Check(&d.model, &d.plan), "%s", form)
		require.Empty(t, overlaps(r), "%s", form)
		require.Empty(t, crowded(r), "%s", form)
		sheetKeepsFlash(t, d, r, form)
	}
	assert.Greater(t, planned, days/2)
}

// rowsOf are the texts of a list.
func rowsOf(r calc.Report, key string) [][]calc.Figure {
	for _, l := range r.Lists {
		if l.Key == key {
			return l.Rows
		}
	}
	return nil
}

func clockOf(t testing.TB, f calc.Figure) int {
	text, days, _ := strings.Cut(f.Text, " +")
	m, ok := field.ReadClock(text)
	require.True(t, ok, f.Text)
	if days != "" {
		n, _ := strconv.Atoi(days[:1])
		m += n * aDay
	}
	return m
}

// overlaps finds painters who would have to do two things at once, by the words of the call sheet alone.
func overlaps(r calc.Report) string {
	last := map[string]string{}
	for _, row := range rowsOf(r, "call") {
		who, from := row[2].Text, row[0].Text
		if who == "—" || who == "All painters" {
			continue
		}
		if until := last[who]; until != "" && later(until, from) {
			return who + " is busy until " + until + " and begins at " + from
		}
		last[who] = row[1].Text
	}
	return ""
}

func later(a, b string) bool {
	t := func(s string) int {
		text, next, _ := strings.Cut(s, " +")
		m, _ := field.ReadClock(text)
		if next != "" {
			m += aDay
		}
		return m
	}
	return t(a) > t(b)
}

// sheetKeepsFlash holds the list of each job's steps to the flash-off typed.
func sheetKeepsFlash(t *testing.T, d *day, r calc.Report, form calc.Form) {
	t.Helper()
	type end struct{ at, flash int }
	last := map[string]end{}
	for _, row := range rowsOf(r, "by_job") {
		job := row[0].Text
		if strings.Contains(row[3].Text, "flashes off") {
			continue
		}
		from, until := clockOf(t, row[1]), clockOf(t, row[2])
		before := last[job]
		require.GreaterOrEqual(t, from, before.at+before.flash, "%s: %s\n%s", job, row[3].Text, form)
		e := end{at: until}
		if of := strings.Split(row[3].Of, "-"); of[1] == strconv.Itoa(int(plan.Spray)) {
			j, _ := strconv.Atoi(of[0])
			k, _ := strconv.Atoi(of[2])
			e.flash = d.model.Jobs[j-1].Coats[k-1].Flash
		}
		last[job] = e
	}
}
