package main

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestBuildingTwiceGivesTheSameBytes(t *testing.T) {
	again, err := assemble(bundle{"job.wasm": []byte("core"), coreFile(wholeCore): []byte("core")}, []byte("runtime"), os.DirFS("../testdata"))
	require.NoError(t, err)
	for name, text := range finished(t) {
		assert.True(t, string(text) == string(again[name]), "%s differs", name)
	}
}

func TestWriteKeepsOutOfOtherFolders(t *testing.T) {
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(dir+"/letter.txt", []byte("mine"), 0o644))
	assert.ErrorContains(t, finished(t).write(dir), "holds something else")
	assert.FileExists(t, dir+"/letter.txt")
}

func TestWriteTakesOutWhatAnEarlierBuildLeft(t *testing.T) {
	dir, site := t.TempDir(), finished(t)
	require.NoError(t, site.write(dir))
	require.NoError(t, os.WriteFile(dir+"/job.wasm.br", []byte("old"), 0o644))
	require.NoError(t, site.write(dir))
	assert.NoFileExists(t, dir+"/job.wasm.br")
	for name, text := range site {
		got, err := os.ReadFile(dir + "/" + name)
		require.NoError(t, err)
		assert.Equal(t, text, got)
	}
}

func TestABuildThatWasStoppedCanBeRunAgain(t *testing.T) {
	dir := t.TempDir()
	clash := bundle{descriptionFile: []byte("{}"), "a": []byte("file"), "a/b": []byte("needs a folder"), "sw.js": nil}
	require.Error(t, clash.write(dir))
	assert.NoFileExists(t, dir+"/sw.js")
	require.NoError(t, finished(t).write(dir))
	assert.NoFileExists(t, dir+"/a")
}
