package browser

import (
	"net/url"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// The structure of the files by which a course knows a package: what the standards say of the elements that a package may
// have, written down by us from their texts. It is no copy of their schemas, which are not ours to hand on, and stricter
// where the text is: see valid for those. Sources: IMS Content Packaging 1.1.2, XML binding; ADL, SCORM 1.2, Content
// Aggregation Model (2001), section 2.3; cmi5, Quartz, 1st edition, section 13.1 (all second-hand or from memory).

// An element is what is said of one: its children in their order, its attributes, and its text.
type element struct {
	children   []child
	attributes map[string]attribute
	text       fits // nil where there is none
}

type child struct {
	name        string // "namespace local"
	least, most int
}

type attribute struct {
	must bool
	fits fits
}

// A fits says whether a text is of a type.
type fits func(text string, seen *idents) bool

// idents are the IDs of a file and what refers to them.
type idents struct{ ids, refs []string }

const (
	cp    = "http://www.imsproject.org/xsd/imscp_rootv1p1p2 "
	adlcp = "http://www.adlnet.org/xsd/adlcp_rootv1p2 "
	five  = "https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd "
	many  = 1 << 20
)

var ncName = regexp.MustCompile(`^[A-Za-z_][-.\w]*$`)

func upTo(most int) fits { return func(s string, _ *idents) bool { return len([]rune(s)) <= most } }

func oneOf(all ...string) fits {
	return func(s string, _ *idents) bool { return slices.Contains(all, s) }
}

func number(low, high float64) fits {
	return func(s string, _ *idents) bool {
		x, err := strconv.ParseFloat(s, 64)
		return err == nil && x >= low && x <= high && !strings.ContainsAny(s, "eEnN+")
	}
}

func anID(s string, seen *idents) bool {
	once := !slices.Contains(seen.ids, s)
	seen.ids = append(seen.ids, s)
	return once && ncName.MatchString(s)
}

func aRef(s string, seen *idents) bool {
	seen.refs = append(seen.refs, s)
	return ncName.MatchString(s)
}

func anIRI(s string, _ *idents) bool { u, err := url.Parse(s); return err == nil && u.IsAbs() }

func anAddress(s string, _ *idents) bool {
	_, err := url.Parse(s)
	return err == nil && s != "" && len(s) <= 2000
}

func aTongue(s string, _ *idents) bool {
	return regexp.MustCompile(`^[A-Za-z]{1,8}(-[A-Za-z0-9]{1,8})*$`).MatchString(s)
}

var scormStructure = map[string]element{
	cp + "manifest": {
		children:   []child{{cp + "metadata", 1, 1}, {cp + "organizations", 1, 1}, {cp + "resources", 1, 1}},
		attributes: map[string]attribute{"identifier": {true, anID}, "version": {false, upTo(20)}},
	},
	cp + "metadata":      {children: []child{{cp + "schema", 1, 1}, {cp + "schemaversion", 1, 1}}},
	cp + "schema":        {text: oneOf("ADL SCORM")},
	cp + "schemaversion": {text: oneOf("1.2")},
	cp + "organizations": {children: []child{{cp + "organization", 1, many}}, attributes: map[string]attribute{"default": {true, aRef}}},
	cp + "organization": {
		children:   []child{{cp + "title", 1, 1}, {cp + "item", 1, many}},
		attributes: map[string]attribute{"identifier": {true, anID}, "structure": {false, upTo(200)}},
	},
	cp + "title": {text: upTo(200)},
	cp + "item": {
		children:   []child{{cp + "title", 1, 1}, {cp + "item", 0, many}, {adlcp + "masteryscore", 0, 1}},
		attributes: map[string]attribute{"identifier": {true, anID}, "identifierref": {false, aRef}, "isvisible": {false, oneOf("true", "false", "1", "0")}, "parameters": {false, upTo(1000)}},
	},
	adlcp + "masteryscore": {text: number(0, 100)},
	cp + "resources":       {children: []child{{cp + "resource", 1, many}}},
	cp + "resource": {
		children: []child{{cp + "file", 0, many}},
		attributes: map[string]attribute{
			"identifier": {true, anID}, "type": {true, oneOf("webcontent")}, "href": {false, anAddress}, adlcp + "scormtype": {true, oneOf("sco", "asset")},
		},
	},
	cp + "file": {attributes: map[string]attribute{"href": {true, anAddress}}},
}

var cmi5Rules = map[string]element{
	five + "courseStructure": {children: []child{{five + "course", 1, 1}, {five + "au", 1, many}}},
	five + "course":          {children: []child{{five + "title", 1, 1}, {five + "description", 1, 1}}, attributes: map[string]attribute{"id": {true, anIRI}}},
	five + "au": {
		children: []child{{five + "title", 1, 1}, {five + "description", 1, 1}, {five + "url", 1, 1}, {five + "launchParameters", 0, 1}, {five + "entitlementKey", 0, 1}},
		attributes: map[string]attribute{
			"id": {true, anIRI}, "moveOn": {false, oneOf("NotApplicable", "Passed", "Completed", "CompletedAndPassed", "CompletedOrPassed")},
			"masteryScore": {false, number(0, 1)}, "launchMethod": {false, oneOf("AnyWindow", "OwnWindow")}, "activityType": {false, upTo(many)},
		},
	},
	five + "title":       {children: []child{{five + "langstring", 1, many}}},
	five + "description": {children: []child{{five + "langstring", 1, many}}},
	five + "langstring":  {text: upTo(many), attributes: map[string]attribute{"lang": {false, aTongue}}},
	five + "url":         {text: anAddress},
}
