package browser

import (
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"reflect"
	"slices"
	"strings"
	"sync"
	"testing"

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
