package source

// Works on records, and on how sure a measured figure is.
var (
	CFR63MMMM = &Work{ID: "40-cfr-63-mmmm", Title: "40 CFR part 63, subpart MMMM: National emission standards for hazardous air pollutants for surface coating of miscellaneous metal parts and products"}
	JCGM100   = &Work{ID: "jcgm-100", Title: "JCGM 100:2008. Evaluation of measurement data. Guide to the expression of uncertainty in measurement"}
)
