package browser

import (
	"bufio"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// A build is the site's own program and the site it made.
type build struct{ dir, program, dist string }

// built makes the site once for all tests.
var built = sync.OnceValues(func() (build, error) {
	lookAtSources()
	dir, err := os.MkdirTemp("", "site")
	b := build{dir, filepath.Join(dir, "site"), filepath.Join(dir, "dist")}
	if err != nil {
		return b, err
	}
	atEnd = append(atEnd, func() { os.RemoveAll(dir) })
	if text, err := exec.Command("go", "build", "-o", b.program, "spraywright/site").CombinedOutput(); err != nil {
		return b, fmt.Errorf("compiling the site's program: %w\n%s", err, text)
	}
	if text, err := exec.Command(b.program, "build", "-out", b.dist, "-sheets", "../../testdata/demo/sheets").CombinedOutput(); err != nil {
		return b, fmt.Errorf("building the site: %w\n%s", err, text)
	}
	return b, nil
})

// lookAtSources makes Go forget a passed test when a source of the site has changed since: it knows only of files that
// the test itself has looked at, not of those that the build reads.
func lookAtSources() {
	for _, folder := range []string{"../../calc", "../../wasm", "..", "../../testdata"} {
		filepath.WalkDir(folder, func(path string, d fs.DirEntry, err error) error {
			os.Stat(path)
			return nil
		})
	}
}

// A server is the site being served on this machine. It can be stopped, as a network goes away, and started again
// at the same address.
type server struct {
	t       *testing.T
	build   build
	address string // host and port
	cmd     *exec.Cmd
	file    string // the site as one file, which nothing serves; blank for the site
}

// serve builds the site if need be and serves it until the test ends.
func serve(t *testing.T) *server {
	t.Helper()
	if chromium() == "" {
		t.Skip("no Chromium here: set CHROMIUM, or run make browser, which gets one")
	}
	if strings.HasPrefix(t.Name(), "TestInOneFile/") {
		return fromDisk(t)
	}
	b, err := built()
	require.NoError(t, err)
	s := &server{t: t, build: b, address: "127.0.0.1:0"}
	s.start()
	t.Cleanup(s.stop)
	return s
}

// announced finds the address that the site's program prints once it listens.
var announced = regexp.MustCompile(`http://[^/\s]*:(\d+)/`)

func (s *server) start() {
	s.t.Helper()
	s.cmd = exec.Command(s.build.program, "serve", "-nobuild", "-dir", s.build.dist, "-addr", s.address)
	s.cmd.Stderr = os.Stderr
	out, err := s.cmd.StdoutPipe()
	require.NoError(s.t, err)
	require.NoError(s.t, s.cmd.Start())
	line, err := bufio.NewReader(out).ReadString('\n')
	require.NoError(s.t, err)
	found := announced.FindStringSubmatch(line)
	require.NotNil(s.t, found, "no address in %q", line)
	address := "127.0.0.1:" + found[1]
	if !strings.HasSuffix(s.address, ":0") {
		require.Equal(s.t, s.address, address, "the port was taken by another program")
	}
	s.address = address
}

// stop ends the server at once. Stopping it twice does nothing.
func (s *server) stop() {
	if s.cmd != nil {
		s.cmd.Process.Kill()
		s.cmd.Wait()
		s.cmd = nil
	}
}

func (s *server) url(path string) string {
	if s.file != "" {
		return urlInFile(s.file, path)
	}
	return "http://" + s.address + "/" + path
}

// chromium is the browser's path, or blank where there is none.
func chromium() string {
	for _, name := range []string{os.Getenv("CHROMIUM"), "chromium", "chromium-browser"} {
		if path, err := exec.LookPath(name); name != "" && err == nil {
			return path
		}
	}
	return ""
}
