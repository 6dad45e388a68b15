package browser

import "testing"

// A set open in two tabs keeps the answers given in both.
func TestASetIsDoneInTwoTabs(t *testing.T) {
	const set = "exercises.html#seed=1&tasks=2&q.1.of=wet-film&q.1.dry_film=60&q.1.coats=2&q.1.volume_solids=40&q.1.solids_for=mix"
	p := open(t, serve(t), set, phone)
	p.waitFor("Work out: Wet film of one coat")
	q := p.beside(set)
	q.waitFor("Work out: Wet film of one coat")
	q.tap("#tasks li:nth-child(2) button")
	q.waitIn("#task-number", "Task 2 of 2")
	q.enter("answer", "75")
	q.tap("#task-form .action")
	q.waitIn("#task-result", "Right")
	p.front()
	p.waitUntil("the other tab's answer is seen", `document.querySelector("#tasks .mark-right") !== null`)
	p.enter("answer", "150")
	p.tap("#task-form .action")
	p.waitIn("#task-result", "Off")
	q.front()
	q.waitUntil("the other tab's answer is seen here too", `document.querySelector("#tasks .mark-off") !== null`)
	q.reload()
	q.tap("#slip-show")
	q.waitIn("#slip", "1 right, 0 close, 1 off; 2 of 2 answered")
}
