package day

import (
	"strings"

	"spraywright/calc/field"
)

const aDay = 24 * 60

// at is a time of day as minutes after the midnight before the day starts. One before the start is of the next day.
func (d *day) at(words string) int { return d.since(words, 0) }

// How long before the start of the day may be of the same day: for work, whose times past midnight are the next day's,
// and for parts that have been there since the morning.
const (
	early   = 6 * 60
	waiting = 12 * 60
)

// since is at for a time that may lie so many minutes before the start.
//
//go:noinline
func (d *day) since(words string, before int) int {
	t, _ := field.ReadClock(words)
	if t < d.start-before {
		t += aDay
	}
	return t
}

// show is a time of day in words.
func show(minutes int) string { return field.ShowClock(minutes) }

// fold makes "Ivory " and "ivory" one name.
func fold(s string) string { return strings.ToLower(strings.TrimSpace(s)) }
