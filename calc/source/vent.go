package source

// Works on booth air and on vapour.
var (
	CFR1910_94 = &Work{ID: "29-cfr-1910-94", Title: "29 CFR 1910.94 Ventilation, paragraph (c) Spray finishing operations"}
	WAC296     = &Work{ID: "wac-296-304", Title: "Washington Administrative Code 296-304-03009: shipyards, painting"}
	CDC1994    = &Work{ID: "cdc-mmwr-43-13", Title: "CDC, Guidelines for preventing the transmission of Mycobacterium tuberculosis in health-care facilities, MMWR 43 (RR-13), 28 October 1994"}
	IdealGas   = &Work{ID: "ideal-gas", Ours: "Ideal gas law with R from CODATA 2018 and the standard atmosphere", Basis: Derived}
)
