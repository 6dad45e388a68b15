// Package supply tells what the site and its tests are made of besides the project's own code: modules, versions, licences.
package supply

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// A Module is a Go module, or Go itself, whose path is "std".
type Module struct {
	Path, Version string
	Sum           string // as go.sum has it; blank for Go
	Dir           string // where its files lie
	Licence       string // by SPDX: "BSD-3-Clause", "MIT AND Apache-2.0"
	Text          string // of its licence
}

// Shipped lists what is compiled into the cores, Go first. Go's own is also the script that starts them.
func Shipped() ([]Module, error) {
	goItself, err := toolchain()
	if err != nil {
		return nil, err
	}
	all, err := modules([]string{"GOOS=js", "GOARCH=wasm", "CGO_ENABLED=0"}, "spraywright/wasm/...")
	return append([]Module{goItself}, all...), err
}

// Used lists what the packages are made of natively, with their tests where test is set: what builds and tests the site.
func Used(test bool, packages ...string) ([]Module, error) {
	if test {
		packages = append([]string{"-test"}, packages...)
	}
	return modules(nil, packages...)
}

// Without takes out the modules that others name already.
func Without(all, others []Module) []Module {
	return slices.DeleteFunc(slices.Clone(all), func(m Module) bool {
		return slices.ContainsFunc(others, func(o Module) bool { return o.Path == m.Path })
	})
}

// modules lists the modules of packages and of what they import, but not this one, by path.
func modules(env []string, packages ...string) ([]Module, error) {
	cmd := exec.Command("go", append([]string{"list", "-deps", "-json=Module"}, packages...)...)
	cmd.Env = append(os.Environ(), env...)
	var said strings.Builder
	cmd.Stderr = &said
	text, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("go list %v: %w: %s", packages, err, said.String())
	}
	found := map[string]Module{}
	for d := json.NewDecoder(strings.NewReader(string(text))); ; {
		var p struct {
			Module *struct {
				Path, Version, Sum, Dir string
				Main                    bool
			}
		}
		if err := d.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return nil, err
		}
		if m := p.Module; m != nil && !m.Main {
			found[m.Path] = Module{Path: m.Path, Version: m.Version, Sum: m.Sum, Dir: m.Dir}
		}
	}
	var all []Module
	for _, m := range found {
		if m.Licence, m.Text, err = licence(m.Dir); err != nil {
			return nil, fmt.Errorf("%s: %w", m.Path, err)
		}
		all = append(all, m)
	}
	slices.SortFunc(all, func(a, b Module) int { return strings.Compare(a.Path, b.Path) })
	return all, nil
}

// toolchain is Go itself: the runtime and library in every core.
func toolchain() (Module, error) {
	text, err := exec.Command("go", "env", "GOVERSION", "GOROOT").Output()
	if err != nil {
		return Module{}, fmt.Errorf("go env: %w", err)
	}
	version, root, _ := strings.Cut(strings.TrimSpace(string(text)), "\n")
	m := Module{Path: "std", Version: strings.TrimPrefix(version, "go"), Dir: filepath.Clean(root)}
	m.Licence, m.Text, err = licence(m.Dir)
	return m, err
}
