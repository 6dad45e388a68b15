// Package check reads testdata/published: values that a calculator must give, each with the place it comes from.
// The tests hold the calculators to them, and the build prints them on the calculator's page. It is for tests and
// the build; nothing that runs on the page imports it.
//
// A file is named after its calculator and is a table saved as CSV (RFC 4180); lines that start with # are
// comments. The first columns are source and known_by. Each other column is headed by the key of an input or an
// output and a unit, "air degC", or by the key alone where it takes a choice or words. A cell of a table is
// "part.1.length mm", a cell of a list that is answered "cup.1.mass g". A blank cell leaves an input at its
// example and an output unchecked.
package check

import (
	"encoding/csv"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"strings"

	"spraywright/calc"
)

// A Row is one line of a file: what is filled in and what must come out.
type Row struct {
	Line    int // in the file, counted from 1
	Source  string
	KnownBy string    // "seen ADDRESS", "second-hand ADDRESS", "memory", "common practice" or "by hand"
	Stated  calc.Form // what the row itself fills in
	Form    calc.Form // complete: what the row leaves blank stands at its example
	Wants   []Want
}

// Outside reports whether the values come from outside the project rather than being worked by hand.
func (r Row) Outside() bool { return r.KnownBy != ByHand }

// ByHand marks values worked by hand, which will do where a calculator rests on proportion alone.
const ByHand = "by hand"

// knownBy says what is wrong with a known_by cell, or nothing.
func knownBy(s string) string {
	switch s {
	case ByHand, "memory", "common practice":
		return ""
	}
	how, address, _ := strings.Cut(s, " ")
	switch {
	case how != "seen" && how != "second-hand":
		return "known_by must be seen ADDRESS, second-hand ADDRESS, memory, common practice or by hand, not “" + s + "”"
	case strings.TrimSpace(address) == "":
		return "known_by “" + how + "” needs the address where it was read"
	}
	return ""
}

// Read reads the rows for one calculator from the folder that holds the files. A heading or a cell that fits
// nothing in the calculator is an error that names file, line and column.
func Read(published fs.FS, c *calc.Calculator) ([]Row, error) {
	name := c.ID + ".csv"
	f, err := published.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	rows, err := parse(c, f)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return rows, nil
}

func parse(c *calc.Calculator, file io.Reader) ([]Row, error) {
	r := csv.NewReader(file)
	r.Comment, r.TrimLeadingSpace = '#', true
	head, err := r.Read()
	if err != nil {
		return nil, fmt.Errorf("has no headings: %w", err)
	}
	columns, err := headings(c, head)
	if err != nil {
		return nil, err
	}
	var rows []Row
	for {
		cells, err := r.Read()
		if err == io.EOF {
			return rows, nil
		}
		if err != nil {
			return nil, err
		}
		line, _ := r.FieldPos(0)
		row, err := read(c, columns, cells)
		if err != nil {
			return nil, fmt.Errorf("line %d: %w", line, err)
		}
		row.Line = line
		rows = append(rows, row)
	}
}

func headings(c *calc.Calculator, head []string) ([]column, error) {
	if len(head) < 3 || head[0] != "source" || head[1] != "known_by" {
		return nil, fmt.Errorf("the first columns must be source and known_by, and others follow")
	}
	columns := make([]column, len(head))
	used := map[string]bool{}
	for i, h := range head[2:] {
		col, err := heading(c, strings.TrimSpace(h))
		switch {
		case err != nil:
			return nil, fmt.Errorf("column “%s”: %w", h, err)
		case used[col.key]:
			return nil, fmt.Errorf("column “%s”: %s has a column already", h, col.key)
		}
		used[col.key] = true
		columns[i+2] = col
	}
	return columns, nil
}

func read(c *calc.Calculator, columns []column, cells []string) (Row, error) {
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
	}
	row := Row{Source: cells[0], KnownBy: cells[1], Form: calc.Form{}}
	if row.Source == "" {
		return row, fmt.Errorf("names no source")
	}
	if wrong := knownBy(row.KnownBy); wrong != "" {
		return row, fmt.Errorf("%s", wrong)
	}
	for i := 2; i < len(cells); i++ {
		if cells[i] == "" {
			continue
		}
		if err := columns[i].take(&row, cells[i]); err != nil {
			return row, fmt.Errorf("%s: %w", columns[i].key, err)
		}
	}
	if len(row.Wants) == 0 {
		return row, fmt.Errorf("expects nothing")
	}
	row.Stated = maps.Clone(row.Form)
	Complete(c, row.Form)
	return row, nil
}

// Complete fills in the example of every input that the calculator misses. What is asked depends on choices made,
// so the calculator itself is asked, until it misses nothing more.
func Complete(c *calc.Calculator, form calc.Form) {
	for filled := true; filled; {
		filled = false
		for _, p := range c.Run(form).Problems {
			if in := c.Input(withoutRow(p.Field)); p.Code == calc.Missing && in != nil {
				filled = fill(form, p.Field, in) || filled
			}
		}
	}
}

func fill(form calc.Form, field string, in *calc.Input) bool {
	if in.Rows != nil {
		field, in = field+".1."+in.Rows[0].Key, &in.Rows[0]
	}
	if form[field] != "" {
		return false
	}
	form[field] = Example(in)
	return true
}
