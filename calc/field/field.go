// Package field is the one vocabulary of inputs. A key means the same thing, and the same quantity, in every
// calculator, so that what is known once (today's booth, a data sheet, a gun) fills every form that asks for it.
//
// A calculator may narrow an input or reword its help; the key stays. An [Example] is not a default: only what
// is safe to leave starts filled in.
package field

import "spraywright/calc"

func between(min, max float64) calc.Range { return calc.Between(min, max) }
