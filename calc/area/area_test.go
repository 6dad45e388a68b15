package area_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"spraywright/calc"
	"spraywright/calc/area"
	"spraywright/calc/field"
	"spraywright/calc/unit"
)

func mm(x float64) calc.Num { return calc.N(x, unit.Millimetre) }

func TestBoxIsTheSumOfItsFaces(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	for range 1000 {
		l, b, h := mm(1+r.Float64()*2000), mm(1+r.Float64()*2000), mm(1+r.Float64()*2000)
		lid, front, end := area.Flat(nil, l, b, false).V, area.Flat(nil, l, h, false).V, area.Flat(nil, b, h, false).V
		for faces, want := range map[string]float64{"five": lid + 2*front + 2*end, "six": 2*lid + 2*front + 2*end,
			"four": 2*front + 2*end, "inside-too": 2*lid + 4*front + 4*end} {
			assert.InEpsilon(t, want, area.Box(nil, l, b, h, faces).V, 1e-12, faces)
		}
	}
}

func TestConeBetweenTubeAndDisc(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 1000 {
		l, d, s := mm(1+r.Float64()*2000), mm(1+r.Float64()*2000), mm(r.Float64()*2000)
		assert.InEpsilon(t, area.Tube(nil, l, d, false).V, area.ConeFrustum(nil, l, d, d, false).V, 1e-12, "equal ends make a tube")
		assert.InEpsilon(t, area.Disc(nil, d, false).V, area.ConeFrustum(nil, mm(0), d, mm(0), false).V, 1e-12, "no length makes a disc")
		assert.Equal(t, area.ConeFrustum(nil, l, d, s, false).V, area.ConeFrustum(nil, l, s, d, false).V, "either end may be the wider")
	}
}

func TestDomeBetweenDiscAndSphere(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 3))
	for range 1000 {
		d := 1 + r.Float64()*2000
		assert.InEpsilon(t, math.Pi*d*d/1e6, 2*area.Dome(nil, mm(d), mm(d/2), false).V, 1e-12, "two halves make a sphere")
		assert.InEpsilon(t, area.Disc(nil, mm(d), false).V, area.Dome(nil, mm(d), mm(0), false).V, 1e-12, "no height makes a disc")
		// 2 pi R h with the radius of the sphere through rim and top.
		h := 1 + r.Float64()*2000
		assert.InEpsilon(t, 2*math.Pi*(d*d/4+h*h)/(2*h)*h/1e6, area.Dome(nil, mm(d), mm(h), false).V, 1e-12)
	}
}

func TestBothIsTwice(t *testing.T) {
	for one, both := range map[float64]float64{
		area.Flat(nil, mm(600), mm(400), false).V:               area.Flat(nil, mm(600), mm(400), true).V,
		area.Disc(nil, mm(200), false).V:                        area.Disc(nil, mm(200), true).V,
		area.Tube(nil, mm(600), mm(30), false).V:                area.Tube(nil, mm(600), mm(30), true).V,
		area.ConeFrustum(nil, mm(600), mm(40), mm(20), false).V: area.ConeFrustum(nil, mm(600), mm(40), mm(20), true).V,
		area.Dome(nil, mm(300), mm(80), false).V:                area.Dome(nil, mm(300), mm(80), true).V,
		area.Box(nil, mm(600), mm(400), mm(120), "five").V:      area.Box(nil, mm(600), mm(400), mm(120), "inside-too").V,
	} {
		assert.InEpsilon(t, 2*one, both, 1e-12)
	}
}

func TestTallDomeIsWarnedOf(t *testing.T) {
	form := calc.Form{"shape": "dome", "diameter": "200", "height": "100", "skin": "outside"}
	assert.Empty(t, area.PartArea().Run(form).Cautions)
	form["height"] = "101"
	assert.Len(t, area.PartArea().Run(form).Cautions, 1)
}

// describer words every row of a table of parts.
var describer = calc.Calculator{
	ID: "describer",
	Inputs: []calc.Input{{Key: "part", Label: "Parts", RowName: "part", Most: 20, Rows: []calc.Input{field.PartName, field.Shape,
		field.PartLength, field.PartWidth, field.PartHeight, field.PartDiameter, field.PartSmallEnd, field.PartArea, field.Sides,
		field.Faces, field.Skin, field.Count}}},
	InStages: true,
	Work: func(w *calc.Working) {
		for _, row := range w.Rows(calc.Input{Key: "part"}) {
			if one, ok := area.OfPart(w, row); ok {
				row.Describe(area.Describe(row, one))
			}
		}
	},
}

func TestDescribe(t *testing.T) {
	report := describer.Run(calc.Form{
		"part.1.name": "Cargo-box lid", "part.1.shape": "box", "part.1.length": "600", "part.1.width": "400", "part.1.height": "120",
		"part.1.faces": "inside-too", "part.1.count": "12",
		"part.2.name": "Fork leg", "part.2.shape": "cone", "part.2.length": "400", "part.2.diameter": "35", "part.2.small_end": "0",
		"part.2.skin": "outside", "part.2.count": "1",
		"part.3.name": "Mudguard", "part.3.shape": "measured", "part.3.area": "0.21", "part.3.count": "2",
		"part.4.name": "Hub cap", "part.4.shape": "dome", "part.4.height": "40", "part.4.skin": "both", "part.4.count": "3", // no diameter yet
	})
	var said []string
	for _, r := range report.Rows {
		said = append(said, r.Text)
	}
	assert.Equal(t, []string{
		"Cargo-box lid, box 600\u202fmm × 400\u202fmm × 120\u202fmm, inside too, 12 pieces, 0.96\u202fm² each",
		"Fork leg, cone 35\u202fmm to 0\u202fmm across, 400\u202fmm long, 1 piece, 0.022\u202fm²",
		"Mudguard, measured, 2 pieces, 0.21\u202fm² each",
	}, said)
}
