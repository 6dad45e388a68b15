//go:build js && wasm

// Command day is the core that plans the booth day.
package main

import (
	"spraywright/calc/menu"
	"spraywright/wasm/border"
)

func main() { border.Serve(menu.Day()) }
