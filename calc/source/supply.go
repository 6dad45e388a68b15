package source

// Works on compressed air and its pipes.
var (
	IsothermalPipe = &Work{ID: "isothermal-pipe-flow", Ours: "Isothermal flow of a gas in a long pipe with friction, as in any textbook of fluid mechanics"}
	Haaland1983    = &Work{ID: "haaland-1983", Title: "S. E. Haaland, Simple and explicit formulas for the friction factor in turbulent pipe flow, J. Fluids Eng. 105 (1983) 89–90"}
	Moody1944      = &Work{ID: "moody-1944", Title: "L. F. Moody, Friction factors for pipe flow, Trans. ASME 66 (1944) 671–684"}
	AirSourcebook  = &Work{ID: "compressed-air-sourcebook", Title: "US Department of Energy, Improving compressed air system performance: a sourcebook for industry"}
	PTC9           = &Work{ID: "asme-ptc-9", Title: "ASME PTC 9, Displacement compressors, vacuum pumps and blowers"}
	ISO8778        = &Work{ID: "iso-8778", Title: "ISO 8778. Pneumatic fluid power. Standard reference atmosphere"}
	DIN1343        = &Work{ID: "din-1343", Title: "DIN 1343. Reference conditions, normal conditions, normal volume"}
	ISO8573        = &Work{ID: "iso-8573-1", Title: "ISO 8573-1. Compressed air. Part 1: Contaminants and purity classes"}
)
