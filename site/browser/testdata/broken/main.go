//go:build js && wasm

// Command broken is the job's core with faults that a form asks for by its altitude: at 4101 m it panics where nothing
// catches it, at 4102 m in a calculator, at 4103 m it takes all the memory there is, at 4104 m it does not answer for 5 s.
package main

import (
	"strings"
	"time"

	"spraywright/calc"
	"spraywright/calc/core"
	"spraywright/calc/menu"
	"spraywright/wasm/border"
)

var held [][]byte

func main() {
	border.Serve(menu.Job(), func(_ core.Core, _ calc.Language, _, form string) (string, bool) {
		switch {
		case strings.Contains(form, "altitude=4101"):
			go func() { panic("by the test") }()
			<-make(chan int)
		case strings.Contains(form, "altitude=4102"):
			panic("by the test")
		case strings.Contains(form, "altitude=4103"):
			for {
				held = append(held, make([]byte, 1<<28))
			}
		case strings.Contains(form, "altitude=4104"):
			for end := time.Now().Add(5 * time.Second); time.Now().Before(end); {
			}
		}
		return "", false
	})
}
