package words

import (
	"cmp"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"spraywright/calc/menu"
)

// Find lists every text of the site by the file of the catalogue it belongs to, without translations. root is the
// module's folder.
func Find(root string) (map[string][]Message, error) {
	root, err := filepath.Abs(root)
	if err != nil {
		return nil, err
	}
	all, err := inGo(root)
	if err != nil {
		return nil, err
	}
	pages, err := inPages(os.DirFS(filepath.Join(root, "site")))
	if err != nil {
		return nil, err
	}
	typed, err := examples(os.DirFS(filepath.Join(root, "testdata", "demo")))
	if err != nil {
		return nil, err
	}
	all = slices.Concat(all, pages, typed)
	order := files()
	rank := func(p place) int {
		if i := slices.Index(order, fileOf(p)); i >= 0 {
			return i
		}
		return len(order) // a package that is no topic
	}
	slices.SortStableFunc(all, func(a, b place) int {
		return cmp.Or(rank(a)-rank(b), strings.Compare(a.file, b.file), a.line-b.line, strings.Compare(a.key+a.text, b.key+b.text))
	})
	return gather(all, fields()), nil
}

// gather makes one message of all uses of a text; it belongs to the file of the first.
func gather(found, labels []place) map[string][]Message {
	messages, at := map[string]*Message{}, map[string][]*Message{}
	for _, p := range found {
		m := messages[p.text]
		if m == nil {
			m = &Message{ID: p.text}
			messages[p.text] = m
			at[fileOf(p)] = append(at[fileOf(p)], m)
		}
		m.Is, m.Refs = add(m.Is, p.is), add(m.Refs, cmp.Or(p.key, p.file))
	}
	for _, p := range labels {
		if m := messages[p.text]; m != nil {
			m.Is, m.Refs = add(m.Is, p.is), add(m.Refs, p.key)
		}
	}
	files := map[string][]Message{}
	for name, ms := range at {
		for _, m := range ms {
			files[name] = append(files[name], *m)
		}
	}
	return files
}

func add(list []string, s string) []string {
	if s == "" || slices.Contains(list, s) {
		return list
	}
	return append(list, s)
}

// files lists the catalogue's files: what is shared first, then the topics in menu order, then the pages.
func files() []string {
	names := []string{"engine", "sources", "field", "caution"}
	for _, t := range menu.Topics() {
		names = append(names, t.ID)
	}
	return append(names, "page", "scripts", "examples")
}

// fileOf is the file of the catalogue that a use belongs to.
func fileOf(p place) string {
	parts := strings.Split(p.file, "/")
	switch {
	case p.is == "typed":
		return "examples"
	case p.is == "source" || strings.HasPrefix(p.file, "calc/source/"):
		return "sources"
	case parts[0] == "site" && (parts[1] == "scripts" || parts[1] == "onefile" || parts[1] == "course" || parts[1] == "embedded"):
		return "scripts"
	case parts[0] == "site" || strings.HasPrefix(p.file, "calc/menu/"):
		return "page"
	case parts[0] != "calc" || len(parts) == 2 || parts[1] == "unit":
		return "engine"
	case parts[1] == "ratio":
		return "field"
	}
	return parts[1]
}

// A Change is what Update did to a catalogue.
type Change struct {
	Texts, Missing int // in all, and without a translation
	Dropped        []Message
}

// Update brings the PO files of a language up to date with the sources: translations and notes stay, new texts come
// without one, and those that are gone are dropped.
func Update(root, folder, language string) (Change, error) {
	found, err := Find(root)
	if err != nil {
		return Change{}, err
	}
	files, change, err := Merge(found, os.DirFS(folder), language)
	if err != nil {
		return change, err
	}
	for name, text := range files {
		path := filepath.Join(folder, name)
		switch old, err := os.ReadFile(path); {
		case text == "":
			err = os.Remove(path)
			if err != nil {
				return change, err
			}
		case err != nil || string(old) != text:
			if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
				return change, err
			}
		}
	}
	return change, nil
}

// Merge makes the PO files of a language from what is found in the sources and what its folder has; blank is a file to
// remove.
func Merge(found map[string][]Message, folder fs.FS, language string) (map[string]string, Change, error) {
	known, err := Read(folder)
	if err != nil {
		return nil, Change{}, err
	}
	merged, change := merge(found, known)
	files := map[string]string{}
	for name := range known {
		files[name+".po"] = ""
	}
	for name, ms := range merged {
		files[name+".po"] = format(language, ms)
	}
	return files, change, nil
}

func merge(found, known map[string][]Message) (map[string][]Message, Change) {
	var change Change
	old := map[string][]Message{} // by text; several where some are for a field alone
	for _, ms := range known {
		for _, m := range ms {
			old[m.ID] = append(old[m.ID], m)
		}
	}
	merged := map[string][]Message{}
	for name, ms := range found {
		for _, m := range ms {
			for _, was := range old[m.ID] {
				switch {
				case was.Context == "":
					m.Text, m.Notes = was.Text, was.Notes
				case labels(m, was.Context), was.Context == "one" && slices.Contains(m.Is, "rowname"):
					was.Is, was.Refs = []string{"label"}, nil
					merged[name] = append(merged[name], was)
				default:
					change.Dropped = append(change.Dropped, was)
				}
			}
			delete(old, m.ID)
			merged[name] = append(merged[name], m)
			change.Texts++
			if m.Text == "" {
				change.Missing++
			}
		}
	}
	for _, ms := range old {
		change.Dropped = append(change.Dropped, ms...)
	}
	return merged, change
}

// labels reports whether a text labels the field with a key, in any calculator.
func labels(m Message, key string) bool {
	return slices.ContainsFunc(m.Refs, func(ref string) bool {
		_, field, _ := strings.Cut(ref, ".")
		return field == key && !strings.Contains(ref, "/")
	})
}
