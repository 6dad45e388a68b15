package browser

import (
	"archive/zip"
	"bytes"
	"encoding/base64"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// courseSet is a set of two tasks with numbers that do not change: 60 µm in 2 coats at 40 % are 75 µm wet, and
// 50 µm in one at 50 % are 100 µm.
const courseSet = "title=Films+%3C%26+%22layers%22%3E&seed=1&q.1.of=wet-film&q.1.dry_film=60&q.1.coats=2&q.1.volume_solids=40&q.1.solids_for=mix&q.2.of=wet-film&q.2.dry_film=50&q.2.coats=1&q.2.volume_solids=50&q.2.solids_for=mix"

// packageOf has the trainer's page put a package together, twice, and gives its bytes.
func packageOf(p *tab, kind, set string) []byte {
	p.t.Helper()
	p.visit("about.html") // so that another set is another page
	p.visit("exercise-set.html#" + set)
	p.waitUntil("the set is read", `document.querySelector("#exercises .preview .task-given") !== null`)
	data := packageBytes(p, kind)
	p.has("#course-says", "Saved as exercises-")
	assert.True(p.t, bytes.Equal(data, packageBytes(p, kind)), "another package of the same set")
	return data
}

// packages are those put together so far, by kind and set.
var packages = map[string][]byte{}

// packageFor is a package of a set, put together by the first test that asks for it.
func packageFor(t *testing.T, kind, set string) []byte {
	t.Helper()
	if packages[kind+set] == nil {
		packages[kind+set] = packageOf(trainer(t), kind, set)
	}
	return packages[kind+set]
}

// packageBytes presses the button for a kind of package on the trainer's page.
func packageBytes(p *tab, kind string) []byte {
	p.t.Helper()
	evaluate[bool](p, `(delete globalThis.savedBytes, document.getElementById("course-says").replaceChildren(), true)`)
	p.tap(`[data-course="` + kind + `"]`)
	p.waitIn("#course-says", ".zip")
	text := evaluate[string](p, `globalThis.savedBytes`)
	data, err := base64.StdEncoding.DecodeString(text[strings.IndexByte(text, ',')+1:])
	require.NoError(p.t, err)
	return data
}

// savedBytes keeps what a page saves as a data address.
const savedBytes = `{ const real = URL.createObjectURL.bind(URL); URL.createObjectURL = (blob) => {
	globalThis.savedBytes = new Promise((done) => { const r = new FileReader(); r.onload = () => done(r.result); r.readAsDataURL(blob); });
	return real(blob); }; }`

// unzipped reads a package with other zip readers and lays it out in a folder beside the stand-in for the course.
func unzipped(t *testing.T, data []byte) string {
	t.Helper()
	dir := t.TempDir()
	r, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	require.NoError(t, err)
	require.NoError(t, os.Mkdir(filepath.Join(dir, "package"), 0o755))
	for _, f := range r.File {
		in, err := f.Open()
		require.NoError(t, err)
		text, err := io.ReadAll(in) // fails where the CRC-32 does not fit
		require.NoError(t, err, f.Name)
		require.NoError(t, os.WriteFile(filepath.Join(dir, "package", f.Name), text, 0o644))
	}
	if unzip, err := exec.LookPath("unzip"); err == nil {
		file := filepath.Join(dir, "package.zip")
		require.NoError(t, os.WriteFile(file, data, 0o644))
		says, err := exec.Command(unzip, "-t", file).CombinedOutput()
		require.NoError(t, err, "%s", says)
	}
	for _, name := range []string{"scorm.html", "scorm.js"} {
		text, err := os.ReadFile("testdata/" + name)
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), text, 0o644))
	}
	return dir
}

// servedFrom serves a folder as any host of files would.
func servedFrom(t *testing.T, dir string) *server {
	t.Helper()
	files := http.FileServer(http.Dir(dir))
	host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.URL.Path != "/favicon.ico" { // browsers ask for one by themselves
			files.ServeHTTP(w, r)
		}
	}))
	t.Cleanup(host.Close)
	return &server{t: t, address: strings.TrimPrefix(host.URL, "http://")}
}

// trainer is the page where packages are made.
func trainer(t *testing.T) *tab {
	p := open(t, serve(t), "about.html", desk)
	p.before(savedBytes)
	return p
}

// inside runs a script in the package's page: d is its document.
func inside[T any](p *tab, script string) T {
	p.t.Helper()
	return evaluate[T](p, `(() => { const d = sco(); return `+script+`; })()`)
}

func (p *tab) waitInside(text string) {
	p.t.Helper()
	p.waitUntil("the package says “"+text+"”", `(sco()?.body?.innerText ?? "").replace(/\s+/g, " ").includes(`+quoted(text)+`)`)
}

// answers types an answer into the package's page and has it checked.
func (p *tab) answers(task, text string) {
	p.t.Helper()
	p.waitInside(task)
	p.waitUntil("the task can be answered", `!sco().getElementById("task-form").hidden`)
	inside[bool](p, `(() => { const box = d.getElementById("task-answer"); box.value = `+quoted(text)+`; box.dispatchEvent(new Event("input", { bubbles: true })); d.querySelector("#task-form .action").click(); return true; })()`)
	p.waitUntil("it is judged", `!sco().getElementById("task-result").hidden`)
}

// scorm is what the stand-in has committed, by element.
func (p *tab) scorm() map[string]string {
	p.t.Helper()
	return evaluate[map[string]string](p, `course.committed`)
}

// wrong are the calls that the stand-in has refused, but for questions after what a course may lack.
func (p *tab) wrong() [][]string {
	p.t.Helper()
	return evaluate[[][]string](p, `course.calls.filter((c) => c.at(-1) !== "0" && !(c[0] === "LMSGetValue" && c.at(-1) === "401"))`)
}

func TestASCORMCourseGetsTheScore(t *testing.T) {
	s := servedFrom(t, unzipped(t, packageFor(t, "scorm", courseSet+"&pass=60")))
	p := open(t, s, "scorm.html", desk)
	evaluate[bool](p, `course.start({}, 2) ?? true`)
	p.answers("Task 1 of 2", "75 um")
	p.waitInside("The course has your result so far.")
	got := p.scorm()
	assert.Equal(t, []string{"incomplete", "50", "0", "100"}, []string{got["cmi.core.lesson_status"], got["cmi.core.score.raw"], got["cmi.core.score.min"], got["cmi.core.score.max"]})
	assert.Contains(t, got["cmi.suspend_data"], `"75 um"`)

	// The learner goes away, and comes back another day on another device.
	evaluate[bool](p, `course.end() ?? true`)
	require.Equal(t, "finished", evaluate[string](p, `course.state`))
	got = p.scorm()
	assert.Equal(t, "suspend", got["cmi.core.exit"])
	assert.Regexp(t, `^0000:00:\d\d$`, got["cmi.core.session_time"])
	assert.Empty(t, p.wrong())
	assert.Equal(t, "LMSInitialize", evaluate[string](p, `course.calls[0][0]`))
	assert.Equal(t, "LMSFinish", evaluate[string](p, `course.calls.at(-1)[0]`))
	evaluate[bool](p, `(sessionStorage.clear(), localStorage.clear(), course.start({}), true)`)
	p.waitInside("Right")
	inside[bool](p, `(d.getElementById("task-next").click(), true)`)
	p.answers("Task 2 of 2", "9 um")
	p.waitInside("All tasks are answered, and the course has your result.")
	got = p.scorm()
	assert.Equal(t, []string{"failed", "50"}, []string{got["cmi.core.lesson_status"], got["cmi.core.score.raw"]}, "1 of 2 is less than 60 %")
	inside[bool](p, `(d.getElementById("slip-show").click(), true)`)
	p.waitInside("1 right, 0 close, 1 off; 2 of 2 answered")
	p.waitInside("Your answer: 75 µm. The calculator’s: 75 µm")
	p.shot("course-scorm")
	inside[bool](p, `(d.getElementById("course-leave").click(), true)`)
	p.waitInside("Done. You can close this window.")
	assert.Equal(t, "", p.scorm()["cmi.core.exit"])
	evaluate[bool](p, `course.end() ?? true`)
	assert.Empty(t, p.wrong(), "the page has gone after it had taken leave")
}

func TestASCORMCourseThatJudgesByItself(t *testing.T) {
	s := servedFrom(t, unzipped(t, packageFor(t, "scorm", courseSet)))
	p := open(t, s, "scorm.html", desk)
	evaluate[bool](p, `course.start({ mastery: "50" }) ?? true`)
	p.answers("Task 1 of 2", "75 um")
	inside[bool](p, `(d.getElementById("task-next").click(), true)`)
	p.answers("Task 2 of 2", "100 um")
	p.waitInside("All tasks are answered")
	assert.Equal(t, []string{"passed", "100"}, []string{p.scorm()["cmi.core.lesson_status"], p.scorm()["cmi.core.score.raw"]})

	evaluate[bool](p, `(course.data = undefined, course.start({}), true)`)
	p.answers("Task 1 of 2", "75 um")
	inside[bool](p, `(d.getElementById("task-next").click(), true)`)
	p.answers("Task 2 of 2", "1 um")
	p.waitInside("All tasks are answered")
	assert.Equal(t, []string{"completed", "50"}, []string{p.scorm()["cmi.core.lesson_status"], p.scorm()["cmi.core.score.raw"]}, "nobody has to pass")

	evaluate[bool](p, `(course.data = undefined, course.start({ mode: "review" }), true)`)
	p.answers("Task 1 of 2", "75 um")
	evaluate[bool](p, `course.end() ?? true`)
	assert.Equal(t, "not attempted", p.scorm()["cmi.core.lesson_status"], "a review is not reported")
	assert.Empty(t, p.wrong())
}

func TestWhatASCORMCourseRefusesIsSaid(t *testing.T) {
	s := servedFrom(t, unzipped(t, packageFor(t, "scorm", courseSet)))
	p := open(t, s, "scorm.html", desk)
	evaluate[bool](p, `(course.deaf = "LMSInitialize", course.start(), true)`)
	p.waitInside("The course refused LMSInitialize: General exception (error 101).")
	p.answers("Task 1 of 2", "75 um")
	p.waitInside("Right") // the exercises go on without it
	evaluate[bool](p, `(course.deaf = "cmi.suspend_data", course.start(), true)`)
	p.answers("Task 1 of 2", "75 um")
	p.waitInside("The course refused cmi.suspend_data: General exception (error 101).")

	// What it refuses at the end does not keep the learner, unless it is the end itself.
	leave := `(d.getElementById("course-leave").click(), true)`
	evaluate[bool](p, `(course.deaf = "LMSFinish", course.start(), true)`)
	p.waitInside("The course keeps your answers and gets your result.")
	inside[bool](p, leave)
	p.waitInside("The course refused LMSFinish: General exception (error 101).")
	evaluate[bool](p, `(course.deaf = "cmi.core.session_time", true)`)
	inside[bool](p, leave)
	p.waitInside("The course refused cmi.core.session_time: General exception (error 101). You can close this window.")
	assert.Equal(t, "finished", evaluate[string](p, `course.state`))
	assert.Equal(t, "suspend", p.scorm()["cmi.core.exit"])

	p.visit("package/index.html")
	p.waitFor("No course answers here, so that nothing is reported. Open the exercises from the course.")
	p.waitFor("Work out: Wet film of one coat")

	// Started in a window of its own, the course is around the window that opened it.
	p.before(`window.opener = { API: { LMSInitialize: () => "true", LMSGetValue: (e) => e === "cmi.core.lesson_status" ? "incomplete" : "", LMSGetLastError: () => "0", LMSCommit: () => "true",
		LMSSetValue: (e, v) => { (globalThis.told ??= {})[e] = v; return "true"; } } }; window.opener.parent = window.opener;`)
	p.visit("package/index.html?again")
	p.waitFor("The course keeps your answers and gets your result.")
	p.enter("answer", "75 um")
	p.tap("#task-form .action")
	p.waitUntil("the score is told", `globalThis.told?.["cmi.core.score.raw"] === "50"`)
}

// What is kept never outgrows what a course takes, and comes back as it was.
func TestWhatACourseKeepsIsShort(t *testing.T) {
	p := open(t, serve(t), "exercises.html#q.1.of=wet-film", phone)
	p.waitFor("Work out:")
	text, err := os.ReadFile("../course/record.js")
	require.NoError(t, err)
	module := "data:text/javascript;base64," + base64.StdEncoding.EncodeToString(text)
	blank := open(t, servedFrom(t, t.TempDir()), "", phone)
	blank.forgive("404")
	got := evaluate[[][]any](blank, `(async () => {
		const { compact, expand } = await import(`+quoted(module)+`);
		const record = (n, tries, length) => ({ seed: "ä€x", name: "Ñ", at: 1, slots: Array.from({ length: n }, (_, i) => ({ draw: tries, tries: Array.from({ length: tries }, (_, k) => ({ draw: k + 1, answer: "7".repeat(length), unit: "um", judged: ["right", "close", "off"][(i + k) % 3], extra: "x" })) })) });
		return [[2, 2, 5], [60, 1, 20], [60, 9, 20], [60, 2, 60], [60, 9, 60]].map(([n, tries, length]) => {
			const text = compact(record(n, tries, length)), back = expand(text);
			return [text.length, /^[ -~]*$/.test(text), back.slots.length, back.slots[0].tries.length, back.slots[1].tries[0].judged, back.seed + back.name, back.slots[0].tries[0].answer.length];
		}).concat([["", "null", "[2]", "{", '[1,"a","b",0,[[1,[1,"","","x"]]]]', '[1,"a","b",0,7]'].map((bad) => Object.keys(expand(bad)).length)]);
	})()`)
	for _, row := range got[:5] {
		assert.LessOrEqual(t, row[0], 4096.)
		assert.Equal(t, []any{true, "close", "ä€xÑ"}, []any{row[1], row[4], row[5]})
	}
	assert.Equal(t, []any{2., 2., 5.}, []any{got[0][2], got[0][3], got[0][6]}, "all of it")
	assert.Equal(t, []any{60., 1., 20.}, []any{got[2][2], got[2][3], got[2][6]}, "the answers that count")
	assert.Equal(t, []any{60., 1., 0.}, []any{got[4][2], got[4][3], got[4][6]}, "how they were judged")
	for _, left := range got[5] {
		assert.Zero(t, left)
	}
}
