package calc

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// JSON writes the report for the page. The core keeps its own writer because encoding/json would add about
// half again to what a phone has to download.
func (r Report) JSON() string {
	j := &jsonWriter{b: make([]byte, 0, 16<<10)}
	j.object(func() { j.report(r) })
	return string(j.b)
}

func (j *jsonWriter) report(r Report) {
	j.text("id", r.Calculator)
	j.list("problems", len(r.Problems), func(i int) { j.problem(r.Problems[i]) })
	j.list("places", len(r.Places), func(i int) {
		j.text("place", r.Places[i].Place)
		j.number("missing", float64(r.Places[i].Missing))
		j.number("wrong", float64(r.Places[i].Wrong))
	})
	j.list("rows", len(r.Rows), func(i int) { j.text("row", r.Rows[i].Row); j.text("text", r.Rows[i].Text) })
	j.list("retyped", len(r.Retyped), func(i int) {
		j.text("field", r.Retyped[i].Field)
		j.text("text", r.Retyped[i].Text)
		j.text("unit", r.Retyped[i].Unit)
	})
	j.list("nudges", len(r.Nudges), func(i int) {
		j.text("field", r.Nudges[i].Field)
		j.text("less", r.Nudges[i].Less)
		j.text("more", r.Nudges[i].More)
	})
	j.list("verdict", len(r.Verdict), func(i int) { j.ruling(r.Verdict[i]) })
	j.list("figures", len(r.Figures), func(i int) { j.figure(r.Figures[i]) })
	j.list("lists", len(r.Lists), func(i int) { j.table(r.Lists[i]) })
	j.list("pictures", len(r.Pictures), func(i int) { j.picture(r.Pictures[i]) })
	j.list("steps", len(r.Steps), func(i int) { j.line(r.Steps[i]) })
	j.key("cautions")
	j.array(len(r.Cautions), func(i int) { j.string(r.Cautions[i]) })
}

func (j *jsonWriter) problem(p Problem) {
	j.text("field", p.Field)
	j.text("place", p.Place)
	j.text("row", p.Row)
	j.text("code", string(p.Code))
	j.text("message", p.Message)
	j.text("fix", p.Fix)
}

func (j *jsonWriter) ruling(r Ruling) {
	j.text("level", string(r.Level))
	j.text("why", r.Why)
	j.text("do", r.Do)
	j.ints("steps", r.Steps)
}

func (j *jsonWriter) figure(f Figure) {
	j.text("key", f.Key)
	j.text("label", f.Label)
	j.text("text", f.Text)
	if f.UnitID != "" {
		j.text("unit", f.Unit)
		j.text("unit_id", f.UnitID)
		j.number("value", f.Value)
		j.text("typed", f.Typed)
		j.text("full", f.Full)
	}
	j.ints("steps", f.Steps)
	if f.Of != "" {
		j.text("of", f.Of)
	}
	if f.Timer != nil {
		j.timer(f.Timer)
	}
}

func (j *jsonWriter) table(l List) {
	j.text("key", l.Key)
	j.text("label", l.Label)
	j.list("columns", len(l.Columns), func(i int) { j.text("key", l.Columns[i].Key); j.text("label", l.Columns[i].Label) })
	j.key("rows")
	j.array(len(l.Rows), func(i int) {
		j.array(len(l.Rows[i]), func(k int) { j.object(func() { j.figure(l.Rows[i][k]) }) })
	})
}

func (j *jsonWriter) line(s Line) {
	j.text("label", s.Label)
	j.text("kind", string(s.Kind))
	j.text("formula", s.Formula)
	j.text("numbers", s.Numbers)
	j.text("result", s.Result)
	j.text("legend", s.Legend)
	if s.Source != nil {
		j.text("source", s.Source.Name())
		j.text("source_place", string(s.Source.Place))
		j.text("source_basis", string(s.Source.Basis))
		j.text("source_id", s.Source.ID)
	}
	j.ints("from", s.From)
}

func (j *jsonWriter) picture(p Picture) {
	j.text("key", p.Key)
	j.text("title", p.Title)
	j.text("says", p.Says)
	j.number("width", p.Width)
	j.number("height", p.Height)
	j.list("shapes", len(p.Shapes), func(i int) {
		s := p.Shapes[i]
		j.text("kind", string(s.Kind))
		j.text("look", s.Look)
		j.number("x", s.X)
		j.number("y", s.Y)
		switch s.Kind {
		case Label:
			j.text("text", s.Text)
			j.text("anchor", s.anchor())
		case Path:
			j.key("points")
			j.array(len(s.Points), func(i int) { j.float(s.Points[i]) })
		default:
			j.number("w", s.W)
			j.number("h", s.H)
		}
		if s.Of != "" {
			j.text("of", s.Of)
		}
	})
}

func (s Shape) anchor() string {
	switch {
	case s.AnchorEnd:
		return "end"
	case s.AnchorMid:
		return "middle"
	}
	return "start"
}

// A jsonWriter appends JSON (RFC 8259).
type jsonWriter struct{ b []byte }

// comma parts one element from the last, and nothing after an opening bracket or a key.
func (j *jsonWriter) comma() {
	if n := len(j.b); n > 0 && j.b[n-1] != '{' && j.b[n-1] != '[' && j.b[n-1] != ':' {
		j.b = append(j.b, ',')
	}
}

func (j *jsonWriter) object(fill func()) {
	j.comma()
	j.b = append(j.b, '{')
	fill()
	j.b = append(j.b, '}')
}

func (j *jsonWriter) array(n int, item func(i int)) {
	j.comma()
	j.b = append(j.b, '[')
	for i := range n {
		item(i)
	}
	j.b = append(j.b, ']')
}

// list writes n objects.
func (j *jsonWriter) list(key string, n int, fill func(i int)) {
	j.key(key)
	j.array(n, func(i int) { j.object(func() { fill(i) }) })
}

func (j *jsonWriter) key(k string) {
	j.string(k)
	j.b = append(j.b, ':')
}

func (j *jsonWriter) text(k, s string) { j.key(k); j.string(s) }

func (j *jsonWriter) number(k string, x float64) { j.key(k); j.float(x) }

// float writes a number; one that is not finite, which JSON has no word for, is null.
func (j *jsonWriter) float(x float64) {
	j.comma()
	if math.IsNaN(x) || math.IsInf(x, 0) {
		j.b = append(j.b, "null"...)
		return
	}
	j.b = strconv.AppendFloat(j.b, x, 'g', -1, 64)
}

func (j *jsonWriter) ints(k string, ns []int) {
	j.key(k)
	j.array(len(ns), func(i int) { j.float(float64(ns[i])) })
}

func (j *jsonWriter) string(s string) {
	j.comma()
	j.b = append(j.b, '"')
	done := 0 // what stands as it is is copied in one go
	for i, r := range s {
		invalid := r == utf8.RuneError && !strings.HasPrefix(s[i:], "\uFFFD")
		if r >= ' ' && r != '"' && r != '\\' && !invalid {
			continue
		}
		j.b = append(j.b, s[done:i]...)
		done = i + 1
		switch {
		case invalid:
			j.b = append(j.b, "\uFFFD"...)
		case r < ' ':
			j.b = append(j.b, '\\', 'u', '0', '0', hexDigits[r>>4], hexDigits[r&15])
		default:
			j.b = append(j.b, '\\', byte(r))
		}
	}
	j.b = append(j.b, s[done:]...)
	j.b = append(j.b, '"')
}
