//go:build js && wasm

// Command empty is the smallest program that a page can call: what any Go core weighs, and takes, before it does anything.
package main

import "syscall/js"

// nothing is a report in which there is nothing to show.
const nothing = `{"id":"","problems":[],"places":[],"rows":[],"retyped":[],"nudges":[],"verdict":[],"figures":[],"lists":[],"pictures":[],"steps":[],"cautions":[]}`

func main() {
	js.Global().Set("speak", js.FuncOf(func(js.Value, []js.Value) any { return nil }))
	js.Global().Set("calculate", js.FuncOf(func(js.Value, []js.Value) any { return nothing }))
	select {}
}
