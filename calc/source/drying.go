package source

// Works on evaporation and on how films dry.
var (
	Incropera         = &Work{ID: "incropera", Title: "Incropera, F. P., DeWitt, D. P. et al. Fundamentals of heat and mass transfer"}
	Poling            = &Work{ID: "poling-2001", Title: "Poling, B. E., Prausnitz, J. M. and O'Connell, J. P. (2001). The properties of gases and liquids, 5th edition"}
	LandoltBornstein  = &Work{ID: "landolt-bornstein-vp", Title: "Landolt-Börnstein, Group IV: Vapor pressure of chemicals"}
	NISTWebBook       = &Work{ID: "nist-webbook", Title: "NIST Chemistry WebBook, NIST Standard Reference Database 69"}
	VesselEvaporation = &Work{ID: "vessel-evaporation", Title: "Hisatake, K. et al. (1995). Experimental and theoretical study of evaporation of water in a vessel. Journal of Applied Physics 77, 6664 (authors and year from memory)"}
	DropEvaporation   = &Work{ID: "ranz-marshall-1952", Title: "Ranz, W. E. and Marshall, W. R. (1952). Evaporation from drops. Chemical Engineering Progress 48, 141–146 and 173–180"}
	WaterVapourD      = &Work{ID: "pruppacher-klett", Title: "Pruppacher, H. R. and Klett, J. D. Microphysics of clouds and precipitation"}
)
