package checkplan

import (
	"errors"
	"strconv"
	"strings"

	"spraywright/calc/day/plan"
)

// Records of a day's file, one a line, comma-separated: the record's name, then whole numbers. A coat belongs to the job
// above it. Lines that begin with # are comments.
//
//	shop,walk,door,clean,cup holds,cup loses,late weight,finish weight
//	rinse,same,light to dark,dark to light,base to clear
//	product,mix,pot life,shade
//	job,ready,promised,priority,bake minutes,heat
//	coat,product,spray,amount,flash,latest,movable
var fields = map[string]int{"shop": 7, "rinse": 4, "product": 3, "job": 5, "coat": 6}

// Parse reads a day's file.
func Parse(text string) (*plan.Day, error) {
	d := &plan.Day{}
	var rinse plan.RinseTimes
	var shades []int
	for n, line := range strings.Split(text, "\n") {
		line = strings.TrimSpace(line)
		if line == "" || line[0] == '#' {
			continue
		}
		cells := strings.Split(line, ",")
		v := make([]int, len(cells)-1)
		for i, c := range cells[1:] {
			x, err := strconv.Atoi(c)
			if err != nil {
				return nil, errors.New("line " + strconv.Itoa(n+1) + ": " + err.Error())
			}
			v[i] = x
		}
		if want, ok := fields[cells[0]]; !ok || want != len(v) || cells[0] == "coat" && len(d.Jobs) == 0 {
			return nil, errors.New("line " + strconv.Itoa(n+1) + ": no record of a day")
		}
		switch cells[0] {
		case "shop":
			d.Walk, d.Door, d.Clean, d.CupHolds, d.CupLoses = v[0], v[1], v[2], v[3], v[4]
			d.Aim = plan.Aim{Late: v[5], Finish: v[6]}
		case "rinse":
			rinse = plan.RinseTimes{Same: v[0], LightToDark: v[1], DarkToLight: v[2], BaseToClear: v[3]}
		case "product":
			d.Products = append(d.Products, plan.Product{Mix: v[0], PotLife: v[1]})
			shades = append(shades, v[2])
		case "job":
			d.Jobs = append(d.Jobs, plan.Job{Ready: v[0], Promised: v[1], Priority: v[2], Bake: plan.Bake{Minutes: v[3], Heat: v[4]}})
		case "coat":
			j := &d.Jobs[len(d.Jobs)-1]
			j.Coats = append(j.Coats, plan.Coat{Product: v[0], Spray: v[1], Amount: v[2], Flash: v[3], Latest: v[4], Movable: v[5] == 1})
		}
	}
	d.Rinse = rinse.Matrix(shades)
	return d, nil
}

// Format writes a day of the kind that [Day] makes as a file.
func Format(d *plan.Day, rinse plan.RinseTimes, shades []int) string {
	var b strings.Builder
	record := func(name string, numbers ...int) {
		b.WriteString(name)
		for _, n := range numbers {
			b.WriteString("," + strconv.Itoa(n))
		}
		b.WriteString("\n")
	}
	record("shop", d.Walk, d.Door, d.Clean, d.CupHolds, d.CupLoses, d.Aim.Late, d.Aim.Finish)
	record("rinse", rinse.Same, rinse.LightToDark, rinse.DarkToLight, rinse.BaseToClear)
	for i, p := range d.Products {
		record("product", p.Mix, p.PotLife, shades[i])
	}
	for _, j := range d.Jobs {
		record("job", j.Ready, j.Promised, j.Priority, j.Bake.Minutes, j.Bake.Heat)
		for _, c := range j.Coats {
			movable := 0
			if c.Movable {
				movable = 1
			}
			record("coat", c.Product, c.Spray, c.Amount, c.Flash, c.Latest, movable)
		}
	}
	return b.String()
}
