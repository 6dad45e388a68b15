package source

// Rules on volatile organic compounds.
var (
	CFR59         = &Work{ID: "40-cfr-59-b", Title: "40 CFR part 59, subpart B: National volatile organic compound emission standards for automobile refinish coatings"}
	EU42          = &Work{ID: "2004-42-ec", Title: "Directive 2004/42/EC on the limitation of emissions of volatile organic compounds due to the use of organic solvents in certain paints and varnishes and vehicle refinishing products"}
	TAC115        = &Work{ID: "30-tac-115", Title: "30 Texas Administrative Code 115.423: Surface coating processes, control requirements"}
	COMAR26       = &Work{ID: "comar-26-11-19", Title: "Code of Maryland Regulations 26.11.19.02: Volatile organic compounds from specific processes"}
	SouthCoastVOC = &Work{ID: "south-coast-voc", Title: "South Coast Air Quality Management District: VOC calculations"}
)
