package main

import (
	"path"
	"regexp"
	"slices"
)

// importsOf finds what a script imports as it starts; what it imports while running is left out.
var importsOf = regexp.MustCompile(`(?m)^(?:import|export) (?:[^"]*? from )?"\./([^"]+)"`)

// atFirst lists the scripts that a calculator's page needs as it opens, its own module included, so that the browser
// fetches them together.
func atFirst(site bundle, module string) []string {
	var all []string
	var add func(name string)
	add = func(name string) {
		name = path.Join("scripts", name)
		if slices.Contains(all, name) || site[name] == nil {
			return
		}
		all = append(all, name)
		for _, m := range importsOf.FindAllSubmatch(site[name], -1) {
			add(string(m[1]))
		}
	}
	for _, name := range []string{"app.js", "page.js", "extras.js", module + ".js"} {
		add(name)
	}
	slices.Sort(all)
	return all
}
