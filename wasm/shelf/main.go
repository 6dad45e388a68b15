//go:build js && wasm

// Command shelf is the core that answers what is kept: data sheets, guns, booths, the shop, the log of mixes, and the QR
// code of a link.
package main

import (
	"spraywright/calc/menu"
	"spraywright/wasm/border"
)

func main() { border.Serve(menu.Shelf(), border.Exercises, border.ExerciseSets) }
