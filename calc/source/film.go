package source

// Works on film thickness and on how much paint a job takes.
var (
	MILHDBK1110        = &Work{ID: "mil-hdbk-1110", Title: "MIL-HDBK-1110, Paints and protective coatings for facilities; issued again as UFC 3-190-06"}
	ASTMD4414          = &Work{ID: "astm-d4414", Title: "ASTM D4414, Practice for measurement of wet film thickness by notch gages"}
	FinishingGuidebook = &Work{ID: "finishing-guidebook", Title: "Metal Finishing guidebook, 2012/13: coating thickness measurement"}
	Fenton1960         = &Work{ID: "fenton-1960", Title: "L. F. Fenton, The sum of log-normal probability distributions in scatter transmission systems, IRE Trans. Commun. Syst. CS-8 (1960) 57–67"}
	LogNormal          = &Work{ID: "log-normal", Ours: "Properties of the log-normal and the normal distribution, in any handbook of statistics", Basis: Derived}
)
