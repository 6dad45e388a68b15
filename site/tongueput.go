package main

import (
	"reflect"
	"strings"

	"spraywright/calc"
)

var (
	phraseType = reflect.TypeFor[calc.Phrase]()
	inputType  = reflect.TypeFor[calc.Input]()
	outputType = reflect.TypeFor[calc.Output]()
	fieldType  = reflect.TypeFor[field]()
)

// put copies what a page shows with every text of ours in it put into the tongue. Places stay as they are: the parts of
// a form are known by them.
func (t tongue) put(data any) any {
	if data == nil {
		return nil
	}
	return t.copy(reflect.ValueOf(data), "", "").Interface()
}

// copy puts one value into the tongue; under is the table that it stands in, "part.", and key the field.
func (t tongue) copy(v reflect.Value, under, key string) reflect.Value {
	switch v.Kind() {
	case reflect.String:
		if v.Type() == phraseType {
			return reflect.ValueOf(calc.Phrase(t.label(key, calc.Phrase(v.String()))))
		}
	case reflect.Pointer, reflect.Interface:
		if v.IsNil() {
			return v
		}
		said := t.copy(v.Elem(), under, key)
		if v.Kind() == reflect.Interface {
			return said
		}
		p := reflect.New(v.Type().Elem())
		p.Elem().Set(said)
		return p
	case reflect.Slice:
		said := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
		for i := range v.Len() {
			said.Index(i).Set(t.copy(v.Index(i), under, key))
		}
		if !v.IsNil() {
			return said
		}
	case reflect.Struct:
		return t.copyStruct(v, under, key)
	}
	return v
}

func (t tongue) copyStruct(v reflect.Value, under, key string) reflect.Value {
	switch v.Type() {
	case inputType, outputType:
		key = under + v.FieldByName("Key").String()
		under = key + "."
	case fieldType:
		if column := v.FieldByName("Column").String(); column != "" {
			under = column[:strings.IndexByte(column, '.')+1]
		}
	}
	said := reflect.New(v.Type()).Elem()
	said.Set(v)
	for i := range v.NumField() {
		if f := v.Type().Field(i); f.IsExported() && f.Name != "Place" {
			said.Field(i).Set(t.copy(v.Field(i), under, key))
		}
	}
	if v.Type() == fieldType {
		said.FieldByName("One").SetString(t.label("one", calc.Phrase(v.FieldByName("One").String())))
	}
	return said
}
