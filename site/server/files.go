package server

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/base64"
	"errors"
	"io"
	"io/fs"
	"net/http"
	"path"
	"strconv"
	"strings"
	"time"
)

// Types are what browsers insist on, by the end of a file's name; a machine's own table may lack or bend them. Nothing else
// is handed out.
func Types() map[string]string {
	return map[string]string{
		".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8",
		".json": "application/json", ".webmanifest": "application/manifest+json", ".wasm": "application/wasm",
		".svg": "image/svg+xml", ".png": "image/png", ".txt": "text/plain; charset=utf-8", ".words": "text/plain; charset=utf-8",
	}
}

// New answers with the files of a site and with nothing else. Of a packed file, name.br or name.gz, it is enough that one of
// name.gz and name itself is there.
func New(site fs.FS) http.Handler {
	types := Types()
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		setHeaders(w.Header(), r.URL.Path)
		if r.Method != http.MethodGet && r.Method != http.MethodHead {
			w.Header().Set("Allow", "GET, HEAD")
			http.Error(w, "only GET and HEAD are answered", http.StatusMethodNotAllowed)
			return
		}
		name := strings.TrimPrefix(r.URL.Path, "/")
		if name == "" || strings.HasSuffix(name, "/") {
			name += "index.html"
		}
		if kind, known := types[path.Ext(name)]; known {
			if text, coding, err := choose(site, name, r.Header.Get("Accept-Encoding")); err == nil {
				send(w, r, kind, coding, text)
				return
			}
		}
		http.Error(w, "no such page", http.StatusNotFound)
	})
}

// choose reads a file in the densest coding that is there and accepted.
func choose(site fs.FS, name, accepted string) (text []byte, coding string, err error) {
	// A backslash and a colon lead elsewhere on some systems, a NUL ends a name.
	if !fs.ValidPath(name) || strings.ContainsAny(name, "\\:\x00") {
		return nil, "", fs.ErrNotExist
	}
	for _, packed := range []struct{ coding, end string }{{"br", ".br"}, {"gzip", ".gz"}} {
		if accepts(accepted, packed.coding) {
			if text, err := fs.ReadFile(site, name+packed.end); err == nil {
				return text, packed.coding, nil
			}
		}
	}
	text, err = fs.ReadFile(site, name)
	if errors.Is(err, fs.ErrNotExist) {
		text, err = unpacked(site, name+".gz")
	}
	return text, "", err
}

func unpacked(site fs.FS, name string) ([]byte, error) {
	file, err := site.Open(name)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	text, err := gzip.NewReader(file)
	if err != nil {
		return nil, err
	}
	return io.ReadAll(text)
}

// accepts reads the header Accept-Encoding (RFC 9110, 12.5.3): codings, each perhaps with a weight, of which 0 is a refusal.
func accepts(header, coding string) bool {
	for item := range strings.SplitSeq(header, ",") {
		name, weight, _ := strings.Cut(item, ";")
		if !strings.EqualFold(strings.TrimSpace(name), coding) {
			continue
		}
		q, found := strings.CutPrefix(strings.ToLower(strings.ReplaceAll(weight, " ", "")), "q=")
		value, err := strconv.ParseFloat(q, 64)
		return !found || err == nil && value > 0
	}
	return false
}

// send answers with a file's bytes, or with a part of them, or says that the browser has them already.
func send(w http.ResponseWriter, r *http.Request, kind, coding string, text []byte) {
	sum := sha256.Sum256(text)
	w.Header().Set("ETag", `"`+base64.RawURLEncoding.EncodeToString(sum[:12])+`"`)
	w.Header().Set("Vary", "Accept-Encoding")
	w.Header().Set("Content-Type", kind)
	if coding != "" {
		w.Header().Set("Content-Encoding", coding)
		w.Header().Set("Content-Length", strconv.Itoa(len(text))) // ServeContent leaves it out of what is packed
	}
	http.ServeContent(w, r, "", time.Time{}, bytes.NewReader(text))
}
