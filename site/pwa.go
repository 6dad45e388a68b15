package main

import (
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"io/fs"
	"maps"
	"slices"
	"strings"
)

// workerTemplate becomes sw.js; the two marks in it are replaced by the version and the list of files.
const workerTemplate = "sw.js"

// addServiceWorker writes sw.js with the hash of every file, so that it never keeps a half-deployed site.
func addServiceWorker(site bundle) error {
	script, err := fs.ReadFile(assets, "scripts/"+workerTemplate)
	if err != nil {
		return err
	}
	hashes := site.hashes()
	list, err := json.MarshalIndent(hashes, "", " ") // keys come out sorted
	if err != nil {
		return err
	}
	sum := sha256.Sum256(slices.Concat(script, list))
	version := base64.RawURLEncoding.EncodeToString(sum[:9])
	site["sw.js"] = []byte(strings.NewReplacer("__VERSION__", version, "{/* FILES */}", string(list)).Replace(string(script)))
	return nil
}

// hashes lists the SHA-256 of each file in base64.
func (site bundle) hashes() map[string]string {
	hashes := map[string]string{}
	for name := range maps.Keys(site) {
		sum := sha256.Sum256(site[name])
		hashes[name] = base64.StdEncoding.EncodeToString(sum[:])
	}
	return hashes
}

// addManifest lets a phone put the site on its home screen.
func addManifest(site bundle) error {
	type icon struct {
		Src     string `json:"src"`
		Sizes   string `json:"sizes"`
		Type    string `json:"type"`
		Purpose string `json:"purpose,omitempty"`
	}
	text, err := json.MarshalIndent(map[string]any{
		"name": siteName, "short_name": siteName, "description": siteDescription, "lang": "en",
		"start_url": "./", "scope": "./", "id": "./", "display": "standalone",
		"background_color": "#f6f3ec", "theme_color": "#f6f3ec",
		"icons": []icon{
			{"icon-192.png", "192x192", "image/png", ""}, {"icon-512.png", "512x512", "image/png", ""},
			{"icon-512.png", "512x512", "image/png", "maskable"}, {"mark.svg", "any", "image/svg+xml", ""},
		},
	}, "", " ")
	site["manifest.webmanifest"] = append(text, '\n')
	return err
}
