package mixing

import "spraywright/calc"

// asWater is the mistake of a scale's grams for a cup's millilitres.
var asWater = []calc.Mistake{{
	Says: "This comes out where 1 mL of each part is taken for 1 g, as of water",
	Form: "density_a=1&density_a.unit=kg/L&density_b=1&density_b.unit=kg/L&density_c=1&density_c.unit=kg/L&density_d=1&density_d.unit=kg/L",
}}
