package exercise

// mix is one step of SplitMix64 from a state: the first number of the stream that the state seeds. Any states, however
// alike, give numbers that look unrelated (Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators,
// OOPSLA 2014; known from memory).
func mix(state uint64) uint64 {
	z := state + 0x9e3779b97f4a7c15
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

// hash is the 64-bit FNV-1a hash of texts, each with a bar behind it (draft-eastlake-fnv; known from memory).
func hash(texts ...string) uint64 {
	h := uint64(0xcbf29ce484222325)
	for _, s := range texts {
		for i := range len(s) + 1 {
			c := byte('|')
			if i < len(s) {
				c = s[i]
			}
			h = (h ^ uint64(c)) * 0x100000001b3
		}
	}
	return h
}

// pick is a number from 0 up to but not n, the same for the same texts. Each thing drawn has a text of its own, so
// that a calculator which is given another input leaves the numbers of its old ones as they were.
func pick(n int, texts ...string) int { return int(mix(hash(texts...)) % uint64(n)) }
