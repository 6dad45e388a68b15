package plan_test
import ("testing";"fmt";"os";"strconv";"syscall";"spraywright/calc/day/plan";"spraywright/calc/day/plan/checkplan")
func cpu() float64 { var r syscall.Rusage; syscall.Getrusage(0,&r); return float64(r.Utime.Sec)+float64(r.Utime.Usec)/1e6 }
func TestTune(t *testing.T) {
	n,_ := strconv.Atoi(os.Getenv("N")); if n==0 {n=8}
	for day := uint64(1); day <= 8; day++ {
		d := checkplan.Day(n, day)
		if os.Getenv("AIM")=="home" { d.Aim = plan.HomeEarly() }
		fmt.Print("day ", day, ": ")
		c0 := cpu()
		for seed := uint64(1); seed <= 3; seed++ {
			s, _ := plan.New(d, seed)
			fmt.Print(" [")
			for _, e := range []int{30000,70000,100000,200000} { s.Improve(e); b:=s.Best(); fmt.Print(b.Cost," ") }
			fmt.Print("]")
		}
		fmt.Printf(" %.2fs\n", cpu()-c0)
	}
}
