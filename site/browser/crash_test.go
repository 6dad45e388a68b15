package browser

import (
	"crypto/sha256"
	"encoding/base64"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/site/compile"
)

// exchange puts another file in the place of one of a copied site, under the hash that the site knows it by from then on.
func (s *server) exchange(name string, text []byte) {
	s.t.Helper()
	path := filepath.Join(s.build.dist, name)
	old, err := os.ReadFile(path)
	require.NoError(s.t, err)
	require.NoError(s.t, os.WriteFile(path, text, 0o644))
	for _, list := range []string{"scripts/build.js", "sw.js"} {
		listed, err := os.ReadFile(filepath.Join(s.build.dist, list))
		if list == name || err != nil {
			continue
		}
		if next := strings.ReplaceAll(string(listed), sum(old), sum(text)); next != string(listed) && list == "sw.js" {
			require.NoError(s.t, os.WriteFile(filepath.Join(s.build.dist, list), []byte(next), 0o644))
		} else if next != string(listed) {
			s.exchange(list, []byte(next))
		}
	}
}

// sum is a file's hash as the site writes it down.
func sum(text []byte) string {
	hash := sha256.Sum256(text)
	return base64.StdEncoding.EncodeToString(hash[:])
}

// Whatever befalls the core, what was typed stands, one line says so, and the next number is answered.
func TestAFormStandsWhateverBefallsTheCore(t *testing.T) {
	s := serveCopy(t)
	dir := t.TempDir()
	require.NoError(t, compile.WASM(dir, "spraywright/site/browser/testdata/broken"))
	core, err := os.ReadFile(filepath.Join(dir, "broken"))
	require.NoError(t, err)
	s.exchange("job.wasm", core)
	p := open(t, s, "", phone)
	p.forgive("by the test", "goroutine", "out of memory", "exit code", "runtime", "fatal error", "Go program has already exited")
	half(p)
	kept := func() string { return evaluate[string](p, `localStorage.getItem("spraywright:form:job")`) }
	for _, fault := range []struct{ name, altitude, says string }{
		{"a panic", "4101", "The core did not answer. What you typed is kept"},
		{"a calculator's panic", "4102", "The calculator failed on these numbers. Change one of them; nothing you typed is lost."},
		{"no memory", "4103", "The core did not answer. What you typed is kept"},
		{"a stall", "4104", "The core did not answer. What you typed is kept"},
	} {
		begin := time.Now()
		p.enter("altitude", fault.altitude)
		p.waitFor(fault.says)
		assert.Equal(t, 1, evaluate[int](p, `document.querySelectorAll("#notices .notice").length + document.querySelectorAll("#gathered li").length`), "%s is told in one line", fault.name)
		assert.Equal(t, fault.altitude, p.value("altitude"), fault.name)
		assert.Equal(t, []string{"29", "72", "28,4"}, []string{p.value("air"), p.value("humidity"), p.value("panel")}, fault.name)
		assert.Contains(t, kept(), "altitude="+fault.altitude, fault.name)
		assert.False(t, p.sees("#verdict") && p.text("#verdict") != "", "an answer to other numbers is still shown after %s", fault.name)
		p.shot("crash-" + fault.altitude)
		t.Logf("%s: %v", fault.name, time.Since(begin))
		p.enter("altitude", "100")
		p.waitUntil("there is an answer again", `!document.body.classList.contains("stale")`)
		stands(p)
		evaluate[bool](p, `(document.querySelectorAll("#notices .notice").forEach((n) => n.remove()), true)`)
	}
}
