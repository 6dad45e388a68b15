package code

import (
	"image"
	"image/color"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
)

// printed is a picture as a camera sees it, each module so many dots.
func printed(p calc.Picture, dots int) image.Image {
	img := image.NewGray(image.Rect(0, 0, int(p.Width)*dots, int(p.Height)*dots))
	for i := range img.Pix {
		img.Pix[i] = 0xFF
	}
	for _, s := range p.Shapes {
		for y := int(s.Y) * dots; y < int(s.Y+s.H)*dots; y++ {
			for x := int(s.X) * dots; x < int(s.X+s.W)*dots; x++ {
				img.SetGray(x, y, color.Gray{})
			}
		}
	}
	return img
}

// scanned is the text that another program's decoder reads off a picture. A large code is read without the search for
// its corners, which in that program loses its way on them.
func scanned(t *testing.T, p calc.Picture) string {
	t.Helper()
	bitmap, err := gozxing.NewBinaryBitmapFromImage(printed(p, 4))
	require.NoError(t, err)
	hints := map[gozxing.DecodeHintType]any{}
	if p.Width > 100 {
		hints[gozxing.DecodeHintType_PURE_BARCODE] = true
	}
	result, err := qrcode.NewQRCodeReader().Decode(bitmap, hints)
	require.NoError(t, err)
	return result.GetText()
}

func codeOf(t *testing.T, link string) calc.Report {
	t.Helper()
	r := LinkCode().Run(calc.Form{"link": link})
	require.Empty(t, r.Problems)
	return r
}

const page = "https://example.org/spray/job.html"

func TestTheCodeLeadsBackToTheForm(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	texts := []string{counted(demo(t)), counted(twentyParts(t)), "air=31", "card", ""}
	for range 30 {
		form := calc.Form{}
		for i := range 1 + random.IntN(60) {
			form["part."+strconv.Itoa(i+1)+".length"] = strconv.Itoa(random.IntN(3000))
			form["key"+strconv.Itoa(i)] = string(rune('!' + random.IntN(600)))
		}
		texts = append(texts, counted(form))
	}
	for _, text := range texts {
		link := strings.TrimSuffix(page+"#"+text, "#")
		r := codeOf(t, link)
		require.Len(t, r.Pictures, 1)
		says := scanned(t, r.Pictures[0])
		at, folded, _ := strings.Cut(says, "#")
		assert.Equal(t, page, at)
		if again, ok := Unfold(folded); ok {
			folded = again
		}
		assert.Equal(t, text, folded)
	}
}

// Quiet zone of four modules on every side (ISO/IEC 18004, 5.3.8).
func TestTheCodeHasALightEdge(t *testing.T) {
	p := codeOf(t, page).Pictures[0]
	for _, s := range p.Shapes {
		assert.True(t, s.X >= 4 && s.Y >= 4 && s.X+s.W <= p.Width-4 && s.Y+s.H <= p.Height-4, "%+v", s)
	}
}

// Four products and 20 kinds of parts, each with its own name and sizes, make a code that a camera still reads.
func TestALargeJobFits(t *testing.T) {
	for _, tt := range []struct {
		form calc.Form
		side float64
	}{{demo(t), 17 + 4*16}, {twentyParts(t), 17 + 4*24}} {
		link := page + "#" + counted(tt.form)
		r := codeOf(t, link)
		t.Logf("%d characters in the link; %s modules along a side, level %s", len(link), r.Figures[2].Text, r.Figures[3].Text)
		assert.LessOrEqual(t, r.Figures[2].Value, tt.side)
		assert.Equal(t, calc.Go, r.Verdict[1].Level)
		assert.Contains(t, r.Verdict[0].Why, "some mail and chat programs cut a link after 2000")
		assert.Less(t, len(r.Figures[1].Text), oftenCut)
	}
}

func TestWhatNoCodeHoldsSaysSo(t *testing.T) {
	form := demo(t)
	for i := range 200 {
		form["part."+strconv.Itoa(i+1)+".name"] = "Bracket of its own kind, number " + strconv.Itoa(i)
	}
	r := codeOf(t, page+"#"+counted(form))
	assert.Empty(t, r.Pictures)
	assert.Equal(t, calc.Stop, r.Verdict[0].Level)
	assert.Contains(t, r.Verdict[1].Why, "some mail and chat programs cut a link after 2000")
}

func TestAFineCodeIsDrawnWithAWarning(t *testing.T) {
	form := demo(t)
	for i := range 60 {
		form["part."+strconv.Itoa(i+1)+".name"] = "Bracket number " + strconv.Itoa(i)
	}
	r := codeOf(t, page+"#"+counted(form))
	assert.Equal(t, calc.Wait, r.Verdict[0].Level)
	assert.Contains(t, scanned(t, r.Pictures[0]), page+"#"+"1:")
}
