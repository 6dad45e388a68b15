package calc_test

import (
	"net/url"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
)

func TestParsingAForm(t *testing.T) {
	for text, want := range map[string]calc.Form{
		"":                               {},
		"&&=&=5&air":                     {},
		"air=31&air.unit=degC":           {"air": "31", "air.unit": "degC"},
		"air=31&air=32":                  {"air": "31"},
		"air=&air=32":                    {"air": "32"},
		"note=a+b%20c&ratio=4:1%2B10%25": {"note": "a b c", "ratio": "4:1+10%"},
		"a=1=2":                          {"a": "1=2"},
		"a=%zz%4":                        {"a": "%zz%4"},
		"a=%+1":                          {"a": "% 1"},
		"a=%C3%A9%ff":                    {"a": "é\uFFFD"},
		"a=\xff":                         {"a": "\uFFFD"},
		"part.1.name=L%C3%BCfter":        {"part.1.name": "Lüfter"},
	} {
		assert.Equal(t, want, calc.ParseForm(text), "%q", text)
	}
}

func TestAFormIsWrittenInOrder(t *testing.T) {
	form := calc.Form{"part.10.name": "b", "part.2.name": "a c", "part.length.unit": "in", "air": "31", "ratio": "4:1+10%", "part.2": "x", "part": "y"}
	assert.Equal(t, "air=31&part=y&part.2=x&part.2.name=a+c&part.10.name=b&part.length.unit=in&ratio=4:1%2B10%25", form.String())
}

func TestRowsOfATable(t *testing.T) {
	form := calc.Form{"part.10.name": "b", "part.2.name": "a", "part.2.length": "5", "part.length.unit": "in", "part.3": "no column",
		"part.0.name": "x", "part.07.name": "x", "part.+4.name": "x", "part.10000.name": "x", "part": "5", "parts.1.name": "x"}
	assert.Equal(t, []string{"2", "10"}, form.Rows("part"))
	assert.Empty(t, form.Rows("coat"))
}

// A link made here must say the same to any other reader of URLs (WHATWG URL, application/x-www-form-urlencoded).
func TestALinkReadsTheSameElsewhere(t *testing.T) {
	form := calc.Form{"ratio": "4:1+10%", "name": "Lid & “box” #2 = 50 % ½", "part.1.colour": "élan/café?"}
	values, err := url.ParseQuery(form.String())
	require.NoError(t, err)
	for k, v := range form {
		assert.Equal(t, v, values.Get(k))
	}
	_, err = url.Parse("https://example.org/job#" + form.String())
	assert.NoError(t, err)
}

func FuzzParseForm(f *testing.F) {
	for _, s := range []string{"air=31&air.unit=degC", "a=%zz&b=%", "part.1.x=1&part.01.x=2&part.1a.x=3&part..x=4&.=5", "a=\xff\xfe", "%FF=1&\xff=2", "a.b=1&a.b.=2"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		form := calc.ParseForm(s)
		written := form.String()
		require.Equal(t, form, calc.ParseForm(written), "read back from %q", written)
		require.Equal(t, written, calc.ParseForm(written).String(), "the order of keys must not depend on luck")
		for k, v := range form {
			require.True(t, utf8.ValidString(k) && utf8.ValidString(v), "%q=%q", k, v)
		}
	})
}
