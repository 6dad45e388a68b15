package field

import (
	"spraywright/calc"
	"spraywright/calc/ratio"
	"spraywright/calc/unit"
)

// What a product's data sheet says.
var (
	Product = calc.Input{
		Key: "product", Label: "Product", Words: "Two-pack primer",
		Help: "As you call it in the shop",
	}
	Role = calc.Input{
		Key: "role", Label: "Kind of coat", Help: "Decides which VOC limit it falls under",
		Choices: []calc.Choice{
			{Key: "surfacer", Label: "Primer or surfacer"}, {Key: "sealer", Label: "Primer sealer"}, {Key: "wash-primer", Label: "Wash primer"},
			{Key: "base", Label: "Basecoat, to be cleared"}, {Key: "clear", Label: "Clearcoat"},
			{Key: "topcoat", Label: "Single-stage topcoat"}, {Key: "special", Label: "Special finish"},
		},
	}
	Carrier = calc.Input{
		Key: "carrier", Label: "Thinned with", Help: "What leaves the film as it flashes off",
		Choices: []calc.Choice{{Key: "solvent", Label: "Solvent"}, {Key: "water", Label: "Water"}},
	}
	Solvent = calc.Input{
		Key: "solvent", Label: "Main solvent", Help: "The largest in section 3 of the safety data sheet",
		Choices: []calc.Choice{
			{Key: "butyl-acetate", Label: "n-Butyl acetate"}, {Key: "ethyl-acetate", Label: "Ethyl acetate"}, {Key: "acetone", Label: "Acetone"},
			{Key: "mek", Label: "Methyl ethyl ketone"}, {Key: "mibk", Label: "Methyl isobutyl ketone"}, {Key: "heptanone", Label: "2-Heptanone"},
			{Key: "toluene", Label: "Toluene"}, {Key: "xylene", Label: "Xylene"}, {Key: "isopropanol", Label: "Isopropyl alcohol"},
			{Key: "butanol", Label: "n-Butanol"}, {Key: "butyl-glycol", Label: "2-Butoxyethanol"},
		},
	}
	Pack = calc.Input{
		Key: "pack", Label: "Packs", Help: "Two-pack products cure once mixed",
		Choices: []calc.Choice{{Key: "two", Label: "Two-pack, with hardener"}, {Key: "one", Label: "One-pack"}},
	}
	Ratio = calc.Input{
		Key: "ratio", Label: "Mix ratio", Words: "4:1:1",
		Help:  "As printed: 4:1:1, or 4:1+10% where the thinner is a share of the rest",
		Check: ratio.Check,
	}
	RatioBy = calc.Input{
		Key: "ratio_by", Label: "Ratio is by", Help: "A volume ratio is not a weight ratio: read which one the sheet prints",
		Choices: []calc.Choice{{Key: "volume", Label: "Volume"}, {Key: "weight", Label: "Weight"}},
	}
	DensityA = density("density_a", "Density of the first part", "Paint as it comes in its can", 1.35)
	DensityB = density("density_b", "Density of the second part", "Usually the hardener", 1.05)
	DensityC = density("density_c", "Density of the third part", "Usually the thinner", 0.87)
	DensityD = density("density_d", "Density of the fourth part", "Only where the ratio has four", 0.95)

	VolumeSolids = calc.Input{
		Key: "volume_solids", Label: "Volume solids", Symbol: "VS", Unit: unit.Percent,
		Help:   "Share of the wet film that stays; not the solids by weight",
		Limits: between(1, 100), Example: 45,
	}
	SolidsFor = calc.Input{
		Key: "solids_for", Label: "Volume solids are for", Prefill: true,
		Help:    "Some sheets give them before the thinner goes in",
		Choices: []calc.Choice{{Key: "mix", Label: "The mix, ready to spray"}, {Key: "unthinned", Label: "The mix without its last part"}},
	}
	DryFilm = calc.Input{
		Key: "dry_film", Label: "Dry film wanted", Symbol: "DFT", Unit: unit.Micrometre,
		Help:   "All coats of this product together",
		Limits: between(1, 2000), Example: 60,
	}
	Coats = calc.Input{
		Key: "coats", Label: "Coats", Symbol: "n", Unit: unit.One, Whole: true,
		Help:   "How many times you go over the part with flash-off between",
		Limits: between(1, 10), Example: 2,
	}
	PotLife = calc.Input{
		Key: "pot_life", Label: "Pot life", Symbol: "t_ref", Unit: unit.Minute,
		Help:   "How long the mix can be sprayed, as the sheet states it",
		Limits: between(1, 2880), Example: 60,
	}
	PotLifeAt = calc.Input{
		Key: "pot_life_at", Label: "Pot life is stated at", Symbol: "T_ref", Unit: unit.DegC,
		Help:   "Often 20 or 23 °C; the sheet says",
		Limits: between(0, 50), Example: 20,
	}
	PotLifeSecond = calc.Input{
		Key: "pot_life_second", Label: "Second pot life", Symbol: "t_2", Unit: unit.Minute, Optional: true,
		Help:   "If the sheet gives it at another temperature too",
		Limits: between(1, 2880), Example: 30,
	}
	PotLifeSecondAt = calc.Input{
		Key: "pot_life_second_at", Label: "Second pot life is stated at", Symbol: "T_2", Unit: unit.DegC, Optional: true,
		Help:   "The other temperature",
		Limits: between(0, 50), Example: 30,
	}
	Flash = calc.Input{
		Key: "flash", Label: "Flash-off between coats", Symbol: "t_ref", Unit: unit.Minute,
		Help:   "As the sheet states it",
		Limits: between(0.5, 240), Example: 10,
	}
	FlashAt = calc.Input{
		Key: "flash_at", Label: "Flash-off is stated at", Symbol: "t_ref", Unit: unit.DegC,
		Help:   "Air temperature on the sheet",
		Limits: between(5, 45), Example: 20,
	}
	FlashHumidity = calc.Input{
		Key: "flash_humidity", Label: "Flash-off is stated at humidity", Symbol: "RH_ref", Unit: unit.Percent,
		Help:   "Humidity on the sheet; 50 % where it says standard conditions",
		Limits: between(5, 90), Example: 50,
	}
	FlashAirSpeed = calc.Input{
		Key: "flash_air_speed", Label: "Flash-off is stated at air speed", Symbol: "u_ref", Unit: unit.AirMetrePerSecond,
		Help:   "Few sheets say; 0.2 m/s is a quiet booth",
		Limits: between(0, 5), Example: 0.2, Prefill: true,
	}
	LatestRecoat = calc.Input{
		Key: "latest_recoat", Label: "Latest recoat", Unit: unit.Hour, Optional: true,
		Help:   "After this the coat must be sanded first; blank if the sheet sets none",
		Limits: between(0.1, 2000), Example: 24,
	}
	Drying = calc.Input{
		Key: "drying", Label: "After its last coat", Help: "What has to happen before the next product, or before the part is handled",
		Choices: []calc.Choice{{Key: "flash", Label: "Flash off only"}, {Key: "air", Label: "Air dry"}, {Key: "bake", Label: "Bake"}},
	}
	DryTime = calc.Input{
		Key: "dry_time", Label: "Drying time", Unit: unit.Minute,
		Help:   "As the sheet states it; for a bake, with the metal at temperature",
		Limits: between(1, 20160), Example: 30,
	}
	DryAt = calc.Input{
		Key: "dry_at", Label: "Drying time is stated at", Unit: unit.DegC,
		Help:   "Metal temperature for a bake, air temperature for air drying",
		Limits: between(5, 200), Example: 60,
	}
	VOC = calc.Input{
		Key: "voc", Label: "VOC, ready to spray", Symbol: "VOC", Unit: unit.GramPerLitre,
		Help:   "Less water and exempt solvents, as the sheet states it for this mix",
		Limits: between(0, 1000), Example: 420,
	}
	WaterShare = calc.Input{
		Key: "water_share", Label: "Water and exempt solvents in the mix", Symbol: "w", Unit: unit.Percent,
		Help:   "By volume, ready to spray",
		Limits: between(0, 95), Example: 55,
	}
	Price = calc.Input{
		Key: "price", Label: "Price of the mix", Unit: unit.PricePerLitre, Optional: true,
		Help:   "Ready to spray, in your own money",
		Limits: between(0, 100000), Example: 40,
	}
	AirLowest = calc.Input{
		Key: "air_lowest", Label: "Coldest allowed", Unit: unit.DegC, Optional: true,
		Help:   "Lowest air and panel temperature on the sheet",
		Limits: between(-10, 40), Example: 15,
	}
	AirHighest = calc.Input{
		Key: "air_highest", Label: "Hottest allowed", Unit: unit.DegC, Optional: true,
		Help:   "Highest air and panel temperature on the sheet",
		Limits: between(5, 60), Example: 35,
	}
	HumidityHighest = calc.Input{
		Key: "humidity_highest", Label: "Dampest allowed", Unit: unit.Percent, Optional: true,
		Help:   "Highest relative humidity on the sheet; 85 % is taken where it says nothing",
		Limits: between(10, 100), Example: 85,
	}
	OnColour = calc.Input{
		Key: "on_colour", Label: "Only on parts of colour", Words: "ivory", Optional: true,
		Help: "Blank for every part",
	}
)

func density(key string, label, help calc.Phrase, example float64) calc.Input {
	return calc.Input{Key: key, Label: label, Help: help, Symbol: "rho", Unit: unit.KilogramPerLitre, Limits: between(0.5, 4), Example: example}
}
