package main

import (
	"encoding/json"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"spraywright/calc/check/sound"
)

func sheetsOf(texts ...string) fstest.MapFS {
	folder := fstest.MapFS{}
	for i, text := range texts {
		folder[string(rune('a'+i))+".json"] = &fstest.MapFile{Data: []byte(text)}
	}
	return folder
}

// The demo is what a folder of sheets looks like.
func TestTheDemoSheetsAreOffered(t *testing.T) {
	text, err := readSheets(os.DirFS("../testdata/demo/sheets"), "sheets")
	require.NoError(t, err)
	offered, err := offeredIn(bundle{sheetsFile: text})
	require.NoError(t, err)
	require.Len(t, offered, 3)
	for _, item := range offered {
		assert.Contains(t, item.Name, "(invented)")
	}
	assert.Equal(t, "data-sheet.html#"+offered[0].Form, string(offered[0].Link))
	assert.Contains(t, offered[1].Form, "dry_film=0.7&dry_film.unit=mil")
}

const sheetLines = "{\n \"spraywright\": \"shelf\",\n \"version\": 1,\n \"items\": [\n  {\"kind\": \"data-sheet\", \"form\": {\n   \"product\": \"Clear\",\n   %s\n  }}\n ]\n}\n"

// What is wrong is told with its line, its entry, and what to do about it.
func TestWhatIsWrongWithASheetIsToldWithItsLine(t *testing.T) {
	for entry, says := range map[string]string{
		`"dry_film": "soon"`:                          "sheets/a.json, line 7: item 1, “dry_film”: Dry film wanted must be a number in µm, like 60; “soon” is not",
		`"dry_film": "9000"`:                          "line 7: item 1, “dry_film”: Dry film wanted must be 2000\u202fµm or less",
		`"dry_film": 60`:                              `line 7: “dry_film” has to stand in quotation marks, numbers too: "dry_film": "60"`,
		`"dry_flim": "60"`:                            "line 7: data sheet has no entry “dry_flim”; take it out, or look for a slip of the pen",
		`"product.unit": "mm"`:                        "line 7: data sheet has no entry “product.unit”",
		`"role": "wallpaper"`:                         "line 7: item 1, “role”: Kind of coat has no answer “wallpaper”. Choose one of the answers in the list",
		`"dry_film.unit": "cubit"`:                    "line 7: item 1, “dry_film”",
		`"sheet_dated": "2024\u202e5"`:                "line 7: item 1, “sheet_dated”: Edition of the sheet has signs in it that cannot be seen",
		`"product": "Clear"`:                          "line 7: the form of item 1 has “product” twice",
		`"coats": "` + strings.Repeat("1", 300) + `"`: "line 7: “coats” is longer than 200 characters",
		`"coats": "2" "ratio": "1:1"`:                 "line 7: the file cannot be read",
	} {
		if entry == `"dry_film.unit": "cubit"` {
			entry = `"dry_film": "3", ` + entry
		}
		_, err := readSheets(sheetsOf(strings.Replace(sheetLines, "%s", entry, 1)), "sheets")
		if assert.Error(t, err, entry) {
			assert.Contains(t, err.Error(), says)
		}
	}
}

func TestAFileThatIsNoShelfStopsTheBuild(t *testing.T) {
	good := strings.Replace(sheetLines, "%s", `"coats": "2"`, 1)
	for text, says := range map[string]string{
		``: "line 1: the file cannot be read", `[]`: "the file is no JSON object", `{}`: `it has to say "spraywright": "shelf"`,
		`{"spraywright": "shelf", "version": 2, "items": []}`:                                          "another version",
		`{"spraywright": "shelf", "version": 1, "items": {}}`:                                          "“items” has to be a list",
		`{"spraywright": "shelf", "version": 1, "run": 1, "items": []}`:                                "“run” has no place in such a file",
		`{"spraywright": "shelf", "version": 1, "items": [`:                                            "cannot be read",
		`{"spraywright": "shelf", "version": 1, "items": [7]}`:                                         "item 1 is no JSON object",
		`{"spraywright": "shelf", "version": 1, "items": [{"kind": "cup", "form": {}}]}`:               `"kind" is one of data-sheet, gun, booth, shop`,
		`{"spraywright": "shelf", "version": 1, "items": [{"kind": "gun", "form": {"gun": "hvlp"}}]}`:  "“gun_name”: Gun is blank. Enter gun",
		`{"spraywright": "shelf", "version": 1, "items": [{"kind": "gun"}]}`:                           `has no "form"`,
		`{"spraywright": "shelf", "version": 1, "items": [{"kind": "gun", "id": "../x", "form": {}}]}`: "“id” of item 1 has no place there",
		good + "{}": "line 11: the file cannot be read",
	} {
		_, err := readSheets(sheetsOf(text), "sheets")
		if assert.Error(t, err, text) {
			assert.Contains(t, err.Error(), says, text)
		}
	}
	_, err := readSheets(sheetsOf(good, good), "sheets")
	assert.ErrorContains(t, err, "sheets/b.json, line 5: “Clear” stands in sheets/a.json, line 5 already")
	named := func(id, product string) string {
		return `{"spraywright": "shelf", "version": 1, "items": [{"kind": "data-sheet", "id": "` + id + `", "form": {"product": "` + product + `"}}]}`
	}
	_, err = readSheets(sheetsOf(named("one", "Clear"), named("one", "Base")), "sheets")
	assert.ErrorContains(t, err, "sheets/b.json, line 1: “one” stands in sheets/a.json, line 1 already; give one of them another id, or none")
	_, err = readSheets(sheetsOf(named("one", "Clear  coat"), named("two", "clear coat")), "sheets")
	assert.ErrorContains(t, err, "“clear coat” stands in sheets/a.json, line 1 already")
	_, err = readSheets(sheetsOf(named("one", strings.Repeat("é", 99))), "sheets")
	assert.NoError(t, err)
	_, err = readSheets(fstest.MapFS{}, "sheets")
	assert.ErrorContains(t, err, "there is no *.json")
	_, err = readSheets(sheetsOf(`[]`, `{}`), "sheets")
	assert.ErrorContains(t, err, "sheets/a.json")
	assert.ErrorContains(t, err, "sheets/b.json", "all files are looked at before the build stops")
}

func TestWithoutAFolderNothingIsOffered(t *testing.T) {
	text, err := sheetsIn("", t.TempDir()+"/sheets")
	assert.NoError(t, err)
	assert.Nil(t, text)
	_, err = sheetsIn(t.TempDir(), "")
	assert.ErrorContains(t, err, "there is no *.json", "a folder that is named has to hold something")
}

// Whatever a file holds: it is told what is wrong, or what comes out can be read again and is the same.
func FuzzReadSheets(f *testing.F) {
	demo, err := os.ReadFile("../testdata/demo/sheets/trike-workshop.json")
	require.NoError(f, err)
	f.Add(string(demo))
	f.Add(strings.Replace(sheetLines, "%s", `"coats": "2"`, 1))
	f.Add(`{"spraywright": "shelf", "version": 1, "items": [{"kind": "shop", "form": {"shop": "\ud800", "cup.1.cup_size": "9", "units": "us"}}]}`)
	f.Add(`{"spraywright":"shelf","version":1,"items":[{"kind":"gun","form":{"__proto__":"","pair.1.air":"35"}},]}`)
	f.Fuzz(func(t *testing.T, text string) {
		var out []byte
		var err error
		sound.Within(t, text, func() { out, err = readSheets(sheetsOf(text), "sheets") })
		if err != nil {
			assert.Contains(t, err.Error(), "sheets")
			return
		}
		again, err := readSheets(sheetsOf(string(out)), "sheets")
		require.NoError(t, err)
		assert.Equal(t, string(out), string(again))
		var file shelfFile
		require.NoError(t, json.Unmarshal(out, &file))
		_, err = offeredIn(bundle{sheetsFile: out})
		require.NoError(t, err)
	})
}
