// Package phrase has the type of all text that is ours.
package phrase

// A Phrase is text that the program says, as opposed to what a person typed. It is written in English as one constant,
// and that is its name in the catalogue: the type is how the catalogue's texts are found, and how the compiler sees
// to it that none reaches a person without having been looked up.
type Phrase string
