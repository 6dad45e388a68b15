package server

import (
	"bytes"
	"compress/gzip"
	"io"
	"net/http"
	"net/http/httptest"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func gzipped(text string) []byte {
	var b bytes.Buffer
	w := gzip.NewWriter(&b)
	w.Write([]byte(text))
	w.Close()
	return b.Bytes()
}

// packedSite has a file with both packed beside it, one that is there packed alone, and one that is not packed.
var packedSite = fstest.MapFS{
	"app.js": {Data: []byte("0123456789")}, "app.js.br": {Data: []byte("as brotli")}, "app.js.gz": {Data: gzipped("0123456789")},
	"index.html.gz": {Data: gzipped("home")}, "mark.svg": {Data: []byte("mark")},
}

// ask sends headers by name and value.
func ask(method, target string, headers ...string) *httptest.ResponseRecorder {
	r := httptest.NewRequest(method, target, nil)
	for i := 0; i < len(headers); i += 2 {
		r.Header.Set(headers[i], headers[i+1])
	}
	w := httptest.NewRecorder()
	New(packedSite).ServeHTTP(w, r)
	return w
}

// RFC 9110, 12.5.3: codings are named without regard to case, a weight of 0 refuses; without the header none is asked for.
func TestHandsOutWhatTheBrowserUnpacks(t *testing.T) {
	for _, test := range []struct{ accepted, coding string }{
		{"gzip, deflate, br", "br"}, {"BR;q=1.0", "br"}, {"br;q=0, gzip", "gzip"}, {"br; q=0.000,gzip;q=0.5", "gzip"},
		{"gzip", "gzip"}, {"deflate, zstd", ""}, {"", ""}, {"identity", ""}, {"brotli", ""}, {"br;q=much", ""},
	} {
		w := ask("GET", "/app.js", "Accept-Encoding", test.accepted)
		assert.Equal(t, http.StatusOK, w.Code, test.accepted)
		assert.Equal(t, test.coding, w.Header().Get("Content-Encoding"), test.accepted)
		assert.Equal(t, "Accept-Encoding", w.Header().Get("Vary"))
		assert.Equal(t, "text/javascript; charset=utf-8", w.Header().Get("Content-Type"))
		want := map[string]string{"br": "as brotli", "gzip": string(packedSite["app.js.gz"].Data), "": "0123456789"}[test.coding]
		assert.Equal(t, want, w.Body.String(), test.accepted)
		assert.Equal(t, len(want), int(w.Result().ContentLength), test.accepted)
	}
	assert.Empty(t, ask("GET", "/mark.svg", "Accept-Encoding", "br, gzip").Header().Get("Content-Encoding"))
}

func TestUnpacksWhatIsHeldPackedAlone(t *testing.T) {
	assert.Equal(t, "home", ask("GET", "/").Body.String())
	packed, err := gzip.NewReader(ask("GET", "/", "Accept-Encoding", "gzip").Body)
	require.NoError(t, err)
	text, err := io.ReadAll(packed)
	require.NoError(t, err)
	assert.Equal(t, "home", string(text))
	for _, name := range []string{"/app.js.br", "/app.js.gz", "/index.html.gz"} {
		assert.Equal(t, http.StatusNotFound, ask("GET", name).Code, "%s is not a file of the site", name)
	}
}

// RFC 9110, 8.8.3 and 13.1.2: each coding is a representation of its own, with a tag of its own.
func TestWhatTheBrowserHasIsNotSentAgain(t *testing.T) {
	tags := map[string]bool{}
	for _, accepted := range []string{"br", "gzip", ""} {
		tag := ask("GET", "/app.js", "Accept-Encoding", accepted).Header().Get("ETag")
		assert.Regexp(t, `^"[!-~]+"$`, tag)
		tags[tag] = true
		again := ask("GET", "/app.js", "Accept-Encoding", accepted, "If-None-Match", tag)
		assert.Equal(t, http.StatusNotModified, again.Code)
		assert.Zero(t, again.Body.Len())
		assert.Equal(t, "no-cache", again.Header().Get("Cache-Control"))
		assert.Equal(t, http.StatusOK, ask("GET", "/app.js", "Accept-Encoding", accepted, "If-None-Match", `"another"`).Code)
	}
	assert.Len(t, tags, 3)
}

// RFC 9110, 14: a part of the representation chosen, so of the packed bytes where it is packed.
func TestPartsOfAFile(t *testing.T) {
	for _, test := range []struct {
		accepted, part, text, of string
		code                     int
	}{
		{"", "bytes=2-4", "234", "bytes 2-4/10", 206}, {"br", "bytes=3-", "brotli", "bytes 3-8/9", 206},
		{"", "bytes=-1", "9", "bytes 9-9/10", 206}, {"", "lines=1-2", "invalid range\n", "", 416},
	} {
		w := ask("GET", "/app.js", "Accept-Encoding", test.accepted, "Range", test.part)
		assert.Equal(t, test.code, w.Code, test.part)
		assert.Equal(t, test.text, w.Body.String(), test.part)
		assert.Equal(t, test.of, w.Header().Get("Content-Range"), test.part)
	}
}

func TestHeadHasTheHeadersAlone(t *testing.T) {
	w := ask("HEAD", "/app.js", "Accept-Encoding", "br")
	assert.Zero(t, w.Body.Len())
	assert.Equal(t, "9", w.Header().Get("Content-Length"))
	assert.Equal(t, "br", w.Header().Get("Content-Encoding"))
}
