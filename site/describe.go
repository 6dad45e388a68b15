package main

import (
	"encoding/json"

	"spraywright/calc"
	"spraywright/calc/menu"
	"spraywright/calc/unit"
)

// descriptionFile tells other programs what every calculator asks and answers.
const descriptionFile = "calculators.json"

// descriptionVersion changes when a reader of the file has to change.
const descriptionVersion = 1

type (
	description struct {
		Schema      int                `json:"schema"`
		Calculators []calculatorRecord `json:"calculators"`
	}
	calculatorRecord struct {
		ID       string         `json:"id"`
		Topic    string         `json:"topic"`
		Core     string         `json:"core"`           // the compiled core that answers it, without .wasm
		Page     string         `json:"page,omitempty"` // what other pages alone ask has none
		Title    calc.Phrase    `json:"title"`
		Question calc.Phrase    `json:"question"`
		Range    calc.Phrase    `json:"range"`
		Inputs   []inputRecord  `json:"inputs"`
		Outputs  []outputRecord `json:"outputs"`
		Cautions []calc.Phrase  `json:"cautions,omitempty"`
	}
	inputRecord struct {
		Key      string         `json:"key"`
		Kind     string         `json:"kind"` // number, choice, words or table
		Label    calc.Phrase    `json:"label"`
		Help     calc.Phrase    `json:"help,omitempty"`
		Symbol   string         `json:"symbol,omitempty"`
		Place    calc.Phrase    `json:"place,omitempty"`
		Heading  calc.Phrase    `json:"heading,omitempty"`
		Unit     *string        `json:"unit,omitempty"` // what the limits and the example are in
		Units    []unitRecord   `json:"units,omitempty"`
		Min      *float64       `json:"min,omitempty"`
		Max      *float64       `json:"max,omitempty"`
		Whole    bool           `json:"whole,omitempty"`
		Example  any            `json:"example,omitempty"` // a number, a choice's key or words
		Prefill  bool           `json:"prefill,omitempty"`
		Optional bool           `json:"optional,omitempty"`
		Choices  []choiceRecord `json:"choices,omitempty"`
		When     *whenRecord    `json:"when,omitempty"`
		Rows     []inputRecord  `json:"rows,omitempty"`
		RowName  calc.Phrase    `json:"row_name,omitempty"`
		Most     int            `json:"most,omitempty"`
	}
	unitRecord struct {
		ID     string `json:"id"`
		Symbol string `json:"symbol"`
		US     bool   `json:"us,omitempty"`
	}
	choiceRecord struct {
		Key   string      `json:"key"`
		Label calc.Phrase `json:"label"`
	}
	whenRecord struct {
		Key string   `json:"key"`
		In  []string `json:"in"`
	}
	outputRecord struct {
		Key      string         `json:"key"`
		Kind     string         `json:"kind"` // number, words or list
		Label    calc.Phrase    `json:"label"`
		Place    calc.Phrase    `json:"place,omitempty"`
		Unit     *string        `json:"unit,omitempty"`
		Units    []unitRecord   `json:"units,omitempty"`
		Decimals int            `json:"decimals,omitempty"`
		Main     bool           `json:"main,omitempty"`
		Optional bool           `json:"optional,omitempty"`
		Look     string         `json:"look,omitempty"`
		Columns  []outputRecord `json:"columns,omitempty"`
	}
)

func addDescription(site bundle) error {
	all := description{Schema: descriptionVersion}
	for _, core := range menu.Cores() {
		for _, t := range core.Topics {
			for _, c := range t.Calculators() {
				c = tongue{}.put(c).(*calc.Calculator) // without marks for the engine
				page := ""
				if t.Listed() {
					page = pageFile(c)
				}
				all.Calculators = append(all.Calculators, calculatorRecord{
					ID: c.ID, Topic: t.ID, Core: core.Name, Page: page, Title: c.Title, Question: c.Question, Range: c.Range,
					Inputs: describeInputs(c.Inputs), Outputs: describeOutputs(c.Outputs), Cautions: c.Cautions,
				})
			}
		}
	}
	text, err := json.MarshalIndent(all, "", " ")
	site[descriptionFile] = append(text, '\n')
	return err
}

func describeInputs(ins []calc.Input) []inputRecord {
	records := make([]inputRecord, len(ins))
	for i, in := range ins {
		r := inputRecord{
			Key: in.Key, Kind: kindOf(in), Label: in.Label, Help: in.Help, Symbol: in.Symbol, Place: in.Place, Heading: in.Heading,
			Whole: in.Whole, Prefill: in.Prefill, Optional: in.Optional, RowName: in.RowName, Most: in.Most,
		}
		switch r.Kind {
		case "number":
			r.Unit, r.Units, r.Min, r.Max, r.Example = idOf(in.Unit), describeUnits(in.Units()), &in.Limits.Min, &in.Limits.Max, in.Example
		case "choice":
			r.Example = in.Choices[0].Key
			for _, ch := range in.Choices {
				r.Choices = append(r.Choices, choiceRecord(ch))
			}
		case "words":
			r.Example = in.Words
		case "table":
			r.Rows = describeInputs(in.Rows)
		}
		if in.When != nil {
			r.When = &whenRecord{in.When.Key, in.When.In}
		}
		records[i] = r
	}
	return records
}

func describeOutputs(outs []calc.Output) []outputRecord {
	records := make([]outputRecord, len(outs))
	for i, out := range outs {
		r := outputRecord{
			Key: out.Key, Kind: "words", Label: out.Label, Place: out.Place, Decimals: out.Decimals,
			Main: out.Main, Optional: out.Optional, Look: out.Look,
		}
		switch {
		case out.Columns != nil:
			r.Kind, r.Columns = "list", describeOutputs(out.Columns)
		case out.Unit != 0:
			r.Kind, r.Unit, r.Units = "number", idOf(out.Unit), describeUnits(unit.Of(out.Unit.Quantity()))
		}
		records[i] = r
	}
	return records
}

func describeUnits(units []unit.Unit) []unitRecord {
	records := make([]unitRecord, len(units))
	for i, u := range units {
		records[i] = unitRecord{u.ID(), u.Symbol(), u.US()}
	}
	return records
}

func idOf(u unit.Unit) *string {
	id := u.ID()
	return &id
}
