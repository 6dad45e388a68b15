package menu_test

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/check"
)

// A place is one input, or one cell in the first row of a table, and a form that asks for it.
type place struct {
	field string
	in    calc.Input
	form  calc.Form
}

// places lists every place of a calculator's form.
func places(c *calc.Calculator) []place {
	var ps []place
	var list func(prefix string, ins []calc.Input)
	list = func(prefix string, ins []calc.Input) {
		for _, in := range ins {
			form := c.ExampleForm()
			ask(form, prefix, ins, in)
			check.Complete(c, form)
			ps = append(ps, place{prefix + in.Key, in, form})
			if in.Rows != nil {
				list(prefix+in.Key+".1.", in.Rows)
			}
		}
	}
	list("", c.Inputs)
	return ps
}

// ask makes the choices that an input is asked under.
func ask(form calc.Form, prefix string, ins []calc.Input, in calc.Input) {
	if in.When == nil {
		return
	}
	form[prefix+in.When.Key] = in.When.In[0]
	for _, asked := range ins {
		if asked.Key == in.When.Key {
			ask(form, prefix, ins, asked)
		}
	}
}

// wrong lists what people and links may put into a box, and the problem it has to be.
func wrong(in calc.Input) map[string]calc.Code {
	megabyte := strings.Repeat("x", 1<<20)
	switch {
	case in.Rows != nil:
		return nil
	case in.Choices != nil:
		return map[string]calc.Code{"damp": calc.NotOffered, "🎨": calc.NotOffered, "{label}": calc.NotOffered, megabyte: calc.TooLong}
	case in.Unit == 0:
		return map[string]calc.Code{megabyte: calc.TooLong}
	}
	return map[string]calc.Code{
		"damp": calc.NotNumber, "-1e12": calc.NotNumber, "1e12": calc.NotNumber, "NaN": calc.NotNumber, "-Inf": calc.NotNumber, "0x10": calc.NotNumber,
		"🎨": calc.NotNumber, "5 parsec": calc.NotNumber, "<b>": calc.NotNumber, "1 250": calc.NotNumber,
		"-1000000000000": calc.TooLow, "1000000000000": calc.TooHigh, "1,250": calc.Unclear, "1,000,000": calc.Unclear, megabyte: calc.TooLong,
	}
}

func TestProblemsNameTheFieldAndTheFix(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, p := range places(c) {
			for text, code := range wrong(p.in) {
				expect(t, c, p, p.field, text, code)
			}
			if p.in.Unit != 0 {
				expect(t, c, p, p.field+".unit", "parsec", calc.NotOffered)
				expect(t, c, p, p.field+".unit", strings.Repeat("x", 1<<20), calc.NotOffered)
			}
			if !p.in.Optional && !p.in.Prefill && p.in.Rows == nil {
				expect(t, c, p, p.field, "", calc.Missing)
				expect(t, c, p, p.field, " \u00a0\t", calc.Missing)
			}
		}
	})
}

// expect puts text into a form and wants one problem, with the field it stands in.
func expect(t *testing.T, c *calc.Calculator, p place, key, text string, code calc.Code) {
	t.Helper()
	before := p.form[key]
	p.form[key] = text
	ps := c.Run(p.form).Problems
	p.form[key] = before
	shown := text[:min(len(text), 30)]
	var own []calc.Problem
	for _, q := range ps {
		if q.Field == p.field {
			own = append(own, q)
		}
	}
	switch {
	case len(own) != 1 || len(ps) != 1 && !c.InStages:
		t.Errorf("%s = %q: expected one problem with %s, got %v", key, shown, p.field, ps)
	case own[0].Code != code:
		t.Errorf("%s = %q: expected %s, got %s: %v", key, shown, code, own[0].Code, own[0])
	case !strings.HasPrefix(own[0].Message, string(p.in.Label)+" "):
		t.Errorf("%s = %q: the message does not start with the label %q: %v", key, shown, p.in.Label, own[0])
	case own[0].Fix == "" || strings.HasSuffix(own[0].Fix, ".") || strings.HasSuffix(own[0].Message, "."):
		t.Errorf("%s = %q: needs a message and a fix without full stops: %q %q", key, shown, own[0].Message, own[0].Fix)
	case len(own[0].Message)+len(own[0].Fix) > 600:
		t.Errorf("%s = %q: the problem is %d bytes long", key, shown, len(own[0].Message)+len(own[0].Fix))
	case own[0].Place != placeOf(c, p.field):
		t.Errorf("%s = %q: stands in place %q of the form, not %q", key, shown, placeOf(c, p.field), own[0].Place)
	}
}

// placeOf is the part of the form that a field stands in; a cell stands where its table does.
func placeOf(c *calc.Calculator, field string) string {
	table, _, _ := strings.Cut(field, ".")
	return string(c.Input(table).Place)
}

func TestTablesHaveRowsButNotTooMany(t *testing.T) {
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, p := range places(c) {
			if p.in.Rows == nil {
				continue
			}
			if p.in.Most < 1 || p.in.RowName == "" {
				t.Errorf("%s needs the most rows it may have, and what one is called", p.field)
			}
			for n := range p.in.Most + 1 {
				p.form[p.field+"."+strconv.Itoa(n+1)+"."+p.in.Rows[0].Key] = check.Example(&p.in.Rows[0])
			}
			expect(t, c, p, p.field+".1.more", "x", calc.TooMany)
			for key := range p.form {
				if strings.HasPrefix(key, p.field+".") {
					delete(p.form, key)
				}
			}
			if !p.in.Optional {
				expect(t, c, p, p.field, "", calc.Missing)
			}
		}
	})
}

// A person who types the very limit that a message names must not be told the same again.
func TestALimitNamedInAMessageCanBeTyped(t *testing.T) {
	limit := regexp.MustCompile(`must be (−?[0-9.]+)`)
	each(t, func(t *testing.T, c *calc.Calculator) {
		for _, in := range c.Inputs {
			if in.Unit == 0 || in.When != nil {
				continue
			}
			for _, u := range in.Units() {
				for _, far := range []string{"-99999999", "99999999"} {
					form := calc.Form{in.Key: far, in.Key + ".unit": u.ID()}
					for range 2 {
						for _, p := range c.Run(form).Problems {
							if p.Field == in.Key && (p.Code == calc.TooLow || p.Code == calc.TooHigh) {
								assert.Equal(t, far, form[in.Key], "%s in %s: %s", in.Key, u.ID(), p.Message)
								form = calc.Form{in.Key: limit.FindStringSubmatch(p.Message)[1], in.Key + ".unit": u.ID()}
							}
						}
					}
				}
			}
		}
	})
}
