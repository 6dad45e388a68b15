package sequence

// neg is the length of a path that is not there. Sums of a few of them stay above the least int32.
const neg = -1 << 28

// slots is how many cups can be open at once; half of them in a problem of many chains.
const (
	slots      = 12
	manyChains = 8
)

// state is what a partial plan leaves for later operations to build on.
type state struct {
	key     []byte  // what has been done and where things stand; see keys
	d       []int32 // longest paths from rows to columns; see layout
	late    []uint8 // finished chains whose end may still be pushed
	cost    int64   // rinses, trips, cups and the lateness that no longer changes
	bound   int64   // no completion costs less
	guide   int64   // by what a beam chooses: the bound and a little more
	past    int32   // the last step's place in the history
	ptr     int32   // how much of a frozen order is done
	last    action  // the last step
	left    int8    // the unit+1 that it left, see leaves; 0 for none
	next    int32   // the next key's first state in the hash table, -1 for none
	hash    uint32
	chained bool  // it is the first of its key
	waits   uint8 // rows of d: how many waits can run out
	dead    bool  // another one is as good
}

// action is one step of a plan: the next operation of a chain, or of all chains that a bake joins.
type action struct {
	chain, painter, unit int8 // unit and painter -1 where it needs none
	cup                  int8 // the slot of the cup, -1 for none
	fresh                bool // the cup is mixed for it
	slot                 int8 // how many breaks of the painter are over when it starts
	early                int8 // the gap between breaks in which the gun is rinsed; -1 for just before
}

// keys tells where things stand in a state's key: of each chain its progress, the unit+1 in which it stands wet, the
// slot+1 of its cup and the unit+1 in which it was wet last and may still be; of each painter product+1, slot+1 of the
// cup in the gun, unit+1 in which it is, and breaks that are over; of each cup product+1 (0 for a free slot), painter,
// operations to come, and what is left in two bytes; at last the step before, where the order of steps that do not touch
// each other has to be told apart.
type keys struct{ home, cup, dry, painter, cups, last, size int }

func keysFor(chains, painters, cups int) keys {
	k := keys{home: chains, cup: 2 * chains, dry: 3 * chains, painter: 4 * chains}
	k.cups = k.painter + 4*painters
	k.last = k.cups + 5*cups
	k.size = k.last + 4
	return k
}

// layout numbers the rows and columns of a state's matrix. Column 0 is the beginning of the day; the others are ends of
// operations: the last of each painter, of each unit, of each chain under way, of each chain that may be wet; then the
// end of the plan and the ends of the chains in late. Rows are column 0 and those that a later
// operation can push: chains whose next operation has a longest wait, and the beginnings of cups.
type layout struct {
	last, lastRow []int16 // of each chain, -1 where there is none
	dry           []int16
	cupRow        [slots]int16
	unit, end     int // the first unit; the end of the plan, after which come the late ones
	rows, cols    int
}

// arrange fills the layout for a key.
func (s *search) arrange(l *layout, key []byte, late int) {
	l.unit = 1 + s.p.Painters
	col, row := int16(l.unit+s.units), int16(1)
	for c := range s.p.Chains {
		l.last[c], l.lastRow[c], l.dry[c] = -1, -1, -1
		at := int(key[c])
		ops := s.p.Chains[c].Ops
		if at == 0 || at == len(ops) {
			continue
		}
		l.last[c] = col
		col++
		if ops[at].Within < Never {
			l.lastRow[c] = row
			row++
		}
	}
	for c := range s.p.Chains {
		if key[s.at.dry+c] > 0 {
			l.dry[c] = col
			col++
		}
	}
	for i := 0; i < s.cups; i++ {
		l.cupRow[i] = -1
		if key[s.at.cups+5*i] > 0 {
			l.cupRow[i] = row
			row++
		}
	}
	l.end = int(col)
	l.rows, l.cols = int(row), int(col)+1+late
}

func (l *layout) make(chains int) {
	l.last, l.lastRow, l.dry = make([]int16, chains), make([]int16, chains), make([]int16, chains)
}

// covers tells whether a leaves everything open that b does, at no more cost. Both have the same key.
func (s *search) covers(a, b *state, l *layout) bool {
	if a.cost > b.cost || len(a.late) > len(b.late) {
		return false
	}
	plain, stepA, stepB := l.end+1, l.end+1+len(a.late), l.end+1+len(b.late)
	for r := 0; r < l.rows; r++ {
		x, y := a.d[r*stepA:r*stepA+plain], b.d[r*stepB:r*stepB+plain]
		for i, v := range x {
			if v > y[i] {
				return false
			}
		}
	}
	if len(b.late) == 0 {
		return true
	}
	return s.coversLate(a, b, l)
}

// coversLate is the part of covers about ends that may still be pushed. One that is settled in a but not in b counts in
// b as it stands, because it can only grow.
func (s *search) coversLate(a, b *state, l *layout) bool {
	stepA, stepB := l.end+1+len(a.late), l.end+1+len(b.late)
	i, more := 0, b.cost
	for j, c := range b.late {
		if i < len(a.late) && a.late[i] == c {
			for r := 0; r < l.rows; r++ {
				if a.d[r*stepA+l.end+1+i] > b.d[r*stepB+l.end+1+j] {
					return false
				}
			}
			i++
			continue
		}
		more += s.lateCost(int(c), b.d[l.end+1+j])
	}
	return i == len(a.late) && a.cost <= more
}

// hashOf mixes a key's bytes, four at a time (in the manner of FNV-1a).
func hashOf(key []byte) uint32 {
	h := uint32(2166136261)
	for ; len(key) >= 4; key = key[4:] {
		h = (h ^ (uint32(key[0]) | uint32(key[1])<<8 | uint32(key[2])<<16 | uint32(key[3])<<24)) * 16777619
		h ^= h >> 15
	}
	for _, b := range key {
		h = (h ^ uint32(b)) * 16777619
	}
	return h ^ h>>13
}
