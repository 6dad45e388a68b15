package source

// Works on paint through an opening, and on a coat's film against what was asked for.
var (
	Poiseuille  = &Work{ID: "hagen-poiseuille", Ours: "Hagen–Poiseuille law of flow through a bore, in any textbook of fluid mechanics"}
	Sampson1891 = &Work{ID: "sampson-1891", Title: "R. A. Sampson, On Stokes's current function, Phil. Trans. R. Soc. A 182 (1891) 449–518: slow flow through a thin opening"}
)
