package main

import (
	"embed"
	"maps"
	"slices"
	"strings"
	"text/template"

	"spraywright/site/server"
)

// hostingAssets are settings of general-purpose servers, with holes for the headers and types that the site's own sends.
//
//go:embed hosting
var hostingAssets embed.FS

// serverSettings are the settings of one server, as the page about hosting shows them and as the tests try them.
type hostSettings struct{ ID, Name, Where, Settings string }

// A hostingPage is what the page about hosting shows.
type hostingPage struct{ Samples []hostSettings }

func newHostingPage() (hostingPage, error) {
	var all hostingPage
	for _, s := range []hostSettings{
		{ID: "nginx", Name: "nginx", Where: "server { … }"},
		{ID: "lighttpd", Name: "lighttpd", Where: "lighttpd.conf"},
	} {
		filled, err := template.ParseFS(hostingAssets, "hosting/"+s.ID+".conf")
		if err != nil {
			return all, err
		}
		var b strings.Builder
		if err := filled.Execute(&b, asSettings()); err != nil {
			return all, err
		}
		s.Settings = b.String()
		all.Samples = append(all.Samples, s)
	}
	return all, nil
}

// A fileType is what files with a certain end are.
type fileType struct{ End, Kind, Charset string }

// settings are what the server of the site sends, for other servers.
type settings struct {
	Headers                    []server.Header
	Types                      []fileType
	Policy, FramePolicy, Frame string
}

func asSettings() settings {
	s := settings{Headers: server.Headers(), Policy: server.Policy("index.html"), FramePolicy: server.Policy(server.FrameFile), Frame: server.FrameFile}
	types := server.Types()
	for _, end := range slices.Sorted(maps.Keys(types)) {
		kind, _, _ := strings.Cut(types[end], ";")
		s.Types = append(s.Types, fileType{end[1:], kind, types[end][len(kind):]})
	}
	return s
}
