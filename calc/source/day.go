package source

// RoySussmann is the work that put the order of jobs on machines as a graph of what follows what.
var RoySussmann = &Work{ID: "roy-sussmann-1964", Title: "B. Roy, B. Sussmann: Les problèmes d’ordonnancement avec contraintes disjonctives, SEMA, Note D.S. 9, 1964", Basis: Memory}
