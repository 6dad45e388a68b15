package menu_test

import (
	"regexp"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/menu"
)

var (
	keyForm = regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)
	idForm  = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)
)

func TestTheMenuHasNothingTwice(t *testing.T) {
	seen := map[calc.Phrase]bool{}
	once := func(kind string, s calc.Phrase) {
		assert.False(t, seen[calc.Phrase(kind)+s], "%s %q stands twice", kind, s)
		assert.NotEmpty(t, s, "a %s is blank", kind)
		seen[calc.Phrase(kind)+s] = true
	}
	for _, topic := range menu.Topics() {
		once("topic", calc.Phrase(topic.ID))
		if topic.Listed() {
			once("topic title", topic.Title)
		}
		assert.NotEmpty(t, topic.Makers, "topic %s is empty", topic.ID)
		for _, c := range topic.Calculators() {
			once("calculator", calc.Phrase(c.ID))
			once("title", c.Title)
			once("question", c.Question)
			assert.Regexp(t, idForm, c.ID)
			assert.Equal(t, c.Title, menu.Find(c.ID).Title, "%s is listed under another ID", c.ID)
		}
	}
	assert.Nil(t, menu.Find("no such calculator"))
}

func TestDescriptionsAreComplete(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		assert.True(t, strings.HasSuffix(string(c.Question), "?"), "the question %q asks nothing", c.Question)
		assert.True(t, strings.HasSuffix(string(c.Range), "."), "the range %q must be a sentence", c.Range)
		assert.NotEmpty(t, c.Outputs)
		for _, s := range c.Cautions {
			assert.True(t, strings.HasSuffix(string(s), "."), "the caution %q must be a sentence", s)
		}
		describeInputs(t, c.Inputs)
		for _, in := range c.Inputs {
			assert.Nil(t, c.Output(in.Key), "%s is asked for and answered", in.Key)
		}
		describeOutputs(t, c.Outputs)
		r := c.Run(c.ExampleForm())
		assert.Empty(t, r.Problems, "the example has problems")
	})
}

func describeInputs(t *testing.T, ins []calc.Input) {
	earlier := map[string]*calc.Input{}
	for i := range ins {
		in := &ins[i]
		assert.Regexp(t, keyForm, in.Key)
		assert.Nil(t, earlier[in.Key], "%s is asked for twice", in.Key)
		assert.False(t, in.Key == "unit" || in.Key == "units", "%s means something else in a form", in.Key)
		sentenceCase(t, in.Key, string(in.Label))
		if in.Rows == nil {
			assert.NotEmpty(t, in.Help, "%s has no help", in.Key)
		}
		assert.False(t, strings.HasSuffix(string(in.Help), "."), "%s: the help ends with a full stop", in.Key)
		if in.When != nil {
			asked := earlier[in.When.Key]
			if assert.NotNil(t, asked, "%s is asked under %s, which must come before it in the list", in.Key, in.When.Key) {
				assert.Subset(t, choiceKeys(asked), in.When.In, "%s", in.Key)
			}
		}
		describeKind(t, in)
		describeInputs(t, in.Rows)
		earlier[in.Key] = in
	}
}

// describeKind looks at what only a number, a choice or words have.
func describeKind(t *testing.T, in *calc.Input) {
	switch {
	case in.Choices != nil:
		seen := map[string]bool{}
		for _, ch := range in.Choices {
			assert.Regexp(t, idForm, ch.Key, in.Key)
			assert.False(t, seen[ch.Key] || seen[string(ch.Label)] || ch.Label == "", "%s: the choice %q stands twice or has no label", in.Key, ch.Key)
			seen[ch.Key], seen[string(ch.Label)] = true, true
		}
	case in.Unit != 0:
		assert.True(t, in.Limits.Min < in.Limits.Max, "%s: the limits leave nothing", in.Key)
		assert.True(t, in.Limits.Min <= in.Example && in.Example <= in.Limits.Max, "%s: the example %v is outside the limits", in.Key, in.Example)
		for _, u := range in.Offered {
			assert.Equal(t, in.Unit.Quantity(), u.Quantity(), "%s offers %s", in.Key, u.ID())
		}
	case in.Rows == nil:
		if !in.Optional {
			assert.NotEmpty(t, in.Words, "%s has no example", in.Key)
		}
		if in.Check != nil && in.Words != "" {
			assert.Nil(t, in.Check(in.Words), "%s: the example %q is refused", in.Key, in.Words)
		}
	}
}

func choiceKeys(in *calc.Input) []string {
	keys := make([]string, len(in.Choices))
	for i, ch := range in.Choices {
		keys[i] = ch.Key
	}
	return keys
}

func describeOutputs(t *testing.T, outs []calc.Output) {
	seen := map[string]bool{}
	for _, out := range outs {
		assert.Regexp(t, keyForm, out.Key)
		assert.False(t, seen[out.Key], "%s is answered twice", out.Key)
		seen[out.Key] = true
		sentenceCase(t, out.Key, string(out.Label))
		kinds := 0
		for _, is := range []bool{out.Unit != 0, out.Words, out.Columns != nil} {
			if is {
				kinds++
			}
		}
		assert.Equal(t, 1, kinds, "%s must be a number with a unit, words, or a list", out.Key)
		describeOutputs(t, out.Columns)
	}
}

func sentenceCase(t *testing.T, key, label string) {
	assert.NotEmpty(t, label, "%s has no label", key)
	assert.False(t, strings.HasSuffix(label, ":") || strings.HasSuffix(label, "."), "%s: the label %q ends with a colon or a full stop", key, label)
	assert.Equal(t, strings.TrimSpace(label), label, key)
	first, _ := utf8.DecodeRuneInString(label)
	assert.False(t, unicode.IsLower(first), "%s: the label %q cannot begin a sentence", key, label)
}
