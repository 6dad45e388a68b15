package job

import (
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/field"
)

// A line of the call sheet as a painter reads it, in minutes after midnight.
type line struct {
	from, until int
	step, note  string
}

func callSheet(t testing.TB, r calc.Report) []line {
	var lines []line
	for _, e := range list(r, "timeline") {
		lines = append(lines, line{clockIn(t, e["from"].Text), clockIn(t, e["until"].Text), e["step"].Text, e["note"].Text})
	}
	return lines
}

func clockIn(t testing.TB, s string) int {
	s, days, later := strings.Cut(s, " +")
	m, ok := field.ReadClock(s)
	require.True(t, ok, s)
	if later {
		d, err := strconv.Atoi(strings.TrimSuffix(days, " d"))
		require.NoError(t, err)
		m += d * 1440
	}
	return m
}

// The call sheet is read as a painter reads it and held to the booth's rules, over random jobs. Times are shown to
// the minute, so a minute either way is allowed.
func TestTheCallSheetCanBeFollowed(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	followed := 0
	for range 400 {
		form := with(demo(t),
			"part.1.count", strconv.Itoa(1+r.IntN(20)), "part.2.count", strconv.Itoa(1+r.IntN(40)),
			"cup_size", strconv.Itoa(300+r.IntN(2000)), "mix_time", strconv.Itoa(r.IntN(10)), "rinse_time", strconv.Itoa(r.IntN(20)),
			"coat.1.coats", strconv.Itoa(1+r.IntN(3)), "coat.4.coats", strconv.Itoa(1+r.IntN(3)),
			"coat.1.flash", strconv.Itoa(3+r.IntN(30)), "coat.1.pot_life", strconv.Itoa(55+r.IntN(200)),
			"coat.4.drying", []string{"bake", "flash", "air"}[r.IntN(3)], "coat.1.drying", []string{"bake", "flash", "air"}[r.IntN(3)],
			"coat.1.dry_time", "40", "coat.1.dry_at", "20", "coat.4.dry_at", "20", "clock", "6:00")
		report := Job().Run(form)
		if len(report.Problems) > 0 {
			continue
		}
		followed++
		checkSheet(t, form, callSheet(t, report))
	}
	require.Greater(t, followed, 300)
}

func checkSheet(t *testing.T, form calc.Form, lines []line) {
	busy, useBy := 0, map[string]int{}
	ready := map[string]int{} // product -> when it has flashed off or dried
	for _, l := range lines {
		require.LessOrEqual(t, l.from, l.until)
		name, hands := l.step, true
		switch {
		case strings.HasPrefix(l.step, "Mix "):
			name, _, _ = strings.Cut(strings.TrimPrefix(l.step, "Mix "), ",")
			if at, by, ok := strings.Cut(l.note, "Use by "); ok {
				require.Empty(t, at)
				useBy[name] = clockIn(t, strings.SplitN(by, ".", 2)[0])
			}
		case strings.HasPrefix(l.step, "Rinse "):
		case strings.HasPrefix(l.step, "Bake "):
			ready[strings.TrimPrefix(l.step, "Bake ")] = l.until
		case strings.HasSuffix(l.step, " flashes off"), strings.HasSuffix(l.step, " dries in the air"):
			name, _, _ = strings.Cut(strings.Replace(l.step, " dries", " flashes", 1), " flashes")
			ready[name], hands = l.until, false
		default:
			name, _, _ = strings.Cut(l.step, ",")
			require.GreaterOrEqual(t, l.from+1, ready[name], "%s before the last coat had flashed off: %v", l.step, form)
			if by, ok := useBy[name]; ok {
				require.LessOrEqual(t, l.until, by+1, "%s past its pot life: %v", l.step, form)
			}
			if name == "Two-pack clear" {
				for _, under := range []string{"Ivory waterborne base", "Moss green waterborne base"} {
					require.GreaterOrEqual(t, l.from+1, ready[under], "clear on a base that is not ready: %v", form)
				}
			}
		}
		if hands {
			require.GreaterOrEqual(t, l.from+1, busy, "two things at once: %s, %v", l.step, form)
			busy = max(busy, l.until)
		}
	}
}
