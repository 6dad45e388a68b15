package voc

import (
	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A Limit is one line of a table of VOC limits.
type Limit struct {
	Table    string      // key of field.Limits: "eu", "us"
	Dated    calc.Phrase // when the table was published
	Category calc.Phrase // the table's own name for the coating
	Value    float64     // g/L less water and exempt solvents, ready to spray
	Average  bool        // holds for the average of all stages, not for one of them
	Source   source.Source
}

var (
	annexII  = source.EU42.At("Annex II B; OJ L 143, 30 April 2004, p. 87").By(source.SecondHand)
	tableOne = source.CFR59.At("Table 1; 63 FR 48806, 11 September 1998").By(source.SecondHand)
	tableEnd = source.CFR59.At("Table 1, specialty coatings; 63 FR 48806, 11 September 1998").By(source.Memory)
)

// Allowed writes the limit down.
func (l Limit) Allowed(w *calc.Working) calc.Num {
	return w.Constant(w.Named("Limit for {kind}", calc.Term(l.Category, "kind")), unit.GramPerLitre, l.Source, l.Value)
}

// LimitFor finds the limit for a kind of coat: table is a key of field.Limits, role one of field.Role or of the further
// ones that [LimitTables] asks for. stages counts
// the coats of different kinds in a topcoat, clear included; it matters in the US table only. There is none for
// table "none". Local rules may be stricter: whoever shows a limit says so.
func LimitFor(table, role string, stages int) (Limit, bool) {
	switch table {
	case "eu":
		return eu(role)
	case "us":
		return us(role, stages)
	}
	return Limit{}, false
}

func eu(role string) (Limit, bool) {
	l := Limit{Table: "eu", Dated: "30 April 2004", Source: annexII}
	switch role {
	case "preparatory":
		l.Category, l.Value = "a, preparatory, its water counted", 850
	case "pre-cleaner":
		l.Category, l.Value = "a, pre-cleaner, its water counted", 200
	case "bodyfiller":
		l.Category, l.Value = "b, bodyfiller and stopper", 250
	case "surfacer", "sealer":
		l.Category, l.Value = "c, surfacer, filler and general metal primer", 540
	case "wash-primer":
		l.Category, l.Value = "c, wash primer", 780
	case "base", "clear", "topcoat":
		l.Category, l.Value = "d, topcoat", 420
	case "special":
		l.Category, l.Value = "e, special finishes", 840
	default:
		return Limit{}, false
	}
	return l, true
}

func us(role string, stages int) (Limit, bool) {
	l := Limit{Table: "us", Dated: "11 September 1998", Source: tableOne}
	switch role {
	case "wash-primer":
		l.Category, l.Value = "pretreatment wash primers", 780
	case "surfacer":
		l.Category, l.Value = "primers and primer surfacers", 580
	case "sealer":
		l.Category, l.Value = "primer sealers", 550
	case "topcoat":
		l.Category, l.Value = "single- and two-stage topcoats", 600
	case "base", "clear":
		l.Category, l.Value, l.Average = "single- and two-stage topcoats", 600, true
		if stages > 2 {
			l.Category, l.Value = "topcoats of three or more stages", 630
		}
	case "multicolour":
		l.Category, l.Value = "multi-colored topcoats", 680
	case "special":
		l.Category, l.Value, l.Source = "specialty coatings", 840, tableEnd
	default:
		return Limit{}, false
	}
	return l, true
}
