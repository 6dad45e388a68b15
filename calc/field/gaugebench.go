package field

import "spraywright/calc"

// GaugeRule is the rule that gauge readings are held to.
var GaugeRule = calc.Input{
	Key: "gauge_rule", Label: "Rule", Prefill: true,
	Help: "The one that the specification names",
	Choices: []calc.Choice{
		{Key: "all", Label: "All three"}, {Key: "iso", Label: "ISO 19840"}, {Key: "pa2", Label: "SSPC-PA 2"}, {Key: "msc", Label: "IMO MSC.215(82)"},
	},
}
