package main

import (
	"slices"

	vocabulary "spraywright/calc/field"
	"spraywright/calc/film"
	"spraywright/calc/record"
)

// A logPage is what the page of the log asks, and what it shows of the totals.
type logPage struct {
	Settings, Left []field
	Card           []cardPlace
}

// shownByDay are the outputs of the log that the page lists itself, day by day.
var shownByDay = []string{"entry", "day_total"}

func newLogPage() logPage {
	totals := record.MixLog()
	p := logPage{
		Settings: asked("", vocabulary.MassLimit, vocabulary.CSVUnits),
		Left:     asked("", vocabulary.LeftMass),
	}
	for i := len(totals.Outputs) - 1; i >= 0; i-- {
		if slices.Contains(shownByDay, totals.Outputs[i].Key) {
			totals.Outputs = slices.Delete(totals.Outputs, i, i+1)
		}
	}
	p.Card = cardPlaces(totals)
	return p
}

// A gaugePage is what the gauge bench asks before the readings, and the field of a reading.
type gaugePage struct {
	Given          []field
	Reading        field
	Figures, Lists []string // the outputs shown, by their keys
}

// Keys are the keys of the pad, row by row.
func (gaugePage) Keys() []string {
	return []string{"7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", ","}
}

func newGaugePage() gaugePage {
	p := gaugePage{Figures: []string{"film_mean", "film_lowest"}, Lists: []string{"doubtful", "spot", "ruling"}}
	for _, in := range film.GaugeReadings().Inputs {
		switch {
		case in.Rows != nil:
			p.Reading = newField(in.Rows[0], in.Key+".", in.Key+".0.")
		case in.Key != "area":
			p.Given = append(p.Given, newField(in, "", ""))
		}
	}
	return p
}
