package record

import "strings"

// A line of a CSV file as RFC 4180 has it: commas between cells, quotes around a cell that holds a comma, a quote or a
// line break. Words that a spreadsheet would take for a formula get an apostrophe before them: a name typed as
// =HYPERLINK(…) must not run where the file is opened.
type line struct {
	text  strings.Builder
	begun bool
}

// lineBreak parts the lines of the file.
const lineBreak = "\r\n"

// words adds a cell that a person typed.
func (l *line) words(s string) {
	if s != "" && strings.IndexByte("=+-@\t\r", s[0]) >= 0 {
		s = "'" + s
	}
	l.cell(s)
}

// cell adds a cell that needs no guard: a heading, or a number of ours.
func (l *line) cell(s string) {
	if l.begun {
		l.text.WriteByte(',')
	}
	l.begun = true
	if !strings.ContainsAny(s, ",\"\r\n") && strings.TrimSpace(s) == s {
		l.text.WriteString(s)
		return
	}
	l.text.WriteByte('"')
	l.text.WriteString(strings.ReplaceAll(s, `"`, `""`))
	l.text.WriteByte('"')
}

func (l *line) String() string { return l.text.String() }
