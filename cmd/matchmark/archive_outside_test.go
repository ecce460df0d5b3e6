package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// The points of PDF/A-3, level B (ISO 19005-3:2012) that can be seen in the objects of a
// file, as qpdf reads them. No free validator of part 3 is among Debian's packages; this is
// our reading of the standard, not its proof. The clause stands beside a point where it is
// known for sure.

// archived is a file as qpdf tells it.
type archived struct {
	t       *testing.T
	file    string
	objects map[string]any // by "3 0 R"; of a stream its dictionary
	trailer map[string]any
	said    []string
}

func readArchived(t *testing.T, file string) *archived {
	t.Helper()
	var told struct{ Qpdf []json.RawMessage }
	if err := json.Unmarshal([]byte(tool(t, "qpdf", "--json=2", "--json-key=qpdf", file)), &told); err != nil || len(told.Qpdf) < 2 {
		t.Fatalf("qpdf tells no objects: %v", err)
	}
	var all map[string]struct {
		Value  any
		Stream *struct{ Dict any }
	}
	if err := json.Unmarshal(told.Qpdf[1], &all); err != nil {
		t.Fatal(err)
	}
	a := &archived{t: t, file: file, objects: map[string]any{}}
	for name, o := range all {
		switch {
		case name == "trailer":
			a.trailer, _ = o.Value.(map[string]any)
		case o.Stream != nil:
			a.objects[strings.TrimPrefix(name, "obj:")] = o.Stream.Dict
			a.stream(name, o.Stream.Dict.(map[string]any))
		default:
			a.objects[strings.TrimPrefix(name, "obj:")] = o.Value
		}
	}
	return a
}

func (a *archived) want(ok bool, format string, args ...any) {
	if !ok {
		a.said = append(a.said, fmt.Sprintf(format, args...))
	}
}

// at follows a path of keys from a dictionary through references; nil where it ends.
func (a *archived) at(from any, keys ...string) any {
	for _, k := range append(keys, "") {
		if s, ok := from.(string); ok && a.objects[s] != nil {
			from = a.objects[s]
		}
		if k == "" {
			return from
		}
		d, _ := from.(map[string]any)
		from = d[k]
	}
	return from
}

// dicts calls a function with each dictionary of the file, those within others too.
func (a *archived) dicts(see func(d map[string]any)) {
	var in func(v any)
	in = func(v any) {
		switch v := v.(type) {
		case map[string]any:
			see(v)
			for _, x := range v {
				in(x)
			}
		case []any:
			for _, x := range v {
				in(x)
			}
		}
	}
	for _, o := range a.objects {
		in(o)
	}
}

// stream: no bytes outside of the file (6.1.7.1), no LZW and no encryption (6.1.7.2).
func (a *archived) stream(name string, d map[string]any) {
	for _, k := range []string{"/F", "/FFilter", "/FDecodeParms"} {
		a.want(d[k] == nil, "%s has %s", name, k)
	}
	for _, f := range []string{"/LZWDecode", "/LZW", "/Crypt"} {
		a.want(!strings.Contains(fmt.Sprint(d["/Filter"]), f), "%s is packed by %s", name, f)
	}
}

// frame: header and trailer (6.1.2, 6.1.3), metadata (6.6), output intent (6.2.3).
func (a *archived) frame(data []byte) {
	first, rest, _ := bytes.Cut(data, []byte("\n"))
	a.want(regexp.MustCompile(`^%PDF-1\.[0-7]\r?$`).Match(first) && len(rest) > 5 && rest[0] == '%' && min(rest[1], rest[2], rest[3], rest[4]) > 127, "the header is %.15q", data)
	a.want(a.trailer["/Encrypt"] == nil, "the file is encrypted")
	id, _ := a.trailer["/ID"].([]any)
	a.want(len(id) == 2, "the trailer has no identifier")
	root := a.trailer["/Root"]
	a.want(a.at(root, "/Metadata", "/Filter") == nil && a.at(root, "/Metadata", "/Subtype") == "/XML", "no plain metadata")
	xmp := regexp.MustCompile(`(?s)<\?xpacket begin.*<\?xpacket end`).Find(data)
	for _, want := range []string{"<pdfaid:part>3</pdfaid:part>", "<pdfaid:conformance>B</pdfaid:conformance>"} {
		a.want(strings.Contains(string(xmp), want), "the metadata has no %s", want)
	}
	intents, _ := a.at(root, "/OutputIntents").([]any)
	a.want(len(intents) == 1 && a.at(intents[0], "/S") == "/GTS_PDFA1", "no output intent")
	if len(intents) == 1 {
		ref, _ := a.at(intents[0]).(map[string]any)["/DestOutputProfile"].(string)
		icc, err := exec.Command("qpdf", "--show-object="+strings.TrimSuffix(strings.ReplaceAll(ref, " ", ","), ",R"), "--filtered-stream-data", a.file).Output()
		a.want(err == nil && len(icc) > 128 && string(icc[36:40]) == "acsp" && string(icc[16:20]) == "RGB " && string(icc[12:16]) == "mntr" && icc[8] <= 4,
			"the profile is none of a monitor in RGB (ICC.1, header): %v", err)
		a.want(a.at(intents[0], "/DestOutputProfile", "/N") == 3.0, "the profile has other components")
	}
}

// content: what must not be in the file (6.2, 6.5), fonts (6.2.11), links (6.3), files
// inside (6.8).
func (a *archived) content() {
	fonts := 0
	a.dicts(func(d map[string]any) {
		for _, k := range []string{"/AA", "/XFA", "/JS", "/OPI", "/Alternates", "/TR", "/HTP"} {
			a.want(d[k] == nil, "a dictionary has %s", k)
		}
		for _, k := range []string{"/ca", "/CA"} {
			a.want(d[k] == nil || d[k] == 1.0, "%s is %v: transparency", k, d[k])
		}
		a.want(d["/SMask"] == nil || d["/SMask"] == "/None" || a.at(d, "/Group", "/CS") != nil, "transparency of a picture")
		a.want(d["/Interpolate"] != true, "a picture is interpolated")
		if s, ok := d["/S"].(string); ok && d["/Type"] == "/Action" {
			a.want(s == "/GoTo" || s == "/URI", "an action is %s", s)
		}
		switch d["/Type"] {
		case "/Annot":
			f, _ := d["/F"].(float64)
			a.want(d["/Subtype"] == "/Link" && int(f)&0b111 == 4 && int(f)&(1<<5|1<<8) == 0, "an annotation is %v with flags %v", d["/Subtype"], d["/F"])
		case "/Font":
			fonts++
			a.font(d)
		case "/Filespec":
			a.kept(d)
		}
	})
	a.want(fonts > 0, "no fonts")
}

// font: embedded, its codes told, named as the part that it is.
func (a *archived) font(d map[string]any) {
	name := fmt.Sprint(d["/BaseFont"])
	switch d["/Subtype"] {
	case "/Type0":
		a.want(a.at(d, "/ToUnicode") != nil, "%s has no /ToUnicode", name)
		a.want(d["/Encoding"] == "/Identity-H", "%s is encoded by %v", name, d["/Encoding"])
	case "/CIDFontType2":
		a.want(a.at(d, "/FontDescriptor", "/FontFile2") != nil, "%s is not embedded", name)
		a.want(d["/CIDToGIDMap"] != nil, "%s does not map its codes to glyphs", name)
		a.want(a.at(d, "/FontDescriptor", "/CIDSet") == nil, "%s has a /CIDSet, which is not looked at", name)
		a.want(regexp.MustCompile(`^/[A-Z]{6}\+`).MatchString(name), "%s is not named as a subset", name)
	default:
		a.want(false, "%s is a font of %v", name, d["/Subtype"])
	}
}

// kept: a file inside says what it is to the document, its media type and both names.
func (a *archived) kept(d map[string]any) {
	for _, k := range []string{"/F", "/UF", "/EF", "/AFRelationship"} {
		a.want(d[k] != nil, "a file inside has no %s", k)
	}
	a.want(slices.Contains([]any{"/Source", "/Data", "/Alternative", "/Supplement", "/Unspecified"}, d["/AFRelationship"]), "a file inside is %v", d["/AFRelationship"])
	a.want(a.at(d, "/EF", "/F", "/Subtype") != nil && a.at(d, "/EF", "/F", "/Params") != nil, "a file inside has no media type or no parameters")
	found := false
	list, _ := a.at(a.trailer["/Root"], "/AF").([]any)
	for _, f := range list {
		found = found || fmt.Sprint(a.at(f, "/UF")) == fmt.Sprint(d["/UF"])
	}
	a.want(found, "a file inside is not tied to the document")
}

// TestArchive: pack and tags of each starter, the pack with the files it was made from.
func TestArchive(t *testing.T) {
	for _, starter := range starters(t) {
		jb, pack := composed(t, starter, templates.Options{Paper: layout.A4})
		withFiles := *pack.Pages
		withFiles.Attached = attached(jb, starterInputs, false, "")
		for _, d := range []*layout.Doc{&withFiles, pack.Tags} {
			a := readArchived(t, painted(t, d))
			data, err := os.ReadFile(a.file)
			if err != nil {
				t.Fatal(err)
			}
			a.frame(data)
			a.content()
			slices.Sort(a.said)
			for _, s := range slices.Compact(a.said) {
				t.Errorf("%s: %s", d.Title, s)
			}
		}
	}
}
