// Package browser holds the tests of the finished site in a real browser: a fresh build, served by the program that
// serves it everywhere, opened in Chromium. Without a Chromium the page tests are skipped; `make browser` gets one.
//
// CHROMIUM names the browser to use. SPRAYWRIGHT_SHOTS names a folder for screenshots.
package browser
