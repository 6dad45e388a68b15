package main

import "github.com/evanw/esbuild/pkg/api"

// The scripts of a course package, which a trainer's page puts together on the device: the learner's page with what speaks
// to the course, and the core's worker.
const (
	courseScript = "course/learner.js"
	courseWorker = "course/worker.js"
)

// inCourse are the scripts of a course package.
var inCourse = variant{folder: "course", scripts: oneFileAssets, replaced: []string{"address.js", "compiled.js", "exercise-keep.js", "trusted.js"}}

// addCourse joins them. Each is one file, because a course's host may send many slowly, or not at all.
func addCourse(site bundle) error {
	script, err := bundleScript(site, inCourse, "course/open.js", api.FormatESModule)
	if err != nil {
		return err
	}
	worker, err := bundleScript(site, inOneFile, "scripts/core-worker.js", api.FormatIIFE)
	if err != nil {
		return err
	}
	site[courseScript], site[courseWorker] = []byte(script+noticesIn(site)), []byte(worker)
	return nil
}
