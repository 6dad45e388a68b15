package main

import (
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"rsc.io/qr"
)

// folder is a small site with a secret beside it, and the server for it.
func folder(t *testing.T) (http.Handler, string) {
	t.Helper()
	top := t.TempDir()
	dir := filepath.Join(top, "dist")
	require.NoError(t, os.MkdirAll(filepath.Join(dir, "scripts"), 0o755))
	for name, text := range map[string]string{
		"../secret.txt": "secret", "index.html": "home", "job.wasm": "core", "scripts/app.js": "app", "scripts/app.js.br": "packed", "sw.js": "worker", "notes.md": "draft",
	} {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	require.NoError(t, os.Symlink(filepath.Join(top, "secret.txt"), filepath.Join(dir, "link.txt")))
	h, err := newHandler(dir)
	require.NoError(t, err)
	return h, dir
}

func get(h http.Handler, target string, header ...string) *http.Response {
	r := httptest.NewRequest(http.MethodGet, "/", nil)
	r.URL.Path = target // as it comes, not tidied
	for i := 0; i < len(header); i += 2 {
		r.Header.Set(header[i], header[i+1])
	}
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Result()
}

func TestServesFilesWithTheirTypes(t *testing.T) {
	h, _ := folder(t)
	for target, kind := range map[string]string{
		"/": "text/html; charset=utf-8", "/index.html": "text/html; charset=utf-8", "/job.wasm": "application/wasm", "/scripts/app.js": "text/javascript; charset=utf-8",
	} {
		res := get(h, target)
		assert.Equal(t, http.StatusOK, res.StatusCode, target)
		assert.Equal(t, kind, res.Header.Get("Content-Type"), target)
		assert.Equal(t, "no-cache", res.Header.Get("Cache-Control"), target)
		assert.Equal(t, "nosniff", res.Header.Get("X-Content-Type-Options"), target)
		assert.Contains(t, res.Header.Get("Content-Security-Policy"), "frame-ancestors 'none'")
	}
}

func TestRefusesWhatIsNotTheSite(t *testing.T) {
	h, _ := folder(t)
	for _, target := range []string{
		"/../secret.txt", "/scripts/../../secret.txt", "/..%2fsecret.txt", "//../secret.txt", `/..\secret.txt`, "/link.txt", "/notes.md", "/scripts", "/scripts/", "/nothing.html", "/\x00.html",
	} {
		res := get(h, target)
		text, _ := io.ReadAll(res.Body)
		assert.Equal(t, http.StatusNotFound, res.StatusCode, target)
		assert.NotContains(t, string(text), "secret", target)
	}
}

func TestSendsThePackedFileToThoseWhoCanReadIt(t *testing.T) {
	h, _ := folder(t)
	packed := get(h, "/scripts/app.js", "Accept-Encoding", "gzip, br")
	assert.Equal(t, "br", packed.Header.Get("Content-Encoding"))
	assert.Equal(t, "text/javascript; charset=utf-8", packed.Header.Get("Content-Type"))
	assert.Empty(t, get(h, "/scripts/app.js").Header.Get("Content-Encoding"))
	assert.Empty(t, get(h, "/sw.js", "Accept-Encoding", "br").Header.Get("Content-Encoding"), "there is no packed one")
}

func TestOnlyReads(t *testing.T) {
	h, _ := folder(t)
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(http.MethodPost, "/", nil))
	assert.Equal(t, http.StatusMethodNotAllowed, w.Code)
}

func TestTakesTheNextPortWhereOneIsInUse(t *testing.T) {
	first, err := (&server{addr: "127.0.0.1:0"}).listen()
	require.NoError(t, err)
	defer first.Close()
	second, err := (&server{addr: first.Addr().String()}).listen()
	require.NoError(t, err)
	defer second.Close()
	assert.NotEqual(t, first.Addr().String(), second.Addr().String())
	assert.True(t, strings.HasPrefix(second.Addr().String(), "127.0.0.1:"))
}

func TestTheTerminalCodeShowsEveryModule(t *testing.T) {
	code, err := qr.Encode("http://192.0.2.1:8080/", qr.L)
	require.NoError(t, err)
	lines := strings.Split(strings.TrimSuffix(terminalCode(code), "\n"), "\n")
	require.Len(t, lines, (code.Size+8+1)/2)
	for i, line := range lines {
		line = strings.TrimSuffix(strings.TrimPrefix(line, "\x1b[30;107m"), "\x1b[0m")
		for x, r := range []rune(line) {
			y := 2*i - 4
			assert.Equal(t, code.Black(x-4, y), r == '▀' || r == '█')
			assert.Equal(t, code.Black(x-4, y+1), r == '▄' || r == '█')
		}
	}
}
