package calc_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc"
	"spraywright/calc/source"
	"spraywright/calc/unit"
)

// A language made up for tests: it needs another word for a part where that is the column of a list.
var other = calc.Language{Comma: true, Words: calc.ParseWords("Warmer\tPlus chaud\n" +
	"lengths.who|Part\tPièce\n" +
	"Part\tPartie\n" +
	"part\tpièce\n" +
	"{t} will do\tÀ {t}, tout va\n" +
	"“{it}” at {t}\t{t} : « {it} »\n" +
	"{label} {fault}\t{label} : {fault}\n" +
	"needs a colon\til manque deux points\n" +
	"{label} is blank\t{label} manque\n" +
	"Enter {this}\tRemplir {this}\n" +
	"takes {hot} past 50 °C\tporte {hot} au-delà\n" +
	"Temperature\tTempérature\n" +
	"Keep a window open.\tOuvrir une fenêtre.\n" +
	"Follows from the definition of the quantities\tPar définition\n" +
	"There is no such thing\tRien de tel\n")}

func TestAReportInALanguage(t *testing.T) {
	r := sample.RunIn(other, filled("temp=20,5&note=dry: yes&part.1.shape=strip&part.1.length=600"))
	require.Empty(t, r.Problems)
	f := figure(t, r, "warmer")
	assert.Equal(t, []any{"Plus chaud", "22,5", "22.5", 22.5}, []any{f.Label, f.Text, f.Typed, f.Value})
	assert.Equal(t, "À 22,5\u202f°C, tout va", r.Verdict[0].Why)
	assert.Equal(t, "22\u202f°C : « dry: yes »", figure(t, r, "said").Text, "what was typed stays as it was")
	assert.Equal(t, "Pièce", r.Lists[0].Columns[0].Label, "a field may have a word of its own")
	assert.Equal(t, "Pièce", r.Lists[0].Rows[0][0].Label)
	assert.Equal(t, "Lid", r.Lists[0].Rows[0][0].Text)
	assert.Equal(t, []string{"Ouvrir une fenêtre."}, r.Cautions)

	step := r.Steps[2]
	assert.Equal(t, []string{"Plus chaud", "20,5 + 2", "22,5\u202f°C"}, []string{step.Label, step.Numbers, step.Result})
	assert.Equal(t, "t: température, 20,5\u202f°C; dt: rise, 2\u202f°C", step.Legend)
	assert.Equal(t, calc.Phrase("Par définition"), step.Source.Ours)
	assert.Equal(t, calc.Phrase("Follows from the definition of the quantities"), source.Definition.Ours, "the bibliography has changed")
}

func TestProblemsInALanguage(t *testing.T) {
	form := filled("note=dry")
	delete(form, "temp")
	delete(form, "part.1.name")
	r := sample.RunIn(other, form)
	said := map[string][]string{}
	for _, p := range r.Problems {
		said[p.Field] = []string{p.Message, p.Fix, p.Row}
	}
	assert.Equal(t, map[string][]string{
		"temp":        {"Température manque", "Remplir température", ""},
		"note":        {"Note : il manque deux points", "Write it like dry: yes", ""},
		"part.1.name": {"Name manque", "Remplir name", "pièce 1"},
	}, said)

	r = sample.RunIn(other, filled("temp=40&rise=10,5"))
	require.Len(t, r.Problems, 1)
	assert.Equal(t, "Rise porte 40\u202f°C au-delà", r.Problems[0].Message)

	assert.Equal(t, "Rien de tel", other.Trouble("x", "There is no such thing", "Go on").Problems[0].Message)
}

// With a decimal comma something else has to part numbers from each other.
func TestFormulasWithADecimalComma(t *testing.T) {
	c := calc.Calculator{ID: "c", Inputs: []calc.Input{temp}, Outputs: []calc.Output{warmer}, Work: func(w *calc.Working) {
		n := w.Given(temp)
		w.Result(warmer, w.Step("Warmer", "t_2 = max(t, 0.5)", unit.DegC, source.Definition, max(n.V, 0.5), n))
	}}
	r := c.RunIn(other, calc.Form{"temp": "20,25"})
	assert.Equal(t, "max(20,25; 0,5)", r.Steps[1].Numbers)
	assert.Equal(t, "max(20.25, 0.5)", c.Run(calc.Form{"temp": "20,25"}).Steps[1].Numbers)
}

func TestTheCautionThatSaysWhatToWearComesFirst(t *testing.T) {
	c := calc.Calculator{ID: "c", Inputs: []calc.Input{temp}, Outputs: []calc.Output{warmer}, Cautions: []calc.Phrase{"Open a window.", calc.First + "Wear a mask."},
		Work: func(w *calc.Working) {
			w.Caution("Mind the heat.")
			w.Result(warmer, w.Given(temp))
		}}
	assert.Equal(t, []string{"Wear a mask.", "Mind the heat.", "Open a window."}, c.Run(calc.Form{"temp": "20"}).Cautions)
}

func TestTextsWithinTexts(t *testing.T) {
	c := calc.Calculator{ID: "c", Inputs: []calc.Input{temp}, Outputs: []calc.Output{warmer}, Work: func(w *calc.Working) {
		n := w.Step("Warmer", "t_2 = t", unit.DegC, source.Definition, w.Given(temp).V, w.Given(temp))
		inside := calc.Say("Heated to {t}", n.To(0, "t"))
		w.Judge(calc.Go, calc.Say("{a} and {b}, {c}", inside.As("a"), inside.Within("b"), calc.Term("Part", "c")), calc.Say("Carry on"))
		w.Result(warmer, n)
	}}
	r := c.RunIn(other, calc.Form{"temp": "20"})
	assert.Equal(t, "Heated to 20\u202f°C and heated to 20\u202f°C, Partie", r.Verdict[0].Why)
	assert.Equal(t, []int{1, 2}, r.Verdict[0].Steps, "the numbers inside a text are worked out too")
}
