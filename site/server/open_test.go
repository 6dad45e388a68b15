package server

import (
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// opener stands in for this machine's way of opening things: it notes the address.
func opener(t *testing.T) (opened func() string) {
	t.Helper()
	if runtime.GOOS != "linux" {
		t.Skip("what opens an address has another name here")
	}
	dir := t.TempDir()
	note := filepath.Join(dir, "note")
	require.NoError(t, os.WriteFile(filepath.Join(dir, "xdg-open"), []byte("#!/bin/sh\nprintf %s \"$1\" > '"+note+"'\n"), 0o755))
	t.Setenv("PATH", dir+":/bin:/usr/bin")
	return func() string {
		var text []byte
		assert.Eventually(t, func() bool { text, _ = os.ReadFile(note); return len(text) > 0 }, 10*time.Second, 10*time.Millisecond)
		return string(text)
	}
}

// A second double-click shows what runs already; another program at the port is not taken for it.
func TestRunsOnceForEachVersion(t *testing.T) {
	site := fstest.MapFS{"sw.js": {Data: []byte("this version")}, "index.html": {Data: []byte("home")}}
	running := httptest.NewServer(New(site))
	defer running.Close()
	address := running.Listener.Addr().(*net.TCPAddr)

	opened := opener(t)
	var out strings.Builder
	s := &Server{Site: site, Addr: address.String(), Opens: true, Spared: true, Out: &out}
	require.NoError(t, s.Serve(), "it does not go on to serve")
	assert.Equal(t, link(address), opened())
	assert.Contains(t, out.String(), "It runs already: "+link(address))

	for _, other := range []http.Handler{
		New(fstest.MapFS{"sw.js": {Data: []byte("another version")}}), New(fstest.MapFS{"sw.js": {Data: []byte("this version, and more")}}), http.NotFoundHandler(),
	} {
		stranger := httptest.NewServer(other)
		assert.False(t, s.sameAt(stranger.URL+"/"))
		stranger.Close()
	}
}

func TestTellsPhonesTheWayAndWhatWantsHTTPS(t *testing.T) {
	var out strings.Builder
	announce(&out, 8080)
	assert.Contains(t, out.String(), "https")
	addrs, err := net.InterfaceAddrs()
	require.NoError(t, err)
	for _, a := range addrs {
		if ip := a.(*net.IPNet).IP; ip.To4() != nil && !ip.IsLoopback() {
			assert.Contains(t, out.String(), "From another device in this network: http://"+ip.String()+":8080/")
		}
	}
}
