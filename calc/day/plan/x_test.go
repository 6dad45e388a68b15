package plan_test
import ("testing";"fmt";"syscall";"spraywright/calc/day/plan";"spraywright/calc/day/plan/sequence";"spraywright/calc/day/plan/checkplan")
func cpu() float64 { var r syscall.Rusage; syscall.Getrusage(0,&r); return float64(r.Utime.Sec)+float64(r.Utime.Usec)/1e6 }
var known = [2][9]int{{0,191087,5992,6171,5533,76812,5925,325402,342785},{0,10477,5992,6171,5498,8187,5925,13762,13505}}
func TestTune(t *testing.T) {
	for _, cfg := range [][4]int{{3,4,16,2},{6,4,16,3},{4,3,32,2},{4,4,16,1}} {
	sequence.Tune = cfg
	c0 := cpu()
	var sum [3]float64; var over [3]int
	for day := uint64(1); day <= 8; day++ { for aim:=0;aim<2;aim++ {
		d := checkplan.Day(8, day)
		if aim==1 { d.Aim = plan.HomeEarly() }
		for seed := uint64(1); seed <= 3; seed++ {
			s, _ := plan.New(d, seed)
			for i, e := range []int{50000,50000,100000} { s.Improve(e); b:=s.Best(); if b.Cost<known[aim][day] {known[aim][day]=b.Cost; fmt.Println("new",aim,day,b.Cost)}; r:=float64(b.Cost)/float64(known[aim][day])-1; sum[i]+=r; if r>0.02 {over[i]++} }
		}
	}}
	fmt.Printf("%v mean excess %.3f %.3f %.3f %% over 2%%: %v of 48, %.2fs\n", cfg, sum[0]/.48, sum[1]/.48,sum[2]/.48, over, cpu()-c0)
	}
}
