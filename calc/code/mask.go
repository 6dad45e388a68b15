package code

// masks is how many patterns there are of which one is laid over the message, so that a camera finds its way.
const masks = 8

// mask turns the modules over that a pattern covers (ISO/IEC 18004, table 10).
func (s *symbol) mask(pattern int) {
	for y := range s.size {
		for x := range s.size {
			if at := s.at(x, y); !s.fixed[at] && covers(pattern, x, y) {
				s.dark[at] = !s.dark[at]
			}
		}
	}
}

func covers(pattern, x, y int) bool {
	switch pattern {
	case 0:
		return (x+y)%2 == 0
	case 1:
		return y%2 == 0
	case 2:
		return x%3 == 0
	case 3:
		return (x+y)%3 == 0
	case 4:
		return (y/2+x/3)%2 == 0
	case 5:
		return x*y%2+x*y%3 == 0
	case 6:
		return (x*y%2+x*y%3)%2 == 0
	}
	return ((x+y)%2+x*y%3)%2 == 0
}

// penalty says how hard the code is to read (ISO/IEC 18004, table 11): the mask with the least is taken.
func (s *symbol) penalty() int {
	p, darks := 0, 0
	for i := range s.size {
		p += s.alongLine(s.at(0, i), 1) + s.alongLine(s.at(i, 0), s.size)
	}
	for y := range s.size {
		for x := range s.size {
			at := s.at(x, y)
			if s.dark[at] {
				darks++
			}
			if d := s.dark[at]; x > 0 && y > 0 && d == s.dark[at-1] && d == s.dark[at-s.size] && d == s.dark[at-s.size-1] {
				p += 3
			}
		}
	}
	off := 20*darks - 10*len(s.dark) // 20 times how far from half
	return p + max(off, -off)/len(s.dark)*10
}

// alongLine counts runs of five and more of one colour, and what looks like a finder pattern with light beside it, in
// the row or column that starts at a module.
func (s *symbol) alongLine(start, step int) int {
	p, run, seen := 0, 0, 0
	for i := range s.size {
		dark := s.dark[start+i*step]
		if i > 0 && dark == s.dark[start+(i-1)*step] {
			run++
		} else {
			run = 1
		}
		switch {
		case run == 5:
			p += 3
		case run > 5:
			p++
		}
		seen = seen << 1 & 0x7FF
		if dark {
			seen |= 1
		}
		if i >= 10 && (seen == 0b10111010000 || seen == 0b00001011101) {
			p += 40
		}
	}
	return p
}
