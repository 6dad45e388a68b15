package area

import (
	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

// sizes is everything that OfPart and Describe read, besides the name and the count.
var sizes = []calc.Input{field.Shape, field.PartLength, field.PartWidth, field.PartHeight, field.PartDiameter,
	field.PartSmallEnd, field.PartArea, field.Sides, field.Faces, field.Skin}

// OfPart is the painted area in m² of one part, from a form or a row that has the fields of a part. ok is false
// where one of them has a problem; the problem then stands in the form. Every set of sizes within the fields'
// limits is a real part, so that none is refused here.
func OfPart(w *calc.Working, e *calc.Entry) (one calc.Num, ok bool) {
	if !e.Sound(sizes...) {
		return calc.Num{Unit: unit.SquareMetre}, false
	}
	bothSides, bothSkins := e.Picked(field.Sides) == "two", e.Picked(field.Skin) == "both"
	switch e.Picked(field.Shape) {
	case "flat":
		one = Flat(w, e.Given(field.PartLength), e.Given(field.PartWidth), bothSides)
	case "disc":
		one = Disc(w, e.Given(field.PartDiameter), bothSides)
	case "box":
		one = Box(w, e.Given(field.PartLength), e.Given(field.PartWidth), e.Given(field.PartHeight), e.Picked(field.Faces))
	case "tube":
		one = Tube(w, e.Given(field.PartLength), e.Given(field.PartDiameter), bothSkins)
	case "cone":
		one = ConeFrustum(w, e.Given(field.PartLength), e.Given(field.PartDiameter), e.Given(field.PartSmallEnd), bothSkins)
	case "dome":
		one = dome(w, e, bothSkins)
	default:
		one = e.Given(field.PartArea)
	}
	return one, one.Given()
}

// dome warns where the rim was probably not the diameter measured.
func dome(w *calc.Working, e *calc.Entry, both bool) calc.Num {
	rim, height := e.Given(field.PartDiameter), e.Given(field.PartHeight)
	if w != nil && height.V > rim.V/2 {
		w.Caution("A dome {h} high on a rim of {d} is more than half a ball and bulges past its rim. If yours goes straight up, enter it as a tube and a dome on top.",
			height.As("h"), rim.As("d"))
	}
	return Dome(w, rim, height, both)
}

// Describe puts a part whose fields are sound into a sentence: what it is called, its shape and sizes, how much of it is
// painted where that is not the plain outside, how many, and the area of one.
func Describe(e *calc.Entry, one calc.Num) calc.Text {
	says := calc.Phrase("{name}, {shape}, {n} pieces, {area} each")
	n, painted := e.Given(field.Count), painted(e)
	switch {
	case n.V == 1 && painted != "":
		says = "{name}, {shape}, {painted}, {n} piece, {area}"
	case n.V == 1:
		says = "{name}, {shape}, {n} piece, {area}"
	case painted != "":
		says = "{name}, {shape}, {painted}, {n} pieces, {area} each"
	}
	name := calc.Words(e.Words(field.PartName), "name")
	if name.Words == "" {
		name = calc.Term("Part", "name")
	}
	shape := calc.Say(outline(e.Picked(field.Shape)), e.Given(field.PartLength).As("l"), e.Given(field.PartWidth).As("w"), e.Given(field.PartHeight).As("h"),
		e.Given(field.PartDiameter).As("d"), e.Given(field.PartSmallEnd).As("s"))
	return calc.Say(says, name, shape.As("shape"), calc.Term(painted, "painted"), n.To(0, "n"), one.As("area"))
}

// outline is the shape with its sizes.
func outline(shape string) calc.Phrase {
	switch shape {
	case "flat":
		return "flat {l} × {w}"
	case "disc":
		return "disc {d} across"
	case "box":
		return "box {l} × {w} × {h}"
	case "tube":
		return "tube {d} across, {l} long"
	case "cone":
		return "cone {d} to {s} across, {l} long"
	case "dome":
		return "dome {d} across, {h} high"
	}
	return "measured"
}

// painted is how much of the shape is painted where that is not the plain outside.
func painted(e *calc.Entry) calc.Phrase {
	switch e.Picked(field.Sides) + e.Picked(field.Faces) + e.Picked(field.Skin) { // one of them is asked
	case "two":
		return "both sides"
	case "six":
		return "all faces"
	case "four":
		return "sides only"
	case "inside":
		return "inside"
	case "inside-too", "both":
		return "inside too"
	}
	return ""
}
