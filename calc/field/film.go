package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// What a wet-film comb shows.
var (
	WetFilm = calc.Input{
		Key: "wet_film", Label: "Wet film measured", Symbol: "WFT", Unit: unit.Micrometre,
		Help:   "Comb reading straight after the coat",
		Limits: between(1, 5000), Example: 120,
	}
	LastWet = calc.Input{
		Key: "last_wet", Label: "Last tooth wetted", Symbol: "last", Unit: unit.Micrometre,
		Help:   "The highest mark with paint on its tooth; 0 if none has any",
		Limits: between(0, 5000), Example: 100,
	}
	FirstDry = calc.Input{
		Key: "first_dry", Label: "First tooth dry", Symbol: "next", Unit: unit.Micrometre,
		Help:   "The next mark up, its tooth clean",
		Limits: between(1, 5000), Example: 125,
	}
)
