package engines

import (
	"bufio"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// A site is the finished site, served on this machine.
type site struct {
	t             *testing.T
	address, dist string
	cmd           *exec.Cmd
}

var announced = regexp.MustCompile(`http://[^/\s]*:(\d+)/`)

// folder is where make engines has put the site.
func folder() string { return os.Getenv("SPRAYWRIGHT_ENGINES") }

// program of the site, compiled once.
var server = sync.OnceValues(func() (string, error) {
	dir, err := os.MkdirTemp("", "engines")
	path := filepath.Join(dir, "site")
	if err == nil {
		err = exec.Command("go", "build", "-o", path, "spraywright/site").Run()
	}
	return path, err
})

func serve(t *testing.T) *site {
	t.Helper()
	path, err := server()
	require.NoError(t, err)
	dist, err := filepath.Abs(folder())
	require.NoError(t, err)
	s := &site{t: t, dist: dist, cmd: exec.Command(path, "serve", "-nobuild", "-dir", dist, "-addr", "127.0.0.1:0")}
	out, err := s.cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, s.cmd.Start())
	t.Cleanup(s.stop)
	line, err := bufio.NewReader(out).ReadString('\n')
	require.NoError(t, err)
	found := announced.FindStringSubmatch(line)
	require.NotNil(t, found, line)
	s.address = "http://127.0.0.1:" + found[1] + "/"
	return s
}

func (s *site) stop() {
	s.cmd.Process.Kill()
	s.cmd.Wait()
}
