package code

// A symbol is a code as it is drawn: its modules row by row (ISO/IEC 18004).
type symbol struct {
	version, size int
	dark          []bool
	fixed         []bool // where nothing of the message stands
}

// draw makes the code for a message.
func draw(m message, version int, l level) *symbol {
	s := &symbol{version: version, size: side(version)}
	s.dark, s.fixed = make([]bool, s.size*s.size), make([]bool, s.size*s.size)
	s.patterns()
	s.format(l, 0) // keeps its place free
	s.fill(corrected(m.data(version, l), version, l))
	best, least := 0, -1
	for mask := range masks {
		s.mask(mask)
		s.format(l, mask)
		if p := s.penalty(); least < 0 || p < least {
			best, least = mask, p
		}
		s.mask(mask) // a second time takes it off
	}
	s.mask(best)
	s.format(l, best)
	return s
}

// at is the place of a module in dark and fixed.
func (s *symbol) at(x, y int) int { return y*s.size + x }

func (s *symbol) set(x, y int, dark bool) {
	s.dark[s.at(x, y)], s.fixed[s.at(x, y)] = dark, true
}

// patterns draws what every code of the version has (6.3 and 7.10).
func (s *symbol) patterns() {
	for i := range s.size {
		s.set(6, i, i%2 == 0)
		s.set(i, 6, i%2 == 0)
	}
	last := s.size - 1
	for _, c := range [...][2]int{{3, 3}, {last - 3, 3}, {3, last - 3}} {
		s.rings(c[0], c[1], 4, 2)
	}
	places := s.alignment()
	for i, x := range places {
		for k, y := range places {
			corner := (i == 0 || i == len(places)-1) && (k == 0 || k == len(places)-1)
			if !corner || i == k && i > 0 {
				s.rings(x, y, 2, 1)
			}
		}
	}
	if s.version >= 7 {
		told := withCheck(s.version, 12, 0x1F25)
		for i := range 18 {
			x, y := i/3, last-10+i%3
			s.set(x, y, told>>i&1 == 1)
			s.set(y, x, told>>i&1 == 1)
		}
	}
}

// rings draws dark rings around a dark middle, but for a light one, and the fourth, which sets a finder pattern apart.
// What lies outside the code is left out.
func (s *symbol) rings(x, y, reach, light int) {
	for dy := -reach; dy <= reach; dy++ {
		for dx := -reach; dx <= reach; dx++ {
			if x+dx < 0 || x+dx >= s.size || y+dy < 0 || y+dy >= s.size {
				continue
			}
			ring := max(dx, -dx, dy, -dy)
			s.set(x+dx, y+dy, ring != light && ring != 4)
		}
	}
}

// alignment lists where alignment patterns have their middles, in both directions (annex E): evenly apart, in even
// steps, but for the first.
func (s *symbol) alignment() []int {
	if s.version == 1 {
		return nil
	}
	n := s.version/7 + 2
	step := (s.version*8 + 3*n + 5) / (4*n - 4) * 2
	places := make([]int, n)
	for i := range places {
		places[i] = s.size - 7 - (n-1-i)*step
	}
	places[0] = 6
	return places
}

// format tells level and mask, twice (7.9).
func (s *symbol) format(l level, mask int) {
	told := withCheck(int(l^1)<<3|mask, 10, 0x537) ^ 0x5412
	last := s.size - 1
	for i := range 15 {
		dark := told>>i&1 == 1
		near, far := i, last-i // along an edge, the timing pattern passed over
		switch {
		case i == 6 || i == 7:
			near = i + 1
		case i > 7:
			near = 14 - i
		}
		if i < 8 {
			s.set(8, near, dark)
			s.set(far, 8, dark)
			continue
		}
		if i == 8 {
			near = 7
		}
		s.set(near, 8, dark)
		s.set(8, last-14+i, dark)
	}
	s.set(8, last-7, true)
}

// withCheck puts the remainder of x behind it: so many bits, by a polynomial (annexes C and D).
func withCheck(x, bits, polynomial int) int {
	rest := x << bits
	for i := 17; i >= bits; i-- {
		if rest>>i&1 == 1 {
			rest ^= polynomial << (i - bits)
		}
	}
	return x<<bits | rest
}

// fill lays the bits two columns at a time, up and down in turn, from the lower right (7.7.3). Bits left over stay light.
func (s *symbol) fill(bytes []byte) {
	n := 0
	for right, up := s.size-1, true; right > 0; right, up = right-2, !up {
		if right == 6 {
			right-- // the timing pattern
		}
		for i := range s.size {
			y := i
			if up {
				y = s.size - 1 - i
			}
			for _, x := range [...]int{right, right - 1} {
				if s.fixed[s.at(x, y)] || n >= 8*len(bytes) {
					continue
				}
				s.dark[s.at(x, y)] = bytes[n/8]>>(7-n%8)&1 == 1
				n++
			}
		}
	}
}
