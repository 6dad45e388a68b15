package main

import "net/http"

// pagePolicy is what a page may do: run its own scripts, compile the core, and reach its own site. Pages carry it
// themselves, for hosts where headers cannot be set (W3C Content Security Policy Level 3; Trusted Types).
const pagePolicy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; " +
	"connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; " +
	"require-trusted-types-for 'script'; trusted-types spraywright"

// headerPolicy adds what only a header may say.
const headerPolicy = pagePolicy + "; frame-ancestors 'none'"

func setHeaders(h http.Header) {
	h.Set("Content-Security-Policy", headerPolicy)
	h.Set("X-Content-Type-Options", "nosniff")
	h.Set("Referrer-Policy", "no-referrer")
	h.Set("Cross-Origin-Opener-Policy", "same-origin")
	h.Set("Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=(), screen-wake-lock=(self), clipboard-write=(self)")
	// Everything is asked for anew; the service worker is what makes the site quick and whole.
	h.Set("Cache-Control", "no-cache")
}
