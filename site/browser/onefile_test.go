package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The main flows once more, with the site opened as one file from a disk. Within this test serve gives the file.
func TestInOneFile(t *testing.T) {
	for name, flow := range map[string]func(*testing.T){
		"a job by hand":       TestAJobTypedByHandFromEmpty,
		"the demo":            TestTheDemoShowsTheWholeCard,
		"wet film":            TestAnAnswerFollowsWhatIsTyped,
		"numbers":             TestNumbersAreReadAsPeopleWriteThem,
		"a link opened":       TestALinkPutsTheOwnFormAside,
		"a link kept":         TestALinkIsKeptWhenThePersonSaysSo,
		"a link pasted":       TestAPastedLinkPutsTheOwnFormAsideToo,
		"a reload":            TestAFormStandsAfterAReload,
		"a fresh tab":         TestAFormStandsInAFreshTabWithoutItsLink,
		"a core that is deaf": TestACoreThatDoesNotAnswerIsStartedAgain,
		"a slow core":         TestTypingDoesNotWaitForASlowCore,
		"a link to elsewhere": TestALinkMakesTheSameCardOnAnotherDevice,
		"the card on paper":   TestOnPaperThereIsTheCardAlone,
		"large text":          TestLargeTextNeedsNoSidewaysScroll,
		"contrast":            TestEveryTextStandsOutFromItsGround,
		"controls":            TestControlsAreLargeAndNamed,
		"a day typed":         TestADayIsTyped,
		"a day’s step done":   TestAStepIsDoneAndTheDayPlannedAgainFromNow,
		"a trainer’s set":     TestATrainersSetIsDoneByALearner,
		"a course package":    TestASCORMCourseGetsTheScore,
		"a lesson":            TestTheGraphOfALessonHasGaps,
	} {
		t.Run(name, flow)
	}
}

// fromDisk is the site as the file that serve gives to tests within TestInOneFile.
func fromDisk(t *testing.T) *server {
	t.Helper()
	return &server{t: t, file: copyOf(t)}
}

// copyOf puts the file alone into a folder whose name has what people put into names.
func copyOf(t *testing.T) string {
	t.Helper()
	b, err := built()
	require.NoError(t, err)
	text, err := os.ReadFile(filepath.Join(b.dist, "spraywright.html"))
	require.NoError(t, err)
	dir := filepath.Join(t.TempDir(), "a stick #1")
	require.NoError(t, os.Mkdir(dir, 0o755))
	file := filepath.Join(dir, "spraywright (2).html")
	require.NoError(t, os.WriteFile(file, text, 0o644))
	return file
}

// visits makes each address of the file another one, as those of different pages are, so that it is loaded anew.
var visits atomic.Int64

// urlInFile is where the file has a page of the site: "wet-film.html#coats=2".
func urlInFile(file, path string) string {
	path, form, _ := strings.Cut(path, "#")
	path, _, _ = strings.Cut(path, "?")
	page := strings.TrimSuffix(path, ".html")
	if page != "" && form != "" {
		form = "&" + form
	}
	if page != "" {
		page = "page=" + page
	}
	return fmt.Sprintf("%s?%d#%s%s", fileURL(file), visits.Add(1), page, form)
}

func fileURL(file string) string {
	return "file://" + strings.NewReplacer("%", "%25", " ", "%20", "#", "%23", "?", "%3F").Replace(filepath.ToSlash(file))
}

// asksNothing fails the test if the file, once open, has asked for anything but itself.
func (p *tab) asksNothing() {
	requests := chromedp.Events(p.ctx, network.RequestWillBeSent)
	go func() {
		for r, err := range requests {
			if err != nil {
				return // the tab is closed
			}
			if url := r.Request.URL; !strings.HasPrefix(url, fileURL(p.server.file)) && !strings.HasPrefix(url, "data:") && !strings.HasPrefix(url, "blob:") && url != "about:blank" {
				p.mu.Lock()
				p.errors = append(p.errors, "asked for "+url)
				p.mu.Unlock()
			}
		}
	}()
}

func TestTheFileHoldsEveryPage(t *testing.T) {
	s := fromDisk(t)
	p := open(t, s, "menu.html", phone)
	p.waitFor("All calculators")
	pages := evaluate[[]string](p, `[...document.querySelectorAll(".menu a, .foot a")].map((a) => a.getAttribute("href"))`)
	require.Greater(t, len(pages), 60)
	for _, link := range pages {
		assert.True(t, link == "#" || strings.HasPrefix(link, "#page="), "%s leads out of the file", link)
	}
	p.tap(`.menu a[href="#page=wet-film"]`)
	p.waitUntil("the page is there", `document.querySelector("main")?.dataset.calculator === "wet-film"`)
	wetFilm(p)
	assert.Equal(t, "wet-film", evaluate[string](p, `document.documentElement.dataset.page`))
	assert.Contains(t, p.link(), "#page=wet-film&coats=2&dry_film=60")

	evaluate[bool](p, `history.back() ?? true`)
	p.waitFor("All calculators")
	evaluate[bool](p, `history.forward() ?? true`)
	p.waitIn("#card", "67 µm")
	p.tap(".home")
	p.waitUntil("the first page is there", `document.querySelector("main")?.dataset.calculator === "job"`)
}

func TestPlacesOnAPageOfTheFile(t *testing.T) {
	p := open(t, fromDisk(t), "wet-film.html", phone)
	p.tap(`.grounds a`)
	p.waitUntil("the values of the calculator are in sight", `document.documentElement?.dataset.page === "numbers" && document.getElementById("of-wet-film")?.closest("details").open && Math.abs(document.getElementById("of-wet-film").getBoundingClientRect().top) < 200`)
	evaluate[bool](p, `document.querySelector(".skip").click() ?? true`)
	assert.Contains(t, evaluate[string](p, `location.hash`), "page=numbers", "the skip link has led away")
	p.visit("no-such-page.html")
	p.waitIn("#notices", "This file has no page of that name.")
	p.has("main", "All calculators")
}

// A link made in the file must not pretend that it leads anywhere on another device.
func TestTheFileHandsOnTheFormAlone(t *testing.T) {
	p := open(t, fromDisk(t), "wet-film.html", phone)
	wetFilm(p)
	evaluate[bool](p, `(navigator.share = undefined, navigator.clipboard.writeText = async (s) => { globalThis.copied = s; }, true)`)
	p.tap("#share")
	p.tap(`[data-share="copy"]`)
	p.waitUntil("it is copied", `globalThis.copied !== undefined`)
	copied := evaluate[string](p, `copied`)
	assert.True(t, strings.HasPrefix(copied, "#page=wet-film&fields=3&"), copied)
	p.waitIn("#share-says", "this file")
	assert.False(t, p.sees("#share-code .code"), "a code that no camera can open")

	// It can be put behind the address of any copy, in a file or on the web.
	other := open(t, fromDisk(t), "", phone)
	evaluate[bool](other, `(location.hash = `+quoted(copied)+`, true)`)
	other.waitIn("#card", "67 µm")
	web := open(t, serve(t), copied, phone)
	web.waitIn("#card", "67 µm")
	assert.Contains(t, web.link(), "wet-film.html#fields=3&coats=2")
}

func TestTheFileSaysWhereNothingIsKept(t *testing.T) {
	p := open(t, fromDisk(t), "about.html", phone)
	p.before(`Object.defineProperty(globalThis, "localStorage", {get() { throw new DOMException("no", "SecurityError"); }})`)
	p.visit("")
	p.waitIn("#kept", "This is the whole site in one file: it works without a network.")
	p.has("#kept", "This browser keeps nothing")
	p.enter("air", "20")
	p.waitIn("#notices", "This browser keeps nothing.")
}

func TestTheFileSaysWhyItDoesNotOpen(t *testing.T) {
	p := open(t, fromDisk(t), "about.html", phone)
	p.before(`delete globalThis.DecompressionStream`)
	p.visit("")
	p.waitFor("This browser is too old to unpack the file.")
}

func TestTheFileAnswersWhereWorkersAreRefused(t *testing.T) {
	p := open(t, fromDisk(t), "about.html", phone)
	p.before(`globalThis.Worker = class { constructor() { throw new DOMException("no", "SecurityError"); } }`)
	p.visit("wet-film.html")
	wetFilm(p)
}

// It goes with a letter and loads on a phone: about as much as a photograph.
func TestTheFileIsSmallEnoughToSend(t *testing.T) {
	info, err := os.Stat(copyOf(t))
	require.NoError(t, err)
	t.Logf("%d kB", info.Size()/1000)
	assert.Less(t, info.Size(), int64(4_500_000))
}

// What a script leads to stays within the file too.
func TestTheWorkingOfATimerInTheFile(t *testing.T) {
	p := open(t, fromDisk(t), potToday, phone)
	p.waitIn(`[data-out="pot_life_low"]`, "60")
	p.tap(`[data-out="pot_life_low"] .time`)
	p.waitIn(".strip", "Use up by")
	p.tap(".strip-link")
	p.waitIn("#timers", "Mixed at")
	p.tap(`.timer [data-do="working"]`)
	p.waitIn("#notices", "This is the working of your timer Pot life")
	p.waitIn(`[data-out="left_low"]`, "min")
	p.presses("Back to the timers")
	p.waitIn("h1", "Timers")
}
