package viscosity

import "spraywright/calc"

// otherCups are the cups with a hole of about 4 mm, which are taken for one another.
var otherCups = []calc.Mistake{
	{Says: "This comes out with the DIN cup of 4 mm", Form: "flow_cup=din-4"},
	{Says: "This comes out with the ISO cup of 4 mm", Form: "flow_cup=iso-4"},
	{Says: "This comes out with the Ford cup 4", Form: "flow_cup=ford-4"},
}
