//go:build js && wasm

// Package border puts the calculators of one core behind two JavaScript functions:
//
//	calculate(id, form) -> report
//	speak(words, mark)
//
// form is text as calc.ParseForm reads it and report is JSON as calc.Report.JSON writes it. Until speak has been called
// reports are in English: words is text as calc.ParseWords reads it, blank for English, and mark the decimal mark.
package border

import (
	"syscall/js"

	"spraywright/calc"
	"spraywright/calc/core"
)

// largest is how many bytes a form may have. A job of 300 parts has about 60 thousand.
const largest = 4 << 20

// More answers calls under names of its own, and says whether one is.
type More func(core core.Core, language calc.Language, id, form string) (answer string, mine bool)

// Serve answers the page's calls for the calculators of a core, and more where it is told to. It does not return.
func Serve(core core.Core, more ...More) {
	var language calc.Language
	js.Global().Set("speak", js.FuncOf(func(_ js.Value, args []js.Value) any {
		if texts(args) {
			language = calc.Language{Comma: args[1].String() == ","}
			if words := args[0].String(); words != "" {
				language.Words = calc.ParseWords(words)
			}
		}
		return nil
	}))
	js.Global().Set("calculate", js.FuncOf(func(_ js.Value, args []js.Value) any {
		if !texts(args) {
			return language.Trouble("", "The page asked in a way the core does not know", "Reload the page").JSON()
		}
		return calculate(core, more, language, args[0].String(), args[1].String())
	}))
	select {} // the functions above keep answering
}

// texts reports whether a function was called with two texts.
func texts(args []js.Value) bool {
	return len(args) == 2 && args[0].Type() == js.TypeString && args[1].Type() == js.TypeString
}

// calculate never panics across the border: a mistake in one calculator must not take the core down.
func calculate(core core.Core, more []More, language calc.Language, id, form string) (report string) {
	defer func() {
		if r := recover(); r != nil {
			report = language.Trouble(id, "The calculator failed on these numbers", "Change one of them; nothing you typed is lost").JSON()
		}
	}()
	if len(form) > largest {
		return language.Trouble(id, "The form holds more than can be read", "Take out what was pasted by mistake").JSON()
	}
	for _, m := range more {
		if answer, mine := m(core, language, id, form); mine {
			return answer
		}
	}
	c := core.Find(id)
	if c == nil {
		return language.Trouble(id, "There is no calculator of that name here", "Choose one from the menu").JSON()
	}
	return c.RunIn(language, calc.ParseForm(form)).JSON()
}
