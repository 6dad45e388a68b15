package server

import (
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"net/netip"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"rsc.io/qr"
)

// folder is a small site with a secret beside it, and the server for it.
func folder(t *testing.T) http.Handler {
	t.Helper()
	top := t.TempDir()
	dir := filepath.Join(top, "dist")
	require.NoError(t, os.MkdirAll(filepath.Join(dir, "scripts"), 0o755))
	for name, text := range map[string]string{
		"../secret.txt": "secret", "index.html": "home", "job.wasm": "core", "scripts/app.js": "app", "sw.js": "worker", "notes.md": "draft",
	} {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	require.NoError(t, os.Symlink(filepath.Join(top, "secret.txt"), filepath.Join(dir, "link.txt")))
	root, err := os.OpenRoot(dir)
	require.NoError(t, err)
	t.Cleanup(func() { root.Close() })
	return New(root.FS())
}

func get(h http.Handler, target string) *http.Response {
	r := httptest.NewRequest(http.MethodGet, "/", nil)
	r.URL.Path = target // as it comes, not tidied
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Result()
}

func TestServesFilesWithTheirTypes(t *testing.T) {
	h := folder(t)
	for target, kind := range map[string]string{
		"/": "text/html; charset=utf-8", "/index.html": "text/html; charset=utf-8", "/job.wasm": "application/wasm", "/scripts/app.js": "text/javascript; charset=utf-8",
	} {
		res := get(h, target)
		assert.Equal(t, http.StatusOK, res.StatusCode, target)
		assert.Equal(t, kind, res.Header.Get("Content-Type"), target)
		assert.Equal(t, "no-cache", res.Header.Get("Cache-Control"), target)
		assert.Equal(t, "nosniff", res.Header.Get("X-Content-Type-Options"), target)
		assert.Contains(t, res.Header.Get("Content-Security-Policy"), "frame-ancestors 'none'")
		assert.Equal(t, "*", res.Header.Get("Access-Control-Allow-Origin"), "a frame in a sandbox has no origin")
	}
}

// Others may frame one page, in each language, and no other.
func TestOnlyTheFramePageMayBeFramed(t *testing.T) {
	for name, may := range map[string]bool{"/embed.html": true, "/es/embed.html": true, "/": false, "/shelf.html": false, "/embed.html/": false, "/embed.js": false} {
		h := http.Header{}
		setHeaders(h, name)
		assert.Equal(t, may, !strings.Contains(h.Get("Content-Security-Policy"), "frame-ancestors 'none'"), name)
	}
}

func TestRefusesWhatIsNotTheSite(t *testing.T) {
	h := folder(t)
	for _, target := range []string{
		"/../secret.txt", "/scripts/../../secret.txt", "/..%2fsecret.txt", "//../secret.txt", `/..\secret.txt`, "/link.txt", "/notes.md", "/scripts", "/scripts/", "/nothing.html", "/\x00.html", "/index.html\x00", "/C:/secret.txt",
		"/scripts/./app.js", "/index.html/", `/scripts\app.js`,
	} {
		res := get(h, target)
		text, _ := io.ReadAll(res.Body)
		assert.Equal(t, http.StatusNotFound, res.StatusCode, target)
		assert.NotContains(t, string(text), "secret", target)
	}
}

func TestOnlyReads(t *testing.T) {
	h := folder(t)
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(http.MethodPost, "/", nil))
	assert.Equal(t, http.StatusMethodNotAllowed, w.Code)
	assert.Equal(t, "GET, HEAD", w.Header().Get("Allow"), "RFC 9110, 15.5.6")
}

func TestTakesTheNextPortWhereOneIsInUse(t *testing.T) {
	first, err := (&Server{Addr: "127.0.0.1:0"}).listen()
	require.NoError(t, err)
	defer first.Close()
	second, err := (&Server{Addr: first.Addr().String()}).listen()
	require.NoError(t, err)
	defer second.Close()
	assert.NotEqual(t, first.Addr().String(), second.Addr().String())
	assert.True(t, strings.HasPrefix(second.Addr().String(), "127.0.0.1:"))
}

// 192.0.2.1 is kept for examples (RFC 5737): no machine has it, so that no port of it can be listened on.
func TestOtherErrorsAreToldAtOnce(t *testing.T) {
	_, err := (&Server{Addr: "192.0.2.1:8080"}).listen()
	assert.ErrorContains(t, err, ":8080")
}

func TestTheAddressPrintedIsWhereItListens(t *testing.T) {
	for addr, want := range map[string]string{
		"127.0.0.1:8080": "http://localhost:8080/", "[::1]:80": "http://localhost:80/", "0.0.0.0:81": "http://localhost:81/", "[::]:82": "http://localhost:82/",
		"192.0.2.1:8080": "http://192.0.2.1:8080/", "[2001:db8::1]:8080": "http://[2001:db8::1]:8080/",
	} {
		assert.Equal(t, want, link(net.TCPAddrFromAddrPort(netip.MustParseAddrPort(addr))))
	}
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
