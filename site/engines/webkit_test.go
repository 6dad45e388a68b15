package engines

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// WebKit by its own WebDriver (W3C WebDriver), on a display of its own that nobody sees.

type webkit struct {
	session string // address of the session
	running []*exec.Cmd
}

func startWebKit(t *testing.T) (browser, error) {
	driver, err := program("WebKitWebDriver")
	if err != nil {
		return nil, err
	}
	small, _ := filepath.Glob("/usr/lib/*/webkit2gtk-4.*/MiniBrowser")
	if len(small) == 0 {
		return nil, fmt.Errorf("%w: MiniBrowser", errMissing)
	}
	w := &webkit{}
	display, err := w.display()
	if err != nil {
		w.quit()
		return nil, err
	}
	port, err := freePort()
	if err != nil {
		return nil, err
	}
	cmd := exec.Command(driver, "--host=127.0.0.1", "--port="+port)
	home := t.TempDir()
	cmd.Env = append(os.Environ(), "DISPLAY="+display, "HOME="+home, "XDG_DATA_HOME="+home, "XDG_CACHE_HOME="+home, "XDG_CONFIG_HOME="+home,
		"LIBGL_ALWAYS_SOFTWARE=1", "WEBKIT_DISABLE_COMPOSITING_MODE=1", "NO_AT_BRIDGE=1", "GDK_BACKEND=x11", "LANG=en_GB.UTF-8")
	if err := w.run(cmd); err != nil {
		return nil, err
	}
	address := "http://127.0.0.1:" + port
	var made struct{ SessionID string }
	for end := time.Now().Add(patience); ; time.Sleep(100 * time.Millisecond) {
		err = call("POST", address+"/session", map[string]any{"capabilities": map[string]any{"alwaysMatch": map[string]any{
			"webkitgtk:browserOptions": map[string]any{"binary": small[0], "args": []string{"--automation"}}}}}, &made)
		if err == nil || time.Now().After(end) {
			break
		}
	}
	if err != nil {
		w.quit()
		return nil, err
	}
	w.session = address + "/session/" + made.SessionID
	return w, call("POST", w.session+"/timeouts", map[string]any{"script": patience.Milliseconds(), "pageLoad": patience.Milliseconds()}, nil)
}

// display starts a display and returns its name.
func (w *webkit) display() (string, error) {
	server, err := program("Xvfb")
	if err != nil {
		return "", err
	}
	read, write, err := os.Pipe()
	if err != nil {
		return "", err
	}
	cmd := exec.Command(server, "-displayfd", "3", "-screen", "0", "1280x900x24", "-nolisten", "tcp")
	cmd.ExtraFiles = []*os.File{write}
	if err := w.run(cmd); err != nil {
		return "", err
	}
	write.Close()
	name, err := bufio.NewReader(read).ReadString('\n')
	return ":" + strings.TrimSpace(name), err
}

func (w *webkit) run(cmd *exec.Cmd) error {
	if err := cmd.Start(); err != nil {
		return err
	}
	w.running = append([]*exec.Cmd{cmd}, w.running...)
	return nil
}

func (w *webkit) quit() {
	if w.session != "" {
		call("DELETE", w.session, nil, nil)
	}
	for _, cmd := range w.running {
		cmd.Process.Kill()
		cmd.Wait()
	}
}

func (w *webkit) visit(address string) error {
	return call("POST", w.session+"/url", map[string]any{"url": address}, nil)
}

func (w *webkit) evaluate(script string) (value json.RawMessage, err error) {
	// The answer goes through text, because the driver has a way of its own with objects.
	err = call("POST", w.session+"/execute/async", map[string]any{"args": []any{}, "script": `const done = arguments[arguments.length - 1];
		Promise.resolve().then(() => (` + script + `)).then((x) => done(JSON.stringify(x ?? null)), (e) => done("!" + e + "\n" + e?.stack));`}, &value)
	var text string
	if err == nil {
		err = json.Unmarshal(value, &text)
	}
	if strings.HasPrefix(text, "!") {
		err = fmt.Errorf("%s", text[1:])
	}
	return json.RawMessage(text), err
}

func (w *webkit) act(sources []any) error {
	return call("POST", w.session+"/actions", map[string]any{"actions": sources}, nil)
}

// call asks the driver something and reads the value of its answer.
func call(method, address string, body, value any) error {
	text, err := json.Marshal(body)
	if err != nil {
		return err
	}
	ask, err := http.NewRequest(method, address, bytes.NewReader(text))
	if err != nil {
		return err
	}
	ask.Header.Set("Content-Type", "application/json")
	response, err := http.DefaultClient.Do(ask)
	if err != nil {
		return err
	}
	defer response.Body.Close()
	got, err := io.ReadAll(response.Body)
	if err != nil || response.StatusCode != http.StatusOK {
		return fmt.Errorf("%s %s: %s %s %w", method, address, response.Status, got, err)
	}
	if value == nil {
		return nil
	}
	return json.Unmarshal(got, &struct{ Value any }{value})
}

func freePort() (string, error) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return "", err
	}
	defer l.Close()
	_, port, err := net.SplitHostPort(l.Addr().String())
	return port, err
}
