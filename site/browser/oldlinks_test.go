package browser

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Links of every kind, of every version that was released, open and show what they did. A link stands at the beginning of a
// line of testdata/links/browser, and indented beneath it where it shows what.
func TestOldLinksStillOpen(t *testing.T) {
	files, err := filepath.Glob("../../testdata/links/browser/*.txt")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	p := open(t, serve(t), "about.html", phone)
	for _, file := range files {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		for line := range strings.Lines(string(text)) {
			where, says, shows := strings.Cut(strings.TrimSpace(line), "\t")
			switch {
			case strings.HasPrefix(line, "# ") || where == "":
			case shows:
				p.waitIn(where, says)
				assert.NotContains(t, p.text("#notices"), damaged)
			default:
				p.afresh(where)
			}
		}
	}
}
