package sequence

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// What units can do together is counted minute by minute.
func TestServed(t *testing.T) {
	r := random(1)
	for range 2000 {
		var free []int32
		for range 1 + r.below(4) {
			free = append(free, int32(r.below(40)))
		}
		minutes, end, worked := int32(r.below(90)), int32(0), int32(0)
		for soonest := least(free); worked < minutes || end < soonest; end++ {
			for _, from := range free {
				if from <= end {
					worked++
				}
			}
		}
		assert.Equal(t, end, served(free, minutes), "%v %d", free, minutes)
	}
}
