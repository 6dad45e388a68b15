//go:build js && wasm

// Package border puts the calculators of one core behind one JavaScript function:
//
//	calculate(id, form) -> report
//
// form is text as calc.ParseForm reads it and report is JSON as calc.Report.JSON writes it.
package border

import (
	"syscall/js"

	"spraywright/calc"
	"spraywright/calc/menu"
)

// largest is how many bytes a form may have. A job of 300 parts has about 60 thousand.
const largest = 4 << 20

// Serve answers the page's calls for the calculators of a core. It does not return.
func Serve(core menu.Core) {
	js.Global().Set("calculate", js.FuncOf(func(_ js.Value, args []js.Value) any {
		if len(args) != 2 || args[0].Type() != js.TypeString || args[1].Type() != js.TypeString {
			return calc.Trouble("", "The page asked in a way the core does not know", "Reload the page").JSON()
		}
		return calculate(core, args[0].String(), args[1].String())
	}))
	select {} // the function above keeps answering
}

// calculate never panics across the border: a mistake in one calculator must not take the core down.
func calculate(core menu.Core, id, form string) (report string) {
	defer func() {
		if r := recover(); r != nil {
			report = calc.Trouble(id, "The calculator failed on these numbers", "Change one of them; nothing you typed is lost").JSON()
		}
	}()
	c := core.Find(id)
	switch {
	case c == nil:
		return calc.Trouble(id, "There is no calculator of that name here", "Choose one from the menu").JSON()
	case len(form) > largest:
		return calc.Trouble(id, "The form holds more than can be read", "Take out what was pasted by mistake").JSON()
	}
	return c.Run(calc.ParseForm(form)).JSON()
}
