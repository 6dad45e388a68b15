package main

import (
	"bytes"
	"fmt"
	"html/template"
	"image"
	"image/color"
	"image/png"
	"math"
	"strings"
)

// The mark is three flattened ellipses that overlap by half, as the strokes of a fan do, in one ink. Lengths are in
// hundredths of its side.
var strokes = [3]ellipse{{50, 31, 36, 15}, {50, 50, 36, 15}, {50, 69, 36, 15}}

type ellipse struct{ x, y, a, b float64 }

func (e ellipse) holds(x, y float64) bool {
	return math.Pow((x-e.x)/e.a, 2)+math.Pow((y-e.y)/e.b, 2) <= 1
}

var (
	paper = color.NRGBA{0xf6, 0xf3, 0xec, 0xff}
	ink   = color.NRGBA{0x0b, 0x55, 0x63, 0xff}
)

// opacity is how much ink one stroke lays.
const opacity = 0.55

func addIcons(site bundle) error {
	site["mark.svg"] = markSVG()
	for _, size := range []int{180, 192, 512} {
		var b bytes.Buffer
		if err := png.Encode(&b, icon(size)); err != nil {
			return err
		}
		site[fmt.Sprintf("icon-%d.png", size)] = b.Bytes()
	}
	return nil
}

func markSVG() []byte {
	var b strings.Builder
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="#f6f3ec"/>`)
	for _, s := range strokes {
		fmt.Fprintf(&b, `<ellipse cx="%g" cy="%g" rx="%g" ry="%g" fill="#0b5563" fill-opacity="%g"/>`, s.x, s.y, s.a, s.b, opacity)
	}
	b.WriteString("</svg>\n")
	return []byte(b.String())
}

// icon draws the mark on paper, size pixels square. It keeps within the middle, so that a launcher may cut a circle.
func icon(size int) image.Image {
	const fine = 4 // samples across one pixel
	img := image.NewNRGBA(image.Rect(0, 0, size, size))
	for py := range size {
		for px := range size {
			light := 0.0
			for i := range fine * fine {
				x := (float64(px) + (float64(i%fine)+0.5)/fine) * 100 / float64(size)
				y := (float64(py) + (float64(i/fine)+0.5)/fine) * 100 / float64(size)
				light += lightAt(x, y)
			}
			img.SetNRGBA(px, py, blend(light/(fine*fine)))
		}
	}
	return img
}

// lightAt is how much paper shows through the strokes at a point, from 0 to 1.
func lightAt(x, y float64) float64 {
	light := 1.0
	for _, s := range strokes {
		if s.holds(x, y) {
			light *= 1 - opacity
		}
	}
	return light
}

func blend(light float64) color.NRGBA {
	mix := func(a, b uint8) uint8 { return uint8(math.Round(float64(a)*light + float64(b)*(1-light))) }
	return color.NRGBA{mix(paper.R, ink.R), mix(paper.G, ink.G), mix(paper.B, ink.B), 0xff}
}

// mark is the site's mark, inked by the style sheet.
func mark() template.HTML {
	var b strings.Builder
	b.WriteString(`<svg class="mark" viewBox="10 12 80 76" aria-hidden="true">`)
	for _, s := range strokes {
		fmt.Fprintf(&b, `<ellipse cx="%g" cy="%g" rx="%g" ry="%g"/>`, s.x, s.y, s.a, s.b)
	}
	b.WriteString("</svg>")
	return template.HTML(b.String())
}
