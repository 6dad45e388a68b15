package field

import "spraywright/calc"

var (
	Link = calc.Input{
		Key: "link", Label: "Link", Words: "https://example.org/#fields=2&air=31&humidity=40&fields=2", Most: 100_000,
		Help: "The whole address, with the form after its #",
	}

	Folded = calc.Input{
		Key: "folded", Label: "Form in the code", Words: "1:", Most: 100_000,
		Help: "What stands after the # in the address that a QR code holds",
	}
)
