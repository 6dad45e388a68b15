package main

import (
	"flag"
	"io"
	"net"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var small = fstest.MapFS{"index.html": {Data: []byte("home")}}

func TestSaysWhatIsWrong(t *testing.T) {
	for says, args := range map[string][]string{
		`"serve" is not understood`: {"serve"}, "missing port": {"-addr", "8080"}, "-port": {"-port", "80"},
	} {
		assert.ErrorContains(t, run(args, small, io.Discard), says)
	}
	assert.ErrorContains(t, run(nil, fstest.MapFS{}, io.Discard), "compiled without the site")
	assert.ErrorIs(t, run([]string{"-help"}, small, io.Discard), flag.ErrHelp)
}

func TestTakesTheAddressAsked(t *testing.T) {
	taken, err := net.Listen("tcp", "192.0.2.1:0") // kept for examples (RFC 5737): no machine has it
	if err == nil {
		taken.Close()
		t.Skip("this machine has the address of an example")
	}
	var out strings.Builder
	require.Error(t, run([]string{"-addr", "192.0.2.1:8080"}, small, &out))
	assert.Equal(t, "Spraywright unreleased\n", out.String())
}
