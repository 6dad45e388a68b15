package source

// Works on when a film is thick enough, on blasted steel, and on steel sections, tanks and sheet.
var (
	ISO19840    = &Work{ID: "iso-19840", Title: "ISO 19840. Paints and varnishes. Corrosion protection of steel structures by protective paint systems. Measurement of, and acceptance criteria for, the thickness of dry films on rough surfaces"}
	SSPCPA2     = &Work{ID: "sspc-pa-2", Title: "SSPC-PA 2. Procedure for determining conformance to dry coating thickness requirements"}
	MSC215      = &Work{ID: "imo-msc-215-82", Title: "IMO resolution MSC.215(82). Performance standard for protective coatings for dedicated seawater ballast tanks"}
	BlastLosses = &Work{ID: "blast-losses", Ours: "Theoretical spreading rate and application losses, a note of the coatings trade"}
	Thomsen2004 = &Work{ID: "thomsen-2004", Title: "K. Thomsen (2004), approximation to the surface area of an ellipsoid, in G. P. Michon, Numericana"}
	ASMEB36     = &Work{ID: "asme-b36-10", Title: "ASME B36.10M. Welded and seamless wrought steel pipe"}
	EN10220     = &Work{ID: "en-10220", Title: "EN 10220. Seamless and welded steel tubes. Dimensions and masses per unit length"}
)
