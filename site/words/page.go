package words

import (
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"strconv"
	"strings"
)

var (
	inTemplates = regexp.MustCompile(`[({ ](?:t|in \.) ("(?:[^"\\]|\\.)*")`)
	inScripts   = regexp.MustCompile(`\bsay\(\s*("(?:[^"\\]|\\.)*")?`)
)

// inPages finds the texts of the templates, {{t "…"}}, and of the scripts, say("…").
func inPages(site fs.FS) ([]place, error) {
	all, err := matches(site, "page", "templates/*.html", inTemplates)
	if err != nil {
		return nil, err
	}
	for _, folder := range []string{"scripts", "onefile", "course", "embedded"} {
		scripts, err := matches(site, "script", folder+"/*.js", inScripts)
		if err != nil {
			return nil, err
		}
		all = append(all, scripts...)
	}
	return all, nil
}

func matches(site fs.FS, is, pattern string, texts *regexp.Regexp) ([]place, error) {
	names, err := fs.Glob(site, pattern)
	if err != nil {
		return nil, err
	}
	var all []place
	for _, name := range names {
		source, err := fs.ReadFile(site, name)
		if err != nil {
			return nil, err
		}
		for _, at := range texts.FindAllSubmatchIndex(source, -1) {
			line := 1 + strings.Count(string(source[:at[0]]), "\n")
			if at[2] < 0 {
				if path.Base(name) == "words.js" {
					continue // where say itself is
				}
				return nil, fmt.Errorf("%s, line %d: say needs its text as a literal, so that it can be found", name, line)
			}
			text, err := strconv.Unquote(string(source[at[2]:at[3]]))
			if err != nil {
				return nil, fmt.Errorf("%s, line %d: %w", name, line, err)
			}
			all = append(all, place{text: text, is: is, file: "site/" + name, line: line})
		}
	}
	return all, nil
}
