package main
import ("spraywright/calc/day/plan";"spraywright/calc/day/plan/checkplan";"fmt")
func rate() { for day:=uint64(1);day<=4;day++ { s,_ := plan.New(checkplan.Day(8,day),1); s.Improve(200000); fmt.Println(s.Best().Cost) } }
