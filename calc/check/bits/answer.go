package main

import (
	"bufio"
	"fmt"
	"hash/fnv"
	"io"
	"math"
	"os"
	"strconv"
	"strings"

	"spraywright/calc"
)

// An answered is what a form came to: its numbers, each under a name, and its texts.
type answered struct {
	names []string
	xs    []float64
	texts []string
}

func (a *answered) number(name string, x float64) {
	a.names, a.xs = append(a.names, name), append(a.xs, x)
}

func (a *answered) figure(name string, f calc.Figure) {
	a.number(name, f.Value)
	a.texts = append(a.texts, name+": "+f.Text+" "+f.Unit+" "+f.Typed)
}

func run(q asked) *answered {
	a := &answered{}
	r, steps := q.c.Steps(q.form)
	for i, s := range steps {
		a.number("step "+strconv.Itoa(i+1)+", "+string(s.Label), s.Value)
	}
	for _, s := range r.Steps {
		a.texts = append(a.texts, s.Label+": "+s.Numbers+" = "+s.Result)
	}
	for _, f := range r.Figures {
		a.figure(f.Key, f)
	}
	for _, l := range r.Lists {
		for n, row := range l.Rows {
			for _, f := range row {
				a.figure(l.Key+"."+strconv.Itoa(n+1)+"."+f.Key, f)
			}
		}
	}
	for _, p := range r.Pictures {
		for _, s := range p.Shapes {
			for _, x := range append([]float64{s.X, s.Y, s.W, s.H}, s.Points...) {
				a.number("picture "+p.Key, x)
			}
		}
		a.texts = append(a.texts, p.Says)
	}
	for _, p := range r.Problems {
		a.texts = append(a.texts, p.Field+": "+p.Message+". "+p.Fix)
	}
	for _, v := range r.Verdict {
		a.texts = append(a.texts, string(v.Level)+": "+v.Why+" "+v.Do)
	}
	a.texts = append(a.texts, r.Cautions...)
	return a
}

// answer writes every answer on a line: calculator, number, mark of the form, mark of each text, bits of each number.
func answer() error {
	out := bufio.NewWriterSize(os.Stdout, 1<<16)
	err := all(func(q asked) error {
		a := run(q)
		fmt.Fprintf(out, "%s %d %s\t", q.c.ID, q.n, mark(q.form.String()))
		for _, text := range a.texts {
			io.WriteString(out, mark(text)+" ")
		}
		out.WriteByte('\t')
		for _, x := range a.xs {
			io.WriteString(out, strconv.FormatUint(math.Float64bits(x), 36)+" ")
		}
		return out.WriteByte('\n')
	})
	if err != nil {
		return err
	}
	return out.Flush()
}

// mark is short for a text.
func mark(text string) string {
	h := fnv.New64a()
	io.WriteString(h, text)
	return strconv.FormatUint(h.Sum64(), 36)
}

// read undoes a line.
func read(line string) (head string, marks []string, xs []float64, err error) {
	parts := strings.Split(line, "\t")
	if len(parts) != 3 {
		return "", nil, nil, fmt.Errorf("cannot read %.100q", line)
	}
	for _, bits := range strings.Fields(parts[2]) {
		n, err := strconv.ParseUint(bits, 36, 64)
		if err != nil {
			return "", nil, nil, err
		}
		xs = append(xs, math.Float64frombits(n))
	}
	return parts[0], strings.Fields(parts[1]), xs, nil
}
