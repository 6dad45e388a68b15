package source

// Mensuration is the geometry of simple shapes.
var Mensuration = &Work{ID: "mensuration", Ours: "Mensuration of plane and solid figures, in any school geometry", Basis: Derived}
