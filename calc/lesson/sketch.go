package lesson

import (
	"math"

	"spraywright/calc"
)

// Sketch is a picture of what the formulas of a calculator are about, where one explains it. It is to no scale. No core holds
// it: the site has the pictures as files.
func Sketch(l calc.Language, of string) (calc.Picture, bool) {
	s := sketcher{Language: l}
	switch of {
	case "wet-film", "dry-film", "comb-reading", "film-from-paint", "spreading-rate", "coverage-left", "paint-needed", "profile-paint":
		s.wedge()
	case "overlap", "film-per-pass", "gun-delivery", "gun":
		s.strokes()
	case "gun-distance", "settings", "flash-time":
		s.flight()
	case "cup-seconds", "viscosity-temperature", "reducer":
		s.flowCup()
	case "mix", "mix-ratio", "over-pour", "cup-graduations", "from-one-part", "mix-solids", "cup-age", "part-used-cup":
		s.mixingCup()
	default:
		return calc.Picture{}, false
	}
	s.p.Key, s.p.Width, s.p.Height = "sketch", 340, 150
	return s.p, true
}

type sketcher struct {
	calc.Language
	p calc.Picture
}

func (s *sketcher) name(title, says calc.Phrase) { s.p.Title, s.p.Says = s.Say(title), s.Say(says) }

func (s *sketcher) shape(k calc.ShapeKind, look string, x, y, w, h float64) {
	s.p.Shapes = append(s.p.Shapes, calc.Shape{Kind: k, Look: look, X: x, Y: y, W: w, H: h})
}

func (s *sketcher) path(look string, xy ...float64) {
	s.p.Shapes = append(s.p.Shapes, calc.Shape{Kind: calc.Path, Look: look, Points: xy})
}

// label writes a text, centred.
func (s *sketcher) label(x, y float64, text calc.Phrase) {
	s.p.Shapes = append(s.p.Shapes, calc.Shape{Kind: calc.Label, X: x, Y: y, Text: s.Say(text), Look: "axis", AnchorMid: true})
}

// wedge: the wet film at the left dries to what is left of it at the right.
func (s *sketcher) wedge() {
	s.name("From wet to dry", "What evaporates leaves the film; the solids stay, so that the dry film is the wet one times the share of solids by volume")
	s.shape(calc.Bar, "panel", 20, 118, 300, 10)
	s.shape(calc.Bar, "fill", 20, 82, 300, 36)
	const steps = 30
	top := []float64{20, 28}
	for i := range steps {
		h := 54 * math.Exp(-4*float64(i)/steps)
		s.shape(calc.Bar, "soft", 20+10*float64(i), 82-h, 10, h)
		top = append(top, 30+10*float64(i), 82-h)
	}
	s.path("stroke", top...)
	for _, x := range []float64{106, 134, 162} {
		s.path("stroke", x, 46, x+4, 36, x-4, 26, x, 16)
	}
	s.label(58, 20, "wet film")
	s.label(254, 32, "solvent and thinner leave")
	s.label(290, 74, "dry film")
	s.label(170, 145, "part")
}

// strokes: three fans beside each other, and their sum.
func (s *sketcher) strokes() {
	s.name("Strokes that overlap", "Each stroke is thick in its middle and thin at its edges; where strokes overlap their films add up, and the right overlap leaves the sum even")
	height := func(x, middle float64) float64 { u := (x - middle) / 80; return 54 * max(0, 1-u*u) }
	middles := []float64{90, 170, 250}
	var sum []float64
	for x := 10.; x <= 330; x += 4 {
		y := 0.
		for _, m := range middles {
			y += height(x, m)
		}
		sum = append(sum, x, 118-y)
	}
	for _, m := range middles {
		var one []float64
		for x := m - 80; x <= m+80; x += 4 {
			one = append(one, x, 118-height(x, m))
		}
		s.path("stroke", one...)
	}
	s.path("now", sum...)
	s.shape(calc.Bar, "panel", 10, 118, 320, 8)
	s.label(170, 30, "film of all strokes")
	s.label(56, 110, "one stroke")
	s.path("axis", 90, 134, 170, 134)
	s.label(130, 147, "from stroke to stroke")
}

// flight: drops on their way from the gun to the part.
func (s *sketcher) flight() {
	s.name("Drops on their way", "A drop loses solvent as it flies, and grows smaller; some drops never reach the part")
	s.shape(calc.Bar, "mix", 14, 62, 30, 16)
	s.shape(calc.Bar, "panel", 296, 14, 10, 112)
	for i := range 7 {
		t := float64(i) / 6
		for _, up := range []float64{-1, -0.4, 0.3, 0.9} {
			y := 70 + up*44*t
			if up == -1 && i > 3 {
				y -= 26 * (t - 0.5) // this one misses
			}
			s.shape(calc.Dot, "mark", 58+36*float64(i)+6*up, y, 4.2-2.2*t, 0)
		}
	}
	s.path("axis", 44, 136, 296, 136)
	s.label(170, 148, "gun distance")
	s.label(29, 54, "gun")
	s.label(322, 74, "part")
	s.label(190, 14, "what misses")
}

// flowCup: a cup that runs empty through its hole.
func (s *sketcher) flowCup() {
	s.name("A flow cup", "The cup runs empty through the hole in its bottom; the thicker the paint, the longer it takes until the stream breaks")
	for i := range 13 {
		y := 18 + 6*float64(i)
		inset := max(0, (y-66)*1.6)
		s.shape(calc.Bar, "soft", 122+inset, y, 96-2*inset, 6.3)
	}
	s.path("axis", 120, 18, 120, 66, 166, 97, 166, 104)
	s.path("axis", 220, 18, 220, 66, 174, 97, 174, 104)
	s.shape(calc.Bar, "fill", 168.5, 96, 3, 40)
	s.label(68, 30, "full to the rim")
	s.label(250, 100, "hole")
	s.label(170, 148, "time until the stream breaks")
}

// mixingCup: the parts of a mix one above the other.
func (s *sketcher) mixingCup() {
	s.name("A mixing cup", "Each part goes in on top of the one before; the scale or the mark reads what is in the cup so far")
	s.shape(calc.Bar, "fill", 112, 78, 116, 50)
	s.shape(calc.Bar, "flash", 112, 52, 116, 26)
	s.shape(calc.Bar, "mix", 112, 36, 116, 16)
	s.path("axis", 110, 14, 110, 129, 230, 129, 230, 14)
	for _, y := range []float64{36, 52, 78} {
		s.path("axis", 230, y, 242, y)
	}
	s.label(66, 108, "first part")
	s.label(62, 69, "second part")
	s.label(68, 48, "third part")
	s.label(292, 60, "readings add up")
}
