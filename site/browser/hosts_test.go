package browser

import (
	"compress/gzip"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// hosts are general-purpose servers and what stands around the settings that the page about hosting shows for them. Of
// what is filled in, a is the folder of the site, b the port, c the file with the settings and d a folder for the server itself.
var hosts = []struct {
	id, around string
	start      func(file string) []string
}{
	{"nginx", "daemon off; master_process off; pid %[4]s/pid; error_log stderr; events {}\n" +
		"http { access_log off; client_body_temp_path %[4]s; proxy_temp_path %[4]s; fastcgi_temp_path %[4]s; uwsgi_temp_path %[4]s; scgi_temp_path %[4]s;\n" +
		"server { listen 127.0.0.1:%[2]d; root %[1]s; include %[3]s; } }\n",
		func(file string) []string { return []string{"-c", file} }},
	{"lighttpd", "server.bind = \"127.0.0.1\"\nserver.port = %[2]d\nserver.document-root = \"%[1]s\"\ninclude \"%[3]s\"\n",
		func(file string) []string { return []string{"-D", "-f", file} }},
}

// The archive of a release behind servers as Debian has them, with the very settings that the site shows.
func TestTheArchiveOnOtherServers(t *testing.T) {
	site := unpacked(t, "_site.tar.gz", "site")
	for _, h := range hosts {
		t.Run(h.id, func(t *testing.T) {
			program, err := exec.LookPath(h.id)
			if err != nil {
				t.Skipf("no %s here: passed over", h.id)
			}
			p := open(t, serveFolder(t, site), "hosting.html", phone)
			settings := evaluate[string](p, `document.getElementById("settings-`+h.id+`").textContent`)
			address := startHost(t, program, site, settings, h.around, h.start)
			asks(t, address)
			other := open(t, &server{t: t, address: address}, "wet-film.html", phone)
			wetFilm(other)
			other.waitIn("#kept", "works without a network")
		})
	}
}

// startHost starts a server with settings and waits until it listens.
func startHost(t *testing.T, program, site, settings, around string, arguments func(string) []string) (address string) {
	t.Helper()
	own := t.TempDir()
	free, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	port := free.Addr().(*net.TCPAddr).Port
	free.Close()
	part, file := filepath.Join(own, "part.conf"), filepath.Join(own, "whole.conf")
	require.NoError(t, os.WriteFile(part, []byte(settings), 0o644))
	require.NoError(t, os.WriteFile(file, fmt.Appendf(nil, around, site, port, part, own), 0o644))
	cmd := exec.Command(program, arguments(file)...)
	cmd.Stderr = os.Stderr
	require.NoError(t, cmd.Start())
	t.Cleanup(func() { cmd.Process.Kill(); cmd.Wait() })
	address = "127.0.0.1:" + strconv.Itoa(port)
	require.Eventually(t, func() bool {
		c, err := net.Dial("tcp", address)
		if err == nil {
			c.Close()
		}
		return err == nil
	}, 20*time.Second, 50*time.Millisecond, "%s does not listen", program)
	return address
}

// asks holds what a server sends to what the site's own sends.
func asks(t *testing.T, address string) {
	t.Helper()
	own := serve(t)
	for _, name := range []string{"", "es/", "job.wasm", "scripts/app.js", "site.css", "manifest.webmanifest", "calculators.json", "mark.svg", "icon-192.png", "es/job.words", "embed.html", "es/embed.html"} {
		got, want := fetch(t, address, name), fetch(t, own.address, name)
		assert.Equal(t, http.StatusOK, got.StatusCode, name)
		for header := range want.Header {
			switch header {
			case "Date", "Etag", "Content-Length", "Vary", "Accept-Ranges", "Content-Encoding":
			case "Content-Type":
				kind, _, _ := strings.Cut(got.Header.Get(header), ";")
				wanted, _, _ := strings.Cut(want.Header.Get(header), ";")
				assert.Equal(t, wanted, kind, "type of %s", name)
			default:
				assert.Equal(t, want.Header[header], got.Header[header], "%s of %q", header, name)
			}
		}
		if filepath.Ext(name) != ".png" {
			assert.Equal(t, "gzip", got.Header.Get("Content-Encoding"), "%q comes as it is", name)
			_, err := gzip.NewReader(got.Body)
			assert.NoError(t, err, name)
		}
	}
	assert.Equal(t, http.StatusNotFound, fetch(t, address, "no-such-page.html").StatusCode)
}

func fetch(t *testing.T, address, name string) *http.Response {
	t.Helper()
	r, err := http.NewRequest("GET", "http://"+address+"/"+name, nil)
	require.NoError(t, err)
	r.Header.Set("Accept-Encoding", "gzip") // set by hand, so that it is not unpacked on the way
	res, err := http.DefaultTransport.RoundTrip(r)
	require.NoError(t, err)
	text, err := io.ReadAll(res.Body)
	require.NoError(t, err)
	res.Body.Close()
	res.Body = io.NopCloser(strings.NewReader(string(text)))
	return res
}
