package job

import (
	"math"
	"strconv"

	"spraywright/calc"
	"spraywright/calc/field"
)

// handOver is the job as rows of the booth day's form: text that a page takes there.
var handOver = calc.Output{
	Key: "day_rows", Place: cardTime, Label: "For the booth day", Look: "hand-over", Optional: true, Columns: []calc.Output{
		{Key: "form", Label: "Rows", Words: true},
	},
}

// longestName is how many bytes the parts' names may have together to name the job; beyond, the first does.
const longestName = 40

// longestWait is the longest wait in minutes that means anything within a day.
const longestWait = 1440

// handOverDay writes the job's rows for the booth day, in whole minutes on the careful side. A day has one bake, at the end
// of a job; a job that is baked between products, or that must not be mixed today, has no such rows.
func (j *job) handOverDay() {
	form := calc.Form{}
	name, all := "", ""
	for i, row := range j.Rows(parts) {
		one := row.Words(field.PartName)
		if i == 0 {
			name = one
		} else if len(name)+len(one) < longestName {
			name, all = name+", "+one, all+", "
		} else {
			all += ", "
		}
		all += strconv.Itoa(int(row.Given(field.Count).V)) + " × " + one
	}
	form["job.1.job_name"] = name
	if len(all) <= 200 {
		form["job.1.job_parts"] = all
	}
	for i, c := range j.coats {
		if c.noPotLife || !c.handOver(j, form, "."+strconv.Itoa(i+1)+".", i+1 == len(j.coats)) {
			return
		}
	}
	j.List(handOver, calc.Told(calc.Say("{form}", calc.Words(form.String(), "form"))))
}

// handOver writes the rows of one product; false where a day cannot hold it.
func (c *coat) handOver(j *job, form calc.Form, row string, last bool) bool {
	put := func(key string, x float64) { form[key] = strconv.Itoa(int(x)) }
	form["paint"+row+"product"], form["coat"+row+"product"] = c.name, c.name
	put("paint"+row+"mix_time", up(j.gun.mixTime.V))
	if c.pot.Given() {
		put("paint"+row+"pot_life", math.Max(1, down(c.pot.V)))
	}
	amount := 0.0
	for i := range c.cups {
		amount += c.cups[i].spray
	}
	amount /= c.coats.V
	put("coat"+row+"coats", c.coats.V)
	put("coat"+row+"spray_time", up(amount/(j.gun.delivery.V*j.gun.trigger.V/100)))
	put("coat"+row+"coat_amount", up(amount))
	put("coat"+row+"flash", up(c.flashMost.V))
	if within := down(c.recoat.V * 60); c.recoat.Given() && within <= longestWait {
		put("coat"+row+"recoat_within", within)
	}
	switch c.Picked(field.Drying) {
	case "air":
		put("coat"+row+"flash_last", up(c.dry.V))
		return c.dry.V <= longestWait
	case "bake":
		put("job.1.bake_time", up(c.Given(heatUp).V+c.dry.V))
		put("job.1.bake_heat", c.Given(dryAt).V)
		return last
	}
	return true
}

// up and down make whole minutes and millilitres, but for what the last bits are too much or too little by.
func up(x float64) float64   { return math.Ceil(x - 1e-9) }
func down(x float64) float64 { return math.Floor(x + 1e-9) }
