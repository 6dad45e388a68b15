//go:build js && wasm

// Command whole is the core of the site in one file: every calculator, with Go's runtime once.
package main

import (
	"spraywright/calc/menu"
	"spraywright/wasm/border"
)

func main() {
	border.Serve(menu.Core{Name: "whole", Topics: menu.Topics()}, border.Exercises, border.ExerciseSets, border.Lessons)
}
