package browser

import (
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"time"
)

var uuidForm = regexp.MustCompile(`^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$`)

func at(v any, path ...string) any {
	for _, key := range path {
		m, _ := v.(map[string]any)
		v = m[key]
	}
	return v
}

func verbOf(s map[string]any) string {
	id, _ := at(s, "verb", "id").(string)
	return strings.TrimPrefix(id, "http://adlnet.gov/expapi/verbs/")
}

// verbs are those of this session, in order.
func (l *lrs) verbs() (all []string) {
	l.mu.Lock()
	defer l.mu.Unlock()
	for _, s := range l.statements[l.session:] {
		all = append(all, verbOf(s))
	}
	return all
}

// check holds a statement, which is the last, to sections 9.1 to 9.7.
func (l *lrs) check(s map[string]any) {
	verb := verbOf(s)
	here := l.statements[l.session:]
	var before []string
	for _, e := range l.statements[:len(l.statements)-1] {
		before = append(before, verbOf(e))
	}
	id, _ := s["id"].(string)
	when, _ := s["timestamp"].(string)
	stamp, err := time.Parse(time.RFC3339Nano, when)
	switch {
	case !uuidForm.MatchString(id):
		l.breaks("%s has the id %q", verb, id)
	case err != nil || !strings.HasSuffix(when, "Z"):
		l.breaks("%s has the timestamp %q", verb, when)
	case (len(here) == 1) != (verb == "initialized"):
		l.breaks("%s is number %d of its session", verb, len(here))
	case l.over:
		l.breaks("%s comes after terminated", verb)
	case verb == "completed" && slices.Contains(before, "completed"), verb == "passed" && slices.Contains(before, "passed"), verb == "failed" && slices.Contains(before, "passed"):
		l.breaks("%s comes twice or too late in the registration", verb)
	}
	if len(here) > 1 {
		if last, _ := time.Parse(time.RFC3339Nano, here[len(here)-2]["timestamp"].(string)); !stamp.After(last) {
			l.breaks("%s is not after the statement before it", verb)
		}
	}
	if actor, _ := json.Marshal(s["actor"]); !sameJSON(actor, lrsActor) {
		l.breaks("%s has the actor %s", verb, actor)
	}
	if at(s, "object", "id") != lrsActivity || at(s, "context", "registration") != lrsRegistration || at(s, "context", "extensions", ofCmi5+"extensions/sessionid") != lrsSession {
		l.breaks("%s lacks its object, registration or session", verb)
	}
	if grouping, _ := at(s, "context", "contextActivities", "grouping").([]any); len(grouping) != 1 || at(grouping[0], "id") != "urn:publisher" {
		l.breaks("%s lacks what the template has", verb)
	}
	l.checkResult(s, verb)
	l.over = l.over || verb == "terminated"
}

func sameJSON(got []byte, want string) bool {
	var a, b any
	return json.Unmarshal(got, &a) == nil && json.Unmarshal([]byte(want), &b) == nil && fmt.Sprint(a) == fmt.Sprint(b)
}

// checkResult holds the result and the categories to sections 9.5 and 9.6.2.
func (l *lrs) checkResult(s map[string]any, verb string) {
	var categories []string
	list, _ := at(s, "context", "contextActivities", "category").([]any)
	for _, c := range list {
		id, _ := at(c, "id").(string)
		categories = append(categories, strings.TrimPrefix(id, ofCmi5+"categories/"))
	}
	want := map[string][]string{"initialized": {"cmi5"}, "terminated": {"cmi5"}, "completed": {"cmi5", "moveon"}, "passed": {"cmi5", "moveon"}, "failed": {"cmi5", "moveon"}}[verb]
	if !slices.Equal(categories, want) {
		l.breaks("%s is of %v", verb, categories)
	}
	time, _ := at(s, "result", "duration").(string)
	if timed := want != nil && verb != "initialized"; timed && !regexp.MustCompile(`^PT\d+\.\d\dS$`).MatchString(time) {
		l.breaks("%s took %q", verb, time)
	}
	if at(s, "result", "completion") != map[string]any{"completed": true}[verb] || at(s, "result", "success") != map[string]any{"passed": true, "failed": false}[verb] {
		l.breaks("%s has the result %v", verb, s["result"])
	}
	score, scored := at(s, "result", "score").(map[string]any)
	judged := verb == "passed" || verb == "failed"
	if scored && want != nil && !judged {
		l.breaks("%s has a score", verb)
	}
	if judged {
		mastery, _ := at(s, "context", "extensions", ofCmi5+"extensions/masteryscore").(float64)
		scaled, _ := score["scaled"].(float64)
		if (scaled >= mastery) != (verb == "passed") || scaled < 0 || scaled > 1 {
			l.breaks("%s with %v where it takes %v", verb, scaled, mastery)
		}
	}
	if scored {
		raw, _ := score["raw"].(float64)
		low, _ := score["min"].(float64)
		high, _ := score["max"].(float64)
		if raw != float64(int(raw)) || raw < low || raw > high {
			l.breaks("%s has the score %v", verb, score)
		}
	}
}
