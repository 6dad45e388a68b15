package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// What the course took in without our hearing of it is sent again as the same statement; what it refused is sent later, in
// another session if need be.
func TestACmi5CourseHearsEachThingOnce(t *testing.T) {
	s := servedFrom(t, unzipped(t, packageFor(t, "cmi5", courseSet+"&pass=60")))
	l := startLRS(t, map[string]any{"masteryScore": 0.6})
	p := open(t, s, "package/index.html?"+l.query(), phone)
	p.forgive("status of")
	p.answer("Task 1 of 2", "75 um")
	p.waitFor("The course has your result so far.")
	l.set(func() { l.loses, l.refuses = "completed", map[string]int{"passed": 503} })
	p.tap("#task-next")
	p.answer("Task 2 of 2", "100 um")
	p.waitFor("The course refused completed: 500.")
	p.tap("#course-leave")
	p.waitFor("The course refused passed: 503.")
	assert.Equal(t, []string{"initialized", "completed"}, l.verbs())
	p.visit("scorm.html")
	assert.Eventually(t, func() bool { v := l.verbs(); return v[len(v)-1] == "terminated" }, patience, patience/100)

	l.again()
	l.set(func() { l.refuses = nil })
	p.visit("package/index.html?again&" + l.query())
	p.waitFor("All tasks are answered, and the course has your result.")
	assert.Equal(t, []string{"initialized", "passed"}, l.verbs())

	// Where it refuses the end, the learner can leave once more.
	l.set(func() { l.refuses = map[string]int{"terminated": 503} })
	p.tap("#course-leave")
	p.waitFor("The course refused terminated: 503.")
	l.set(func() { l.refuses = nil })
	p.tap("#course-leave")
	p.waitFor("Done. You can close this window.")
	assert.Equal(t, []string{"initialized", "passed", "terminated"}, l.verbs())
	assert.Empty(t, l.broken)
}

// The page can go while something is on its way, and a browser can bring it back as it was.
func TestACmi5CourseHearsNothingAfterTheEnd(t *testing.T) {
	s := servedFrom(t, unzipped(t, packageFor(t, "cmi5", courseSet)))
	l := startLRS(t, nil)
	p := open(t, s, "package/index.html?"+l.query(), phone)
	p.forgive("status of 404")
	p.answer("Task 1 of 2", "75 um")
	p.waitFor("The course has your result so far.")
	p.tap("#task-next")
	l.set(func() { l.holds = `"scored"` })
	p.answer("Task 2 of 2", "1 um")
	assert.Eventually(t, func() (waits bool) { l.set(func() { waits = l.holds == "" }); return waits }, patience, patience/100)
	evaluate[bool](p, `dispatchEvent(new PageTransitionEvent("pagehide"))`)
	assert.Eventually(t, func() bool { return len(l.verbs()) == 2 }, patience, patience/100)
	l.set(func() { l.over = false }) // what is on its way when the page goes may still come
	l.held <- true
	p.waitFor("The exercises have been left already.")
	assert.Equal(t, []string{"initialized", "terminated"}, l.verbs())
	assert.Empty(t, l.broken)
	evaluate[bool](p, `dispatchEvent(new PageTransitionEvent("pageshow", { persisted: true }))`)
	p.waitFor("This start of the exercises has been used. Open them from the course again.")
	assert.NotContains(t, p.text("#course-says"), "your result")
}
