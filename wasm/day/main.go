//go:build js && wasm

// Command day is the core that plans the booth day.
package main

import (
	"spraywright/calc/day"
	"spraywright/wasm/border"
)

func main() { border.Serve(day.Core()) }
