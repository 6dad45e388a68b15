package plan_test
import ("testing";"fmt";"spraywright/calc/day/plan";"spraywright/calc/day/plan/checkplan")
func show(d *plan.Day, p plan.Plan) {
	fmt.Printf("%+v\n", *d)
	for _, s := range p.Steps { fmt.Printf("%d-%d kind%d job%d coat%d prod%d cup%d painter%d place%d done%v latest%d\n", s.Start,s.End,s.Kind,s.Job,s.Coat,s.Product,s.Cup,s.Painter,s.Place,s.Done,s.Latest) }
	fmt.Println(checkplan.Check(d,&p))
}
func TestShow(t *testing.T) {
	seed := uint64(4)
	d := checkplan.Odd(1+int(seed%6), seed)
	s, f := plan.New(d, seed)
	if s==nil {fmt.Println(f);return}
	show(d, s.Best())
}
