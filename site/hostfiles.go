package main

import (
	"fmt"
	"strings"

	"spraywright/site/server"
)

const policyHeader = "Content-Security-Policy"

// Files that tell a host of static files to send the site's headers. No host sends the files themselves, so that no
// device keeps them.
const (
	perFolder = ".htaccess" // for servers that read one in each folder
	perHost   = "_headers"  // for hosts that read one list for all
)

// addHostFiles writes them. A list for all cannot make an exception for the page that others may frame: its policy is left
// to the pages, which carry their own and refuse to be framed by themselves.
func addHostFiles(site bundle) error {
	var folder, host strings.Builder
	for _, t := range asSettings().Types {
		fmt.Fprintf(&folder, "AddType \"%s%s\" .%s\n", t.Kind, t.Charset, t.End)
	}
	folder.WriteString("<IfModule mod_headers.c>\n")
	host.WriteString("/*\n")
	for _, h := range server.Headers() {
		fmt.Fprintf(&folder, "Header set %s \"%s\"\n", h.Name, h.Value)
		fmt.Fprintf(&host, "  %s: %s\n", h.Name, h.Value)
	}
	fmt.Fprintf(&folder, "Header set %s \"%s\"\n<Files \"%s\">\nHeader set %[1]s \"%[4]s\"\n</Files>\n</IfModule>\n", policyHeader, server.Policy("index.html"), server.FrameFile, server.FramePolicy)
	site[perFolder], site[perHost] = []byte(folder.String()), []byte(host.String())
	return nil
}
