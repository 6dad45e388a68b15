package main

import (
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"regexp"
	"slices"
	"strings"

	"github.com/evanw/esbuild/pkg/api"
)

// oneFileAssets are the page of the one file with its own scripts, and those of a course package.
//
//go:embed onefile course
var oneFileAssets embed.FS

// A variant is a folder of scripts that stand in for those of the site that reach beyond the page, each of the same name
// and exports. How their exports are used is for the site's own scripts to say.
type variant struct {
	folder   string
	scripts  embed.FS
	replaced []string
	without  []string // what of the browser it must not touch
	apart    bool     // leaves what a language says in files of their own
}

// inOneFile are the scripts of the one file.
var inOneFile = variant{folder: "onefile", scripts: oneFileAssets, replaced: []string{"address.js", "compiled.js", "course-parts.js", "pwa.js", "trusted.js"}}

// bundleScript joins a script and all it imports into one.
func bundleScript(site bundle, v variant, entry string, format api.Format) (string, error) {
	define := map[string]string{}
	for _, name := range v.without {
		define[name] = "undefined"
	}
	result := api.Build(api.BuildOptions{
		EntryPoints: []string{entry}, Bundle: true, Format: format, Platform: api.PlatformBrowser, Target: api.ES2022,
		MinifyWhitespace: true, MinifySyntax: true, MinifyIdentifiers: true, LegalComments: api.LegalCommentsNone, Charset: api.CharsetUTF8, Define: define,
		Plugins: []api.Plugin{{Name: "site", Setup: func(build api.PluginBuild) { fromBundle(build, site, v) }}},
	})
	if len(result.Errors) > 0 {
		return "", fmt.Errorf("joining the scripts of %s: %s", entry, strings.Join(api.FormatMessages(result.Errors, api.FormatMessagesOptions{}), ""))
	}
	if len(result.Warnings) > 0 {
		return "", fmt.Errorf("joining the scripts of %s: %s", entry, strings.Join(api.FormatMessages(result.Warnings, api.FormatMessagesOptions{}), ""))
	}
	if len(result.OutputFiles) != 1 {
		return "", errors.New("the scripts did not come together in one")
	}
	return string(result.OutputFiles[0].Contents), nil
}

// fromBundle reads scripts from the site in memory instead of from a disk.
func fromBundle(build api.PluginBuild, site bundle, v variant) {
	build.OnResolve(api.OnResolveOptions{Filter: ".*"}, func(a api.OnResolveArgs) (api.OnResolveResult, error) {
		name := path.Clean(a.Path)
		if a.Importer != "" {
			name = path.Join(path.Dir(a.Importer), a.Path)
		}
		if file, ours := strings.CutPrefix(name, "scripts/"); ours && slices.Contains(v.replaced, file) {
			name = v.folder + "/" + file
		}
		if v.apart && isOfLanguage(name) {
			return api.OnResolveResult{Path: "./" + name, External: true}, nil
		}
		return api.OnResolveResult{Path: name, Namespace: "site"}, nil
	})
	build.OnLoad(api.OnLoadOptions{Filter: ".*", Namespace: "site"}, func(a api.OnLoadArgs) (api.OnLoadResult, error) {
		text := string(site[a.Path])
		if own, err := fs.ReadFile(v.scripts, a.Path); err == nil {
			text = string(own)
		} else if site[a.Path] == nil {
			return api.OnLoadResult{}, fmt.Errorf("there is no %s", a.Path)
		}
		text = everyLanguage(site, text)
		return api.OnLoadResult{Contents: &text, Loader: api.LoaderJS}, nil
	})
}

// isOfLanguage reports whether a file holds what one language says.
func isOfLanguage(name string) bool {
	return path.Base(name) == "words.js" && path.Dir(name) != "scripts"
}

// ofLanguage finds an import whose file depends on the page's language.
var ofLanguage = regexp.MustCompile("import\\(`\\.\\./\\$\\{lang\\}/([a-z]+\\.js)`\\)")

// everyLanguage names each language's file in such an import, so that all of them come along.
func everyLanguage(site bundle, text string) string {
	return ofLanguage.ReplaceAllStringFunc(text, func(call string) string {
		file := ofLanguage.FindStringSubmatch(call)[1]
		var choices strings.Builder
		for _, name := range slices.Sorted(maps.Keys(site)) {
			if lang := path.Dir(name); path.Base(name) == file && lang != "scripts" {
				fmt.Fprintf(&choices, "%s: () => import(\"../%s\"), ", lang, name)
			}
		}
		return "({ " + choices.String() + "})[lang]()"
	})
}
