package gun

import "spraywright/calc"

// deliveryMistakes are made with the cup and the watch.
var deliveryMistakes = []calc.Mistake{
	{Says: "This comes out where what was caught is taken as that of a whole minute", Form: "caught_for=1&caught_for.unit=min"},
	{Says: "This comes out where 1 g is taken for 1 mL, as of water", Form: "mix_density=1&mix_density.unit=kg/L"},
}
