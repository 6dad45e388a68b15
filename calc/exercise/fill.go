package exercise

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/unit"
)

// A filler fills in a form once.
type filler struct {
	t       *Task
	attempt string
	form    calc.Form
	given   []*Given
	need    []string // fields that may stay blank, to be filled in
	all     bool     // all of those are
	free    bool     // choices that are not set are drawn
	wide    bool     // numbers may lie further from the example
	odd     string   // the field that is given in another unit
	could   []string // the fields that could be
	report  *calc.Report
}

// rowsMost is how many rows a table of a task may have.
const rowsMost = 12

// pairs are the choices that people mix up, ratios the mixes that a sheet may print.
const (
	pairs  = " solids_for ratio_by "
	ratios = "4:1:1;2:1;3:1:1;4:1+10%;5:1;2:1+5%"
)

// run fills in the form and calculates.
func (f *filler) run() {
	for range 2 {
		f.form, f.given, f.could = calc.Form{}, nil, nil
		f.fill("", "", "", f.t.c.Inputs)
		if f.t.level == "1" || f.odd != "" || f.could == nil {
			break
		}
		f.odd = f.could[f.pick(len(f.could), "odd")]
	}
	f.put("units", "si")
	if f.t.get("units") == "us" {
		f.put("units", "us")
	}
	f.put("units."+string(f.t.Unit.Quantity()), f.t.Unit.ID())
	f.report = f.t.c.Ask(f.t.Language, f.form)
}

//go:noinline
func (f *filler) put(key, text string) { f.form[key] = text }

//go:noinline
func (f *filler) pick(n int, what string) int { return f.t.pick(n, f.attempt+what) }

// fill gives each input that is asked for something. table is "part." and row " (part 2)" within a table.
func (f *filler) fill(prefix, table, row string, ins []calc.Input) {
	for i := range ins {
		in := &ins[i]
		g := &Given{Field: prefix + in.Key, in: in}
		spec := f.setting(g, table, "")
		if !in.Asked(f.form, prefix, ins) || in.Optional && spec == "" && !f.all && !slices.Contains(f.need, g.Field) {
			continue
		}
		g.Label = f.t.Language.Label(table+in.Key, in.Label) + row
		if in.Rows != nil {
			f.rows(g, spec)
			continue
		}
		if in.Unit != 0 && in.Choices == nil {
			f.number(g, table, spec)
		} else {
			f.words(g, spec)
		}
		f.put(g.Field, g.Typed)
		f.given = append(f.given, g)
	}
}

// setting is what is set for a field, or for its column.
//
//go:noinline
func (f *filler) setting(g *Given, table, suffix string) string {
	if spec := f.t.get(g.Field + suffix); spec != "" {
		return spec
	}
	return f.t.get(table + g.in.Key + suffix)
}

func (f *filler) rows(g *Given, spec string) {
	n := UsualRows(f.t.c, g.in)
	if spec != "" {
		x, ok := calc.ReadNumber(spec)
		if n = int(x); !ok || x < 1 || x > float64(min(rowsMost, g.in.Most)) {
			n = 1
			f.wrong(g, spec)
		}
	}
	for i := range n {
		number := strconv.Itoa(i + 1)
		f.fill(g.Field+"."+number+".", g.in.Key+".", " ("+f.t.Language.Label(g.in.Key, g.in.RowName)+" "+number+")", g.in.Rows)
	}
}

// UsualRows is how many rows a table has where the settings do not say: two, because one row alone poses no question,
// and one where a row is a whole form by itself.
func UsualRows(c *calc.Calculator, table *calc.Input) int {
	if c.InStages {
		return 1
	}
	return min(2, table.Most)
}

// wrong notes a setting that cannot be drawn from.
//
//go:noinline
func (f *filler) wrong(g *Given, spec string) {
	if f.t.Problems == nil {
		f.t.problem(g.Field, calc.Unclear, "“{text}” cannot be drawn from", "Write a number, a range like 40..95 by 5, or several with semicolons between, within what the form takes", g.Label+": "+spec)
	}
}

// words makes a choice or finds words.
func (f *filler) words(g *Given, spec string) {
	in := g.in
	switch {
	case in.Choices != nil && (spec == "any" || spec == "" && (f.free || f.t.level != "1" && strings.Contains(pairs, " "+in.Key+" "))):
		g.Typed = in.Choices[f.pick(len(in.Choices), g.Field)].Key
	case in.Choices != nil && spec == "":
		g.Typed = in.Choices[0].Key
	default:
		if spec == "" {
			spec = in.Words
			if in.Key == "ratio" {
				spec = ratios
			}
		}
		several := split(spec)
		g.Typed = several[f.pick(len(several), g.Field)]
	}
	g.Text = g.Typed
	if in.Choices != nil {
		g.Text = ""
		for i := range in.Choices {
			if in.Choices[i].Key == g.Typed {
				g.Text = f.t.Say(in.Choices[i].Label)
			}
		}
		if g.Text == "" {
			f.wrong(g, spec)
		}
	}
}

func (f *filler) number(g *Given, table, spec string) {
	in := g.in
	units := in.Units()
	g.Unit = f.t.usual(in.Unit, units)
	if id := f.setting(g, table, ".unit"); id != "" {
		if g.Unit = called(id, units); g.Unit == 0 {
			g.Unit = in.Unit
			f.wrong(g, id)
		}
	} else if spec == "" && in.Prefill {
		g.Unit = in.Unit
	} else if strange := f.strange(g, units); spec == "" && strange != g.Unit {
		f.could = append(f.could, g.Field)
		if f.odd == g.Field || f.t.level == "3" && f.pick(2, g.Field+" odd") == 1 {
			g.Unit = strange
		}
	}
	b, ok := Band{}, true
	if spec != "" {
		b, ok = readBand(spec)
	} else {
		b = Around(in, g.Unit, f.wide)
	}
	if !ok {
		f.wrong(g, spec)
		return
	}
	g.Typed = b.text(f.pick(b.n, g.Field))
	g.Text = f.t.quantity(g.number(), g.Unit)
	f.put(g.Field+".unit", g.Unit.ID())
}

// number is the number as a float.
//
//go:noinline
func (g *Given) number() float64 {
	x, _ := calc.ReadNumber(g.Typed)
	return x
}

// quantity words a number with its unit, with all its decimals.
//
//go:noinline
func (t *Task) quantity(x float64, u unit.Unit) string {
	return t.Quantity(x, decimals(x), u)
}

// strange is another unit to give a number in: of the other world, and at the highest level any one in which the example
// is a number that people write.
func (f *filler) strange(g *Given, units []unit.Unit) unit.Unit {
	if g.in.Whole {
		return g.Unit
	}
	if f.t.level == "3" {
		v := units[f.pick(len(units), g.Field+" in")]
		if x := math.Abs(unit.Convert(g.in.Example, g.in.Unit, v)); v != g.Unit && x >= 0.5 && x <= 3000 {
			return v
		}
	}
	return other(g.Unit, units)
}
