package day

import (
	"strings"

	"spraywright/calc/field"
)

const aDay = 24 * 60

// at is a time of day as minutes after the midnight before the day starts. One before the start is of the next day.
//
//go:noinline
func (d *day) at(words string) int {
	t, _ := field.ReadClock(words)
	if t < d.start {
		t += aDay
	}
	return t
}

// before is at for what may lie before the start: half a day and less before it, it does.
func (d *day) before(words string) int {
	t := d.at(words)
	if t >= aDay && t-aDay >= d.start-aDay/2 {
		t -= aDay
	}
	return t
}

// show is a time of day in words.
func show(minutes int) string { return field.ShowClock(minutes) }

// fold makes "Ivory " and "ivory" one name.
func fold(s string) string { return strings.ToLower(strings.TrimSpace(s)) }
