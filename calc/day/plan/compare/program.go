//go:build unix

package main

import (
	"fmt"
	"strings"

	"spraywright/calc/day/plan"
)

// milp is a day as a mixed-integer program: starts of steps, and for whatever cannot be at once a choice of which comes
// first. It is written for what the files hold: one painter, one booth in which is baked, no breaks, no shared cups.
type milp struct {
	d       *plan.Day
	b       strings.Builder
	horizon int
	choices []string
}

// program writes a day in the LP format that glpsol and cbc read.
func program(d *plan.Day) string {
	m := &milp{d: d}
	for _, j := range d.Jobs {
		m.horizon = max(m.horizon, j.Ready)
	}
	for _, j := range d.Jobs {
		m.horizon += j.Bake.Minutes
		for _, c := range j.Coats {
			m.horizon += d.Products[c.Product].Mix + d.Walk + d.Door + c.Spray + c.Flash + 9
		}
	}
	m.b.WriteString("Minimize\n obj: ")
	fmt.Fprintf(&m.b, "%d finish", d.Aim.Finish)
	for j := range d.Jobs {
		fmt.Fprintf(&m.b, " + %d late%d", d.Aim.Late*max(1, d.Jobs[j].Priority), j)
	}
	m.b.WriteString("\nSubject To\n")
	for j := range d.Jobs {
		m.job(j)
	}
	for j := range d.Jobs {
		for k := range d.Jobs[:j] {
			m.pair(j, k)
		}
	}
	m.b.WriteString("Bounds\n")
	for j := range d.Jobs {
		fmt.Fprintf(&m.b, " late%d >= 0\n", j)
	}
	m.b.WriteString("Binary\n")
	for _, c := range m.choices {
		m.b.WriteString(" " + c + "\n")
	}
	m.b.WriteString("End\n")
	return m.b.String()
}

func coat(j, i int) string { return fmt.Sprintf("s%d_%d", j, i) }
func bake(j int) string    { return fmt.Sprintf("b%d", j) }

// after makes to start at least minutes after from starts, where the choices are made.
func (m *milp) after(to, from string, minutes int, choices ...string) {
	fmt.Fprintf(&m.b, " %s - %s", to, from)
	for _, c := range choices {
		fmt.Fprintf(&m.b, " - %d %s", 2*m.horizon, c)
	}
	fmt.Fprintf(&m.b, " >= %d\n", minutes-2*m.horizon*len(choices))
}

func (m *milp) choice(name string) string {
	m.choices = append(m.choices, name)
	return name
}

// fresh tells whether a coat is the first out of its cup: a cup serves neighbouring coats of a product.
func (m *milp) fresh(j, i int) bool {
	all := m.d.Jobs[j].Coats
	return i == 0 || all[i-1].Product != all[i].Product
}

func (m *milp) lead(j, i int) int {
	return m.d.Products[m.d.Jobs[j].Coats[i].Product].Mix + m.d.Walk + m.d.Door
}

// job writes what a job asks for by itself.
func (m *milp) job(j int) {
	job := &m.d.Jobs[j]
	first := 0
	for i, c := range job.Coats {
		least := job.Ready
		if m.fresh(j, i) {
			first = i
			least = max(least, m.lead(j, i))
		}
		fmt.Fprintf(&m.b, " %s >= %d\n", coat(j, i), least)
		next := bake(j)
		wait := c.Spray + c.Flash
		if i+1 < len(job.Coats) {
			next = coat(j, i+1)
			wait = max(wait, c.Spray+m.gap(j, i, j, i+1))
		}
		m.after(next, coat(j, i), wait)
		if c.Latest > 0 {
			m.after(coat(j, i), next, -c.Spray-c.Latest)
		}
		if life := m.d.Products[c.Product].PotLife; life > 0 && i > first {
			m.after(coat(j, first), coat(j, i), c.Spray+m.lead(j, first)-life)
		}
	}
	fmt.Fprintf(&m.b, " finish - %s >= %d\n", bake(j), job.Bake.Minutes)
	if job.Promised > 0 {
		fmt.Fprintf(&m.b, " late%d - %s >= %d\n", j, bake(j), job.Bake.Minutes-job.Promised)
	}
}

// gap is what the painter needs between the end of one coat and the start of another.
func (m *milp) gap(j, i, k, l int) int {
	if m.fresh(k, l) {
		return m.d.Rinse[m.d.Jobs[j].Coats[i].Product][m.d.Jobs[k].Coats[l].Product] + m.lead(k, l)
	}
	if j == k {
		return 0 // out of one cup
	}
	rinse := m.d.Rinse[m.d.Jobs[j].Coats[i].Product][m.d.Jobs[k].Coats[l].Product]
	if rinse > 0 && !m.d.RinseInBooth {
		return rinse + m.d.Walk + m.d.Door
	}
	return rinse
}

// pair writes which of two jobs' steps come first.
func (m *milp) pair(j, k int) {
	a, b := &m.d.Jobs[j], &m.d.Jobs[k]
	for i := range a.Coats {
		for l := range b.Coats {
			first := m.choice(fmt.Sprintf("c%d_%d_%d_%d", j, i, k, l))
			m.after(coat(k, l), coat(j, i), a.Coats[i].Spray+m.gap(j, i, k, l), first)
			m.before(coat(j, i), coat(k, l), b.Coats[l].Spray+m.gap(k, l, j, i), first)
		}
	}
	m.dry(j, k)
	m.dry(k, j)
	jFirst, kFirst := m.choice(fmt.Sprintf("j%d_%d", j, k)), m.choice(fmt.Sprintf("j%d_%d", k, j))
	m.after(coat(k, m.wetFrom(k)), bake(j), a.Bake.Minutes, jFirst)
	m.after(coat(j, m.wetFrom(j)), bake(k), b.Bake.Minutes, kFirst)
	joined := ""
	if a.Bake == b.Bake {
		joined = m.choice(fmt.Sprintf("w%d_%d", j, k))
		m.after(bake(j), bake(k), 0, joined)
		m.after(bake(k), bake(j), 0, joined)
		joined = " + " + joined
	}
	fmt.Fprintf(&m.b, " %s + %s%s = 1\n", jFirst, kFirst, joined)
}

// before makes to start at least minutes after from starts where the choice is not made.
func (m *milp) before(to, from string, minutes int, choice string) {
	fmt.Fprintf(&m.b, " %s - %s + %d %s >= %d\n", to, from, 2*m.horizon, choice, minutes)
}

// wetFrom is the coat from which on a job stands wet in the booth until its bake.
func (m *milp) wetFrom(j int) int {
	from := 0
	for i, c := range m.d.Jobs[j].Coats {
		if c.Movable {
			from = i + 1
		}
	}
	return from
}

// dry keeps what is movable of a job out of the booth while another is baked: each stretch of coats up to a movable one
// is dry before the bake, or begins after it.
func (m *milp) dry(j, other int) {
	start := 0
	for i, c := range m.d.Jobs[j].Coats {
		if !c.Movable {
			continue
		}
		first := m.choice(fmt.Sprintf("d%d_%d_%d", j, i, other))
		m.after(bake(other), coat(j, i), c.Spray+c.Flash, first)
		m.before(coat(j, start), bake(other), m.d.Jobs[other].Bake.Minutes, first)
		start = i + 1
	}
}
