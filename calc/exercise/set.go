package exercise

import (
	"slices"
	"strconv"
	"strings"

	"spraywright/calc"
)

// A Set is a list of exercises, as a link holds it:
//
//	title=…  note=…         what stands above it
//	tasks=6                 how many tasks there are; the exercises come in turn
//	seed=7                  for all learners the same numbers; without it each learner has other ones
//	pass=80                 percent of the tasks that must be right in a course package
//	level, units, right, close   for every exercise that does not say otherwise
//	q.1.of=wet-film         the calculator of the first exercise
//	q.1.ask=wet_film  …     and its settings
type Set struct {
	ID       string // the same for the same set
	Name     string // the same as an IRI that no other set has (urn:uuid)
	Seed     string // blank where each learner has one
	Pass     string // percent of the tasks that must be right, blank where nobody has to pass
	Mastery  string // that as a share
	Tasks    []SetTask
	Problems calc.Problems
}

// A SetTask is one task of a set.
type SetTask struct {
	_   [0]func()
	Of  string // the calculator
	Row string // the exercise that it is of, "q.1."; its settings follow this in the link
}

// The most exercises and tasks that a set may have, and bytes of its title and note.
const (
	exercisesMost = 30
	tasksMost     = 60
	wordsMost     = 2000
)

// ofSet are the keys of a link that are no exercise's.
const ofSet = " title note tasks seed pass level units right close "

// ReadSet reads a link.
func ReadSet(l calc.Language, link calc.Form) *Set {
	s := &Set{Seed: link["seed"]}
	t := &Task{Language: l}
	id, second := uint64(0), uint64(0)
	var strange []string
	for key, text := range link {
		id += hash(key, text)
		second += mix(hash(text, key))
		if !strings.HasPrefix(key, "q.") && !strings.Contains(ofSet, " "+key+" ") {
			strange = append(strange, key)
		}
	}
	slices.SortFunc(strange, strings.Compare) // a map has no order
	for _, key := range strange {
		t.problem("", calc.NotOffered, "The link has “{text}”, which no set of exercises has", "Ask for the link again", key)
	}
	s.ID, s.Name = strconv.FormatUint(id>>20, 36), name(id, second)
	rows := link.Rows("q")
	n := len(rows)
	if text := link["tasks"]; text != "" {
		x, ok := calc.ReadNumber(text)
		if n = int(x); !ok || x < 1 || x > tasksMost || x != float64(n) {
			n = 0
			t.problem("tasks", calc.NotNumber, "“{text}” is no number of tasks", "Enter a whole number from 1 to 60", text)
		}
	}
	if text := link["pass"]; text != "" {
		x, ok := calc.ReadNumber(text)
		if s.Pass, s.Mastery = short(x), short(x/100); !ok || x < 1 || x > 100 || x != float64(int(x)) {
			t.problem("pass", calc.NotNumber, "“{text}” is no share of the tasks", "Enter a whole number from 1 to 100", text)
		}
	}
	switch {
	case len(rows) == 0:
		t.problem("", calc.Missing, "This link holds no exercises", "Ask for it again, or make a set yourself", "")
	case len(rows) > exercisesMost:
		t.problem("", calc.TooMany, "A set holds at most 30 exercises", "Make two sets of it", "")
	case len(link["title"])+len(link["note"]) > wordsMost:
		t.problem("title", calc.TooLong, "The title or the note is too long", "Shorten it", "")
	}
	for i, row := range rows {
		if row = "q." + row + "."; link[row+"of"] == "" {
			t.problem(row+"of", calc.Missing, "Exercise {text} names no calculator", "Choose one", strconv.Itoa(i+1))
		}
	}
	if s.Problems = t.Problems; s.Problems == nil {
		for i := range n {
			row := "q." + rows[i%len(rows)] + "."
			s.Tasks = append(s.Tasks, SetTask{Of: link[row+"of"], Row: row})
		}
	}
	return s
}

// JSON writes the set for the page.
func (s *Set) JSON() string {
	return calc.WriteJSON(func(w calc.JSON) {
		w.Problems(s.Problems)
		w.Text("id", s.ID)
		w.Text("name", s.Name)
		w.Text("seed", s.Seed)
		w.Text("pass", s.Pass)
		w.Text("mastery", s.Mastery)
		w.List("tasks", len(s.Tasks), func(i int) {
			w.Text("of", s.Tasks[i].Of)
			w.Text("row", s.Tasks[i].Row)
		})
	})
}
