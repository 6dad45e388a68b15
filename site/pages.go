package main

import (
	"bytes"
	"html/template"
	"io/fs"
	"slices"

	"spraywright/calc"
	"spraywright/calc/menu"
	"spraywright/site/server"
)

const (
	siteName                    = "Spraywright"
	siteDescription calc.Phrase = "Work out what to mix, how to spray it and when it is done, without a network, with the working shown."
)

// front is the calculator that the site opens on.
const front = "job"

// A page is what the layout needs to know of each page.
type page struct {
	Title, Description calc.Phrase
	File               string      // within the tongue's folder
	Name               string      // the calculator's ID, or the page's own name
	Of                 calc.Phrase // what the page is about, where its title has a hole for it
	Units              bool        // has the units switch and the share button
	Module             string      // the script that works the page, where it is no calculator's
	Modules            []string
	Tongue             tongue
	Tongues            []tongue // all of them
	Body               template.HTML
	Style              string // the hash of the styles
}

// Link is the way from the page to itself in another tongue.
func (p page) Link(to tongue) string { return p.Tongue.Root() + to.Folder() + p.File }

// Policy is what the page may do.
func (page) Policy() string { return server.PagePolicy }

// Site is the name of the site.
func (page) Site() string { return siteName }

// A renderer makes pages from the templates, in one tongue.
type renderer struct {
	*template.Template
	tongue
	all  []tongue
	site bundle
}

// addPages renders every page in every tongue.
func addPages(site bundle, testdata fs.FS) error {
	all, err := tongues()
	if err != nil {
		return err
	}
	for _, t := range all {
		if err := addPagesIn(site, testdata, t, all); err != nil {
			return err
		}
	}
	return nil
}

func addPagesIn(site bundle, testdata fs.FS, t tongue, tongues []tongue) error {
	templates, err := template.New("").Funcs(template.FuncMap{
		"t": t.say, "in": tongue.say, "cite": t.cite, "how": t.how, "limits": t.limits, "typed": t.typedIn, "basis": t.basis, "verdict": t.verdict,
		"formula": formula, "pageFile": pageFile, "mark": mark, "points": points, "front": func() string { return front }, "framePolicy": func() string { return server.FramePolicy },
		"notices": func() string { return string(site[licencesFile]) }, "targets": targets, "tongueNames": func() []tongue { return tongues },
	}).ParseFS(assets, "templates/*.html")
	if err != nil {
		return err
	}
	r := renderer{templates, t, tongues, site}
	offered, err := offeredIn(site)
	if err != nil {
		return err
	}
	hosting, err := newHostingPage()
	if err != nil {
		return err
	}
	all, numbers := &bibliography{}, &numbersPage{}
	for _, c := range calculators() {
		p, err := newCalculatorPage(t, c, testdata)
		if err != nil {
			return err
		}
		all.add(p)
		if err := numbers.add(t, p); err != nil {
			return err
		}
		if err := r.render("calculator", page{File: pageFile(c), Title: c.Title, Description: c.Question, Name: c.ID, Units: true, Module: p.Module()}, p); err != nil {
			return err
		}
		if p.Example.Working == nil {
			continue
		}
		worked := page{File: p.WorkedFile(), Title: "{title}, worked out", Of: c.Title, Description: "Every step of the worked example", Name: c.ID + "-worked"}
		if err := r.render("worked", worked, p); err != nil {
			return err
		}
	}
	for _, p := range []struct {
		page
		data any
	}{
		{page{Name: "shelf", Title: "Shelf", Description: "Data sheets, guns, booths and shop settings that fill your forms", Module: "shelf"}, shelfPage{shelfKinds(), offered}},
		{page{Name: "timers", Title: "Timers", Description: "Flash-off, pot life, recoat and bake, several at once", Module: "timers"}, newTimersPage()},
		{page{Name: "log", Title: "Mix log", Description: "What was mixed, by day and month, with its VOC", Module: "log"}, newLogPage()},
		{page{Name: "gauge", Title: "Gauge bench", Description: "Gauge readings by large keys, judged as they come in", Module: "gauge"}, newGaugePage()},
		{page{Name: "received", Title: "Data sheets handed to you", Description: "Data sheets that came by link, from a supplier", Module: "received"}, sheetFields()},
		{page{Name: "put-on-page", Title: "Put it on your page", Description: "Any calculator in a frame of your own page", Module: "put-on-page"}, menu.Listed()},
		{page{Name: "exercises", Title: "Exercises", Description: "Tasks with numbers of your own, judged at once, with the working", Module: "exercise"}, exerciseTopics()},
		{page{Name: "exercise-set", Title: "Make a set of exercises", Description: "Exercises from any calculator, as a link for your learners", Module: "exercise-set"}, exerciseTopics()},
		{page{Name: "menu", Title: "All calculators", Description: "Every calculator, by topic"}, menuTopics()},
		{page{Name: "sources", Title: "Sources and checks", Description: "Where every formula comes from and how it is known"}, all},
		{page{Name: "numbers", Title: "Where every number comes from", Description: "Every published value that the answers are held to, beside what comes out here"}, numbers},
		{page{Name: "help", Title: "How to use it", Description: "Filling in, units, links, working without a network"}, nil},
		{page{Name: "hosting", Title: "Put it on a host", Description: "On any host of files, an intranet, a stick or a learning platform"}, hosting},
		{page{Name: "about", Title: "What it does not know", Description: "Limits of the answers, and your safety"}, calculators()},
	} {
		p.File = p.Name + ".html"
		if err := r.render(p.Name, p.page, p.data); err != nil {
			return err
		}
	}
	return r.renderFrame()
}

func (r renderer) render(body string, p page, data any) error {
	var b bytes.Buffer
	p.Tongue, p.Tongues, p.Style = r.tongue, r.all, integrity(r.site["site.css"])
	if err := r.ExecuteTemplate(&b, body, r.put(data)); err != nil {
		return err
	}
	p.Body = template.HTML(b.String())
	if p.Units {
		p.Modules = atFirst(r.site, p.Module)
	}
	b.Reset()
	if err := r.ExecuteTemplate(&b, "layout", p); err != nil {
		return err
	}
	r.site[r.Folder()+p.File] = bytes.Clone(b.Bytes())
	return nil
}

// menuTopics is the menu as its page shows it: the day, which whole jobs go into, stands behind the job.
func menuTopics() []menu.Topic {
	all := menu.Listed()
	i := slices.IndexFunc(all, func(t menu.Topic) bool { return t.ID == "day" })
	day := all[i]
	return slices.Insert(slices.Delete(all, i, i+1), 1, day)
}

// calculators is every calculator that has a page, in menu order.
func calculators() []*calc.Calculator {
	var all []*calc.Calculator
	for _, t := range menu.Listed() {
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
