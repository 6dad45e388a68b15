// Package compile builds the programs that run on a page.
package compile

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// WASM compiles commands, named by import path, into a folder, which it makes: each into a file named as the last part
// of its path. With the same Go the same sources give the same bytes anywhere: neither the folder they lie in nor the
// settings of the one who compiles go in. Go's build cache makes a second call quick.
func WASM(folder string, commands ...string) error {
	args := []string{"build", "-trimpath", "-ldflags=-s -w -buildid=", "-buildvcs=false", "-o", folder + string(filepath.Separator)}
	cmd := exec.Command("go", append(args, commands...)...)
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "CGO_ENABLED=0", "GOFLAGS=", "GOEXPERIMENT=", "GOWASM=")
	if text, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("compiling %v: %w\n%s", commands, err, text)
	}
	return nil
}
