package browser

import (
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// An lrs is a cmi5 course for tests with its store of statements and states, from the standard: cmi5, Quartz, 1st edition,
// sections 8 to 11, and Experience API 1.0.3 part 3. It notes what breaks a rule.
type lrs struct {
	*httptest.Server
	mu         sync.Mutex
	given      bool // the token
	over       bool
	state      map[string]string
	statements []map[string]any
	session    int // the statement that began this session
	broken     []string
	refuses    map[string]int // what is asked for, a verb or the name of a state, and the status that answers it
	loses      string         // the verb that is taken in and answered as if it had not been
	holds      string         // the next state with this text in it waits for held
	held       chan bool
}

const (
	lrsRegistration = "0a1b2c3d-0000-4000-8000-0123456789ab"
	lrsActivity     = "https://course.invalid/activities/films"
	lrsActor        = `{"objectType":"Agent","account":{"homePage":"https://course.invalid","name":"learner-1"}}`
	lrsSession      = "session-1"
	lrsToken        = "bGVhcm5lcjpzZWNyZXQ="
	ofCmi5          = "https://w3id.org/xapi/cmi5/context/"
)

// startLRS starts a course; launch are properties of its LMS.LaunchData besides the template.
func startLRS(t *testing.T, launch map[string]any) *lrs {
	l := &lrs{state: map[string]string{}, held: make(chan bool)}
	data := map[string]any{"launchMode": "Normal", "moveOn": "Completed", "contextTemplate": map[string]any{
		"contextActivities": map[string]any{"grouping": []any{map[string]any{"id": "urn:publisher"}}},
		"extensions":        map[string]any{ofCmi5 + "extensions/sessionid": lrsSession},
	}}
	for k, v := range launch {
		data[k] = v
	}
	text, err := json.Marshal(data)
	require.NoError(t, err)
	l.state["LMS.LaunchData"] = string(text)
	l.Server = httptest.NewServer(http.HandlerFunc(l.serve))
	t.Cleanup(l.Close)
	return l
}

// query is what the course puts behind the address of the package's page.
func (l *lrs) query() string {
	return url.Values{"endpoint": {l.URL + "/xapi"}, "fetch": {l.URL + "/token?k=1"}, "actor": {lrsActor}, "registration": {lrsRegistration}, "activityId": {lrsActivity}}.Encode()
}

// again lets the same learner start once more.
func (l *lrs) again() {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.given, l.over, l.session = false, false, len(l.statements)
}

// set changes what the course does next.
func (l *lrs) set(change func()) {
	l.mu.Lock()
	defer l.mu.Unlock()
	change()
}

func (l *lrs) breaks(format string, args ...any) {
	l.broken = append(l.broken, fmt.Sprintf(format, args...))
}

func (l *lrs) serve(w http.ResponseWriter, r *http.Request) {
	l.mu.Lock()
	defer l.mu.Unlock()
	w.Header().Set("Access-Control-Allow-Origin", "*")
	w.Header().Set("Access-Control-Allow-Methods", "GET, PUT, POST")
	w.Header().Set("Access-Control-Allow-Headers", "Authorization, Content-Type, X-Experience-API-Version")
	if r.Method == http.MethodOptions {
		return
	}
	if r.URL.Path == "/token" {
		l.token(w, r)
		return
	}
	if r.Header.Get("Authorization") != "Basic "+lrsToken || r.Header.Get("X-Experience-API-Version") != "1.0.3" {
		l.breaks("%s %s without the token or the version", r.Method, r.URL.Path)
		http.Error(w, "no", http.StatusUnauthorized)
		return
	}
	switch r.URL.Path {
	case "/xapi/activities/state":
		l.document(w, r)
	case "/xapi/agents/profile":
		if q := r.URL.Query(); q.Get("profileId") != "cmi5LearnerPreferences" || q.Get("agent") != lrsActor {
			l.breaks("the preferences are asked for by %s", r.URL.RawQuery)
		}
		l.state["asked"] = "preferences"
		http.Error(w, "none", http.StatusNotFound)
	case "/xapi/statements":
		l.statement(w, r)
	default:
		l.breaks("there is no %s", r.URL.Path)
		http.Error(w, "no", http.StatusNotFound)
	}
}

// token gives the token once (8.2).
func (l *lrs) token(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("Content-Type", "application/json")
	switch {
	case r.Method != http.MethodPost:
		l.breaks("the token is asked for by %s", r.Method)
	case l.given:
		io.WriteString(w, `{"error-code":"1","error-text":"The authorization token has already been returned."}`)
	default:
		l.given = true
		fmt.Fprintf(w, `{"auth-token":%q}`, lrsToken)
	}
}

// document is the State API (Experience API 1.0.3, part 3, 2.3).
func (l *lrs) document(w http.ResponseWriter, r *http.Request) {
	q := r.URL.Query()
	id := q.Get("stateId")
	if q.Get("activityId") != lrsActivity || q.Get("agent") != lrsActor || q.Get("registration") != lrsRegistration || id == "" {
		l.breaks("a state is asked for by %s", r.URL.RawQuery)
	}
	switch r.Method {
	case http.MethodGet:
		text, has := l.state[id]
		if !has {
			http.Error(w, "none", http.StatusNotFound)
			return
		}
		w.Header().Set("Content-Type", "application/json")
		io.WriteString(w, text)
	case http.MethodPut:
		text, _ := io.ReadAll(r.Body)
		if l.holds != "" && strings.Contains(string(text), l.holds) {
			l.holds = ""
			l.mu.Unlock()
			<-l.held
			l.mu.Lock()
		}
		if status := l.refuses[id]; status != 0 {
			w.WriteHeader(status)
			return
		}
		if id == "LMS.LaunchData" || l.over {
			l.breaks("%s is written", id)
		}
		if !json.Valid(text) || r.Header.Get("Content-Type") != "application/json" {
			l.breaks("the state %s is no JSON: %s", id, text)
		}
		l.state[id] = string(text)
		w.WriteHeader(http.StatusNoContent)
	default:
		l.breaks("a state is asked for by %s", r.Method)
	}
}

func (l *lrs) statement(w http.ResponseWriter, r *http.Request) {
	text, _ := io.ReadAll(r.Body)
	var s map[string]any
	if err := json.Unmarshal(text, &s); err != nil || r.Method != http.MethodPut || r.URL.Query().Get("statementId") != s["id"] {
		l.breaks("%s is no statement: %v", text, err)
		http.Error(w, "no", http.StatusBadRequest)
		return
	}
	verb, same := verbOf(s), func(old map[string]any) bool { return old["id"] == s["id"] }
	switch i := slices.IndexFunc(l.statements, same); {
	case l.refuses[verb] != 0:
		w.WriteHeader(l.refuses[verb])
		return
	case i >= 0 && !reflect.DeepEqual(l.statements[i], s): // Experience API 1.0.3, part 3, 2.1.1
		w.WriteHeader(http.StatusConflict)
		return
	case i < 0:
		l.statements = append(l.statements, s)
		l.check(s)
	}
	if l.loses == verb {
		l.loses = ""
		w.WriteHeader(http.StatusInternalServerError)
		return
	}
	w.WriteHeader(http.StatusNoContent)
}

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
