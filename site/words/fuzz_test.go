package words

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"spraywright/calc/check/sound"
)

// Whatever a file of translations holds, it is read or said not to be one, and what is read is written so that it reads
// the same.
func FuzzParse(f *testing.F) {
	for _, name := range []string{"es/film.po", "es/page.po"} {
		if text, err := os.ReadFile(name); err == nil {
			f.Add(string(text[:min(len(text), 4000)]))
		}
	}
	for _, s := range []string{"", "msgid \"a\"\nmsgstr \"b\"", "msgid \"\"\n\"a\"\nmsgctxt \"x\"\nmsgstr \"\\xff\"", "#, fuzzy\n#~ msgid \"x\"\nmsgstr", "\"lone\"", "msgid `a\nmsgstr 'b'"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var ms []Message
		var err error
		sound.Within(t, text, func() { ms, err = parse(text) })
		if err != nil {
			return
		}
		again, err := parse(format("es", ms))
		require.NoError(t, err, "%q", text)
		require.Equal(t, len(ms), len(again), "%q", text)
		for i, m := range ms {
			require.Equal(t, []string{m.Context, m.ID, m.Text}, []string{again[i].Context, again[i].ID, again[i].Text}, "%q", text)
		}
	})
}
