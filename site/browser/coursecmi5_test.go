package browser

import (
	"net/url"
	"testing"

	"github.com/stretchr/testify/assert"
)

// answer answers the task on the page.
func (p *tab) answer(task, text string) {
	p.t.Helper()
	p.waitIn("#task-number", task)
	p.enter("answer", text)
	p.tap("#task-form .action")
	p.waitUntil("it is judged", `!document.getElementById("task-result").hidden`)
}

func TestACmi5CourseGetsTheStatements(t *testing.T) {
	s := servedFrom(t, unzipped(t, packageFor(t, "cmi5", courseSet+"&pass=60")))
	l := startLRS(t, map[string]any{"masteryScore": 0.6, "returnURL": "http://" + s.address + "/scorm.html"})
	p := open(t, s, "package/index.html?"+l.query(), phone)
	p.forgive("status of 404") // what the course keeps is asked for before there is any
	p.waitFor("The course keeps your answers and gets your result.")
	p.answer("Task 1 of 2", "75 um")
	p.waitFor("The course has your result so far.")
	assert.Equal(t, []string{"initialized"}, l.verbs())
	assert.Contains(t, l.state["spraywright-exercises"], `75 um`)
	assert.Equal(t, "preferences", l.state["asked"])
	p.shotWhole("course-cmi5")

	// The learner goes away and comes back.
	p.visit("scorm.html")
	assert.Eventually(t, func() bool { v := l.verbs(); return v[len(v)-1] == "terminated" }, patience, patience/100)
	l.again()
	p.visit("package/index.html?again&" + l.query())
	p.waitFor("Right")
	p.tap("#task-next")
	p.answer("Task 2 of 2", "100 um")
	p.waitFor("All tasks are answered, and the course has your result.")
	assert.Equal(t, []string{"initialized", "completed", "passed"}, l.verbs())
	p.tap("#course-leave")
	p.waitUntil("the course has the learner back", `location.pathname === "/scorm.html"`)
	assert.Equal(t, []string{"initialized", "completed", "passed", "terminated"}, l.verbs())
	assert.Equal(t, map[string]any{"scaled": 1., "raw": 2., "min": 0., "max": 2.}, at(l.statements[len(l.statements)-2], "result", "score"))

	// What is done is not said twice in a registration.
	l.again()
	p.visit("package/index.html?third&" + l.query())
	p.waitFor("All tasks are answered, and the course has your result.")
	p.tap("#course-leave")
	p.waitUntil("the course has the learner back", `location.pathname === "/scorm.html"`)
	assert.Equal(t, []string{"initialized", "terminated"}, l.verbs())
	assert.Empty(t, l.broken)
}

func TestACmi5CourseThatDoesNotJudge(t *testing.T) {
	s := servedFrom(t, unzipped(t, packageFor(t, "cmi5", courseSet)))
	l := startLRS(t, nil)
	p := open(t, s, "package/index.html?"+l.query(), phone)
	p.forgive("status of 404")
	p.answer("Task 1 of 2", "75 um")
	p.tap("#task-next")
	p.answer("Task 2 of 2", "1 um")
	p.waitFor("All tasks are answered, and the course has your result.")
	p.tap("#course-leave")
	p.waitFor("Done. You can close this window.")
	assert.Equal(t, []string{"initialized", "scored", "completed", "terminated"}, l.verbs())
	assert.Empty(t, l.broken)

	failed := startLRS(t, map[string]any{"masteryScore": 0.75})
	p.visit("package/index.html?" + failed.query())
	p.answer("Task 1 of 2", "75 um")
	p.tap("#task-next")
	p.answer("Task 2 of 2", "1 um")
	p.waitFor("All tasks are answered")
	assert.Equal(t, []string{"initialized", "completed", "failed"}, failed.verbs())
	assert.Empty(t, failed.broken)

	review := startLRS(t, map[string]any{"launchMode": "Review"})
	p.visit("package/index.html?" + review.query())
	p.answer("Task 1 of 2", "75 um")
	p.tap("#course-leave")
	p.waitFor("Done. You can close this window.")
	assert.Equal(t, []string{"initialized", "terminated"}, review.verbs())
	assert.Empty(t, review.broken)
}

// The page may ask the course it was started by, and nobody else.
func TestACmi5PackageAsksItsCourseAlone(t *testing.T) {
	s := servedFrom(t, unzipped(t, packageFor(t, "cmi5", courseSet)))
	l, other := startLRS(t, nil), startLRS(t, nil)
	p := open(t, s, "package/index.html?"+l.query(), phone)
	p.waitFor("The course keeps your answers and gets your result.")
	reached := func(address string) bool {
		return evaluate[bool](p, `fetch(`+quoted(address)+`, { method: "POST" }).then(() => true, () => false)`)
	}
	assert.True(t, reached(l.URL+"/token?k=1"))
	p.forgive("Content Security Policy", "net::ERR_", "Fetch API cannot load", "404")
	for _, address := range []string{other.URL + "/token", l.URL + "/elsewhere", "http://" + s.address + "/scorm.html"} {
		assert.False(t, reached(address), address)
	}

	p.visit("package/index.html?used&" + l.query())
	p.waitFor("This start of the exercises has been used. Open them from the course again.")
	agent := "&actor=" + url.QueryEscape(lrsActor) + "&registration=1&activityId=2"
	for _, strange := range []string{
		"endpoint=javascript:alert(1)&fetch=" + l.URL + agent, "endpoint=" + l.URL + "&fetch=data:,%7B%7D" + agent,
		"endpoint=" + l.URL + "&fetch=" + l.URL + "&actor=%7B&registration=1&activityId=2", "endpoint=x&fetch=" + l.URL + agent,
	} {
		p.visit("package/index.html?" + strange)
		p.waitFor("No course answers here, so that nothing is reported.")
	}
	p.waitFor("Work out: Wet film of one coat")
}
