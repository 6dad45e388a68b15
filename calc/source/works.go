package source

// The works cited. A topic's package says which place in a work it rests on, and how it knows.
var (
	Definition     = &Work{ID: "definition", Ours: "Follows from the definition of the quantities", Basis: Derived}
	CommonPractice = &Work{ID: "practice", Ours: "Common practice of the trade, no source", Basis: Practice}
)
