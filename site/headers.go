package main

import (
	"fmt"
	"net/http"
	"path"
	"strings"
)

// pagePolicy is what a page may do: run its own scripts, compile the core, and reach its own site. Pages carry it
// themselves, for hosts where headers cannot be set (W3C Content Security Policy Level 3; Trusted Types).
const pagePolicy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; " +
	"connect-src 'self'; worker-src 'self'; manifest-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; " +
	"require-trusted-types-for 'script'; trusted-types spraywright"

// headerPolicy adds what only a header may say.
const headerPolicy = pagePolicy + "; frame-ancestors 'none'"

// framePolicy is for the page that others may frame. In a sandbox it has no origin, so that its worker comes from text.
const framePolicy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; " +
	"connect-src 'self'; worker-src blob:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types spraywright"

// A header is one that every file of the site is sent with.
type header struct{ name, value string }

// headers are the same for every file but for the policy.
var headers = []header{
	// A frame in a sandbox has no origin, and what it asks for counts as asked for by a stranger. All of it is public.
	{"Access-Control-Allow-Origin", "*"},
	{"Cross-Origin-Resource-Policy", "cross-origin"},
	{"X-Content-Type-Options", "nosniff"},
	{"Referrer-Policy", "no-referrer"},
	{"Cross-Origin-Opener-Policy", "same-origin"},
	{"Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=(), screen-wake-lock=(self), clipboard-write=(self)"},
	// Everything is asked for anew; the service worker is what makes the site quick and whole.
	{"Cache-Control", "no-cache"},
}

const policyHeader = "Content-Security-Policy"

// setHeaders sets the headers for a file of the site.
func setHeaders(h http.Header, name string) {
	h.Set(policyHeader, headerPolicy)
	if _, file := path.Split(name); file == frameFile {
		h.Set(policyHeader, framePolicy)
	}
	for _, own := range headers {
		h.Set(own.name, own.value)
	}
}

// Files that tell a host to send these headers. No host sends the files themselves, so that no device keeps them.
const (
	perFolder = ".htaccess" // for servers that read one in each folder
	perHost   = "_headers"  // for hosts of static files that read one list for all
)

// addHeaderFiles writes them. A list for all cannot make an exception for the page that others may frame: its policy is
// left to the pages, which carry their own and refuse to be framed by themselves.
func addHeaderFiles(site bundle) error {
	var folder, host strings.Builder
	folder.WriteString("AddType application/wasm .wasm\nAddType application/manifest+json .webmanifest\nAddType text/javascript .js\nAddType text/plain .words\nAddDefaultCharset utf-8\n<IfModule mod_headers.c>\n")
	host.WriteString("/*\n")
	for _, own := range headers {
		fmt.Fprintf(&folder, "Header set %s \"%s\"\n", own.name, own.value)
		fmt.Fprintf(&host, "  %s: %s\n", own.name, own.value)
	}
	fmt.Fprintf(&folder, "Header set %s \"%s\"\n<Files \"%s\">\nHeader set %[1]s \"%[4]s\"\n</Files>\n</IfModule>\n", policyHeader, headerPolicy, frameFile, framePolicy)
	site[perFolder], site[perHost] = []byte(folder.String()), []byte(host.String())
	return nil
}
