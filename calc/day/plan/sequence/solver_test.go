package sequence

import (
	"fmt"
	"testing"
	"time"
)

func TestProto(t *testing.T) {
	for _, c := range []struct {
		n    int
		seed uint64
		want int64
	}{{4, 1, 382}, {4, 2, 290}, {4, 3, 327}, {4, 4, 385}, {4, 5, 333}, {5, 2, 387}, {5, 3, 335}, {5, 4, 504}, {5, 5, 410}, {5, 1, 437}} {
		p := machineDay(c.n, c.seed, false)
		t0 := time.Now()
		v := New(p, 1)
		first := v.cost
		for i := 0; i < 50 && !v.Proven(); i++ {
			v.Improve(100000)
		}
		fmt.Println(c.n, c.seed, "first", first, "cost", v.cost, "bound", v.Bound(), "want", c.want, "proven", v.Proven(), v.Evaluations(), "width", v.width, time.Since(t0))
	}
}
