package main

import (
	"bytes"
	"compress/gzip"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The formats are those of RFC 7932 and RFC 1952; libraries read them back.
func TestPackedFilesHoldTheFile(t *testing.T) {
	text := strings.Repeat("wet film, dry film; ", 500)
	site := bundle{"site.css": []byte(text), "short.txt": []byte("few"), "icon.png": []byte(text), oneFile: []byte(text)}
	site.addPacked(t.TempDir())
	assert.Len(t, site, 6, "what does not get smaller, or is packed already, stays alone")

	got, err := io.ReadAll(brotli.NewReader(bytes.NewReader(site["site.css.br"])))
	require.NoError(t, err)
	assert.Equal(t, text, string(got))
	r, err := gzip.NewReader(bytes.NewReader(site["site.css.gz"]))
	require.NoError(t, err)
	got, err = io.ReadAll(r)
	require.NoError(t, err)
	assert.Equal(t, text, string(got))
	assert.True(t, r.ModTime.IsZero(), "the same text makes the same bytes at any time")
	assert.Empty(t, r.Name)
}

// A build that was stopped may have left half a file, and an earlier one another text's.
func TestOnlyTheSameTextIsNotPackedAgain(t *testing.T) {
	text := []byte(strings.Repeat("wet film, dry film; ", 500))
	var quick bytes.Buffer
	w := brotli.NewWriterLevel(&quick, 1)
	w.Write(text)
	w.Close()
	dense := brotliOf(text, nil)
	assert.Equal(t, quick.Bytes(), brotliOf(text, quick.Bytes()), "what holds this text is used again")
	assert.Equal(t, dense, brotliOf(text, quick.Bytes()[:quick.Len()-2]))
	assert.Equal(t, dense, brotliOf(text, brotliOf([]byte("another text"), nil)))
	assert.Equal(t, dense, brotliOf(text, []byte("no brotli at all")))
}

func TestTheServiceWorkerKeepsNothingPacked(t *testing.T) {
	site := bundle{"index.html": []byte(strings.Repeat("home ", 100))}
	require.NoError(t, addServiceWorker(site))
	worker := string(site["sw.js"])
	site.addPacked(t.TempDir())
	assert.NotContains(t, worker, ".br")
	assert.Equal(t, worker, string(site["sw.js"]))
}

func TestWhatIsEnclosedIsPackedOrAlone(t *testing.T) {
	from, to := t.TempDir(), filepath.Join(t.TempDir(), "site")
	for name, text := range map[string]string{"a.js": "a", "a.js.br": "b", "a.js.gz": "g", "es/icon.png": "i"} {
		require.NoError(t, writeFile(from, name, []byte(text)))
	}
	require.NoError(t, enclose(from, to))
	require.NoError(t, os.Remove(filepath.Join(from, "es/icon.png")))
	require.NoError(t, enclose(from, to), "what an earlier one left is taken out")
	var left []string
	filepath.WalkDir(to, func(path string, d os.DirEntry, err error) error {
		if !d.IsDir() {
			left = append(left, filepath.Base(path))
		}
		return err
	})
	assert.Equal(t, []string{"a.js.gz"}, left)
}
