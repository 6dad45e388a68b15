package main

import (
	"spraywright/calc"
	vocabulary "spraywright/calc/field"
	"spraywright/calc/timing"
)

// A timersPage is what the page of the timers asks: for a timer by hand, and about one that runs.
type timersPage struct {
	Hand   []field
	Began  []field // when something began
	Warmth []field // the temperature of a mix, and what it takes to follow it
}

// ofRunning stands before the names of what is asked about a timer that runs, to tell them from the form by hand.
const ofRunning = "now."

func newTimersPage() timersPage {
	began := vocabulary.BegunAgo
	began.Prefill = false
	before := vocabulary.StoodAt
	before.Label, before.Help = "Temperature of the mix so far", "Since it was mixed"
	warmth := vocabulary.Air
	warmth.Label, warmth.Help = "Temperature of the mix from now on", "Measured in the cup, or the air it now stands in"
	return timersPage{
		Hand:   asked("", timing.TimeLeft().Inputs...),
		Began:  asked(ofRunning, began),
		Warmth: asked(ofRunning, vocabulary.PotLife, vocabulary.PotLifeAt, before, warmth),
	}
}

// asked makes the fields for inputs, their names under a prefix. None is nudged: that takes an answer on the page.
func asked(prefix string, ins ...calc.Input) []field {
	fields := make([]field, len(ins))
	for i, in := range ins {
		in.Step = 0
		fields[i] = newField(in, "", prefix)
	}
	return fields
}
