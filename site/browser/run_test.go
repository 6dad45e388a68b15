package browser

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/menu"
)

// A request is one line that run.mjs reads.
type request struct {
	ID   string    `json:"id"`
	Form calc.Form `json:"form"`
}

// runCores puts lines through the built site's cores in node.
func runCores(t *testing.T, lines []byte) ([]byte, error) {
	t.Helper()
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("no node here: version 18 or later runs the compiled cores outside a browser")
	}
	b, err := built()
	require.NoError(t, err)
	cmd := exec.Command(node, "../../testdata/run.mjs", b.dist)
	cmd.Stdin = bytes.NewReader(lines)
	return cmd.Output()
}

// What the compiled cores answer is what the same Go answers here.
func TestTheCoresAnswerAsTheProgramDoes(t *testing.T) {
	demo, err := os.ReadFile("../../testdata/demo/job.txt")
	require.NoError(t, err)
	requests := []request{
		{"job", calc.ParseForm(string(demo))},
		{"job", calc.Form{}},
		{"wet-film", calc.Form{"dry_film": "damp", "coats": "1.5", "volume_solids": "4 5 %", "volume_solids.unit": "°"}},
		{"wet-film", calc.Form{"dry_film": "3", "dry_film.unit": "mil", "volume_solids": "45", "coats": "2", "units": "us"}},
	}
	for _, core := range menu.Cores() {
		for _, topic := range core.Topics {
			for _, c := range topic.Calculators() {
				requests = append(requests, request{c.ID, c.ExampleForm()})
			}
		}
	}
	unknown := "no-such-calculator"
	var lines bytes.Buffer
	for _, r := range append(requests, request{unknown, calc.Form{"air": "22"}}) {
		require.NoError(t, json.NewEncoder(&lines).Encode(r))
	}
	reports, err := runCores(t, lines.Bytes())
	require.NoError(t, err)
	answers := bufio.NewScanner(bytes.NewReader(reports))
	answers.Buffer(nil, 1<<24)
	for _, r := range requests {
		require.True(t, answers.Scan(), "no report for %s", r.ID)
		assert.Empty(t, difference("report", parsed(t, menu.Find(r.ID).Run(r.Form).JSON()), parsed(t, answers.Text())), "%s on %s", r.ID, r.Form)
	}
	require.True(t, answers.Scan())
	assert.Equal(t, calc.Language{}.Trouble(unknown, "There is no calculator of that name here", "Choose one from the menu").JSON(), answers.Text())
	assert.False(t, answers.Scan(), "more reports than requests: %s", answers.Text())
}

func TestALineThatIsNoRequestStopsTheRun(t *testing.T) {
	for _, line := range []string{"wet-film", `{"id":"wet-film"}`, `{"form":{}}`} {
		reports, err := runCores(t, []byte(line+"\n"))
		var exit *exec.ExitError
		require.ErrorAs(t, err, &exit, line)
		assert.Equal(t, 2, exit.ExitCode(), line)
		assert.Contains(t, string(exit.Stderr), "run.mjs: line 1 ", line)
		assert.Empty(t, reports, line)
	}
}

// difference says where two reports differ, or nothing. Numbers may by a share of 1e-9: the last bit of an exponential
// or a power is not the same on every processor.
func difference(at string, want, got any) string {
	switch w := want.(type) {
	case float64:
		if g, ok := got.(float64); ok && math.Abs(w-g) <= 1e-9*math.Abs(w) {
			return ""
		}
	case []any:
		if g, ok := got.([]any); ok && len(g) == len(w) {
			for i := range w {
				if says := difference(fmt.Sprintf("%s[%d]", at, i), w[i], g[i]); says != "" {
					return says
				}
			}
			return ""
		}
	case map[string]any:
		if g, ok := got.(map[string]any); ok && len(g) == len(w) {
			for key := range w {
				if says := difference(at+"."+key, w[key], g[key]); says != "" {
					return says
				}
			}
			return ""
		}
	}
	if assert.ObjectsAreEqual(want, got) {
		return ""
	}
	return fmt.Sprintf("%s is %v, expected %v", at, got, want)
}

func parsed(t *testing.T, report string) (value any) {
	t.Helper()
	require.NoError(t, json.Unmarshal([]byte(report), &value))
	return value
}
