package calc

// A Picture is drawn from the numbers by the core and put on the page as it stands. Lengths are CSS pixels on
// a phone; the page may enlarge the whole.
type Picture struct {
	Key           string
	Title         string // worded, like all text in a picture; see [Working.Voiced]
	Says          string // what it shows, in one sentence, for those who cannot see it
	Width, Height float64
	Shapes        []Shape
}

// A Shape is one mark in a picture.
type Shape struct {
	Kind      ShapeKind
	X, Y      float64
	W, H      float64   // of a bar; the far end of a line is X+W, Y+H
	Points    []float64 // of a path: x, y, x, y, …
	Text      string
	Look      string // what it stands for, which decides how it is inked: "axis", "grid", "coat", "flash", …
	AnchorEnd bool   // text ends at X
	AnchorMid bool   // text is centred on X
	Of        string // the step that a bar shows, as a calculator takes it back from the page; blank for none
}

// A ShapeKind says what a shape is.
type ShapeKind string

// The kinds of shape.
const (
	Bar   ShapeKind = "bar"
	Rule  ShapeKind = "rule"
	Path  ShapeKind = "path"
	Label ShapeKind = "label"
	Dot   ShapeKind = "dot" // a circle of radius W
)
