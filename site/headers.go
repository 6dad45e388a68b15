package main

import (
	"net/http"
	"path"
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

// setHeaders sets the headers for a file of the site.
func setHeaders(h http.Header, name string) {
	h.Set("Content-Security-Policy", headerPolicy)
	if _, file := path.Split(name); file == frameFile {
		h.Set("Content-Security-Policy", framePolicy)
	}
	// A frame in a sandbox has no origin, and what it asks for counts as asked for by a stranger. All of it is public.
	h.Set("Access-Control-Allow-Origin", "*")
	h.Set("Cross-Origin-Resource-Policy", "cross-origin")
	h.Set("X-Content-Type-Options", "nosniff")
	h.Set("Referrer-Policy", "no-referrer")
	h.Set("Cross-Origin-Opener-Policy", "same-origin")
	h.Set("Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=(), screen-wake-lock=(self), clipboard-write=(self)")
	// Everything is asked for anew; the service worker is what makes the site quick and whole.
	h.Set("Cache-Control", "no-cache")
}
