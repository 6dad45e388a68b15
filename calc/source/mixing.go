package source

// What mixing rests on, besides definitions.
var (
	AdditiveVolumes = &Work{ID: "additive-volumes", Ours: "Common practice, no source: the volumes of the parts are taken to add up", Basis: Practice}
	Alligation      = &Work{ID: "alligation", Ours: "Alligation: the balance of what two strengths bring, as pharmacy courses teach it", Basis: Derived}
)
