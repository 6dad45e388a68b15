package code

import "strings"

// tokens are what forms say again and again, each written as one byte. The list is part of every folded link that has
// been handed on, so it never changes: a longer one would be folding 2.
const tokens = "&fields= &units=us &unit= &part. &coat. & .unit= .00 .0 .5" +
	// columns of the parts
	" &name= &shape= &length= &width= &height= &diameter= &small_end= &area= &sides= &faces= &skin= &count= &colour=" +
	// columns of the coats, which are the entries of a data sheet
	" &product= &role= &pack= &carrier= &solvent= &on_colour= &ratio= &ratio_by= &density_a= &density_b= &density_c= &density_d=" +
	" &volume_solids= &solids_for= &dry_film= &coats= &pot_life= &pot_life_at= &pot_life_second= &pot_life_second_at=" +
	" &flash= &flash_at= &flash_humidity= &flash_air_speed= &latest_recoat= &recoat_at= &drying= &dry_time= &dry_at= &heat_up=" +
	" &air_lowest= &air_highest= &humidity_highest= &voc= &water_share= &price=" +
	// air and gun
	" &air= &humidity= &panel= &air_speed= &altitude= &margin_needed= &gun= &pressure= &pressure_most= &delivery= &fan_width=" +
	" &gun_distance= &gun_speed= &overlap= &transfer_efficiency= &trigger_share= &cup_size= &scale_step= &losses= &comb_step=" +
	" &confidence= &film_spread= &transfer_spread= &clock= &mix_time= &rinse_time= &limits= &cleaner_lost=" +
	// answers of choices, and units
	" flat box tube cone dome disc strip one two both outside inside five six" +
	" surfacer sealer primer base clear topcoat special solvent water butyl-acetate acetone toluene xylene isopropanol butanol" +
	" volume weight air bake flash hvlp conventional degF degC mil in ft psi bar" +
	// pairs of digits that many numbers have
	" 20 30 40 50 60 80 90 25 75 00" +
	// pieces of names, in English and in Spanish: á é í ñ ó come first
	" %C3%A1 %C3%A9 %C3%AD %C3%B1 %C3%B3 er de la or on li ar al te ra en es st re co"

// dayTokens are those of the booth day: folding 2. A form there has many rows, so a value that the row before has too is a
// part of some.
const dayTokens = "&fields= &units=us &unit= .unit= &coat. &job. &paint. &break. &done. &pin. =\" =^" +
	// the shop
	" &clock= &aim= &painters= &booths= &booth_room= &prep_bays= &ovens= &rinse_same= &rinse_darker= &rinse_lighter= &rinse_clear=" +
	" &clean_time= &rinse_inside= &walk_time= &door_time= &cup_size= &losses= &share_cups= &tried= &now=" +
	// columns
	" &product= &shade= &pot_life= &mix_time= &job_name= &job_parts= &ready_from= &promised_by= &priority= &prep_time= &prep_by=" +
	" &bake_time= &bake_heat= &of_job= &coats= &spray_time= &coat_amount= &flash= &flash_last= &recoat_within= &new_cup= &may_leave=" +
	" &break_from= &break_to= &painter_number= &day_step= &coat_number= &started_at= &ended_at= &place_number= &cup_number= &mixed_at= &held_at=" +
	// columns that say again what the row before does, or name what has been named
	" &of_job=\" &product=\" &coats=\" &flash=\" &flash_last=\" &recoat_within=\" &may_leave=\" &bake_time=\" &bake_heat=\" &mix_time=\"" +
	" &of_job=^ &product=^ &job_name=^ &painter_number=\" &place_number=\" &day_step=\" &day_step=spray &cup_number=\"" +
	// answers of choices, and units
	" promises home waste lightest light middle darkest dark usual high low painter other spray prep bake yes degF" +
	// numbers and times
	" 00 05 10 15 20 25 30 35 40 45 50 55 60 70 80 90 :00 :05 :10 :15 :20 :25 :30 :35 :40 :45 :50 :55 8: 9: 10: 11: 12: 13: 14: 15: 16:" +
	// pieces of names, in English and in Spanish
	" +clear +primer Two-pack Job+ %C3%A1 %C3%A9 %C3%AD %C3%B1 %C3%B3 er de la or on ar al te ra en es st re co"

// free are the bytes that no form is written with: a form is written in the visible characters of ASCII.
func free(n int) byte {
	if n < ' ' {
		return byte(n)
	}
	return byte(n - ' ' + 0x7F)
}

// shorten writes each token as its byte, the longest that fits first.
func shorten(text, tokens string) []byte {
	list := strings.Fields(tokens)
	var packed []byte
	for len(text) > 0 {
		size, found := 1, text[0]
		for i, t := range list {
			if len(t) > size && strings.HasPrefix(text, t) {
				size, found = len(t), free(i)
			}
		}
		packed, text = append(packed, found), text[size:]
	}
	return packed
}

// lengthen undoes shorten. ok is false for a byte that stands for nothing.
func lengthen(packed []byte, tokens string) (text string, ok bool) {
	list := strings.Fields(tokens)
	var b strings.Builder
	for _, c := range packed {
		n := int(c)
		switch {
		case ' ' <= c && c < 0x7F:
			b.WriteByte(c)
			continue
		case c >= 0x7F:
			n += ' ' - 0x7F
		}
		if n >= len(list) {
			return "", false
		}
		b.WriteString(list[n])
	}
	return b.String(), true
}
