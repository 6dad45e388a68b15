package voc

import (
	"spraywright/calc"
	"spraywright/calc/caution"
	"spraywright/calc/field"
)

// Content tells the VOC content from what a measured sample holds.
func Content() *calc.Calculator {
	return &calc.Calculator{
		ID:       "voc-content",
		Title:    "VOC of a sample",
		Question: "What is the VOC content of a sample I know the make-up of?",
		Range:    "Any coating, ready to spray, whose volatiles, water and exempt solvents are known by weight and volume.",
		Inputs: []calc.Input{
			field.SampleVolume, field.VolatileMass, field.WaterMass, field.WaterVolume, field.ExemptMass, field.ExemptVolume,
		},
		Outputs:  []calc.Output{vocRegulatory, vocActual},
		Work:     contentWork,
		Cautions: []calc.Phrase{caution.LocalRule},
	}
}

func contentWork(w *calc.Working) {
	s := Sample{
		Volume: w.Given(field.SampleVolume), Volatiles: w.Given(field.VolatileMass),
		Water: w.Given(field.WaterMass), WaterVolume: w.Given(field.WaterVolume),
		Exempt: w.Given(field.ExemptMass), ExemptVolume: w.Given(field.ExemptVolume),
	}
	if s.Water.V+s.Exempt.V > s.Volatiles.V {
		w.Reject(field.VolatileMass, calc.Impossible, "must be at least what water and exempt solvents weigh", "Volatiles count them too")
	}
	if s.WaterVolume.V+s.ExemptVolume.V >= s.Volume.V {
		w.Reject(field.SampleVolume, calc.Impossible, "must be more than the volume of water and exempt solvents", "Check the volumes and their units")
		return
	}
	regulatory, actual := s.Contents(w)
	w.Result(vocRegulatory, regulatory)
	w.Result(vocActual, actual)
}
