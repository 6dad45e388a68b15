package source

// Plastics is where the figures for plastic parts come from.
var Plastics = &Work{ID: "plastics", Ours: "Density, specific heat and conductivity of plastics, in any handbook of materials"}
