package engines

import (
	"bufio"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"testing"
)

// Firefox by WebDriver BiDi (W3C), which it speaks itself over a WebSocket.

type firefox struct {
	cmd     *exec.Cmd
	line    *socket
	asked   int
	context string
}

var listens = regexp.MustCompile(`WebDriver BiDi listening on ws://([^/\s]+)`)

func startFirefox(t *testing.T) (browser, error) {
	path, err := program("firefox-esr", "firefox")
	if err != nil {
		return nil, err
	}
	home := t.TempDir()
	cmd := exec.Command(path, "--headless", "--no-remote", "--profile", home, "--remote-debugging-port", "0", "about:blank")
	cmd.Env = append(os.Environ(), "HOME="+home, "MOZ_HEADLESS=1", "LANG=en_GB.UTF-8")
	says, err := cmd.StderrPipe()
	if err != nil {
		return nil, err
	}
	if err := cmd.Start(); err != nil {
		return nil, err
	}
	f := &firefox{cmd: cmd}
	if err := f.join(bufio.NewScanner(says)); err != nil {
		f.quit()
		return nil, err
	}
	return f, nil
}

// join waits for the address and opens a session there.
func (f *firefox) join(says *bufio.Scanner) (err error) {
	for says.Scan() {
		found := listens.FindStringSubmatch(says.Text())
		if found == nil {
			continue
		}
		go func() {
			for says.Scan() { // what it says must be read, or it stops
			}
		}()
		if f.line, err = dial(found[1], "/session"); err != nil {
			return err
		}
		if err := f.ask("session.new", map[string]any{"capabilities": map[string]any{}}, nil); err != nil {
			return err
		}
		var tree struct{ Contexts []struct{ Context string } }
		if err := f.ask("browsingContext.getTree", map[string]any{}, &tree); err != nil {
			return err
		}
		f.context = tree.Contexts[0].Context
		return nil
	}
	return fmt.Errorf("no address: %w", says.Err())
}

// ask sends a command and waits for its answer.
func (f *firefox) ask(method string, params, result any) error {
	f.asked++
	text, err := json.Marshal(map[string]any{"id": f.asked, "method": method, "params": params})
	if err != nil {
		return err
	}
	if err := f.line.send(text); err != nil {
		return err
	}
	for {
		text, err := f.line.receive()
		if err != nil {
			return err
		}
		var answer struct {
			ID             int
			Type           string
			Error, Message string
			Result         json.RawMessage
		}
		if err := json.Unmarshal(text, &answer); err != nil {
			return err
		}
		switch {
		case answer.ID != f.asked: // an event
		case answer.Type == "error":
			return fmt.Errorf("%s: %s: %s", method, answer.Error, answer.Message)
		case result == nil:
			return nil
		default:
			return json.Unmarshal(answer.Result, result)
		}
	}
}

func (f *firefox) quit() {
	if f.line != nil {
		f.line.Close()
	}
	f.cmd.Process.Kill()
	f.cmd.Wait()
}

func (f *firefox) visit(address string) error {
	return f.ask("browsingContext.navigate", map[string]any{"context": f.context, "url": address, "wait": "complete"}, nil)
}

func (f *firefox) evaluate(script string) (json.RawMessage, error) {
	var answer struct {
		Type             string
		Result           struct{ Value string }
		ExceptionDetails struct{ Text string }
	}
	err := f.ask("script.evaluate", map[string]any{"expression": `Promise.resolve(` + script + `).then((x) => JSON.stringify(x ?? null))`, "awaitPromise": true,
		"target": map[string]any{"context": f.context}}, &answer)
	if err == nil && answer.Type == "exception" {
		err = fmt.Errorf("%s", answer.ExceptionDetails.Text)
	}
	return json.RawMessage(answer.Result.Value), err
}

func (f *firefox) act(sources []any) error {
	return f.ask("input.performActions", map[string]any{"context": f.context, "actions": sources}, nil)
}
