// Package engines holds the tests of the site in browsers other than the one that most tests use: Firefox and WebKit, from
// a Linux system's own packages, driven by the W3C's protocols. make engines runs them.
package engines
