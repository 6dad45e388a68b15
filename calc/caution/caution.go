// Package caution holds the cautions that several calculators share, each once.
//
// A caution is two sentences at most, in our own words. It never sets a limit of its own: it sends the reader to
// the data sheet, the safety data sheet, the local code or somebody licensed.
package caution

import "spraywright/calc"

const (
	// Isocyanate is for every answer about a two-pack mix. HSE, motor vehicle repair pages on isocyanate paint
	// (www.hse.gov.uk/mvr, myths 4 and 5; HSG276): asthma also from short exposures, mist that cannot be seen,
	// air-fed breathing apparatus until the clearance time has passed, visor down until then.
	Isocyanate = calc.First + "Mist from two-pack paint can cause asthma, even after a short job and even when you cannot see it: wear air-fed breathing protection, visor down, " +
		"while you spray and until the measured clearance time has passed. Follow the safety data sheet and your local code."

	// Flammable is for every answer that puts solvent into the air. 29 CFR 1910.94(c)(6)(ii) and 1910.107.
	Flammable = "Solvent vapour burns: run the exhaust and keep sparks, flames and hot surfaces away until it has cleared. " +
		"The safety data sheet and your fire code say what your booth needs."

	// Bake is for heated curing. 29 CFR 1910.107(j): ventilate first, no spraying while drying heat is on,
	// the heater goes off if the fan fails.
	Bake = "Clear the booth with its fan before curing heat goes on, never spray while it is on, and switch it off if the fan stops. " +
		"The heater's manual, the data sheet and your fire code set how."

	// CompressedAir is for every answer that is a pressure. The rating is the maker's; air on skin is common
	// sense of every shop and 29 CFR 1910.242(b).
	CompressedAir = "Never set more than the lowest pressure that gun, hose and cup are rated for, and let it off before you open anything. " +
		"Keep compressed air away from skin."

	// Skin is for every answer about handling liquid paint, thinner or cleaner. HSE, motor vehicle repair:
	// isocyanates and solvents are also taken up through the skin.
	Skin = "Paint, hardener and thinner harm skin and can pass through it: wear the gloves the safety data sheet names. " +
		"Never wash your hands with thinner."

	// PotLife is for every mix that cures in the cup. Common practice; every two-pack data sheet says it.
	PotLife = "Do not revive paint past its pot life, by thinning it or by any other means: its film cannot be trusted even if it sprays. " +
		"The data sheet's pot life comes first; dispose of the rest as your local code says."

	// Estimate is for every computed clearance time, dilution flow or vapour concentration. HSE, clearance time
	// of spray booths and rooms (www.hse.gov.uk/mvr/bodyshop/cleartime.htm): measured with smoke.
	// OSHA STD 1-5.10: a face velocity is about fire and does not show that exposure is safe.
	Estimate = "A computed clearance time or air flow is an estimate from even mixing, which no booth has. " +
		"It does not replace a smoke test, a gas meter or the advice of somebody licensed."

	// LocalRule is for every answer held against a table of limits.
	LocalRule = "VOC limits differ from place to place and may be stricter than this table, for you or for your supplier. Check your local rule."

	// HardenerRatio is for every answer about a two-pack ratio. Common practice.
	HardenerRatio = "The data sheet sets the ratio, and whether it is by volume or by weight. Never change the hardener to speed up or slow down drying."
)
