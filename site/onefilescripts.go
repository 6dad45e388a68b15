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

// replaced are the scripts of the site that reach beyond the page. The one file has others of the same names and exports.
var replaced = []string{"address.js", "compiled.js", "course-parts.js", "pwa.js", "trusted.js"}

// bundleScript joins a script and all it imports into one for the one file.
func bundleScript(site bundle, entry string, format api.Format) (string, error) {
	return joinScripts(site, "onefile", replaced, entry, format)
}

// joinScripts joins a script and all it imports into one. The scripts in others are taken from a folder of their own.
func joinScripts(site bundle, folder string, others []string, entry string, format api.Format) (string, error) {
	result := api.Build(api.BuildOptions{
		EntryPoints: []string{entry}, Bundle: true, Format: format, Platform: api.PlatformBrowser, Target: api.ES2022,
		MinifyWhitespace: true, MinifySyntax: true, MinifyIdentifiers: true, LegalComments: api.LegalCommentsNone, Charset: api.CharsetUTF8,
		Plugins: []api.Plugin{{Name: "site", Setup: func(build api.PluginBuild) { fromBundle(build, site, folder, others) }}},
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
func fromBundle(build api.PluginBuild, site bundle, folder string, others []string) {
	build.OnResolve(api.OnResolveOptions{Filter: ".*"}, func(a api.OnResolveArgs) (api.OnResolveResult, error) {
		name := path.Clean(a.Path)
		if a.Importer != "" {
			name = path.Join(path.Dir(a.Importer), a.Path)
		}
		if file, ours := strings.CutPrefix(name, "scripts/"); ours && slices.Contains(others, file) {
			name = folder + "/" + file
		}
		return api.OnResolveResult{Path: name, Namespace: "site"}, nil
	})
	build.OnLoad(api.OnLoadOptions{Filter: ".*", Namespace: "site"}, func(a api.OnLoadArgs) (api.OnLoadResult, error) {
		text := string(site[a.Path])
		if own, err := fs.ReadFile(oneFileAssets, a.Path); err == nil {
			text = string(own)
		} else if site[a.Path] == nil {
			return api.OnLoadResult{}, fmt.Errorf("there is no %s", a.Path)
		}
		text = everyLanguage(site, text)
		return api.OnLoadResult{Contents: &text, Loader: api.LoaderJS}, nil
	})
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
