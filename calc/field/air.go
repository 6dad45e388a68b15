package field

import (
	"spraywright/calc"
	"spraywright/calc/unit"
)

// Today's booth.
var (
	Air = calc.Input{
		Key: "air", Label: "Air temperature", Symbol: "t", Unit: unit.DegC,
		Help:   "Measured beside the part, not read off the thermostat",
		Limits: between(-10, 60), Example: 22, Step: 1,
	}
	Humidity = calc.Input{
		Key: "humidity", Label: "Relative humidity", Symbol: "RH", Unit: unit.Percent,
		Help:   "From a hygrometer in the same place",
		Limits: between(1, 100), Example: 55, Step: 1,
	}
	Panel = calc.Input{
		Key: "panel", Label: "Panel temperature", Symbol: "t_s", Unit: unit.DegC,
		Help:   "Surface thermometer, at the coldest place",
		Limits: between(-10, 60), Example: 21, Step: 0.5,
	}
	Altitude = calc.Input{
		Key: "altitude", Label: "Altitude", Symbol: "z", Unit: unit.MetreUp,
		Help:   "Height of the shop above sea level, to the nearest 100 m",
		Limits: between(-400, 5000), Example: 0, Prefill: true,
	}
	AirSpeed = calc.Input{
		Key: "air_speed", Label: "Air speed at the part", Symbol: "u", Unit: unit.AirMetrePerSecond,
		Help:   "Vane meter beside the part; a booth is often near 0.3 m/s",
		Limits: between(0, 5), Example: 0.3,
	}
	MarginNeeded = calc.Input{
		Key: "margin_needed", Label: "Margin over the dew point", Symbol: "needed", Unit: unit.DiffC,
		Help:   "3 °C (5 °F) unless the data sheet asks for more",
		Limits: between(0, 20), Example: 3, Prefill: true,
	}
)
