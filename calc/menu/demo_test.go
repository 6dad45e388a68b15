package menu_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/menu"
)

// demo is the invented job, one key=value a line as in a link.
func demo(t testing.TB) calc.Form {
	text, err := os.ReadFile("../../testdata/demo/job.txt")
	if err != nil {
		t.Fatal(err)
	}
	var pairs []string
	for line := range strings.Lines(string(text)) {
		if !strings.HasPrefix(line, "#") {
			pairs = append(pairs, strings.TrimSpace(line))
		}
	}
	return calc.ParseForm(strings.Join(pairs, "&"))
}

func TestTheDemoJobIsAnswered(t *testing.T) {
	job := menu.Find("job")
	form := demo(t)
	r := job.Run(form)
	assert.Empty(t, r.Problems)
	assert.NotEmpty(t, r.Verdict)
	for key := range form {
		key = strings.TrimSuffix(key, ".unit")
		assert.NotNil(t, job.Input(withoutRow(key)), "the job has no %s", key)
	}
	assert.Equal(t, form, calc.ParseForm(form.String()), "the job survives being a link")
}

// One recalculation, from the link to what the page is sent.
func BenchmarkJob(b *testing.B) {
	job, link := menu.Find("job"), demo(b).String()
	b.ReportAllocs()
	for b.Loop() {
		job.Run(calc.ParseForm(link)).JSON()
	}
}

func BenchmarkExamples(b *testing.B) {
	for _, topic := range menu.Topics() {
		for _, c := range topic.Calculators() {
			b.Run(c.ID, func(b *testing.B) {
				form := c.ExampleForm()
				for b.Loop() {
					c.Run(form).JSON()
				}
			})
		}
	}
}
