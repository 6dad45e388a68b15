// Command sbom writes what the site is made of as a bill of materials in CycloneDX 1.6 (ECMA-424), JSON.
//
//	go run ./site/supply/sbom [-out sbom.cdx.json] [-version v1.0.0] [-binaries ./site/server]
//
// What is compiled into the cores, or into programs named with -binaries, is "required"; what only builds and tests the site is
// "excluded", which the standard has for that. The same sources give the same bytes, so that there is no time in it.
package main

import (
	"crypto/sha256"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	cdx "github.com/CycloneDX/cyclonedx-go"

	"spraywright/site/supply"
)

func main() {
	out := flag.String("out", "", "file to write; the screen where none is named")
	version := flag.String("version", "", "version of the site, where it has one")
	binaries := flag.String("binaries", "", "packages of programs handed out beside the site, parted by spaces")
	flag.Parse()
	if err := run(*out, *version, strings.Fields(*binaries)); err != nil {
		fmt.Fprintln(os.Stderr, "sbom:", err)
		os.Exit(1)
	}
}

func run(out, version string, binaries []string) error {
	bom, err := describe(version, binaries)
	if err != nil {
		return err
	}
	var to io.Writer = os.Stdout
	if out != "" {
		f, err := os.Create(out)
		if err != nil {
			return err
		}
		defer f.Close()
		to = f
	}
	return cdx.NewBOMEncoder(to, cdx.BOMFileFormatJSON).SetPretty(true).SetEscapeHTML(false).EncodeVersion(bom, cdx.SpecVersion1_6)
}

// root is how the bill refers to the site itself.
const root = "spraywright"

func describe(version string, binaries []string) (*cdx.BOM, error) {
	shipped, err := supply.Shipped()
	if err != nil {
		return nil, err
	}
	if len(binaries) > 0 {
		also, err := supply.Used(false, binaries...)
		if err != nil {
			return nil, err
		}
		shipped = append(shipped, supply.Without(also, shipped)...)
	}
	tools, err := supply.Used(true, "spraywright/...")
	if err != nil {
		return nil, err
	}
	var components []cdx.Component
	var needs []string
	for _, m := range shipped {
		c := component(m, cdx.ScopeRequired)
		components, needs = append(components, c), append(needs, c.BOMRef)
	}
	for _, m := range supply.Without(tools, shipped) {
		components = append(components, component(m, cdx.ScopeExcluded))
	}
	checker, err := accessibilityChecker()
	if err != nil {
		return nil, err
	}
	components = append(components, checker)
	bom := cdx.NewBOM()
	bom.Metadata = &cdx.Metadata{Component: &cdx.Component{BOMRef: root, Type: cdx.ComponentTypeApplication, Name: root, Version: version}}
	bom.Components = &components
	bom.Dependencies = &[]cdx.Dependency{{Ref: root, Dependencies: &needs}}
	bom.SerialNumber, err = serial(bom)
	return bom, err
}

func component(m supply.Module, scope cdx.Scope) cdx.Component {
	url := "pkg:golang/" + m.Path + "@" + m.Version
	c := cdx.Component{
		BOMRef: url, Type: cdx.ComponentTypeLibrary, Name: m.Path, Version: m.Version, Scope: scope, PackageURL: url,
		Licenses: licences(m.Licence),
	}
	if m.Sum != "" {
		c.Properties = &[]cdx.Property{{Name: "go.sum", Value: m.Sum}}
	}
	return c
}

// licences writes one licence by its ID, several as an expression.
func licences(spdx string) *cdx.Licenses {
	if strings.Contains(spdx, " ") {
		return &cdx.Licenses{{Expression: spdx}}
	}
	return &cdx.Licenses{{License: &cdx.License{ID: spdx}}}
}

// accessibilityChecker is the one thing that is no Go module. The tests fetch it; nothing of it is handed on.
func accessibilityChecker() (c cdx.Component, err error) {
	text, err := os.ReadFile("site/browser/package.json")
	if err != nil {
		return c, fmt.Errorf("run it in the repository's root: %w", err)
	}
	var file struct{ Dependencies map[string]string }
	if err := json.Unmarshal(text, &file); err != nil {
		return c, err
	}
	const name = "axe-core"
	url := "pkg:npm/" + name + "@" + file.Dependencies[name]
	return cdx.Component{
		BOMRef: url, Type: cdx.ComponentTypeLibrary, Name: name, Version: file.Dependencies[name], Scope: cdx.ScopeExcluded, PackageURL: url,
		Licenses: licences("MPL-2.0"),
	}, nil
}

// serial is a UUID made of what the bill says: version 8, "custom", of RFC 9562, 5.8.
func serial(bom *cdx.BOM) (string, error) {
	text, err := json.Marshal(bom)
	if err != nil {
		return "", err
	}
	h := sha256.Sum256(text)
	h[6], h[8] = h[6]&15|8<<4, h[8]&63|2<<6
	return fmt.Sprintf("urn:uuid:%x-%x-%x-%x-%x", h[:4], h[4:6], h[6:8], h[8:10], h[10:16]), nil
}
