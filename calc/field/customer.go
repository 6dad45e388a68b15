package field

import "spraywright/calc"

// What a supplier says to a customer along with data sheets. Both are shown as they are, never as a link.
var (
	Sender = calc.Input{
		Key: "sender", Label: "Who it is from", Words: "Trike paint counter",
		Help: "Your shop, as your customers know it",
	}
	ShopNote = calc.Input{
		Key: "shop_note", Label: "Note to the customer", Words: "Thinned for the cold season; ask at the counter for the sheet on paper", Optional: true,
		Help: "Plain words, 200 characters at most; an address in it cannot be tapped",
	}
	// Opens names calculators by their IDs.
	Opens = calc.Input{
		Key: "opens", Label: "The sheets open in", Prefill: true,
		Help: "What the customer can fill with them at one touch",
		Choices: []calc.Choice{
			{Key: "job", Label: "Job card"}, {Key: "settings", Label: "Today’s settings"}, {Key: "mix", Label: "Mix"}, {Key: "wet-film", Label: "Wet film"},
			{Key: "pot-life", Label: "Pot life today"}, {Key: "flash-time", Label: "Flash-off today"}, {Key: "recoat-window", Label: "Recoat window"},
		},
	}
)
