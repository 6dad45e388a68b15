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

// Describe puts a part whose fields are sound into a sentence: what it is called, its shape and sizes, how many,
// and the area of one.
func Describe(e *calc.Entry, one calc.Num) calc.Text {
	n := e.Given(field.Count)
	pieces := "{n} pieces, {area} each"
	if n.V == 1 {
		pieces = "{n} piece, {area}"
	}
	name := e.Words(field.PartName)
	if name == "" {
		name = "Part"
	}
	return calc.Say("{name}, "+outline(e)+", "+pieces, calc.Words(name, "name"), n.To(0, "n"), one.As("area"),
		e.Given(field.PartLength).As("l"), e.Given(field.PartWidth).As("w"), e.Given(field.PartHeight).As("h"),
		e.Given(field.PartDiameter).As("d"), e.Given(field.PartSmallEnd).As("s"))
}

// outline is the shape with its sizes, and how much of it is painted where that is not the plain outside.
func outline(e *calc.Entry) string {
	extra := map[string]string{"two": ", both sides", "six": ", all faces", "four": ", sides only", "inside-too": ", inside too",
		"inside": ", inside", "both": ", inside too"}
	painted := extra[e.Picked(field.Sides)] + extra[e.Picked(field.Faces)] + extra[e.Picked(field.Skin)]
	switch e.Picked(field.Shape) {
	case "flat":
		return "flat {l} × {w}" + painted
	case "disc":
		return "disc {d} across" + painted
	case "box":
		return "box {l} × {w} × {h}" + painted
	case "tube":
		return "tube {d} across, {l} long" + painted
	case "cone":
		return "cone {d} to {s} across, {l} long" + painted
	case "dome":
		return "dome {d} across, {h} high" + painted
	}
	return "measured"
}
