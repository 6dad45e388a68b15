package server

import (
	"net/http"
	"path"
	"strings"
)

// PagePolicy is what a page may do: run its own scripts, compile the core, and reach its own site. Pages carry it
// themselves, for hosts where headers cannot be set (W3C Content Security Policy Level 3; Trusted Types).
const PagePolicy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; " +
	"connect-src 'self'; worker-src 'self'; manifest-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; " +
	"require-trusted-types-for 'script'; trusted-types spraywright"

// headerPolicy adds what only a header may say.
const headerPolicy = PagePolicy + "; frame-ancestors 'none'"

// FramePolicy is for the page that others may frame. In a sandbox it has no origin, so that its worker comes from text.
const FramePolicy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; " +
	"connect-src 'self'; worker-src blob:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types spraywright"

// FrameFile is the page that other sites may frame: any calculator, as its address says.
const FrameFile = "embed.html"

// A Header is one line that goes with every file.
type Header struct{ Name, Value string }

// Headers go with every file, whatever it is; the policy goes with them.
//
// A frame in a sandbox has no origin, and what it asks for counts as asked for by a stranger. All of it is public. Everything
// is asked for anew, because no name changes with what is in the file; the service worker is what makes the site quick and whole.
func Headers() []Header {
	return []Header{
		{"Access-Control-Allow-Origin", "*"},
		{"Cross-Origin-Resource-Policy", "cross-origin"},
		{"X-Content-Type-Options", "nosniff"},
		{"Referrer-Policy", "no-referrer"},
		{"Cross-Origin-Opener-Policy", "same-origin"},
		{"Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=(), screen-wake-lock=(self), clipboard-write=(self)"},
		{"Cache-Control", "no-cache"},
	}
}

// Policy is the header Content-Security-Policy of a file.
func Policy(name string) string {
	if path.Base(name) == FrameFile && !strings.HasSuffix(name, "/") {
		return FramePolicy
	}
	return headerPolicy
}

// setHeaders sets the headers for a file of the site.
func setHeaders(h http.Header, name string) {
	h.Set("Content-Security-Policy", Policy(name))
	for _, header := range Headers() {
		h.Set(header.Name, header.Value)
	}
}
