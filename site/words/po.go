// Package words is the catalogue: what the site says, found in its sources, and its translations in PO files.
//
// English is written where it is used and is the name of a text, as in GNU gettext. The files are read and written here
// because the libraries at hand lose what translators note, and the part of the format that is used is small.
package words

import (
	"bufio"
	"fmt"
	"io/fs"
	"path"
	"strconv"
	"strings"
	"unicode/utf8"
)

// A Message is one entry of a PO file (GNU gettext manual, "The Format of PO Files").
type Message struct {
	Notes   []string // by translators, without their "# "
	Is      []string // what kind of text it is: "label", "help"; extracted
	Refs    []string // where it is used: "job.air", "calc/film/wetfilm.go"
	Context string   // the key of the field that it labels, where that needs other words than the same English elsewhere
	ID      string   // the English text
	Text    string   // its translation, blank for none yet
}

// name tells messages of one catalogue apart.
func (m Message) name() string { return m.Context + "|" + m.ID }

// Read reads every PO file of a folder. A text that stands in two of them must be translated alike.
func Read(folder fs.FS) (map[string][]Message, error) {
	names, err := fs.Glob(folder, "*.po")
	if err != nil {
		return nil, err
	}
	files := map[string][]Message{}
	for _, name := range names {
		text, err := fs.ReadFile(folder, name)
		if err != nil {
			return nil, err
		}
		ms, err := parse(string(text))
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		files[strings.TrimSuffix(path.Base(name), ".po")] = ms
	}
	return files, nil
}

func parse(text string) ([]Message, error) {
	var all []Message
	var m Message
	var last *string // what a line of text goes on with
	lines, n := bufio.NewScanner(strings.NewReader(text)), 0
	lines.Buffer(nil, 1<<20)
	end := func() {
		if m.ID != "" {
			all = append(all, m)
		}
		m, last = Message{}, nil
	}
	for lines.Scan() {
		n++
		line := strings.TrimSpace(lines.Text())
		word, rest, _ := strings.Cut(line, " ")
		if last == &m.Text && word != "" && word[0] != '"' {
			end()
		}
		switch word {
		case "", "#,", "#~":
			continue
		case "#":
			m.Notes = append(m.Notes, rest)
			continue
		case "#.":
			m.Is = append(m.Is, rest)
			continue
		case "#:":
			m.Refs = append(m.Refs, strings.Fields(rest)...)
			continue
		case "msgctxt":
			last = &m.Context
		case "msgid":
			last = &m.ID
		case "msgstr":
			last = &m.Text
		default:
			rest = line
		}
		rest = strings.TrimSpace(rest)
		said, err := strconv.Unquote(rest)
		if err != nil || last == nil || rest[0] != '"' || !utf8.ValidString(said) {
			return nil, fmt.Errorf("line %d cannot be read: %s", n, line)
		}
		*last += said
	}
	end()
	return all, lines.Err()
}

// format writes a PO file for a language.
func format(language string, ms []Message) string {
	var b strings.Builder
	fmt.Fprintf(&b, "# Texts of Spraywright. “go run ./site words” keeps the entries up to date; translators fill in msgstr.\n")
	fmt.Fprintf(&b, "msgid \"\"\nmsgstr \"\"\n\"Language: %s\\n\"\n\"MIME-Version: 1.0\\n\"\n\"Content-Type: text/plain; charset=UTF-8\\n\"\n\"Content-Transfer-Encoding: 8bit\\n\"\n", language)
	for _, m := range ms {
		b.WriteByte('\n')
		for _, s := range m.Notes {
			fmt.Fprintln(&b, "#", s)
		}
		for _, s := range m.Is {
			fmt.Fprintln(&b, "#.", s)
		}
		for _, s := range m.Refs {
			fmt.Fprintln(&b, "#:", s)
		}
		if m.Context != "" {
			fmt.Fprintln(&b, "msgctxt", quote(m.Context))
		}
		fmt.Fprintf(&b, "msgid %s\nmsgstr %s\n", quote(m.ID), quote(m.Text))
	}
	return b.String()
}

func quote(s string) string {
	return `"` + strings.NewReplacer(`\`, `\\`, `"`, `\"`, "\n", `\n`, "\t", `\t`).Replace(s) + `"`
}
