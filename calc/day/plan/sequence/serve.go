package sequence

// lateBy bounds the cost of lateness by painter's work alone, or with bakes; or guesses it, with work stretched to some
// percent.
func (s *search) lateBy(m *state, l *layout, from int32, bakes bool, percent int32) int64 {
	j, b := &s.bounds.joint, &s.bounds
	j.work, j.release, j.of = j.work[:0], j.release[:0], j.of[:0]
	promised := false
	for c := range s.p.Chains {
		at := int(m.key[c])
		w := b.work[c][at]
		if bakes {
			w += j.bake[c][at]
		}
		if w == 0 {
			continue
		}
		w = max(1, w*percent/100)
		release := from
		if at > 0 {
			op := &s.p.Chains[c].Ops[at]
			release = max(release, m.d[l.last[c]]+op.After-b.lead[c][at])
		} else {
			release = max(release, s.p.Chains[c].Ops[0].Earliest-b.lead[c][0])
		}
		j.work, j.release, j.of = append(j.work, w), append(j.release, release), append(j.of, c)
		promised = promised || s.promised[c]
	}
	if !promised {
		return 0
	}
	j.serve(from)
	cost, below := int64(0), int64(0)
	for _, level := range j.levels {
		cost += (level - below) * s.p.Weigh.Late * s.lateAt(m, level, bakes)
		below = level
	}
	return cost
}

// serve works the pieces off, the shortest remaining first, and notes the ends.
func (j *joint) serve(now int32) {
	j.ends = j.ends[:0]
	for len(j.ends) < len(j.work) {
		best, until := -1, int32(Never)
		for i, w := range j.work {
			switch {
			case w == 0:
			case j.release[i] > now:
				until = min(until, j.release[i])
			case best < 0 || w < j.work[best]:
				best = i
			}
		}
		if best < 0 {
			now = until
			continue
		}
		run := min(j.work[best], until-now)
		now += run
		j.work[best] -= run
		if j.work[best] == 0 {
			j.ends = append(j.ends, now)
		}
	}
}

// lateAt is the least total lateness, in minutes, of the chains of a priority or above.
func (s *search) lateAt(m *state, level int64, bakes bool) int64 {
	j := &s.bounds.joint
	j.due = j.due[:0]
	for _, c := range j.of {
		ch := &s.p.Chains[c]
		if !s.promised[c] || ch.Priority < level {
			continue
		}
		due := ch.Due
		if !bakes {
			due -= s.bounds.tail[c][m.key[c]]
		}
		j.due = append(j.due, due)
		for i := len(j.due) - 1; i > 0 && j.due[i-1] > j.due[i]; i-- {
			j.due[i-1], j.due[i] = j.due[i], j.due[i-1]
		}
	}
	late := int64(0)
	for i, due := range j.due {
		late += int64(max(0, j.ends[i]-due))
	}
	return late
}
