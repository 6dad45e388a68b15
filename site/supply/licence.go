package supply

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// licence reads the licence that lies in a module's folder, and what has to go with it.
func licence(dir string) (id, text string, err error) {
	entries, err := os.ReadDir(dir)
	if err != nil {
		return "", "", err
	}
	for _, e := range entries {
		name := strings.ToUpper(e.Name())
		if !strings.HasPrefix(name, "LICENSE") && !strings.HasPrefix(name, "LICENCE") && !strings.HasPrefix(name, "COPYING") && !strings.HasPrefix(name, "NOTICE") || e.IsDir() {
			continue
		}
		part, err := os.ReadFile(filepath.Join(dir, e.Name()))
		if err != nil {
			return "", "", err
		}
		text += strings.TrimSpace(string(part)) + "\n\n"
	}
	if text == "" {
		return "", "", errors.New("holds no licence")
	}
	id, err = identify(text)
	return id, strings.TrimSpace(text), err
}

// identify names licences by SPDX from what only they say. One that is not known has to be looked at by somebody.
func identify(text string) (string, error) {
	words := strings.Join(strings.Fields(text), " ")
	has := func(s string) bool { return strings.Contains(words, s) }
	var ids []string
	if has("Permission is hereby granted, free of charge, to any person obtaining a copy") {
		ids = append(ids, "MIT")
	}
	if has("Redistribution and use in source and binary forms") {
		if has("Neither the name of") || has("The names of its contributors may not") {
			ids = append(ids, "BSD-3-Clause")
		} else {
			ids = append(ids, "BSD-2-Clause")
		}
	}
	if has("Apache License") && has("Version 2.0") {
		ids = append(ids, "Apache-2.0")
	}
	if ids == nil {
		return "", fmt.Errorf("has a licence that is not known here: %.100q; see what it asks for, and add it", words)
	}
	return strings.Join(ids, " AND "), nil
}

// Notices is what has to be handed on with a program: for each module its name, its version and the text of its licence.
func Notices(all []Module) string {
	var b strings.Builder
	for i, m := range all {
		if i > 0 {
			b.WriteString("\n\n" + strings.Repeat("-", 72) + "\n\n")
		}
		fmt.Fprintf(&b, "%s %s (%s)\n\n%s\n", m.Name(), m.Version, m.Licence, m.Text)
	}
	return b.String()
}

// Name is what a person calls the module.
func (m Module) Name() string {
	if m.Path == "std" {
		return "Go"
	}
	return m.Path
}
