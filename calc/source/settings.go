package source

// OurChoice is what nobody has published and somebody had to set.
var OurChoice = &Work{ID: "our-choice", Ours: "This project’s own choice, no source", Basis: Practice}

// Works on drops from a gun.
var (
	Brosseau1992 = &Work{ID: "brosseau-1992", Title: "Brosseau et al. (1992), on the drop sizes of refinish sprays, doi.org/10.1080/1047322X.1992.10388052"}
	Atomizing    = &Work{ID: "twin-fluid-atomizers", Ours: "Correlations for drop size of air atomizers: Nukiyama and Tanasawa 1939, Kim and Marshall 1971, El-Shanawany and Lefebvre 1980, Rizk and Lefebvre 1984"}
)
