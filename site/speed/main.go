// Command speed tells how long a person waits for the first answer and for the answer to a key, and holds both to a limit.
//
//	go run ./site/speed -dist dist -form testdata/demo/job.txt
//
// The yardstick, measured in turns with it in the same browser, is the same site with the smallest program that a page can
// call in place of its cores. CHROMIUM names the browser.
package main

import (
	"cmp"
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"slices"
	"strings"
	"time"
)

// A limit is what a measured time may be at most.
const (
	mostCold = 1.5              // times the yardstick, on the first visit
	mostWarm = 1.3              // times the yardstick, on the next
	frame    = 1000. / 60       // ms from a key to the repainted answer
	patience = 60 * time.Second // for one page
)

func main() {
	dist := flag.String("dist", "dist", "the built site")
	form := flag.String("form", "testdata/demo/job.txt", "the form to answer, one key=value a line")
	runs := flag.Int("runs", 7, "visits of each kind; the median counts")
	flag.Parse()
	if err := run(*dist, *form, *runs); err != nil {
		fmt.Fprintln(os.Stderr, "speed:", err)
		os.Exit(1)
	}
}

func run(dist, form string, runs int) error {
	link, err := linkOf(form)
	if err != nil {
		return err
	}
	yardstick, remove, err := withEmptyCores(dist)
	if err != nil {
		return err
	}
	defer remove()
	ctx, stop, err := startBrowser(context.Background())
	if err != nil {
		return err
	}
	defer stop()
	var over error
	fmt.Printf("ms from the navigation to the first answer painted, medians of %d: the site / with an empty program\n", runs)
	for _, c := range conditions {
		site, empty, err := inTurns(ctx, [2]string{dist, yardstick}, link, c, runs)
		if err != nil {
			return err
		}
		fmt.Printf("  %-32s cold %6.0f / %6.0f = %.2f   warm %6.0f / %6.0f = %.2f\n", c.name, site.cold, empty.cold, site.cold/empty.cold, site.warm, empty.warm, site.warm/empty.warm)
		over = errors.Join(over, beyond("cold, "+c.name, site.cold/empty.cold, mostCold), beyond("warm, "+c.name, site.warm/empty.warm, mostWarm))
	}
	keys, err := keysToRepaint(ctx, dist, link, 60)
	if err != nil {
		return err
	}
	slices.Sort(keys)
	fmt.Printf("ms from a key to the repainted answer: median %.1f, nine tenths within %.1f\n", median(keys), keys[len(keys)*9/10])
	return errors.Join(over, beyond("a key's median", median(keys), frame))
}

func beyond(what string, x, most float64) error {
	if x <= most {
		return nil
	}
	return fmt.Errorf("%s: %.2f is over the limit %.2f", what, x, most)
}

// linkOf is a form's file as the part of an address after the #.
func linkOf(file string) (string, error) {
	text, err := os.ReadFile(file)
	if err != nil {
		return "", err
	}
	lines := strings.FieldsFunc(string(text), func(r rune) bool { return r == '\n' || r == '\r' })
	return strings.Join(slices.DeleteFunc(lines, func(l string) bool { return strings.HasPrefix(l, "#") }), "&"), nil
}

func median[T cmp.Ordered](xs []T) T {
	s := slices.Sorted(slices.Values(xs))
	return s[len(s)/2]
}
