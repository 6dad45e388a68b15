package unit

// The quantities. A percentage of one thing is not a percentage of another only where mixing them up is a
// mistake people make: humidity, volume solids and a tolerance are all plain percentages here.
const (
	Number                Quantity = "number"
	Percentage            Quantity = "percentage"
	Temperature           Quantity = "temperature"
	TemperatureDifference Quantity = "temperature-difference"
	Length                Quantity = "length"
	Height                Quantity = "height" // above sea level
	Film                  Quantity = "film"
	Area                  Quantity = "area"
	Volume                Quantity = "volume"
	Mass                  Quantity = "mass"
	Density               Quantity = "density"
	Concentration         Quantity = "concentration" // mass of solvent in a volume of paint
	Coverage              Quantity = "coverage"      // area a volume of paint covers
	GaugePressure         Quantity = "gauge-pressure"
	VapourPressure        Quantity = "vapour-pressure"
	Speed                 Quantity = "speed"
	AirSpeed              Quantity = "air-speed"
	Delivery              Quantity = "delivery" // paint through a gun
	Duration              Quantity = "duration"
	VapourDensity         Quantity = "vapour-density" // water in air
	AirDensity            Quantity = "air-density"
	MoistureContent       Quantity = "moisture-content" // mass of water to mass of dry air
	Money                 Quantity = "money"
	VolumePrice           Quantity = "volume-price"
	AreaPrice             Quantity = "area-price"
	VolumeParts           Quantity = "volume-parts"
	MassParts             Quantity = "mass-parts"
	Energy                Quantity = "activation-energy"
	DryingRate            Quantity = "drying-rate" // shrinking of a drop's squared diameter
	Kelvins               Quantity = "absolute-temperature"
	Girth                 Quantity = "girth" // area to a length of bar, beam or pipe
	TimePrice             Quantity = "time-price"
	Angle                 Quantity = "angle"
	HeatTransfer          Quantity = "heat-transfer"
	Space                 Quantity = "space"       // the volume of a room
	Ventilation           Quantity = "ventilation" // air through a booth or a room
	MolarMass             Quantity = "molar-mass"
	VapourShare           Quantity = "vapour-share" // of the air, by volume
	VapourYield           Quantity = "vapour-yield" // vapour, or air, for a volume of liquid
	KinematicViscosity    Quantity = "kinematic-viscosity"
	DynamicViscosity      Quantity = "dynamic-viscosity"
	AirFlow               Quantity = "air-flow" // compressed air, as free air; in what state is not the unit's business
)

// Exact factors come from NIST SP 811 (2008), appendix B.
const (
	inch   = 25.4      // mm
	foot   = 304.8     // mm
	pound  = 453.59237 // g
	gallon = 3785.411784
)

// The units, in the order menus show them.
const (
	none Unit = iota
	One
	Percent
	DegC
	DegF
	DiffC
	DiffF
	Kelvin
	Millimetre
	Centimetre
	Metre
	Inch
	Foot
	MetreUp
	FootUp
	Micrometre
	Mil
	SquareMetre
	SquareCentimetre
	SquareFoot
	Millilitre
	Litre
	FluidOunce
	Pint
	Quart
	Gallon
	Gram
	Kilogram
	Ounce
	Pound
	KilogramPerLitre
	PoundPerGallon
	GramPerLitre
	PoundPerGalUS
	SquareMetrePerLitre
	SquareFootPerGallon
	Bar
	PSI
	KiloPascal
	Pascal
	HectoPa
	InchHg
	MetrePerSecond
	CentimetrePerSecond
	InchPerSecond
	AirMetrePerSecond
	AirFootPerMinute
	MillilitrePerMinute
	FluidOuncePerMinute
	Minute
	Hour
	Second
	Day
	GramPerCubicMetre
	GrainPerCubicFoot
	KilogramPerCubicM
	PoundPerCubicFoot
	KilogramPerKilogram
	GramPerKilogram
	SquareMicronPerSec
	KilojoulePerMole
	PlainMoney
	PricePerLitre
	PricePerGallon
	PricePerQuart
	PricePerSquareMetre
	PricePerSquareFoot
	PartsByVolume
	PartsByMass
	Degree
	WattPerSquareMetreK
	CubicMetre
	CubicFoot
	CubicMetrePerHour
	CubicMetrePerSecond
	CubicFootPerMinute
	GramPerMole
	PartsPerMillion
	CubicMetrePerLitre
	CubicFootPerGallon
	SquareMMPerSecond
	MillipascalSecond
	LitrePerMinute
	FreeM3PerHour
	FreeFt3PerMinute
	SquareMetrePerMetre
	SquareFootPerFoot
	PricePerHour
	count
)

var table = [count]measure{
	One:                 {id: "1", quantity: Number, scale: 1},
	Percent:             {id: "pct", symbol: "%", quantity: Percentage, alias: []string{"percent"}, scale: 1},
	DegC:                {id: "degC", symbol: "°C", quantity: Temperature, alias: []string{"c", "degc", "ºc"}, scale: 1, offset: 273.15},
	DegF:                {id: "degF", symbol: "°F", quantity: Temperature, us: true, alias: []string{"f", "degf", "ºf"}, scale: 5. / 9, offset: 459.67 * 5 / 9},
	DiffC:               {id: "diffC", symbol: "°C", quantity: TemperatureDifference, alias: []string{"c", "k", "ºc"}, scale: 1},
	DiffF:               {id: "diffF", symbol: "°F", quantity: TemperatureDifference, us: true, alias: []string{"f", "ºf"}, scale: 5. / 9},
	Kelvin:              {id: "K", symbol: "K", quantity: Kelvins, scale: 1},
	Millimetre:          {id: "mm", symbol: "mm", quantity: Length, scale: 1},
	Centimetre:          {id: "cm", symbol: "cm", quantity: Length, scale: 10},
	Metre:               {id: "m", symbol: "m", quantity: Length, scale: 1000},
	Inch:                {id: "in", symbol: "in", quantity: Length, us: true, alias: []string{"inch", "inches", "\""}, scale: inch},
	Foot:                {id: "ft", symbol: "ft", quantity: Length, alias: []string{"foot", "feet", "'"}, scale: foot},
	MetreUp:             {id: "m_up", symbol: "m", quantity: Height, scale: 1},
	FootUp:              {id: "ft_up", symbol: "ft", quantity: Height, us: true, alias: []string{"feet"}, scale: foot / 1000},
	Micrometre:          {id: "um", symbol: "µm", quantity: Film, alias: []string{"um", "μm", "micron", "microns"}, scale: 1},
	Mil:                 {id: "mil", symbol: "mil", quantity: Film, us: true, alias: []string{"mils", "thou"}, scale: inch},
	SquareMetre:         {id: "m2", symbol: "m²", quantity: Area, alias: []string{"sqm"}, scale: 1},
	SquareCentimetre:    {id: "cm2", symbol: "cm²", quantity: Area, scale: 1e-4},
	SquareFoot:          {id: "ft2", symbol: "ft²", quantity: Area, us: true, alias: []string{"sqft", "sq ft"}, scale: foot * foot / 1e6},
	Millilitre:          {id: "mL", symbol: "mL", quantity: Volume, alias: []string{"ml", "cc", "cm3"}, scale: 1},
	Litre:               {id: "L", symbol: "L", quantity: Volume, alias: []string{"l", "liter", "litre"}, scale: 1000},
	FluidOunce:          {id: "floz", symbol: "fl oz", quantity: Volume, us: true, alias: []string{"floz", "oz"}, scale: gallon / 128},
	Pint:                {id: "pt", symbol: "pt", quantity: Volume, alias: []string{"pint", "pints"}, scale: gallon / 8},
	Quart:               {id: "qt", symbol: "qt", quantity: Volume, alias: []string{"quart", "quarts"}, scale: gallon / 4},
	Gallon:              {id: "gal", symbol: "gal", quantity: Volume, alias: []string{"gallon", "gallons"}, scale: gallon},
	Gram:                {id: "g", symbol: "g", quantity: Mass, scale: 1},
	Kilogram:            {id: "kg", symbol: "kg", quantity: Mass, scale: 1000},
	Ounce:               {id: "oz", symbol: "oz", quantity: Mass, us: true, scale: pound / 16},
	Pound:               {id: "lb", symbol: "lb", quantity: Mass, alias: []string{"lbs"}, scale: pound},
	KilogramPerLitre:    {id: "kg/L", symbol: "kg/L", quantity: Density, alias: []string{"g/ml", "g/cm3", "kg/l"}, scale: 1},
	PoundPerGallon:      {id: "lb/gal", symbol: "lb/gal", quantity: Density, us: true, scale: pound / gallon},
	GramPerLitre:        {id: "g/L", symbol: "g/L", quantity: Concentration, alias: []string{"g/l"}, scale: 1},
	PoundPerGalUS:       {id: "lb/gal_voc", symbol: "lb/gal", quantity: Concentration, us: true, scale: 1000 * pound / gallon},
	SquareMetrePerLitre: {id: "m2/L", symbol: "m²/L", quantity: Coverage, scale: 1},
	SquareFootPerGallon: {id: "ft2/gal", symbol: "ft²/gal", quantity: Coverage, us: true, scale: foot * foot / 1e6 / (gallon / 1000)},
	Bar:                 {id: "bar", symbol: "bar", quantity: GaugePressure, scale: 100},
	PSI:                 {id: "psi", symbol: "psi", quantity: GaugePressure, us: true, scale: 6.894757293168361},
	KiloPascal:          {id: "kPa", symbol: "kPa", quantity: GaugePressure, alias: []string{"kpa"}, scale: 1},
	Pascal:              {id: "Pa", symbol: "Pa", quantity: VapourPressure, alias: []string{"pa"}, scale: 1},
	HectoPa:             {id: "hPa", symbol: "hPa", quantity: VapourPressure, alias: []string{"hpa", "mbar"}, scale: 100},
	InchHg:              {id: "inHg", symbol: "inHg", quantity: VapourPressure, us: true, alias: []string{"inhg"}, scale: 3386.389},
	MetrePerSecond:      {id: "m/s", symbol: "m/s", quantity: Speed, scale: 1},
	CentimetrePerSecond: {id: "cm/s", symbol: "cm/s", quantity: Speed, scale: 0.01},
	InchPerSecond:       {id: "in/s", symbol: "in/s", quantity: Speed, us: true, scale: inch / 1000},
	AirMetrePerSecond:   {id: "m/s_air", symbol: "m/s", quantity: AirSpeed, scale: 1},
	AirFootPerMinute:    {id: "ft/min", symbol: "ft/min", quantity: AirSpeed, us: true, alias: []string{"fpm"}, scale: foot / 60e3},
	MillilitrePerMinute: {id: "mL/min", symbol: "mL/min", quantity: Delivery, alias: []string{"ml/min", "cc/min"}, scale: 1},
	FluidOuncePerMinute: {id: "floz/min", symbol: "fl oz/min", quantity: Delivery, us: true, alias: []string{"oz/min"}, scale: gallon / 128},
	Minute:              {id: "min", symbol: "min", quantity: Duration, scale: 1},
	Hour:                {id: "h", symbol: "h", quantity: Duration, alias: []string{"hr", "hrs", "hour", "hours"}, scale: 60},
	Second:              {id: "s", symbol: "s", quantity: Duration, alias: []string{"sec"}, scale: 1. / 60},
	Day:                 {id: "d", symbol: "d", quantity: Duration, alias: []string{"day", "days"}, scale: 1440},
	GramPerCubicMetre:   {id: "g/m3", symbol: "g/m³", quantity: VapourDensity, scale: 1},
	GrainPerCubicFoot:   {id: "gr/ft3", symbol: "gr/ft³", quantity: VapourDensity, us: true, scale: 0.06479891 / (foot * foot * foot / 1e9)},
	KilogramPerCubicM:   {id: "kg/m3", symbol: "kg/m³", quantity: AirDensity, scale: 1},
	PoundPerCubicFoot:   {id: "lb/ft3", symbol: "lb/ft³", quantity: AirDensity, us: true, scale: pound / 1000 / (foot * foot * foot / 1e9)},
	KilogramPerKilogram: {id: "kg/kg", symbol: "kg/kg", quantity: MoistureContent, scale: 1},
	GramPerKilogram:     {id: "g/kg", symbol: "g/kg", quantity: MoistureContent, scale: 1e-3},
	SquareMicronPerSec:  {id: "um2/s", symbol: "µm²/s", quantity: DryingRate, scale: 1},
	KilojoulePerMole:    {id: "kJ/mol", symbol: "kJ/mol", quantity: Energy, scale: 1},
	PlainMoney:          {id: "money", quantity: Money, scale: 1},
	PricePerLitre:       {id: "/L", symbol: "a litre", quantity: VolumePrice, scale: 1},
	PricePerGallon:      {id: "/gal", symbol: "a gallon", quantity: VolumePrice, us: true, scale: 1000 / gallon},
	PricePerQuart:       {id: "/qt", symbol: "a quart", quantity: VolumePrice, scale: 4000 / gallon},
	PricePerSquareMetre: {id: "/m2", symbol: "a m²", quantity: AreaPrice, scale: 1},
	PricePerSquareFoot:  {id: "/ft2", symbol: "a ft²", quantity: AreaPrice, us: true, scale: 1e6 / (foot * foot)},
	PartsByVolume:       {id: "vol_parts", symbol: "parts by volume", quantity: VolumeParts, scale: 1},
	PartsByMass:         {id: "mass_parts", symbol: "parts by weight", quantity: MassParts, scale: 1},
	Degree:              {id: "deg", symbol: "°", quantity: Angle, alias: []string{"deg", "degrees"}, scale: 1},
	WattPerSquareMetreK: {id: "W/m2K", symbol: "W/(m²·K)", quantity: HeatTransfer, scale: 1},
	CubicMetre:          {id: "m3", symbol: "m³", quantity: Space, alias: []string{"cbm"}, scale: 1},
	CubicFoot:           {id: "ft3", symbol: "ft³", quantity: Space, us: true, alias: []string{"cuft", "cu ft"}, scale: foot * foot * foot / 1e9},
	CubicMetrePerHour:   {id: "m3/h", symbol: "m³/h", quantity: Ventilation, scale: 1},
	CubicMetrePerSecond: {id: "m3/s", symbol: "m³/s", quantity: Ventilation, scale: 3600},
	CubicFootPerMinute:  {id: "ft3/min", symbol: "ft³/min", quantity: Ventilation, us: true, alias: []string{"cfm"}, scale: 60 * foot * foot * foot / 1e9},
	GramPerMole:         {id: "g/mol", symbol: "g/mol", quantity: MolarMass, scale: 1},
	PartsPerMillion:     {id: "ppm", symbol: "ppm", quantity: VapourShare, scale: 1},
	CubicMetrePerLitre:  {id: "m3/L", symbol: "m³/L", quantity: VapourYield, scale: 1},
	CubicFootPerGallon:  {id: "ft3/gal", symbol: "ft³/gal", quantity: VapourYield, us: true, scale: foot * foot * foot / 1e9 / (gallon / 1000)},
	SquareMMPerSecond:   {id: "mm2/s", symbol: "mm²/s", quantity: KinematicViscosity, alias: []string{"cst"}, scale: 1},
	MillipascalSecond:   {id: "mPas", symbol: "mPa·s", quantity: DynamicViscosity, alias: []string{"cp"}, scale: 1},
	LitrePerMinute:      {id: "L/min", symbol: "L/min", quantity: AirFlow, scale: 1},
	FreeM3PerHour:       {id: "m3/h_free", symbol: "m³/h", quantity: AirFlow, scale: 1000. / 60},
	FreeFt3PerMinute:    {id: "cfm", symbol: "cfm", quantity: AirFlow, us: true, alias: []string{"scfm"}, scale: foot * foot * foot / 1e6},
	SquareMetrePerMetre: {id: "m2/m", symbol: "m²/m", quantity: Girth, scale: 1},
	SquareFootPerFoot:   {id: "ft2/ft", symbol: "ft²/ft", quantity: Girth, us: true, scale: foot / 1000},
	PricePerHour:        {id: "/h", symbol: "an hour", quantity: TimePrice, scale: 1},
}
