package main

import (
	"os"
	"testing"

	cdx "github.com/CycloneDX/cyclonedx-go"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/site/supply"
)

// The bill, read back by the standard's own library: everything is in it once, by package URL (ECMA-427) and licence.
func TestTheBillHasEverythingOnce(t *testing.T) {
	t.Chdir("../../..")
	file := t.TempDir() + "/bom.json"
	require.NoError(t, run(file, "v1.2.3", []string{"spraywright/site"}))
	f, err := os.Open(file)
	require.NoError(t, err)
	defer f.Close()
	var bom cdx.BOM
	require.NoError(t, cdx.NewBOMDecoder(f, cdx.BOMFileFormatJSON).Decode(&bom))
	assert.Equal(t, cdx.SpecVersion1_6, bom.SpecVersion)
	assert.Equal(t, "v1.2.3", bom.Metadata.Component.Version)
	assert.Regexp(t, `^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$`, bom.SerialNumber)

	scope := map[string]cdx.Scope{}
	for _, c := range *bom.Components {
		assert.Empty(t, scope[c.Name], "%s stands twice", c.Name)
		scope[c.Name] = c.Scope
		assert.Regexp(t, `^pkg:(golang|npm)/`+c.Name+`@v?[0-9]`, c.PackageURL)
		assert.NotEmpty(t, *c.Licenses, c.Name)
	}
	assert.Equal(t, cdx.ScopeRequired, scope["std"])
	assert.Equal(t, cdx.ScopeRequired, scope["rsc.io/qr"])
	assert.Equal(t, cdx.ScopeRequired, scope["github.com/evanw/esbuild"], "part of the program named")
	assert.Equal(t, cdx.ScopeExcluded, scope["github.com/stretchr/testify"])
	assert.Equal(t, cdx.ScopeExcluded, scope["axe-core"])
	used, err := supply.Used(true, "spraywright/...")
	require.NoError(t, err)
	for _, m := range used {
		assert.NotEmpty(t, scope[m.Path], m.Path)
	}
}

func TestTheSameSourcesGiveTheSameBill(t *testing.T) {
	t.Chdir("../../..")
	one, two := t.TempDir()+"/one", t.TempDir()+"/two"
	require.NoError(t, run(one, "", nil))
	require.NoError(t, run(two, "", nil))
	a, _ := os.ReadFile(one)
	b, _ := os.ReadFile(two)
	assert.Equal(t, string(a), string(b))
}
