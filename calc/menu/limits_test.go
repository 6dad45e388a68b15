package menu_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/check/forms"
	"spraywright/calc/menu"
	"spraywright/calc/unit"
)

// limits says what an answer comes to at the end of its range, where it is known without any calculation: a number of the
// form, or one in the unit of the answer. What stands before the colon is put into otherwise random forms.
const limits = `
wet-film solids_for=mix volume_solids=100 coats=1: wet_film=dry_film
dry-film solids_for=mix volume_solids=100: dry_coat=wet_film
paint-needed transfer_efficiency=100 losses=0 film_spread=0 transfer_spread=0 confidence=50 profile_height= volume_solids=100 solids_for=mix dry_film=100 area=1 count=1: demand=100 amount=100 left_over=0
coverage-left transfer_efficiency=100 losses=0 volume_solids=100 solids_for=mix dry_film=1000 paint_left=1000: area_covered=1
film-from-paint find_out=film used_by=volume paint_used=1000 area=1 volume_solids=100 solids_for=mix transfer_efficiency=100: film_made=1000
mix-solids component.2.part_volume=0 component.3.part_volume=0: sprayed_solids=component.1.part_solids mix_density=component.1.part_density
part-used-cup cup_left=0: fresh_volume=amount
voc-as-sprayed water_share=0: voc_actual=voc
voc-blend component.2.part_volume=0 component.3.part_volume=0: voc_mixed=component.1.part_voc
voc-solids voc=0: voc_solids=0
air-state humidity=100: dew_point=air wet_bulb=air vapour_pressure_deficit=0
air-state altitude=0: air_pressure=101325
condensation humidity=100: dew_point=air
heated-air heated_to=air: heated_humidity=humidity drying_gain=1
pot-life air=pot_life_at pot_life_second=: pot_life_low=pot_life pot_life_high=pot_life
recoat-window air=recoat_at recoat_second=: earliest=recoat_time earliest_maybe=recoat_time
flash-time air=flash_at panel=flash_at humidity=flash_humidity air_speed=flash_air_speed altitude=0: flash_low=flash flash_high=flash flash_ratio=1
gun-distance distance_held=gun_distance gun_turned=0: film_middle=100 film_ends=100 wet_middle=wet_film
tip-change tip_new=tip_now paint_pressure_to=paint_pressure: delivery_low=delivery delivery_high=delivery
filter-loading transfer_efficiency=100: overspray=0 caught=0
filter-loading filter_capture=100: escapes=0
job-cost transfer_efficiency=100 losses=0: cost_waste=0
job-cost wage=0: cost_labour=0
blend-strength weak=0 strong=100 wanted=50 amount=1000: strong_volume=500 weak_volume=500
`

// powers says with which power of a number an answer grows: ^1 doubles where the number does, ^-1 halves.
const powers = `
wet-film dry_film: wet_film^1
wet-film coats: wet_film^-1
spreading-rate dry_film: spreading_rate^-1
paint-needed area: demand^1
paint-needed transfer_efficiency: demand^-1
profile-paint area: demand^1
film-from-paint area: film_made^-1 transfer_found^1
mix amount: component.1.volume^1 component.2.volume^1
cup-seconds mix_density: dynamic_viscosity^1
voc-as-sprayed sprayed | cleaner_lost=: voc_mass^1
steel-area length: area_all^1
mesh-area sheet_area: area_all^1
film-per-pass delivery: film_per_pass^1 passes^-1
film-per-pass gun_speed: film_per_pass^-1 passes^1
gun-delivery caught_for: delivery^-1
overlap fan_width: stroke_gap^1
pot-life pot_life | pot_life_second=: pot_life_low^1 pot_life_high^1
booth-flow face_width | air_known=speed: booth_air^1
dilution-air solvent_rate: air_needed^1
purge-time room_volume | changes_by=flow: one_change^1
room-vapour spilled: room_mass^1 room_ppm^1
room-vapour room_volume: room_mass^-1 room_lel^-1
job-cost price: cost_paint^1 cost_waste^1
cup-cost amount: cost_cup^1
compressor receiver: refill_time^1 run_time^1
part-warm-up part_thickness: time_constant^1
`

func TestLimitsAreMet(t *testing.T) {
	onceAlone(t)
	for line := range strings.Lines(limits) {
		subject, answers, found := strings.Cut(strings.TrimSpace(line), ": ")
		if !found {
			continue
		}
		t.Run(subject, func(t *testing.T) {
			id, given, _ := strings.Cut(subject, " ")
			meets(t, menu.Find(id), strings.Fields(given), strings.Fields(answers))
		})
	}
}

func meets(t *testing.T, c *calc.Calculator, given, answers []string) {
	s := forms.New(c, *seed, forms.Known(c, rows(t, c)))
	met := map[string]int{}
	for range 150 {
		form := s.Next()
		check.Complete(c, form)
		set(c, form, given)
		check.Complete(c, form)
		got := numbers(c, c.Run(form))
		for _, a := range answers {
			key, to, _ := strings.Cut(a, "=")
			x, there := got[key]
			want, known := worth(c, form, to, c.Output(withoutRow(key)).Unit)
			if !there || !known {
				continue
			}
			met[a]++
			if !(math.Abs(x-want) <= 1e-6*math.Abs(want)+1e-6) {
				t.Fatalf("%s is %v, expected %s, %v\non %s", key, x, to, want, form)
			}
		}
	}
	for _, a := range answers {
		if met[a] < 5 {
			t.Errorf("%s is met with in %d of 150 forms", a, met[a])
		}
	}
}

func TestAnswersGrowWithTheirPower(t *testing.T) {
	onceAlone(t)
	for line := range strings.Lines(powers) {
		subject, answers, found := strings.Cut(strings.TrimSpace(line), ": ")
		if !found {
			continue
		}
		t.Run(subject, func(t *testing.T) {
			subject, given, _ := strings.Cut(subject, " | ")
			id, key, _ := strings.Cut(subject, " ")
			grows(t, menu.Find(id), key, strings.Fields(given), strings.Fields(answers))
		})
	}
}

func grows(t *testing.T, c *calc.Calculator, key string, given, answers []string) {
	in := c.Input(withoutRow(key))
	s := forms.New(c, *seed, forms.Known(c, rows(t, c)))
	met := map[string]int{}
	for range 120 {
		form := s.Next()
		set(c, form, given)
		check.Complete(c, form)
		if form[key] == "" {
			continue
		}
		low, high := pair(s, in)
		before, after := answersAt(c, form, key, low, in), answersAt(c, form, key, high, in)
		for _, a := range answers {
			name, power, _ := strings.Cut(a, "^")
			x, there := before[name]
			y, still := after[name]
			if !there || !still || x == 0 {
				continue
			}
			n, _ := strconv.ParseFloat(power, 64)
			met[a]++
			if want := x * math.Pow(high/low, n); low > 0 && !(math.Abs(y-want) <= 1e-9*math.Abs(want)) {
				t.Fatalf("%s goes from %v to %v, expected %v, where %s goes from %v to %v %s\non %s", name, x, y, want, key, low, high, in.Unit.ID(), form)
			}
		}
	}
	for _, a := range answers {
		if met[a] < 5 {
			t.Errorf("%s is met with in %d of 120 forms", a, met[a])
		}
	}
}

// set puts entries of a form: "coats=1", "air=flash_at", "panel=".
func set(c *calc.Calculator, form calc.Form, given []string) {
	for _, g := range given {
		key, to, _ := strings.Cut(g, "=")
		in := c.Input(withoutRow(key))
		form[key], form[key+".unit"] = to, ""
		if in.Unit == 0 || to == "" {
			continue
		}
		if x, known := worth(c, form, to, in.Unit); known {
			form[key], form[key+".unit"] = show(x), in.Unit.ID()
		}
	}
}

// worth is a number, or what an entry of the form holds, in a unit.
func worth(c *calc.Calculator, form calc.Form, said string, in unit.Unit) (x float64, known bool) {
	if x, err := strconv.ParseFloat(said, 64); err == nil {
		return x, true
	}
	asked := c.Input(withoutRow(said))
	x, u, _, problems := calc.Language{}.ReadOne(asked, calc.Form{asked.Key: form[said], asked.Key + ".unit": form[said+".unit"]})
	if problems != nil || u.Quantity() != in.Quantity() {
		return 0, false
	}
	return unit.Convert(x, u, in), true
}
