package words

import (
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// found are the texts of the sources, looked for once.
var found = sync.OnceValues(func() (map[string][]Message, error) { return Find("../..") })

func TestTheCatalogueIsUpToDate(t *testing.T) {
	texts, err := found()
	require.NoError(t, err)
	files, change, err := Merge(texts, os.DirFS("es"), "es")
	require.NoError(t, err)
	for _, m := range change.Dropped {
		t.Errorf("no longer in the sources: %q", m.ID)
	}
	for name, text := range files {
		old, err := os.ReadFile("es/" + name)
		if err != nil || string(old) != text {
			t.Errorf("%s is not up to date: go run ./site words", name)
		}
	}
}

func TestEveryTextIsTranslated(t *testing.T) {
	texts, err := found()
	require.NoError(t, err)
	known, err := Read(os.DirFS("es"))
	require.NoError(t, err)
	said := map[string]bool{}
	for _, ms := range known {
		for _, m := range ms {
			said[m.ID] = said[m.ID] || m.Text != "" && m.Context == ""
		}
	}
	for _, name := range slices.Sorted(maps.Keys(texts)) {
		var missing []string
		for _, m := range texts[name] {
			if !said[m.ID] {
				missing = append(missing, m.ID)
			}
		}
		if n := len(missing); n > 0 {
			t.Errorf("%s.po lacks %d translations:\n%s", name, n, strings.Join(missing[:min(n, 8)], "\n"))
		}
	}
}

func TestTranslationsKeepWhatTheEnglishHas(t *testing.T) {
	known, err := Read(os.DirFS("es"))
	require.NoError(t, err)
	for name, ms := range known {
		for _, m := range ms {
			if m.Text == "" {
				continue
			}
			assert.Equal(t, holes(m.ID), holes(m.Text), "%s.po: the holes of %q", name, m.ID)
			assert.Equal(t, strings.TrimSpace(m.Text), m.Text, "%s.po: spaces around %q", name, m.Text)
			for _, end := range []string{".", "?", ":", ";"} {
				assert.Equal(t, strings.HasSuffix(m.ID, end), strings.HasSuffix(strings.TrimSuffix(m.Text, "EE. UU."), end), "%s.po: the end of %q", name, m.Text)
			}
		}
	}
}

// holes are the holes of a text, each once.
func holes(text string) []string {
	return slices.Compact(slices.Sorted(slices.Values(regexp.MustCompile(`\{\w+\}`).FindAllString(text, -1))))
}

func TestTranslationsStayAndDeadOnesGo(t *testing.T) {
	folder := fstest.MapFS{"film.po": {Data: []byte(`# Texts
msgid ""
msgstr "Language: es\n"

# by hand
#: calc/film/old.go
msgid "Wet "
"film"
msgstr "Película "
"húmeda"

msgctxt "part.name"
msgid "Part"
msgstr "Pieza"

msgctxt "gone.name"
msgid "Part"
msgstr "Trozo"

msgid "Gone"
msgstr "Fuera"
`)}}
	texts := map[string][]Message{"film": {
		{ID: "Wet film", Is: []string{"label"}, Refs: []string{"wet-film.wet_film"}},
		{ID: "Part", Is: []string{"label"}, Refs: []string{"job.part.name", "mix.component.part"}},
		{ID: "New “one”, \"two\"", Is: []string{"text"}, Refs: []string{"calc/film/wetfilm.go"}},
	}}
	files, change, err := Merge(texts, folder, "es")
	require.NoError(t, err)
	var dropped []string
	for _, m := range change.Dropped {
		dropped = append(dropped, m.Text)
	}
	assert.ElementsMatch(t, []string{"Trozo", "Fuera"}, dropped)
	assert.Equal(t, []int{3, 2}, []int{change.Texts, change.Missing})

	again, err := Read(fstest.MapFS{"film.po": {Data: []byte(files["film.po"])}})
	require.NoError(t, err)
	assert.Equal(t, []Message{
		{Notes: []string{"by hand"}, Is: []string{"label"}, Refs: []string{"wet-film.wet_film"}, ID: "Wet film", Text: "Película húmeda"},
		{Is: []string{"label"}, Context: "part.name", ID: "Part", Text: "Pieza"},
		{Is: []string{"label"}, Refs: []string{"job.part.name", "mix.component.part"}, ID: "Part"},
		{Is: []string{"text"}, Refs: []string{"calc/film/wetfilm.go"}, ID: "New “one”, \"two\""},
	}, withoutHead(again["film"]))
}

func withoutHead(ms []Message) []Message {
	return slices.DeleteFunc(ms, func(m Message) bool { return m.ID == "" })
}

func TestAFileThatIsNoneIsRefused(t *testing.T) {
	for _, text := range []string{"msgid Wet\nmsgstr \"\"\n", "msgid \"Wet\nmsgstr \"\"\n", "\"lost\"\n"} {
		_, err := Read(fstest.MapFS{"film.po": {Data: []byte(text)}})
		assert.Error(t, err, text)
	}
}
