package server

import (
	"os/exec"
	"runtime"
)

// open shows an address in the browser that this machine's own way of opening things chooses.
func open(address string) error {
	command := []string{"xdg-open"}
	switch runtime.GOOS {
	case "windows":
		command = []string{"rundll32", "url.dll,FileProtocolHandler"}
	case "darwin":
		command = []string{"open"}
	}
	started := exec.Command(command[0], append(command[1:], address)...)
	if err := started.Start(); err != nil {
		return err
	}
	go started.Wait() // or it stays behind as a zombie
	return nil
}
