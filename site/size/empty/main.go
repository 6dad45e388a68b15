//go:build js && wasm

// Command empty is the smallest program that a page can call: what any Go core weighs before it does anything.
package main

import "syscall/js"

func main() {
	js.Global().Set("calculate", js.FuncOf(func(_ js.Value, args []js.Value) any { return args[0].String() }))
	select {}
}
