package browser

import (
	"encoding/xml"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A scormManifest is imsmanifest.xml. The namespaces stand with the names, so that another is not read.
type scormManifest struct {
	XMLName    xml.Name `xml:"http://www.imsproject.org/xsd/imscp_rootv1p1p2 manifest"`
	Identifier string   `xml:"identifier,attr"`
	Version    string   `xml:"version,attr"`
	Metadata   struct {
		Schema        string `xml:"http://www.imsproject.org/xsd/imscp_rootv1p1p2 schema"`
		SchemaVersion string `xml:"http://www.imsproject.org/xsd/imscp_rootv1p1p2 schemaversion"`
	} `xml:"metadata"`
	Organizations struct {
		Default      string `xml:"default,attr"`
		Organization []struct {
			Identifier string `xml:"identifier,attr"`
			Title      string `xml:"title"`
			Item       []struct {
				Identifier    string `xml:"identifier,attr"`
				IdentifierRef string `xml:"identifierref,attr"`
				Title         string `xml:"title"`
				Mastery       string `xml:"http://www.adlnet.org/xsd/adlcp_rootv1p2 masteryscore"`
			} `xml:"item"`
		} `xml:"organization"`
	} `xml:"organizations"`
	Resources []struct {
		Identifier string `xml:"identifier,attr"`
		Type       string `xml:"type,attr"`
		ScormType  string `xml:"http://www.adlnet.org/xsd/adlcp_rootv1p2 scormtype,attr"`
		Href       string `xml:"href,attr"`
		File       []struct {
			Href string `xml:"href,attr"`
		} `xml:"file"`
	} `xml:"resources>resource"`
}

// A cmi5Structure is cmi5.xml.
type cmi5Structure struct {
	XMLName xml.Name `xml:"https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd courseStructure"`
	Course  struct {
		ID          string     `xml:"id,attr"`
		Title       langstring `xml:"title>langstring"`
		Description langstring `xml:"description>langstring"`
	} `xml:"course"`
	AU []struct {
		ID           string     `xml:"id,attr"`
		MoveOn       string     `xml:"moveOn,attr"`
		MasteryScore string     `xml:"masteryScore,attr"`
		LaunchMethod string     `xml:"launchMethod,attr"`
		Title        langstring `xml:"title>langstring"`
		Description  langstring `xml:"description>langstring"`
		URL          string     `xml:"url"`
	} `xml:"au"`
}

type langstring struct {
	Lang string `xml:"lang,attr"`
	Text string `xml:",chardata"`
}

// filesOf are the names in a package but for its manifest, whose text comes too.
func filesOf(t *testing.T, dir, manifest string) (names []string, text []byte) {
	t.Helper()
	entries, err := os.ReadDir(filepath.Join(dir, "package"))
	require.NoError(t, err)
	for _, e := range entries {
		if e.Name() != manifest {
			names = append(names, e.Name())
		}
	}
	text, err = os.ReadFile(filepath.Join(dir, "package", manifest))
	require.NoError(t, err)
	return names, text
}

const courseTitle = `Films <& "layers">`

// The structure that IMS Content Packaging 1.1.2 and SCORM 1.2, Content Aggregation Model, ask of a manifest.
func TestTheSCORMManifestIsAsTheStandardHasIt(t *testing.T) {
	for _, pass := range []string{"", "80"} {
		set := courseSet
		if pass != "" {
			set += "&pass=" + pass
		}
		dir := unzipped(t, packageFor(t, "scorm", set))
		names, text := filesOf(t, dir, "imsmanifest.xml")
		var m scormManifest
		require.NoError(t, xml.Unmarshal(text, &m), "%s", text)
		assert.Regexp(t, regexp.MustCompile(`^[A-Za-z_][-.\w]*$`), m.Identifier, "an ID of XML")
		assert.Equal(t, []string{"ADL SCORM", "1.2"}, []string{m.Metadata.Schema, m.Metadata.SchemaVersion})
		require.Len(t, m.Organizations.Organization, 1)
		o := m.Organizations.Organization[0]
		assert.Equal(t, o.Identifier, m.Organizations.Default)
		require.Len(t, o.Item, 1)
		require.Len(t, m.Resources, 1)
		r := m.Resources[0]
		assert.Equal(t, []string{courseTitle, courseTitle, r.Identifier, pass}, []string{o.Title, o.Item[0].Title, o.Item[0].IdentifierRef, o.Item[0].Mastery})
		assert.Equal(t, []string{"webcontent", "sco", "index.html"}, []string{r.Type, r.ScormType, r.Href})
		var listed []string
		for _, f := range r.File {
			listed = append(listed, f.Href)
		}
		assert.ElementsMatch(t, names, listed, "every file, and no other")
		assert.Len(t, map[string]bool{m.Identifier: true, o.Identifier: true, o.Item[0].Identifier: true, r.Identifier: true}, 4, "IDs are unique")
		assert.Empty(t, breaches(text, scormStructure))
		valid(t, text, "http://www.imsproject.org/xsd/imscp_rootv1p1p2 imscp_rootv1p1p2.xsd", "http://www.adlnet.org/xsd/adlcp_rootv1p2 adlcp_rootv1p2.xsd")
	}
}

// What cmi5, Quartz, 1st edition, section 13.1 asks of a course structure.
func TestTheCmi5StructureIsAsTheStandardHasIt(t *testing.T) {
	for pass, moveOn := range map[string]string{"": "Completed", "85": "Passed"} {
		set := courseSet + "&note=" + url.QueryEscape("Bring a <comb>")
		if pass != "" {
			set += "&pass=" + pass
		}
		dir := unzipped(t, packageFor(t, "cmi5", set))
		names, text := filesOf(t, dir, "cmi5.xml")
		var c cmi5Structure
		require.NoError(t, xml.Unmarshal(text, &c), "%s", text)
		require.Len(t, c.AU, 1)
		au := c.AU[0]
		for _, id := range []string{c.Course.ID, au.ID} {
			u, err := url.Parse(id)
			require.NoError(t, err)
			assert.True(t, u.IsAbs(), "%s is no IRI", id)
		}
		assert.NotEqual(t, c.Course.ID, au.ID)
		assert.Equal(t, []langstring{{"en", courseTitle}, {"en", "Bring a <comb>"}, {"en", courseTitle}, {"en", "Bring a <comb>"}}, []langstring{c.Course.Title, c.Course.Description, au.Title, au.Description})
		assert.Contains(t, names, au.URL, "a relative address of a file in the package")
		assert.Equal(t, []string{moveOn, "AnyWindow"}, []string{au.MoveOn, au.LaunchMethod})
		if pass == "" {
			assert.Empty(t, au.MasteryScore)
		} else {
			x, err := strconv.ParseFloat(au.MasteryScore, 64)
			require.NoError(t, err)
			assert.Equal(t, .85, x)
		}
		assert.Less(t, strings.Index(string(text), "<description>"), strings.Index(string(text), "<url>"), "the order of the schema")
		assert.Empty(t, breaches(text, cmi5Rules))
		valid(t, text, "https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd CourseStructure.xsd")
	}
}

// valid holds a file to the standards' own schemas, "namespace file", where a folder named in SPRAYWRIGHT_SCHEMAS holds them
// and xmllint (libxml2) is there. They are not ours to hand on: imscp_rootv1p1p2.xsd, ims_xml.xsd and adlcp_rootv1p2.xsd come
// with SCORM 1.2, CourseStructure.xsd with cmi5.
func valid(t *testing.T, text []byte, schemas ...string) {
	t.Helper()
	folder := os.Getenv("SPRAYWRIGHT_SCHEMAS")
	xmllint, err := exec.LookPath("xmllint")
	if folder == "" || err != nil {
		t.Log("held to the rules that we wrote down, not to the standards' own schemas: SPRAYWRIGHT_SCHEMAS names no folder with them, or there is no xmllint")
		return
	}
	dir := t.TempDir()
	var imports strings.Builder
	for _, s := range schemas {
		namespace, file, _ := strings.Cut(s, " ")
		fmt.Fprintf(&imports, `<xs:import namespace=%q schemaLocation=%q/>`, namespace, filepath.Join(folder, file))
	}
	schema, file := filepath.Join(dir, "all.xsd"), filepath.Join(dir, "manifest.xml")
	require.NoError(t, os.WriteFile(schema, []byte(`<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">`+imports.String()+`</xs:schema>`), 0o644))
	require.NoError(t, os.WriteFile(file, text, 0o644))
	says, err := exec.Command(xmllint, "--nonet", "--noout", "--schema", schema, file).CombinedOutput()
	assert.NoError(t, err, "%s", says)
	t.Logf("%s", says)
}
