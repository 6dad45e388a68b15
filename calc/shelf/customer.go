package shelf

import (
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/field"
)

// Customer lists what a supplier hands on.
var Customer = []calc.Maker{
	{ID: "customer-sheets", Make: CustomerSheets},
}

// CustomerSheets reads data sheets that one shop hands on to another: the supplier fills them in here, and the customer's
// page asks the same of the link that arrives.
func CustomerSheets() *calc.Calculator {
	return &calc.Calculator{
		ID:       "customer-sheets",
		Title:    "Data sheets for a customer",
		Question: "Which data sheets shall my customer’s phone open with?",
		Range: "Up to 12 data sheets in one link. What a sheet does not say stays blank; a link proves nothing about who sent it, and the customer’s page " +
			"says so and asks before it keeps anything.",
		Inputs:     []calc.Input{field.Sender, field.ShopNote, field.Opens, sheets()},
		Outputs:    []calc.Output{saidFrom, saidNote, saidOpens, sheetList},
		Work:       customerSheets,
		Cautions:   []calc.Phrase{"The printed sheet comes first, in its latest edition: hold this against it before you mix."},
		Arithmetic: true,
	}
}

func sheets() calc.Input {
	in := sheetTable
	in.Rows = sheetInputs()
	return in
}

var sheetTable = calc.Input{Key: "sheet", Label: "Data sheets", Help: "From your shelf, or typed in here", RowName: "data sheet", Most: 12}

var (
	saidFrom  = calc.Output{Key: "said_from", Label: "From", Words: true, Main: true}
	saidNote  = calc.Output{Key: "said_note", Label: "Note", Words: true, Optional: true}
	saidOpens = calc.Output{Key: "said_opens", Label: "Opens in", Words: true}
	sheetList = calc.Output{Key: "sheet_list", Label: "Data sheets in the link", Columns: []calc.Output{
		{Key: "product", Label: "Product", Words: true},
		{Key: "edition", Label: "Edition", Words: true},
	}}
)

func customerSheets(w *calc.Working) {
	rows := w.Rows(sheetTable)
	sound := seen(w.Entry, field.Sender, field.ShopNote)
	for _, row := range rows {
		sound = seen(row, field.Product, field.SheetDated) && sound
	}
	if !sound {
		return
	}
	w.Tell(saidFrom, verbatim(w.Words(field.Sender)))
	if note := w.Words(field.ShopNote); note != "" {
		w.Tell(saidNote, verbatim(note))
	}
	for _, ch := range field.Opens.Choices {
		if ch.Key == w.Picked(field.Opens) {
			w.Tell(saidOpens, calc.Say(ch.Label))
		}
	}
	names := "\n"
	for _, row := range rows {
		name := row.Words(field.Product)
		edition := calc.Say("Not given")
		if dated := row.Words(field.SheetDated); dated != "" {
			edition = verbatim(dated)
		}
		w.List(sheetList, calc.Told(verbatim(name)), calc.Told(edition))
		film, n := row.Given(field.DryFilm), row.Given(field.Coats)
		if film.Given() && n.Given() {
			row.Describe(calc.Say("{product}, {film} in {n} coats", calc.Words(name, "product"), film.As("film"), n.To(0, "n")))
		} else {
			row.Describe(verbatim(name))
		}
		key := spoken(name) + "\n"
		if strings.Contains(names, "\n"+key) {
			w.Judge(calc.Stop, calc.Say("“{product}” stands in it twice", calc.Words(name, "product")), calc.Say("Call the two apart, or take one out: the customer keeps them by name"))
		}
		names += key
	}
	w.Judge(calc.Wait, calc.Say("A link is no proof of who sent it; data sheets in it: {n}", calc.Words(strconv.Itoa(len(rows)), "n")),
		calc.Say("Hold each one against the printed sheet before you mix"))
}

// verbatim is what a person typed, as it is.
func verbatim(words string) calc.Text { return calc.Say("{words}", calc.Words(words, "words")) }
