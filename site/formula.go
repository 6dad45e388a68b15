package main

import (
	"html/template"
	"regexp"
)

// low finds what a formula sets low: the letters and digits after an underscore. The script of the page does the same.
var low = regexp.MustCompile(`_([\p{L}\d]+)`)

// formula lowers the subscripts in a line of working.
func formula(text string) template.HTML {
	return template.HTML(low.ReplaceAllString(template.HTMLEscapeString(text), "<sub>$1</sub>"))
}
