package supply

import (
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Little goes into the cores, and each of it may be handed on with its notice alone.
func TestWhatIsInTheCoresMayBeHandedOn(t *testing.T) {
	shipped, err := Shipped()
	require.NoError(t, err)
	var paths []string
	for _, m := range shipped {
		paths = append(paths, m.Path)
		assert.Contains(t, []string{"BSD-3-Clause", "BSD-2-Clause", "MIT"}, m.Licence, m.Path)
		assert.NotEmpty(t, m.Version, m.Path)
	}
	assert.Equal(t, []string{"std", "rsc.io/qr"}, paths)
	text := Notices(shipped)
	assert.Equal(t, 2, strings.Count(text, "Redistributions in binary form must reproduce"))
	assert.Contains(t, text, "Go "+shipped[0].Version)
}

// What builds and tests the site is pinned, checked against go.sum, and has a licence that is known.
func TestWhatBuildsTheSiteIsPinned(t *testing.T) {
	all, err := Used(true, "spraywright/...")
	require.NoError(t, err)
	require.NotEmpty(t, all)
	for _, m := range all {
		assert.True(t, strings.HasPrefix(m.Sum, "h1:"), "%s is replaced, or not in go.sum", m.Path)
		assert.True(t, strings.HasPrefix(m.Version, "v"), "%s %s", m.Path, m.Version)
		assert.NotEmpty(t, m.Licence, m.Path)
	}
	text, err := exec.Command("go", "mod", "edit", "-json").Output()
	require.NoError(t, err)
	assert.NotContains(t, string(text), `"Replace": [`)
}

func TestLicencesAreToldApart(t *testing.T) {
	const mit = "Permission is hereby granted, free of charge, to any person\n obtaining a copy of this software"
	const bsd = "Redistribution and use in source and binary\nforms, with or without modification"
	for text, want := range map[string]string{
		mit: "MIT",
		bsd: "BSD-2-Clause",
		bsd + " … Neither the name of the holder": "BSD-3-Clause",
		"Apache License Version 2.0\n" + mit:      "MIT AND Apache-2.0",
	} {
		got, err := identify(text)
		assert.NoError(t, err)
		assert.Equal(t, want, got)
	}
	_, err := identify("You may look at it.")
	assert.ErrorContains(t, err, "not known")
	_, _, err = licence(t.TempDir())
	assert.ErrorContains(t, err, "no licence")
}
