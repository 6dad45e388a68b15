// Package climate works out the air in the booth: how much water it holds, its dew point and wet bulb, and whether
// a panel in it stays dry.
//
// Temperatures are in °C, humidities in percent, pressures in Pa. Below 0 °C relative humidity, dew point and wet
// bulb are taken over ice, as ASHRAE does; weather services take humidity over water there, which reads 5 % less
// at -5 °C. Air and water vapour are ideal gases and the enhancement factor is left out: moisture contents come out
// about 0.5 % below a real-gas table.
package climate

import (
	"spraywright/calc"
	"spraywright/calc/source"
)

// Calculators lists this topic in menu order.
var Calculators = []calc.Maker{
	{ID: "condensation", Make: Condensation},
	{ID: "part-warm-up", Make: PartWarmUp},
	{ID: "air-state", Make: AirState},
	{ID: "heated-air", Make: HeatedAir},
	{ID: "compressed-air-water", Make: CompressedAir},
}

// StandardPressure is where the 101325 Pa of the standard atmosphere come from.
var StandardPressure = source.ASHRAEAir.At("equation 3, standard atmosphere at sea level").By(source.SecondHand)

// Places in the works this package rests on.
var (
	saturation = source.HylandWexler.At("as ASHRAE Fundamentals (2017), chapter 1, equations 5 and 6").By(source.SecondHand)
	humidity   = source.ASHRAEAir.At("equation 12, definition of relative humidity").By(source.SecondHand)
	dewPointAt = source.ASHRAEAir.At("dew point: the temperature at which the air's vapour saturates").By(source.SecondHand)
	moisture   = source.ASHRAEAir.At("equation 20").By(source.SecondHand)
	wetBulbAt  = source.ASHRAEAir.At("equations 33 and 35").By(source.SecondHand)
	altitude   = source.ASHRAEAir.At("equation 3").By(source.SecondHand)
	volume     = source.ASHRAEAir.At("equations 9, 11 and 26").By(source.SecondHand)
	marginRule = source.MILHDBK1110.At("9.6.6: 5 °F above the dew point and rising, measured about every 4 hours").By(source.Seen)
	threeRule  = source.ISO8502_4.At("3 °C over the dew point, as trade texts quote it; the clause has not been read").By(source.SecondHand)
	sensorRule = source.CommonPractice
)
