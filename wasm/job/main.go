//go:build js && wasm

// Command job is the core that answers the job card and today’s settings.
package main

import (
	"spraywright/calc/menu"
	"spraywright/wasm/border"
)

func main() { border.Serve(menu.Job()) }
