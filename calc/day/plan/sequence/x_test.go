package sequence

import (
	"fmt"
	"testing"
	"time"
)

var set = []struct {
	n    int
	seed uint64
	want int64
	own  bool
}{{6, 1, 928, false}, {6, 2, 467, false}, {8, 1, 621, false}, {8, 2, 608, false}, {10, 1, 1896, false}, {20, 1, 947, true}, {20, 2, 1066, true}, {30, 1, 2347, true}}

func TestIns(t *testing.T) {
	for _, c := range set {
		p := machineDay(c.n, c.seed, c.own)
		v := New(p, 1)
		fmt.Print(c.n, " ", c.seed, " want ", c.want, " first ", v.cost, " root ", v.bound, ":")
		for _, w := range []int{2, 8, 32} {
			for by := 0; by < 2; by++ {
				t0 := time.Now()
				e0 := v.s.Evaluations
				v.cost = huge
				v.insert(v.order(by), w)
				fmt.Print(" ", w, "->", v.cost, time.Since(t0).Round(time.Millisecond), v.s.Evaluations-e0)
			}
		}
		fmt.Println()
	}
}
func TestLNS(t *testing.T) {
	for _, c := range set {
		p := machineDay(c.n, c.seed, c.own)
		v := New(p, 1)
		v.insert(v.order(0), 8)
		fmt.Print(c.n, " ", c.seed, " want ", c.want, " first ", v.cost, " root ", v.bound, ":")
		t0 := time.Now()
		v.width = 1000
		for _, w := range []int{50000, 50000, 100000, 200000} {
			v.spent = [2]int{1 << 30, 0}
			v.Improve(w)
			fmt.Print(" ", w, "->", v.cost, " ", time.Since(t0).Round(time.Millisecond))
		}
		fmt.Println()
	}
}
func TestTune(t *testing.T) {
	for _, cfg := range [][4]int{{2, 3, 32, 10}, {2, 3, 32, 25}, {2, 3, 32, 1000}, {2, 3, 16, 25}, {2, 4, 32, 25}} {
		fmt.Print(cfg, ": ")
		t0 := time.Now()
		for _, c := range set[:5] {
			s1, s2 := int64(0), int64(0)
			for seed := uint64(1); seed <= 4; seed++ {
				p := machineDay(c.n, c.seed, c.own)
				v := New(p, seed)
				v.least, v.most, v.narrow = cfg[0], cfg[1], cfg[2]
				v.patience = cfg[3]
				v.width = 8
				v.Improve(12000)
				v.width = 1000
				v.spent = [2]int{1 << 30, 0}
				v.Improve(90000)
				s1 += v.cost
				v.Improve(100000)
				s2 += v.cost
			}
			fmt.Print(c.n, "/", c.seed, " ", s1/4, " ", s2/4, "; ")
		}
		fmt.Println(time.Since(t0))
	}
}
