package menu_test

import (
	"maps"
	"math"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"

	"spraywright/calc"
	"spraywright/calc/check"
	"spraywright/calc/check/forms"
	"spraywright/calc/menu"
	"spraywright/calc/unit"
)

// trends says which answers rise (+) and which fall (-) where one number of the form is raised and all else stands. They
// hold whatever the other numbers are, but for what stands after a bar: they follow from the definitions, or from physics
// that nobody doubts.
const trends = `
wet-film dry_film: wet_film+
wet-film volume_solids: wet_film-
wet-film coats: wet_film-
comb-reading last_wet: wet_low+ dry_low+
comb-reading first_dry: wet_high+ dry_high+
dry-film wet_film: dry_coat+
dry-film volume_solids: dry_coat+
spreading-rate dry_film: spreading_rate-
spreading-rate volume_solids: spreading_rate+
spreading-rate transfer_efficiency: sprayed_rate+
paint-needed area: amount+ demand+
paint-needed count: amount+ demand+
paint-needed dry_film: amount+ demand+
paint-needed profile_height: amount+ dead_film+
paint-needed transfer_efficiency: amount- demand-
paint-needed volume_solids: amount- demand-
paint-needed losses: amount+
paint-needed confidence: amount+ left_over+
coverage-left paint_left: area_covered+ film_there+
coverage-left dry_film: area_covered-
coverage-left transfer_efficiency: area_covered+ film_there+
coverage-left losses: area_covered- film_there-
coverage-left area: film_there-
blend-area dry_film: amount+
blend-area blend_width: amount+ area_touched+
blend-area transfer_efficiency: amount-
profile-paint area: demand+
profile-paint profile_height: demand_most+ dead_film+
film-from-paint paint_used: film_made+ transfer_found-
film-from-paint area: film_made- transfer_found+
film-from-paint film_measured: transfer_found+

mix amount: component.1.volume+ component.1.mass+ total_mass+
mix-ratio density_a: mix_density+
mix-solids component.1.part_solids: sprayed_solids+
mix-solids component.1.part_density: mix_density+
over-pour component.1.poured: growth+
from-one-part have_volume: total_volume+
from-one-part have_mass: total_mass+
part-used-cup amount: fresh_volume+ component.1.volume+
part-used-cup cup_left: fresh_volume- component.1.volume-
part-used-cup pot_life: time_left+
part-used-cup mixed_ago: time_left-
cup-graduations amount: mark.1.height+
cup-graduations cup_bottom: mark.1.height- cup_holds+
cup-graduations cup_height: cup_holds+
blend-strength wanted: strong_volume+ weak_volume-
blend-strength strong: strong_volume- weak_volume+
blend-strength amount: strong_volume+ weak_volume+

part-area length: area_one+
part-area width: area_one+
part-area height: area_one+
part-area diameter | shape=tube: area_one+
part-area count: area_all+
parts-area part.1.length: area_all+
parts-area part.1.count: area_all+
steel-area length: area_all+
steel-area count: area_all+
tank-area diameter: area_one+
tank-area length: area_one+
mesh-area sheet_area: area_all+
mesh-area mesh_opening: open_area+
mesh-area hole: open_area+
mesh-area hole_pitch: open_area-

cup-seconds cup_seconds: kinematic_viscosity+ dynamic_viscosity+ other_seconds+
cup-seconds mix_density: dynamic_viscosity+
viscosity-temperature paint_at: seconds_low- seconds_high- viscosity_low- viscosity_high-
reducer cup_seconds | thin_parts= thin_seconds=: reducer_low+ reducer_high+
reducer target_seconds: reducer_low- reducer_high-
reducer unthinned: reducer_volume_low+ reducer_volume_high+

voc-as-sprayed sprayed: voc_mass+
voc-as-sprayed voc: voc_mass+
voc-as-sprayed water_share: voc_actual- voc_mass-
voc-blend component.1.part_voc: voc_mixed+ voc_mass+
voc-thinner voc_limit: thinner+
voc-thinner voc: thinner-
voc-thinner unthinned: thinner+
voc-less-water solids_weight: voc_regulatory- voc_actual-
voc-content volatile_mass: voc_regulatory+ voc_actual+
voc-content water_mass: voc_actual-
voc-solids voc: voc_solids+
voc-stages voc_base: voc_average+
voc-stages voc_clear: voc_average+
voc-record use.1.record_voc: year_mass+
voc-record mass_limit: year_spare+

air-state air: dew_point+ wet_bulb+ absolute_humidity+ saturation_pressure+ vapour_pressure_deficit+ air_density-
air-state humidity: dew_point+ wet_bulb+ absolute_humidity+ moisture_content+ vapour_pressure+ vapour_pressure_deficit- air_density-
air-state altitude: air_pressure- air_density- moisture_content+
condensation air: dew_point+ margin-
condensation humidity: dew_point+ margin- panel_goal+
condensation panel: margin+ humidity_goal+
condensation margin_needed: panel_goal+ humidity_goal-
part-warm-up part_thickness: warm_up_high+ warm_up_low+ time_constant+ biot+
part-warm-up panel: warm_up_high- warm_up_low-
part-warm-up humidity: dew_point+ panel_goal+
part-warm-up heat_transfer: time_constant-
heated-air heated_to: heated_humidity- drying_gain+
heated-air humidity: heated_humidity+ dew_point+
compressed-air-water line_pressure: pressure_dew_point+ condensate+
compressed-air-water coldest_point: water_left+ condensate-
compressed-air-water humidity: absolute_humidity+ pressure_dew_point+

flash-time flash: flash_low+ flash_high+
flash-time air_speed: flash_low- flash_high- flash_ratio-
flash-time panel: flash_ratio-
flash-time humidity: flash_ratio+

film-per-pass delivery: film_per_pass+ passes-
film-per-pass transfer_efficiency: film_per_pass+ passes-
film-per-pass fan_width: film_per_pass- passes+
film-per-pass gun_speed: film_per_pass- passes+
film-per-pass dry_film: passes+
gun-delivery caught_mass: delivery+
gun-delivery caught_volume: delivery+
gun-delivery caught_for: delivery-
gun-delivery mix_density: delivery-
tip-change tip_new: delivery_low+ delivery_high+
tip-change paint_pressure_to: delivery_low+ delivery_high+
overlap fan_width: stroke_gap+
overlap overlap: stroke_gap-
gun-distance distance_held: film_middle- wet_middle-
gun-distance wet_film: wet_middle+ wet_ends+
start-pressure humidity: drying_ratio-

hose-drop line_length: hose_drop+ pressure_at_gun-
hose-drop bore: hose_drop- pressure_at_gun+
hose-drop air_demand: hose_drop+ pressure_at_gun-
compressor air_demand: duty+
compressor free_air: duty- refill_time-
compressor receiver: run_time+ refill_time+
compressor altitude: duty+
air-flow air_flow: flow_standard+ flow_anr+ flow_normal+ flow_sixty+ flow_here+

pot-life air: pot_life_low- pot_life_high-
pot-life pot_life | pot_life_second=: pot_life_low+ pot_life_high+
cup-age air: left_low- left_high-
cup-age stay.1.stood_for: used_low+ used_high+ left_low- left_high-
cup-age stay.1.stood_at: used_low+ used_high+
recoat-window air: earliest- latest-
recoat-window recoat_time | recoat_second=: earliest+
bake-equivalent metal: equivalent_low+ equivalent_high+

booth-flow face_width: booth_air+ flow_least+
booth-flow face_speed: booth_air+
booth-flow fan_flow: face_velocity+
dilution-air solvent_rate: air_needed+
dilution-air lel: air_needed- air_per_litre-
dilution-air lel_share: air_needed- air_per_litre-
dilution-air air: air_per_litre+ vapour_volume+
dilution-air molar_mass: air_per_litre- vapour_volume-
purge-time room_volume: purge_time+
purge-time fan_flow: purge_time- one_change-
purge-time mixing_factor: purge_time+
purge-time left_share: purge_time-
filter-loading sprayed: overspray+ caught+ escapes+
filter-loading transfer_efficiency: overspray- caught- jobs_left+
filter-loading filter_capture: caught+ escapes- jobs_left-
filter-loading filter_has: jobs_left-
room-vapour spilled: room_lel+ room_ppm+ room_mass+
room-vapour room_volume: room_lel- room_ppm- room_mass-
room-vapour lel: room_lel-
room-vapour exposure_limit: exposure_times-

job-cost area: cost_job+ cost_paint+
job-cost price: cost_job+ cost_paint+ cost_waste+
job-cost transfer_efficiency: cost_paint- cost_waste-
job-cost labour: cost_job+ cost_labour+
job-cost wage: cost_job+ cost_labour+
cup-cost amount: cost_cup+
cup-cost tin.1.tin_price: cost_cup+ mix_price+
cup-cost tin.1.tin_size: cost_cup-
cup-cost cup_left_over: cost_left+

mix-record voc: voc_mass+
mix-record left_mass: sprayed_volume- transfer_found+
mix-record losses: sprayed_volume- transfer_found+
mix-record area: transfer_found+
mix-record dry_film: transfer_found+
mix-record volume_solids: transfer_found-
mix-log mass_limit: year_spare+

job coat.1.dry_film: to_mix_all+ emitted_all+
job coat.1.volume_solids: to_mix_all-
job coat.1.price: cost_all+
job transfer_efficiency: to_mix_all- emitted_all-
job losses: to_mix_all+
job confidence: to_mix_all+ left_over_all+
job humidity: dew_point+ margin-
job panel: margin+
settings air | air_reading=humidity pack=two pot_life_second=: pot_life_low- pot_life_high- dew_point+
settings humidity: dew_point+ margin-
settings panel: margin+
`

// Raising one number moves the answers the way they must go.
func TestAnswersGoTheWayTheyMust(t *testing.T) {
	onceAlone(t)
	for line := range strings.Lines(trends) {
		subject, answers, found := strings.Cut(strings.TrimSpace(line), ": ")
		if !found {
			continue
		}
		subject, given, _ := strings.Cut(subject, " | ")
		id, key, _ := strings.Cut(subject, " ")
		t.Run(subject, func(t *testing.T) {
			t.Parallel()
			raise(t, menu.Find(id), key, strings.Fields(given), strings.Fields(answers))
		})
	}
}

// onceAlone passes a test over as WASM, where it takes long: calc/check/bits holds those numbers to the native ones.
func onceAlone(t *testing.T) {
	if runtime.GOARCH == "wasm" {
		t.Skip("tried natively; the numbers as WASM are held to those")
	}
}

// raises is how many pairs of forms each trend is tried with, and mostTries how many forms are made to find them.
const (
	raises    = 10
	mostTries = 500
)

func raise(t *testing.T, c *calc.Calculator, key string, given, answers []string) {
	in := c.Input(withoutRow(key))
	if in == nil {
		t.Fatalf("%s does not ask for %s", c.ID, key)
	}
	s := forms.New(c, *seed, forms.Known(c, rows(t, c)))
	tried, moved := map[string]int{}, map[string]int{}
	enough := func() bool {
		return !slices.ContainsFunc(answers, func(a string) bool { return moved[a] < raises })
	}
	for n := 0; n < mostTries && !enough(); n++ {
		form := s.Next()
		set(c, form, given)
		check.Complete(c, form)
		if form[key] == "" {
			continue
		}
		low, high := pair(s, in)
		before, after := answersAt(c, form, key, low, in), answersAt(c, form, key, high, in)
		for _, a := range answers {
			x, there := before[a[:len(a)-1]]
			y, still := after[a[:len(a)-1]]
			if !there || !still {
				continue
			}
			tried[a]++
			way := map[byte]float64{'+': 1, '-': -1}[a[len(a)-1]] * (y - x)
			scale := math.Abs(x) + math.Abs(y)
			if way < -1e-9*scale-1e-14*largest(before, after) { // the rounding of what it is the difference of
				t.Fatalf("%s goes from %v to %v, where %s goes from %v to %v %s\non %s", a, x, y, key, low, high, in.Unit.ID(), form)
			}
			if way > 1e-6*scale {
				moved[a]++
			}
		}
	}
	for _, a := range answers {
		if moved[a] == 0 {
			t.Errorf("%s never moves in %d pairs of forms", a, tried[a])
		}
	}
}

func largest(all ...map[string]float64) float64 {
	most := 1e-3
	for _, xs := range all {
		for _, x := range xs {
			most = max(most, math.Abs(x))
		}
	}
	return most
}

// pair is two numbers for an input in its own unit, the smaller first.
func pair(s *forms.Sampler, in *calc.Input) (low, high float64) {
	one := func() float64 {
		text, id := s.Number(in)
		x, _ := strconv.ParseFloat(text, 64)
		u, _ := unit.ByID(id)
		return unit.Convert(x, u, in.Unit)
	}
	for range 9 {
		if low, high = one(), one(); low != high {
			break
		}
	}
	return min(low, high), max(low, high)
}

// answersAt are the numbers that a form comes to with one input put to x, each under its key; none where there are problems.
func answersAt(c *calc.Calculator, form calc.Form, key string, x float64, in *calc.Input) map[string]float64 {
	form = maps.Clone(form)
	form[key], form[key+".unit"] = show(x), in.Unit.ID()
	return numbers(c, c.Run(form))
}

// numbers are the numbers of a report without problems, in the units of the outputs: "amount", "cup.1.mass".
func numbers(c *calc.Calculator, r calc.Report) map[string]float64 {
	all := map[string]float64{}
	if len(r.Problems) > 0 {
		return all
	}
	add := func(name string, f calc.Figure) {
		if u, ok := unit.ByID(f.UnitID); ok && f.Typed != "" {
			all[name] = unit.Convert(f.Value, u, c.Output(withoutRow(name)).Unit)
		}
	}
	for _, f := range r.Figures {
		add(f.Key, f)
	}
	for _, l := range r.Lists {
		for i, row := range l.Rows {
			for _, f := range row {
				add(l.Key+"."+strconv.Itoa(i+1)+"."+f.Key, f)
			}
		}
	}
	return all
}
