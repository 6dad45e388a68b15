package main

import (
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"io/fs"
	"maps"
	"slices"
	"strings"

	"spraywright/calc"
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

// hashes lists the SHA-256 in base64 of each file that is kept on a device.
func (site bundle) hashes() map[string]string {
	hashes := map[string]string{}
	for name := range maps.Keys(site) {
		if name == oneFile || name == perFolder || name == perHost {
			continue
		}
		sum := sha256.Sum256(site[name])
		hashes[name] = base64.StdEncoding.EncodeToString(sum[:])
	}
	return hashes
}

// addManifest lets a phone put the site on its home screen. It gives no id, because an id is found from the host's root
// and would be the same for every copy on a host; without one the start address serves as it (W3C Web App Manifest,
// id member). Pictures of the screen are left out: everybody would download them and few be shown them.
func addManifest(site bundle) error {
	all, err := tongues()
	if err != nil {
		return err
	}
	for _, t := range all {
		if site[t.Folder()+"manifest.webmanifest"], err = manifest(t); err != nil {
			return err
		}
	}
	return nil
}

func manifest(t tongue) ([]byte, error) {
	type icon struct {
		Src     string `json:"src"`
		Sizes   string `json:"sizes"`
		Type    string `json:"type"`
		Purpose string `json:"purpose,omitempty"`
	}
	type shortcut struct {
		Name string `json:"name"`
		URL  string `json:"url"`
	}
	text, err := json.MarshalIndent(map[string]any{
		"name": siteName, "short_name": siteName, "description": t.say(siteDescription), "lang": t.Code,
		"start_url": "./", "scope": "./" + t.Root(), "display": "standalone",
		"background_color": "#f6f3ec", "theme_color": "#f6f3ec",
		"categories": []string{"utilities", "productivity"},
		"shortcuts":  []shortcut{{t.say(calc.Phrase("Job card")), "./"}, {t.say(calc.Phrase("Timers")), "timers.html"}, {t.say(calc.Phrase("Mix")), "mix.html"}},
		"icons": []icon{
			{t.Root() + "icon-192.png", "192x192", "image/png", ""}, {t.Root() + "icon-512.png", "512x512", "image/png", ""},
			{t.Root() + "icon-512.png", "512x512", "image/png", "maskable"}, {t.Root() + "mark.svg", "any", "image/svg+xml", ""},
		},
	}, "", " ")
	return append(text, '\n'), err
}
