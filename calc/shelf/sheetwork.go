package shelf

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
	"spraywright/calc/film"
	"spraywright/calc/mixing"
	"spraywright/calc/ratio"
	"spraywright/calc/source"
	"spraywright/calc/unit"
	"spraywright/calc/voc"
)

// most is how many parts of a ratio a data sheet has densities for.
const most = 4

// A sheet is a data sheet being worked out.
type sheet struct {
	*calc.Working
	parts     []float64  // of its ratio; none where that is blank
	densities []calc.Num // of every part, or none
	volumes   []float64  // the parts by volume, or none where they are not known
}

// readMix takes the ratio, and the densities where every part has one.
func (s *sheet) readMix() {
	if words := s.Words(field.Ratio); words != "" {
		s.parts, _ = ratio.Parse(words)
	}
	by := s.Picked(field.RatioBy)
	if by == "volume" {
		s.volumes = s.parts
	}
	if by == "" || len(s.parts) < 2 || len(s.parts) > most {
		return
	}
	ins := []calc.Input{field.DensityA, field.DensityB, field.DensityC, field.DensityD}[:len(s.parts)]
	rho := make([]calc.Num, len(ins))
	for i, in := range ins {
		if rho[i] = s.Given(in); !rho[i].Given() {
			return
		}
	}
	s.densities = rho
}

// bothWays gives the ratio by volume and by weight, one of them worked from the densities.
func (s *sheet) bothWays() {
	if s.densities == nil {
		return
	}
	byWeight := s.Picked(field.RatioBy) == "weight"
	stated, u := make([]calc.Num, len(s.parts)), unit.PartsByVolume
	if byWeight {
		u = unit.PartsByMass
	}
	for i, x := range s.parts {
		stated[i] = calc.N(x, u)
	}
	volumes, weights := stated, stated
	if byWeight {
		volumes = mixing.VolumeRatio(s.Working, s.parts, s.densities)
		s.volumes = make([]float64, len(volumes))
		for i, v := range volumes {
			s.volumes[i] = v.V
		}
	} else {
		weights = mixing.WeightRatio(s.Working, s.parts, s.densities)
	}
	for i := range s.parts {
		s.List(bothWays, calc.Told(calc.Say([...]calc.Phrase{"First part", "Second part", "Third part", "Fourth part"}[i])), calc.Of(volumes[i]), calc.Of(weights[i]))
	}
	s.Result(densityWorked, mixing.MixDensity(s.Working, s.parts, byWeight, s.densities))
}

// film works out what the sheet's film means at the gun, as far as its facts go.
func (s *sheet) film() {
	vs, dft, n := s.Given(field.VolumeSolids), s.Given(field.DryFilm), s.Given(field.Coats)
	unthinned := s.Picked(field.SolidsFor) == "unthinned"
	if !vs.Given() || unthinned && len(s.volumes) < 2 {
		return
	}
	if unthinned {
		vs = film.SprayedSolids(s.Working, vs, s.volumes, true)
		if vs.V < 1 {
			s.Reject(field.Ratio, calc.Beyond, "leaves {left} volume solids, too little to work with", "Check the parts; the thinner comes last", vs.As("left"))
			return
		}
		s.Result(sprayedSolids, vs)
	}
	if !dft.Given() {
		return
	}
	rate := film.SpreadingRate(s.Working, vs, dft)
	s.Result(spreading, rate)
	if n.Given() {
		s.Result(wetCoat, film.Wet(s.Working, dft, vs, n))
	}
	if price := s.Given(field.Price); price.Given() {
		s.Result(coatCost, s.Step(coatCost.Label, "c = p / SR", unit.PricePerSquareMetre, source.Definition, price.V/rate.V, price, rate))
	}
}

// limits holds the sheet's VOC against each table that has a limit for its kind of coat.
func (s *sheet) limits() {
	content := s.Given(field.VOC)
	if !content.Given() {
		return
	}
	s.Caution(caution.LocalRule)
	for _, table := range field.Limits.Choices {
		l, ok := voc.LimitFor(table.Key, s.Picked(field.Role), 2)
		if !ok {
			continue
		}
		limit := l.Allowed(s.Working)
		standing := calc.Phrase("Within it")
		switch {
		case l.Average:
			standing = "Counts with the other stages: the average of base and clear must be within it"
		case content.V > limit.V:
			standing = "Over it"
		}
		s.List(limitCheck, calc.Told(calc.Say(table.Label)), calc.Of(limit), calc.Told(calc.Say(standing)))
	}
}
