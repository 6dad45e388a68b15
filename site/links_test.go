package main

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
)

// Links of released versions, one file a version. What a link answered when its version was released it answers for ever;
// where a mistake in an answer is put right, its line is changed by hand, with the reason in a # comment above it.
// Files of the folder browser are links that take a browser to open; site/browser tests them.
const linksFolder = "../testdata/links"

// TestLinksOfEveryVersionAnswerAsTheyDid writes the file that SPRAYWRIGHT_LINKS names, for a new version, where it is not there.
func TestLinksOfEveryVersionAnswerAsTheyDid(t *testing.T) {
	if name := os.Getenv("SPRAYWRIGHT_LINKS"); name != "" {
		writeLinks(t, filepath.Join(linksFolder, name+".txt"))
	}
	files, err := filepath.Glob(linksFolder + "/*.txt")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		n := 0
		for _, l := range readLinks(t, file) {
			n++
			assert.Equal(t, l.says, answersOf(t, l.link), "%s: %s", filepath.Base(file), l.link)
		}
		assert.GreaterOrEqual(t, n, 50, file)
	}
}

// A linked is a link with what it answers, a line for each figure.
type linked struct {
	link string
	says []string
}

// readLinks reads a file: a link stands at the beginning of a line, and what it answers indented beneath it.
func readLinks(t *testing.T, file string) (all []linked) {
	t.Helper()
	f, err := os.Open(file)
	require.NoError(t, err)
	defer f.Close()
	lines := bufio.NewScanner(f)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		line := lines.Text()
		says, indented := strings.CutPrefix(line, "\t")
		switch {
		case line == "" || strings.HasPrefix(line, "#"):
		case indented:
			all[len(all)-1].says = append(all[len(all)-1].says, says)
		default:
			all = append(all, linked{link: line})
		}
	}
	require.NoError(t, lines.Err())
	return all
}

// answersOf is what a calculator's link answers: what is wrong, else its verdict and figures.
func answersOf(t *testing.T, link string) (says []string) {
	t.Helper()
	page, form, _ := strings.Cut(link, "#")
	all := calculators()
	i := slices.IndexFunc(all, func(c *calc.Calculator) bool { return pageFile(c) == page })
	require.GreaterOrEqual(t, i, 0, "there is no page %s any more", page)
	report := all[i].Run(calc.ParseForm(form))
	for _, p := range report.Problems {
		says = append(says, "problem "+p.Field)
	}
	for _, r := range report.Verdict {
		says = append(says, "verdict "+string(r.Level))
	}
	for _, f := range report.Figures {
		says = append(says, strings.TrimSpace(fmt.Sprintf("%s = %s %s", f.Key, f.Text, f.UnitID)))
	}
	return says
}

func writeLinks(t *testing.T, file string) {
	t.Helper()
	if _, err := os.Stat(file); err == nil {
		return // what a version answered is not written twice
	}
	var b strings.Builder
	b.WriteString("# Every calculator's example as a link, and what it answers. Written once, when the version was released.\n")
	for _, c := range calculators() {
		for _, units := range []string{"si", "us"} {
			form := c.ExampleForm()
			form["units"] = units
			link := pageFile(c) + "#" + form.String()
			fmt.Fprintln(&b, link)
			for _, says := range answersOf(t, link) {
				fmt.Fprintf(&b, "\t%s\n", says)
			}
		}
	}
	require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
	require.NoError(t, os.WriteFile(file, []byte(b.String()), 0o644))
}
