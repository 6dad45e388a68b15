//go:build js && wasm

// Command bench is the core that answers the questions at the mixing bench.
package main

import (
	"spraywright/calc/menu"
	"spraywright/wasm/border"
)

func main() { border.Serve(menu.Bench(), border.Exercises) }
