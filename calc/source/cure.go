package source

// The works on pot life and cure.
var (
	GoldBook   = &Work{ID: "gold-book", Title: "IUPAC, Compendium of Chemical Terminology (the Gold Book)"}
	Sekkar1997 = &Work{ID: "sekkar-1997", Title: "Sekkar, Krishnamurthy and Jain, J. Appl. Polym. Sci. 66 (1997) 1795–1801, on urethane networks"}
	Cheng1994  = &Work{ID: "cheng-1994", Title: "Cheng et al., J. Mater. Sci. 29 (1994) 721–727, on epoxy cured with tertiary amine"}
)
