package exercise

import (
	"math"
	"strconv"

	"spraywright/calc"
)

// A Score is how a set stands in the terms of a course: how many tasks of all were right at the first answer.
type Score struct {
	Right, Tasks int
	Scaled       float64 // the share that is right, 0 to 1, to four decimals as courses compare it
	Mastery      float64 // the share that it takes to pass; 0 where nobody has set one
}

// Passed reports whether the score is enough. Courses compare the rounded share with the one that it takes, so that this
// does as well.
func (s Score) Passed() bool { return s.Scaled >= s.Mastery }

// ReadScore reads right=2&tasks=3 and, where there is a share to pass, mastery=0.8 or pass=80, which is in percent; the
// first of the two counts. ok is false where these are no counts.
func ReadScore(form calc.Form) (s Score, ok bool) {
	right, ok1 := calc.ReadNumber(form["right"])
	tasks, ok2 := calc.ReadNumber(form["tasks"])
	if !ok1 || !ok2 || tasks < 1 || tasks > tasksMost || right < 0 || right > tasks || right != math.Floor(right) || tasks != math.Floor(tasks) {
		return s, false
	}
	s.Right, s.Tasks, s.Scaled = int(right), int(tasks), math.Round(1e4*right/tasks)/1e4
	if x, given := calc.ReadNumber(form["mastery"]); given && x >= 0 && x <= 1 {
		s.Mastery = x
	} else if x, given := calc.ReadNumber(form["pass"]); given && x >= 0 && x <= 100 {
		s.Mastery = x / 100
	}
	return s, true
}

// ScoreJSON writes a score for the page: numbers as an xAPI score has them, and in percent as the text that a SCORM course
// takes. It is empty where the form holds none.
func ScoreJSON(form calc.Form) string {
	return calc.WriteJSON(func(w calc.JSON) {
		s, ok := ReadScore(form)
		if !ok {
			return
		}
		w.Number("right", float64(s.Right))
		w.Number("tasks", float64(s.Tasks))
		w.Number("scaled", s.Scaled)
		w.Text("percent", short(100*s.Scaled))
		if s.Mastery > 0 {
			w.Number("mastery", s.Mastery)
			passed := "no"
			if s.Passed() {
				passed = "yes"
			}
			w.Text("passed", passed)
		}
	})
}

// short writes a number of at most four decimals with no more than it needs.
//
//go:noinline
func short(x float64) string { return strconv.FormatFloat(math.Round(x*1e4)/1e4, 'f', -1, 64) }

// name is a UUID made of two numbers: version 8, "custom", of RFC 9562, 5.8.
func name(a, b uint64) string {
	const hex = "0123456789abcdef"
	a = a&^(15<<12) | 8<<12
	b = b&^(3<<62) | 2<<62
	text := make([]byte, 0, 36)
	for i := range 32 {
		if i == 8 || i == 12 || i == 16 || i == 20 {
			text = append(text, '-')
		}
		half := a
		if i > 15 {
			half = b
		}
		text = append(text, hex[half>>(60-4*(i%16))&15])
	}
	return "urn:uuid:" + string(text)
}
