package code

import (
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/check/sound"
)

// demo is the invented job, as a link has it.
func demo(t testing.TB) calc.Form {
	text, err := os.ReadFile("../../testdata/demo/job.txt")
	require.NoError(t, err)
	return calc.ParseForm(string(text))
}

// sixJobs is the invented day.
func sixJobs(t testing.TB) calc.Form {
	text, err := os.ReadFile("../../testdata/demo/day.txt")
	require.NoError(t, err)
	return calc.ParseForm(string(text))
}

// counted writes a form as a link that is handed on: with the number of its entries at both ends.
func counted(form calc.Form) string {
	n := "fields=" + strconv.Itoa(len(form))
	return n + "&" + form.String() + "&" + n
}

// twentyParts is a job of 20 kinds of parts and 4 products, every entry of a box given.
func twentyParts(t testing.TB) calc.Form {
	form := demo(t)
	names := []string{"Cargo-box lid", "Cargo box, left side", "Mudguard, front", "Mudguard, rear left", "Fork leg, left", "Fork leg, right", "Tail panel", "Seat base", "Battery cover", "Bracket"}
	for i := 3; i <= 20; i++ {
		part := "part." + strconv.Itoa(i) + "."
		for key, value := range map[string]string{
			"name": names[i%len(names)], "shape": "box", "faces": "five", "colour": "moss green", "count": strconv.Itoa(2 * i),
			"length": strconv.Itoa(310 + 17*i), "width": strconv.Itoa(120 + 13*i), "height": strconv.Itoa(40 + 3*i),
		} {
			form[part+key] = value
		}
	}
	return form
}

func TestAFoldedFormComesBackAsItWas(t *testing.T) {
	accents := calc.Form{"part.1.name": "Guardabarros de atrás, ñandú", "coat.2.ratio": "4:1+10%", "air": "21,5", "air.unit": "degF", "part.1.length.unit": "in"}
	for _, text := range []string{counted(sixJobs(t)), counted(demo(t)), counted(twentyParts(t)), accents.String(), "air=31", "units=us", "part.length.unit=in&part.12.length=3/4", "x=", "a.b.c.d=1&a.b.c.d.unit=2"} {
		folded, ok := Fold(text)
		assert.True(t, ok, text)
		assert.Empty(t, strings.Trim(folded, letters), "a letter that a code does not pack, or an address not hold")
		again, ok := Unfold(folded)
		assert.True(t, ok)
		assert.Equal(t, text, again)
	}
}

// What no form is written as is left as it is.
func TestOtherTextsAreNotFolded(t *testing.T) {
	for _, text := range []string{"card", "", "air=31&&humidity=4", "unit=3&unit=4", "näme=x", "a=1&part.2", "part.1.=3&.x=4", "\x01=2"} {
		folded, ok := Fold(text)
		again, _ := Unfold(folded)
		assert.Equal(t, ok, again == text, text)
	}
}

func TestRandomFormsComeBackAsTheyWere(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	list := strings.Fields(tokens)
	for range 300 {
		form := calc.Form{}
		for range 1 + random.IntN(40) {
			key := strings.Trim(list[random.IntN(len(list))], "&=.%")
			if key == "unit" || key == "" {
				continue // no input is called so
			}
			if random.IntN(2) == 0 {
				key = "part." + strconv.Itoa(1+random.IntN(300)) + "." + key
			}
			form[key] = strings.Repeat(string(rune(' '+random.IntN(400))), 1+random.IntN(3)) + list[random.IntN(len(list))]
			if random.IntN(4) == 0 {
				form[key+".unit"] = "mil"
			}
		}
		text := counted(form)
		folded, ok := Fold(text)
		again, _ := Unfold(folded)
		if assert.True(t, ok, text) {
			assert.Equal(t, text, again)
		}
	}
}

// A code made to do harm is refused, or gives a text that a phone can hold.
func TestHostileCodesAreRefused(t *testing.T) {
	for _, bad := range []string{"", "1:", "2:AB", "3:ABC", "2:" + toLetters(shorten("&a=^7", dayTokens)), "2:" + toLetters(shorten("&a=^x", dayTokens)), "1:abc", "1:A", "1::::", "1:%41", "1:" + strings.Repeat("0", mostLetters+1), "1: ", "1:" + toLetters([]byte("&"+strings.Repeat("x", 60)+".1&air=2")), "air=31"} {
		_, ok := Unfold(bad)
		assert.Equal(t, bad == "1:", ok, "%.40q", bad)
	}
	var units []byte
	for range mostLetters / 3 {
		units = append(units, shorten("&.unit=", tokens)...)
		units = append(units, shorten("&unit=", tokens)...)
	}
	text, _ := Unfold("1:" + toLetters(units)[:mostLetters])
	assert.Less(t, len(text), 1<<18)
}

func FuzzUnfold(f *testing.F) {
	f.Add("1:910XJNUM7FNY91")
	f.Fuzz(func(t *testing.T, folded string) {
		var text string
		var ok bool
		sound.Within(t, folded, func() { text, ok = Unfold(folded) })
		assert.LessOrEqual(t, len(text), 1<<18)
		if again, comes := Fold(text); ok && comes {
			back, _ := Unfold(again)
			assert.Equal(t, text, back)
		}
	})
}

// Whatever a form holds, it comes back as it was or is said not to fold.
func FuzzFold(f *testing.F) {
	for _, s := range []string{"air=31&air.unit=degC", "part.1.name=Lid&part.1.length=20&part.1.length.unit=mm&part.2.name=Lid", `a="&b=^0&.=1`, "a=1=2", "note=%22%5E"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		text = calc.ParseForm(text).String()
		var folded string
		var ok bool
		sound.Within(t, text, func() { folded, ok = Fold(text) })
		if ok {
			back, ok := Unfold(folded)
			require.True(t, ok, folded)
			require.Equal(t, text, back)
		}
	})
}

// The list is part of every link handed on. One byte says a token, so that there can be no more than the bytes left free.
func TestTheListOfTokensIsSound(t *testing.T) {
	for _, f := range foldings {
		list := strings.Fields(f.tokens)
		assert.LessOrEqual(t, len(list), 32+0x81, f.mark)
		seen := map[string]bool{}
		for _, token := range list {
			assert.False(t, seen[token], "%s stands twice", token)
			seen[token] = true
		}
	}
}

// A code once on paper is read for good.
func TestOldCodesAreRead(t *testing.T) {
	text, ok := Unfold("1:910XJNUM7FNY91")
	assert.True(t, ok)
	assert.NotEmpty(t, text)
}

// A day of six jobs, each of its entries typed, is less than what a camera reads at ease: 117 modules.
func TestADayOfSixJobsFoldsSmall(t *testing.T) {
	text := counted(sixJobs(t))
	folded, ok := Fold(text)
	assert.True(t, ok)
	assert.Equal(t, "2:", folded[:2])
	t.Logf("%d characters, %d folded", len(text), len(folded))
	assert.Less(t, len(folded), 1800)
}
