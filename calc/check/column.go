package check

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A column is one heading of a file: an input to fill in, or an output to expect.
type column struct {
	key  string // as headed, rows included: "part.1.length"
	unit unit.Unit
	in   *calc.Input
	out  *calc.Output
}

// heading reads "air degC".
func heading(c *calc.Calculator, text string) (column, error) {
	key, id, _ := strings.Cut(text, " ")
	col := column{key: key, in: c.Input(withoutRow(key)), out: c.Output(withoutRow(key))}
	var own unit.Unit
	switch {
	case col.in == nil && col.out == nil:
		return col, fmt.Errorf("%s has no input or output “%s”", c.ID, key)
	case col.in != nil && col.out != nil:
		return col, fmt.Errorf("%s uses “%s” for an input and an output", c.ID, key)
	case col.in != nil:
		own = col.in.Unit
	default:
		own = col.out.Unit
	}
	if wrong := col.misplaced(); wrong != "" {
		return col, fmt.Errorf("%s", wrong)
	}
	if own == 0 && id != "" {
		return col, fmt.Errorf("takes no unit")
	}
	if col.unit = own; id == "" && own != 0 && own.Quantity() != unit.Number {
		return col, fmt.Errorf("needs a unit, such as %s", own.ID())
	}
	if id != "" {
		u, ok := unit.ByID(id)
		if !ok || u.Quantity() != own.Quantity() {
			return col, fmt.Errorf("“%s” is no unit of %s", id, own.Quantity())
		}
		col.unit = u
	}
	return col, nil
}

// misplaced says where a row number is missing or too many.
func (col column) misplaced() string {
	_, n, inside := rowOf(col.key)
	switch {
	case col.in != nil && col.in.Rows != nil, col.out != nil && col.out.Columns != nil:
		return "is a table: head a column for each cell, as in “" + col.key + ".1.…”"
	case inside && n < 1:
		return "needs a row number, as in “table.1.column”"
	}
	return ""
}

// take enters one cell of the column in a row.
func (col column) take(row *Row, cell string) error {
	if col.in != nil {
		row.Form[col.key] = cell
		if col.unit != 0 {
			if !slices.Contains(col.in.Units(), col.unit) {
				return fmt.Errorf("cannot be typed in %s", col.unit.ID())
			}
			row.Form[col.key+".unit"] = col.unit.ID()
		}
		return nil
	}
	want := Want{Key: col.key, Unit: col.unit}
	if table, n, inside := rowOf(col.key); inside {
		want.Key, want.Row, want.Column = table, n, strings.TrimPrefix(withoutRow(col.key), table+".")
	}
	var err error
	if col.unit == 0 {
		want.Words = cell
	} else if want.Value, want.Tolerance, err = printed(cell); err != nil {
		return err
	}
	row.Wants = append(row.Wants, want)
	return nil
}

// printed reads a value as a source prints it, "9.3", good to half of its last digit, or "9.3±0.2".
func printed(cell string) (value, tolerance float64, err error) {
	num, within, stated := strings.Cut(cell, "±")
	num = strings.TrimSpace(num)
	if value, err = strconv.ParseFloat(num, 64); err != nil || math.IsNaN(value) || math.IsInf(value, 0) {
		return 0, 0, fmt.Errorf("“%s” is not a printed value like 9.3 or 9.3±0.2", cell)
	}
	if stated {
		if tolerance, err = strconv.ParseFloat(strings.TrimSpace(within), 64); err != nil || !(tolerance >= 0) {
			return 0, 0, fmt.Errorf("“%s” has no number after ±", cell)
		}
		return value, tolerance, nil
	}
	digits, exponent, _ := strings.Cut(strings.ToLower(num), "e")
	_, decimals, _ := strings.Cut(digits, ".")
	power, _ := strconv.Atoi(exponent) // blank is 0; ParseFloat has refused anything else
	return value, 0.5 * math.Pow10(power-len(decimals)), nil
}

// Example is an input's example as a person would type it, in the input's own unit.
func Example(in *calc.Input) string {
	switch {
	case in.Choices != nil:
		return in.Choices[0].Key
	case in.Unit != 0:
		return strconv.FormatFloat(in.Example, 'f', -1, 64)
	}
	return in.Words
}

// rowOf takes a key such as "part.1.length" apart: table "part", row 1. A key without a point is inside none.
func rowOf(key string) (table string, row int, inside bool) {
	table, rest, inside := strings.Cut(key, ".")
	n, _, _ := strings.Cut(rest, ".")
	row, _ = strconv.Atoi(n)
	return table, row, inside
}

// withoutRow is the key under which a calculator lists a cell: "part.1.length" is "part.length".
func withoutRow(key string) string {
	table, row, inside := rowOf(key)
	if !inside || row == 0 {
		return key
	}
	_, rest, _ := strings.Cut(key, ".")
	_, cell, _ := strings.Cut(rest, ".")
	return table + "." + cell
}
