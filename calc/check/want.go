package check

import (
	"fmt"
	"math"
	"strconv"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A Want is one result that a row expects: a number in a unit, or words.
type Want struct {
	Key       string    // the output
	Row       int       // of an output that is a list, counted from 1; otherwise 0
	Column    string    // of that list
	Unit      unit.Unit // none for words
	Value     float64
	Tolerance float64 // half of the last digit printed, or what the file states after ±
	Words     string  // instead of a number
}

// Name is how the file heads it: "dew_point", "cup.1.mass".
func (w Want) Name() string {
	if w.Row == 0 {
		return w.Key
	}
	return w.Key + "." + strconv.Itoa(w.Row) + "." + w.Column
}

// Got is what a report has of what is wanted: a number in the wanted unit, or words.
func (w Want) Got(r calc.Report) (x float64, words string, err error) {
	f, err := w.find(r)
	if err != nil || w.Unit == 0 {
		return 0, f.Text, err
	}
	own, ok := unit.ByID(f.UnitID)
	if !ok {
		return 0, f.Text, fmt.Errorf("%s is “%s”, expected the number %v", w.Name(), f.Text, w.Value)
	}
	return unit.Convert(f.Value, own, w.Unit), f.Text, nil
}

// Met says how a report misses what is wanted, or nothing.
func (w Want) Met(r calc.Report) error {
	x, words, err := w.Got(r)
	switch {
	case err != nil:
		return err
	case w.Unit == 0 && words != w.Words:
		return fmt.Errorf("%s is “%s”, expected “%s”", w.Name(), words, w.Words)
	case w.Unit == 0:
		return nil
	}
	// The reader's rounding is not the calculator's: 0.15 and 0.1 + 0.05 are the same tolerance.
	slack := 1e-9 * (math.Abs(w.Value) + w.Tolerance)
	if !(math.Abs(x-w.Value) <= w.Tolerance+slack) {
		return fmt.Errorf("%s is %.8g %s, expected %v ± %.3g", w.Name(), x, w.Unit.ID(), w.Value, w.Tolerance)
	}
	return nil
}

func (w Want) find(r calc.Report) (calc.Figure, error) {
	if w.Row == 0 {
		for _, f := range r.Figures {
			if f.Key == w.Key {
				return f, nil
			}
		}
		return calc.Figure{}, fmt.Errorf("the report has no %s", w.Key)
	}
	for _, l := range r.Lists {
		if l.Key != w.Key {
			continue
		}
		if w.Row > len(l.Rows) {
			return calc.Figure{}, fmt.Errorf("%s has %d rows, so no row %d", w.Key, len(l.Rows), w.Row)
		}
		for _, f := range l.Rows[w.Row-1] {
			if f.Key == w.Column {
				return f, nil
			}
		}
	}
	return calc.Figure{}, fmt.Errorf("the report has no %s", w.Name())
}
