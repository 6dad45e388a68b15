// Package code draws the link to a form as a QR code, and reads the short way in which a code writes a form.
package code

import (
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// Calculators lists what pages ask for themselves; nobody types a link into a form.
var Calculators = []calc.Maker{
	{ID: "link-code", Make: LinkCode},
	{ID: "link-read", Make: LinkRead},
}

// LinkCode draws a link as a QR code.
func LinkCode() *calc.Calculator {
	return &calc.Calculator{
		ID:       "link-code",
		Title:    "QR code of a link",
		Question: "What does the QR code of this link look like?",
		Range:    "Links of up to 2,953 bytes once the form in them is folded, which is what the largest QR code holds.",
		Inputs:   []calc.Input{field.Link},
		Outputs:  []calc.Output{linkLength, shortLink, modules, correction},
		Work:     linkCode,
	}
}

// LinkRead unfolds the form that stands in the address of a QR code.
func LinkRead() *calc.Calculator {
	folded := field.Folded
	folded.Words = "1:910XJNUM7FNY91"
	folded.Check = func(words string) *calc.Fault {
		if _, ok := Unfold(words); !ok {
			return &calc.Fault{Message: "cannot be read: it is damaged, or was made by a newer version", Fix: "Scan the code again, or ask for the link itself"}
		}
		return nil
	}
	return &calc.Calculator{
		ID:         "link-read",
		Title:      "Form of a QR code",
		Question:   "What form does this QR code hold?",
		Range:      "Codes drawn by this site, now or earlier.",
		Inputs:     []calc.Input{folded},
		Outputs:    []calc.Output{form},
		Work:       linkRead,
		Arithmetic: true, // the way of writing is this site's own
	}
}

var (
	linkLength = calc.Output{Key: "link_length", Label: "Characters in the link", Unit: unit.One}
	shortLink  = calc.Output{Key: "short_link", Label: "Short link", Words: true, Optional: true}
	modules    = calc.Output{Key: "modules", Label: "Modules along a side", Unit: unit.One, Optional: true}
	correction = calc.Output{Key: "correction", Label: "Error correction", Words: true, Optional: true}
	form       = calc.Output{Key: "form", Label: "Form", Words: true}

	sizes = source.ISO18004.At("5.3.1.1, sizes of the versions").By(source.Memory)
)

// Common practice, no source.
const (
	oftenCut  = 2000 // characters of a link that mail and chat programs leave whole
	tooFineAt = 26   // the first version that a phone's camera may not read
)

func linkCode(w *calc.Working) {
	link := w.Words(field.Link)
	length := calc.N(float64(len(link)), unit.One)
	w.Result(linkLength, length)
	said := short(link)
	if said != link {
		w.Tell(shortLink, calc.Say("{link}", calc.Words(said, "link")))
	}
	m := newMessage(said)
	version, l, ok := smallest(m)
	switch {
	case !ok:
		w.Judge(calc.Stop, calc.Say("This form is too long for a QR code"), calc.Say("Hand on the link itself, or leave out parts or products"))
	case version >= tooFineAt:
		w.Judge(calc.Wait, calc.Say("This QR code is so fine that a phone camera may not read it"), calc.Say("Show it as large as you can, or hand on the link itself; fewer parts or products make it coarser"))
	default:
		w.Judge(calc.Go, calc.Say("A phone camera reads this QR code"), calc.Say("Keep the whole code and its white edge in view"))
	}
	if length.V > oftenCut {
		w.Judge(calc.Wait, calc.Say("The readable link has {n} characters; some mail and chat programs cut a link after {most}", length.To(0, "n"), calc.N(oftenCut, unit.One).To(0, "most")),
			calc.Say("Hand on the short link, or open the long one once where it has arrived: one that was cut says so"))
	}
	if !ok {
		return
	}
	v := calc.N(float64(version), unit.One).Called("Version")
	n := w.Step("Modules along a side", "n = 17 + 4 * V", unit.One, sizes, 17+4*v.V, v)
	w.Result(modules, n)
	w.Tell(correction, calc.Say("{level}", calc.Words(l.letter(), "level")))
	w.Draw(picture(w, draw(m, version, l), w.Voiced(calc.Say("A QR code that holds the link to this form, {n} by {n} modules", n.To(0, "n")))))
}

// short is the link with its form folded, where it can be.
func short(link string) string {
	page, text, _ := strings.Cut(link, "#")
	if folded, ok := Fold(text); ok && text != "" {
		return page + "#" + folded
	}
	return link
}

func linkRead(w *calc.Working) {
	text, _ := Unfold(w.Words(field.Folded))
	w.Tell(form, calc.Say("{form}", calc.Words(text, "form")))
}

// quiet is the light edge that a camera needs around a code, in modules (ISO/IEC 18004, 5.3.8).
const quiet = 4

// picture is a code with its light edge, one module a unit: each row in bars.
func picture(w *calc.Working, s *symbol, says string) calc.Picture {
	p := calc.Picture{Key: "code", Title: w.Voiced(calc.Say("QR code")), Says: says, Width: float64(s.size + 2*quiet), Height: float64(s.size + 2*quiet)}
	for y := range s.size {
		for x := 0; x < s.size; x++ {
			from := x
			for x < s.size && s.dark[s.at(x, y)] {
				x++
			}
			if x > from {
				p.Shapes = append(p.Shapes, calc.Shape{Kind: calc.Bar, Look: "module", X: float64(quiet + from), Y: float64(quiet + y), W: float64(x - from), H: 1})
			}
		}
	}
	return p
}
