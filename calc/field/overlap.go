package field

import "spraywright/calc"

// FanProfile is how the film of one stroke falls off across the fan.
var FanProfile = calc.Input{
	Key: "fan_profile", Label: "One stroke's film across the fan", Help: "Spray one stroke on card, let it dry, and measure it across",
	Choices: []calc.Choice{
		{Key: "parabola", Label: "Rounded (parabola)"},
		{Key: "ellipse", Label: "Flat with steep edges (half ellipse)"},
		{Key: "spot", Label: "Soft edges (a round parabolic spot, moved)"},
		{Key: "soft", Label: "Very soft edges (parabola squared)"},
		{Key: "triangle", Label: "Peaked with straight sides (triangle)"},
	},
}
