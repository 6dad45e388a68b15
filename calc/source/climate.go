package source

// Works on humid air and condensation.
var (
	HylandWexler = &Work{ID: "hyland-wexler-1983", Title: "Hyland, R. W. and Wexler, A. (1983). Formulations for the thermodynamic properties of the saturated phases of H2O from 173.15 K to 473.15 K. ASHRAE Transactions 89(2A), 500–519"}
	ASHRAEAir    = &Work{ID: "ashrae-fundamentals-1", Title: "ASHRAE Handbook: Fundamentals (2017), chapter 1, Psychrometrics"}
	ISO8502_4    = &Work{ID: "iso-8502-4", Title: "ISO 8502-4. Preparation of steel substrates before application of paints and related products. Part 4: Guidance on the estimation of the probability of condensation prior to paint application"}
)
