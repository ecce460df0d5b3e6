package packs_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
)

// TestIncludeAttacks: a definition that somebody sends reads no file outside its own
// folder, in no spelling of its path, and ends whatever it includes.
func TestIncludeAttacks(t *testing.T) {
	secret := "cautions: {secret: {signal: danger, hazard: This was read., avoid: Nothing.}}"
	head := "pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: WO-1, title: Try, revision: A, issued: 2026-03-02}\nsteps: [{step: look, do: Look., caution: [secret]}]\n"
	for _, path := range []string{
		"../secret.yaml", "common/../../secret.yaml", "/secret.yaml", "./../secret.yaml", "common/../secret.yaml", `..\secret.yaml`, "..", ".", "C:secret.yaml",
		"common//x.yaml", "./x.yaml", "", " ", "file:../secret.yaml", "common/./x.yaml", "jobs/../../secret.yaml",
	} {
		files := fstest.MapFS{
			"secret.yaml": {Data: []byte(secret)}, "jobs/x.yaml": {Data: []byte(secret)}, "jobs/common/x.yaml": {Data: []byte(secret)},
			"jobs/pump.yaml": {Data: []byte(head + "include: [\"" + strings.ReplaceAll(path, `\`, `\\`) + "\"]\n")},
		}
		jb, problems := packs.Load(files, packs.Inputs{Definition: "jobs/pump.yaml"})
		if problems.Errors() == 0 {
			t.Errorf("include %q is taken", path)
		}
		if len(jb.Files) != 1 {
			t.Errorf("include %q: %d files were read", path, len(jb.Files))
		}
		files["jobs/pump.yaml"].Data = []byte(headless + "steps: [{use: \"" + strings.ReplaceAll(path, `\`, `\\`) + "\", as: A}]\n")
		jb, problems = packs.Load(files, packs.Inputs{Definition: "jobs/pump.yaml"})
		if problems.Errors() == 0 || len(jb.Files) != 1 {
			t.Errorf("use %q: %d errors, %d files were read", path, problems.Errors(), len(jb.Files))
		}
	}

	// A ring over many files, and a fan of files that include one another, end.
	files := fstest.MapFS{"pump.yaml": {Data: []byte(head + "include: [f0.yaml]\n")}}
	for i := range 200 {
		var all []string
		for k := range 200 {
			all = append(all, fmt.Sprintf("f%d.yaml", k))
		}
		files[fmt.Sprintf("f%d.yaml", i)] = &fstest.MapFile{Data: []byte("include: [" + strings.Join(all, ", ") + "]\n")}
	}
	jb, problems := packs.Load(files, packs.Inputs{Definition: "pump.yaml"})
	if problems.Errors() == 0 || len(jb.Files) > 60 {
		t.Errorf("%d problems, %d files read", problems.Errors(), len(jb.Files))
	}
}

// TestIncludedPlaces: a problem in an included file stands at its place there, its bytes
// are in the digest, and a thing that two files describe is told with both places.
func TestIncludedPlaces(t *testing.T) {
	head := "pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: WO-1, title: Try, revision: A, issued: 2026-03-02}\ninclude: [common.yaml]\ncautions: {dust: {signal: caution, hazard: Dust., avoid: Goggles.}}\nsteps: [{step: look, do: Look., caution: [dust]}]\n"
	load := func(common string) (string, string) {
		jb, problems := packs.Load(fstest.MapFS{"p.yaml": {Data: []byte(head)}, "common.yaml": {Data: []byte(common)}}, packs.Inputs{Definition: "p.yaml"})
		var b strings.Builder
		problems.Write(&b, jb.Files)
		return b.String(), jb.Digest
	}
	said, one := load("instruments: {rule: {name: Rule, range: 0 to 1 m, reads: 1 mm}}\n")
	_, two := load("instruments: {rule: {name: Rule, range: 0 to 2 m, reads: 1 mm}}\n")
	if strings.Contains(said, "[unknown") || one == two {
		t.Errorf("%s; digests %s and %s", said, one, two)
	}
	said, _ = load("# a line\ncautions: {dust: {signal: danger, hazard: More dust., avoid: Mask.}}\n")
	if !strings.Contains(said, `common.yaml:2:12: "dust" is described by two files`) || !strings.Contains(said, "see p.yaml:5:12") {
		t.Error(said)
	}
	said, _ = load("parts:\n  cap: {nmae: Cap}\nsteps: []\n")
	if !strings.Contains(said, `common.yaml:2:9: "nmae"`) || !strings.Contains(said, `common.yaml:3:1: "steps" is not a key of an included file`) {
		t.Error(said)
	}
}
