package drying

import (
	"spraywright/calc"
	"spraywright/calc/climate"
	"spraywright/calc/field"
)

// A Refusal is why a flash-off time cannot be scaled. Message follows the label of Input, or subject: "the panel".
type Refusal struct {
	Input                 calc.Input
	subject, Message, Fix calc.Phrase
}

// fault is the refusal worded to follow "Flash-off".
func (r *Refusal) fault() *calc.Fault {
	if r.Input.Key == field.Flash.Key {
		return &calc.Fault{Message: r.Message, Fix: r.Fix}
	}
	return &calc.Fault{Message: "cannot be scaled: {subject} {why}", Fix: r.Fix, Args: []calc.Arg{calc.Term(r.subject, "subject"), calc.Term(r.Message, "why")}}
}

// Refuse says why the time cannot be scaled, or nil. Air and panel must be from 5 to 45 °C and the time at most five
// times the stated one. For water the humidity must be under 90 %, the wet bulb 1 °C or more below the air, and the
// panel 3 °C or more above the dew point.
func Refuse(ref, now Climate, key string) *Refusal {
	if _, known := liquids[key]; !known {
		return &Refusal{field.Solvent, "the solvent", "is none whose drying is known here", "Choose the nearest in the list"}
	}
	for _, t := range []struct {
		in      calc.Input
		subject calc.Phrase
		t       calc.Num
	}{{field.FlashAt, "the sheet's temperature", ref.Air}, {field.Air, "the air", now.Air}, {field.Panel, "the panel", now.Panel}} {
		if t.t.V < 5 || t.t.V > 45 {
			return &Refusal{t.in, t.subject, "must be from 5 to 45 °C (41 to 113 °F) to scale a flash-off time", "Bring it into that range, or go by the data sheet"}
		}
	}
	if key == Water {
		if r := tooDamp(field.FlashHumidity, "the sheet's humidity", ref); r != nil {
			return r
		}
		if r := tooDamp(field.Humidity, "the humidity", now); r != nil {
			return r
		}
		if now.Panel.V-climate.DewPoint(now.Air.V, now.Humidity.V) < 3 {
			return &Refusal{field.Panel, "the panel", "must be 3 °C (5.4 °F) or more above the dew point", "Warm the panel, or dry the air"}
		}
	}
	if sheet, today := central(ref, now, key); !(today <= 5*sheet) {
		return &Refusal{field.Flash, "", "would be more than five times what the sheet states; no model is good that far", "Warm or dry the air, or move it faster"}
	}
	return nil
}

func tooDamp(in calc.Input, subject calc.Phrase, c Climate) *Refusal {
	const fix = "Dry or warm the air, or wait for drier weather"
	switch {
	case c.Humidity.V >= 90:
		return &Refusal{in, subject, "must be under 90 % to scale a water film's flash-off: above it a hygrometer's error is a third of the answer", fix}
	case c.Air.V-climate.WetBulbLiquid(c.Air.V, c.Humidity.V, c.Pressure.V) < 1:
		return &Refusal{in, subject, "is too high to scale a water film's flash-off: the wet bulb is within 1 °C (1.8 °F) of the air", fix}
	}
	return nil
}
