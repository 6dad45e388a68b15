package day

import (
	"strconv"
	"strings"

	"spraywright/calc"
	"spraywright/calc/day/plan"
	"spraywright/calc/field"
)

// row is where the form has a step in one of the tables of steps, "pin.2."; a new row names it.
func (c *changing) row(table string, r plan.Ref) string {
	for _, n := range c.form.Rows(table) {
		if x, ok := c.named(table + "." + n + "."); ok && x == r {
			return table + "." + n + "."
		}
	}
	row := next(c.form, table)
	c.form[row+field.OfJob.Key] = c.day.jobs[r.Job].name
	switch r.Kind {
	case plan.PrepStep:
		c.form[row+field.DayStep.Key] = "prep"
	case plan.Heat:
		c.form[row+field.DayStep.Key] = "bake"
	default:
		c.form[row+field.DayStep.Key], c.form[row+field.CoatNumber.Key] = "spray", itoa(r.Coat+1)
	}
	return row
}

// named is the step that a row of the form names.
func (c *changing) named(row string) (r plan.Ref, ok bool) {
	name := c.form[row+field.OfJob.Key]
	r.Job = -1
	for j, x := range c.day.jobs {
		if fold(x.name) == fold(name) || strings.TrimSpace(name) == "" && len(c.day.jobs) == 1 {
			r.Job = j
		}
	}
	switch c.form[row+field.DayStep.Key] {
	case "prep":
		r.Kind = plan.PrepStep
	case "bake":
		r.Kind = plan.Heat
	default:
		n, _ := calc.ReadNumber(c.form[row+field.CoatNumber.Key])
		r.Kind, r.Coat = plan.Spray, max(0, int(n)-1)
	}
	return r, r.Job >= 0
}

// next is a row after all that a table has.
func next(form calc.Form, table string) string {
	n := 0
	if rows := form.Rows(table); len(rows) > 0 {
		n, _ = strconv.Atoi(rows[len(rows)-1])
	}
	return table + "." + itoa(n+1) + "."
}

// remove takes the rows out that name such a step.
func (c *changing) remove(table string, such func(plan.Ref) bool) {
	for _, n := range c.form.Rows(table) {
		row := table + "." + n + "."
		if r, ok := c.named(row); !ok || !such(r) {
			continue
		}
		for key := range c.form {
			if strings.HasPrefix(key, row) {
				delete(c.form, key)
			}
		}
	}
}

// add puts the products, jobs and coats of another form behind those that there are. A product of the same name is the
// same product; a job of the same name gets a number after it.
func (c *changing) add() bool {
	from := calc.ParseForm(words(c.Entry, &field.Added))
	if len(from.Rows("job")) == 0 {
		reject(c.Entry, &field.Added, "has no jobs", "Hand over a job with its coats")
		return false
	}
	c.spellOut(c.form)
	c.spellOut(from)
	doubtful := ""
	for _, n := range from.Rows("paint") {
		row, name := "paint."+n+".", from["paint."+n+"."+field.Product.Key]
		here := find(c.form, "paint", field.Product.Key, name)
		if here == "" {
			c.copy(from, row, next(c.form, "paint"))
		} else if life := field.PotLife.Key; from[row+life] != c.form[here+life] || from[row+life+".unit"] != c.form[here+life+".unit"] {
			doubtful = name
		}
	}
	for _, n := range from.Rows("job") {
		row, name := "job."+n+".", from["job."+n+"."+field.JobName.Key]
		free := name
		for i := 2; find(c.form, "job", field.JobName.Key, free) != ""; i++ {
			free = strings.TrimSpace(name) + " " + itoa(i)
		}
		to := next(c.form, "job")
		c.copy(from, row, to)
		c.form[to+field.JobName.Key] = free
		for _, k := range from.Rows("coat") {
			if coat := "coat." + k + "."; fold(from[coat+field.OfJob.Key]) == fold(name) {
				to := next(c.form, "coat")
				c.copy(from, coat, to)
				c.form[to+field.OfJob.Key] = free
			}
		}
		if doubtful != "" { // the shop is warmer or colder than where one of the two was worked out
			c.Tell(changed, say("Added: {job}. {product} keeps the pot life that stands in the day: check that it is today’s.", "job", free, "product", doubtful))
		} else {
			c.Tell(changed, say("Added: {job}.", "job", free))
		}
	}
	return true
}

// spellOut names the only job and the only product in the rows that leave them blank, which they may no longer do once
// there are several.
func (c *changing) spellOut(form calc.Form) {
	only := func(table, name, key string) {
		rows := form.Rows(table)
		if len(rows) != 1 {
			return
		}
		for _, of := range []string{"coat", "done", "pin"} {
			for _, n := range form.Rows(of) {
				if cell := of + "." + n + "." + key; form[cell] == "" && (of == "coat" || key == field.OfJob.Key) {
					form[cell] = form[table+"."+rows[0]+"."+name]
				}
			}
		}
	}
	only("job", field.JobName.Key, field.OfJob.Key)
	only("paint", field.Product.Key, field.Product.Key)
}

// find is the row of a table with a name, or blank.
func find(form calc.Form, table, key, name string) string {
	for _, n := range form.Rows(table) {
		if row := table + "." + n + "."; fold(form[row+key]) == fold(name) {
			return row
		}
	}
	return ""
}

// copy puts a row of one form in a place in this one. A unit goes along with its number, also where it was the column's;
// where only this form has one for the column, the number's own is written out.
func (c *changing) copy(from calc.Form, row, to string) {
	table, _, _ := strings.Cut(row, ".")
	for key, text := range from {
		cell, ok := strings.CutPrefix(key, row)
		if !ok {
			continue
		}
		c.form[to+cell] = text
		if strings.HasSuffix(cell, ".unit") || from[row+cell+".unit"] != "" {
			continue
		}
		column := table + "." + cell
		if u := from[column+".unit"]; u != "" {
			c.form[to+cell+".unit"] = u
		} else if in := (&calc.Calculator{Inputs: inputs()}).Input(column); c.form[column+".unit"] != "" && in != nil && in.Unit != 0 {
			c.form[to+cell+".unit"] = in.Unit.ID()
		}
	}
}
