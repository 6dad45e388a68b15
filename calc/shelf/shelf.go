// Package shelf describes what a person keeps to fill forms from: data sheets, guns, booths, and the shop's own ways.
package shelf

import "spraywright/calc"

// Calculators lists what can be kept.
var Calculators = []calc.Maker{}
