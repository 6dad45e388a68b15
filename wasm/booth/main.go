//go:build js && wasm

// Command booth is the core that answers the questions at the booth.
package main

import (
	"spraywright/calc/menu"
	"spraywright/wasm/border"
)

func main() { border.Serve(menu.Booth(), border.Exercises, border.Lessons) }
