package compile

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const empty = "spraywright/site/size/empty"

func compiled(t *testing.T) []byte {
	t.Helper()
	folder := filepath.Join(t.TempDir(), "new folder")
	require.NoError(t, WASM(folder, empty))
	text, err := os.ReadFile(filepath.Join(folder, "empty"))
	require.NoError(t, err)
	return text
}

func TestSettingsOfOnesOwnDoNotGoIn(t *testing.T) {
	for _, name := range []string{"GOFLAGS", "GOEXPERIMENT", "GOWASM", "CGO_ENABLED"} {
		t.Setenv(name, "")
	}
	plain := compiled(t)
	assert.Equal(t, "\x00asm", string(plain[:4]))
	for name, setting := range map[string]string{"GOFLAGS": "-gcflags=-N", "GOEXPERIMENT": "nogreenteagc", "GOWASM": "satconv", "CGO_ENABLED": "1"} {
		t.Setenv(name, setting)
	}
	assert.True(t, string(plain) == string(compiled(t)), "the environment changes what is compiled")
}

func TestWhatDoesNotCompileSaysWhy(t *testing.T) {
	assert.ErrorContains(t, WASM(t.TempDir(), "spraywright/no/such"), "spraywright/no/such")
}
