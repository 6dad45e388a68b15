package main

import (
	"bytes"
	"html/template"
	"io/fs"
	"path"
	"slices"

	"spraywright/calc"
	"spraywright/calc/menu"
	"spraywright/calc/source"
)

const (
	siteName        = "Spraywright"
	siteDescription = "Work out what to mix, how to spray it and when it is done, without a network, with the working shown."
)

// front is the calculator that the site opens on.
const front = "job"

// A page is what the layout needs to know of each page.
type page struct {
	File, Title, Description string
	Name                     string // the calculator's ID, or the page's own name
	Units                    bool   // has the units switch and the share button
	Module                   string // the script that works the page, where it is no calculator's
	Modules                  []string
	Body                     template.HTML
}

// Policy is what the page may do.
func (page) Policy() string { return pagePolicy }

// Site is the name of the site.
func (page) Site() string { return siteName }

// A renderer makes pages from the templates.
type renderer struct {
	*template.Template
	site bundle
}

// addPages renders every page.
func addPages(site bundle, testdata fs.FS) error {
	t, err := template.New("").Funcs(template.FuncMap{"cite": cite, "formula": formula, "pageFile": pageFile, "mark": mark, "points": points, "t": func(text string) string { return text }, "basis": func() map[source.Basis]string { return basisWords }}).
		ParseFS(assets, "templates/*.html")
	if err != nil {
		return err
	}
	r := renderer{t, site}
	all := &bibliography{}
	for _, c := range calculators() {
		p, err := newCalculatorPage(c, testdata)
		if err != nil {
			return err
		}
		all.add(p)
		if err := r.render("calculator", page{File: pageFile(c), Title: c.Title, Description: c.Question, Name: c.ID, Units: true}, p); err != nil {
			return err
		}
		if p.Example.Working == nil {
			continue
		}
		worked := page{File: p.WorkedFile(), Title: c.Title + ", worked out", Description: "Every step of the worked example", Name: c.ID + "-worked"}
		if err := r.render("worked", worked, p); err != nil {
			return err
		}
	}
	for _, p := range []struct {
		page
		data any
	}{
		{page{Name: "shelf", Title: "Shelf", Description: "Data sheets, guns, booths and shop settings that fill your forms", Module: "shelf"}, nil},
		{page{Name: "timers", Title: "Timers", Description: "Flash-off, pot life, recoat and bake, several at once", Module: "timers"}, nil},
		{page{Name: "log", Title: "Mix log", Description: "What was mixed, by day and month, with its VOC", Module: "log"}, nil},
		{page{Name: "menu", Title: "All calculators", Description: "Every calculator, by topic"}, menu.Topics()},
		{page{Name: "sources", Title: "Sources and checks", Description: "Where every formula comes from and how it is known"}, all},
		{page{Name: "help", Title: "How to use it", Description: "Filling in, units, links, working without a network"}, nil},
		{page{Name: "about", Title: "What it does not know", Description: "Limits of the answers, and your safety"}, calculators()},
	} {
		p.File = p.Name + ".html"
		if err := r.render(p.Name, p.page, p.data); err != nil {
			return err
		}
	}
	return nil
}

func (r renderer) render(body string, p page, data any) error {
	var b bytes.Buffer
	if err := r.ExecuteTemplate(&b, body, data); err != nil {
		return err
	}
	p.Body = template.HTML(b.String())
	for name := range r.site {
		if path.Dir(name) == "scripts" && p.Units && !slices.Contains(notPreloaded, path.Base(name)) {
			p.Modules = append(p.Modules, name)
		}
	}
	slices.Sort(p.Modules)
	b.Reset()
	if err := r.ExecuteTemplate(&b, "layout", p); err != nil {
		return err
	}
	r.site[p.File] = bytes.Clone(b.Bytes())
	return nil
}

// notPreloaded are scripts that a page loads otherwise, or only where workers fail.
var notPreloaded = []string{"theme.js", "core-worker.js", "engine.js"}

// calculators is every calculator, in menu order.
func calculators() []*calc.Calculator {
	var all []*calc.Calculator
	for _, t := range menu.Topics() {
		all = append(all, t.Calculators()...)
	}
	return all
}

// pageFile is the address of a calculator's page.
func pageFile(c *calc.Calculator) string {
	if c.ID == front {
		return "index.html"
	}
	return c.ID + ".html"
}
