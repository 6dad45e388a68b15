// Package record keeps the books on what was mixed and sprayed.
package record

import "spraywright/calc"

// Calculators lists the questions about the log of mixes.
var Calculators = []calc.Maker{}
