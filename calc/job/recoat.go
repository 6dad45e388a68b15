package job

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// A sprayed is one coat as parts remember it.
type sprayed struct {
	began, ended calc.Num
	limit        calc.Num // latest recoat, h; not given where the sheet sets none
}

// recoated notes a coat that has just ended on every part it is on, and warns once where a part waited for it longer
// than the product under it allows. Parts are sprayed in the same order in every coat, so that the first waits from
// beginning to beginning and the last from end to end.
func (s *sheet) recoated(c *coat, ended calc.Num) {
	warned := false
	for p := range s.parts {
		if !s.on(c, p) {
			continue
		}
		if under := s.last[p]; under.limit.Given() && !warned {
			wait := max(s.began.V-under.began.V, ended.V-under.ended.V)
			if warned = wait > under.limit.V*60; warned {
				s.Judge(calc.Wait, calc.Say("{part} would wait {wait} for {name}, over the latest recoat of {most}", calc.Words(s.parts[p].name, "part"),
					calc.N(wait/60, unit.Hour).To(1, "wait"), calc.Words(c.name, "name"), under.limit.To(1, "most")),
					calc.Say("Sand it before {name}, or spray fewer parts at a time", calc.Words(c.name, "name")))
			}
		}
		s.last[p] = sprayed{s.began, ended, c.recoat}
	}
}
