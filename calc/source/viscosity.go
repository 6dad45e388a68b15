package source

// Works on flow cups, viscosity and thinning.
var (
	ISO2431    = &Work{ID: "iso-2431", Title: "ISO 2431. Paints and varnishes. Determination of flow time by use of flow cups"}
	DIN53211   = &Work{ID: "din-53211", Title: "DIN 53211. Determination of flow time with the DIN flow cup (withdrawn)"}
	ASTMD1200  = &Work{ID: "astm-d1200", Title: "ASTM D1200, Test method for viscosity by Ford viscosity cup"}
	ASTMD4212  = &Work{ID: "astm-d4212", Title: "ASTM D4212, Test method for viscosity by dip-type viscosity cups"}
	Andrade    = &Work{ID: "andrade-1930", Title: "E. N. da C. Andrade, The viscosity of liquids, Nature 125 (1930) 309–310"}
	LogMixing  = &Work{ID: "log-mixing", Title: "S. Arrhenius (1887), Über die innere Reibung verdünnter wässeriger Lösungen: logarithms of viscosity add by volume"}
	Maples2000 = &Work{ID: "maples-2000", Title: "R. E. Maples, Petroleum refinery process economics, 2nd edition (2000): Refutas' viscosity blending number"}
)
