package main

import (
	"bytes"
	"embed"
	"encoding/json"

	"github.com/evanw/esbuild/pkg/api"

	"spraywright/site/server"
)

// frameFile is the page that other sites may frame: any calculator, as its address says.
const frameFile = server.FrameFile

// embeddedAssets are the scripts of an embedded page that stand in for the site's own.
//
//go:embed embedded
var embeddedAssets embed.FS

// inFrame are the scripts of an embedded page. It works the same with and without storage, because it never touches any.
var inFrame = variant{
	folder: "embedded", scripts: embeddedAssets, apart: true,
	replaced: []string{"address.js", "compiled.js", "keeper.js", "share-sheet.js", "timer-button.js", "trusted.js"},
	without:  []string{"localStorage", "sessionStorage", "indexedDB"},
}

// addEmbedded joins the scripts of an embedded page into one, so that a frame asks for little. The text of the worker
// comes along: from a sandbox none can be started by its address.
func addEmbedded(site bundle) error {
	worker, err := bundleScript(site, inFrame, "scripts/core-worker.js", api.FormatIIFE)
	if err != nil {
		return err
	}
	text, err := json.Marshal(worker)
	if err != nil {
		return err
	}
	const made = "embedded/worker-text.js"
	site[made] = append([]byte("export const text = "), text...)
	script, err := bundleScript(site, inFrame, "embedded/open.js", api.FormatESModule)
	delete(site, made)
	site["embedded.js"] = []byte(script)
	return err
}

// renderFrame makes the page that others may frame.
func (r renderer) renderFrame() error {
	var b bytes.Buffer
	err := r.ExecuteTemplate(&b, "frame", page{Title: "Calculator in a frame", File: frameFile, Name: "embed", Tongue: r.tongue, Tongues: r.all, Style: integrity(r.site["site.css"])})
	r.site[r.Folder()+frameFile] = b.Bytes()
	return err
}
