package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/gofont/gosmallcaps"
)

// TestPrintedAgain: a pack that includes and uses other files, with a site's own logo and
// fonts, keeps all of them inside; unpacked, they print the same bytes.
func TestPrintedAgain(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	write := func(name string, data []byte) {
		t.Helper()
		path := filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for _, name := range []string{"used.yaml", "common/sleeve.yaml", "common/instruments.yaml", "common/cautions.yaml"} {
		data, err := os.ReadFile(filepath.Join(testdata, "good", name))
		if err != nil {
			t.Fatal(err)
		}
		write("plant/unit/"+name, data)
	}
	write("plant/matchmark-site.yaml", []byte("logo: look/logo.svg\nfonts: {regular: look/plain.ttf, bold: look/bold.ttf}\n"))
	write("plant/look/logo.svg", []byte(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 14"><circle cx="7" cy="7" r="5"/></svg>`))
	write("plant/look/plain.ttf", goregular.TTF)
	write("plant/look/bold.ttf", gobold.TTF)
	matchmark := func(args ...string) {
		t.Helper()
		var out bytes.Buffer
		if code := run(args, strings.NewReader(""), &out, &out); code != exitDone {
			t.Fatalf("%v: exit %d\n%s", args, code, out.String())
		}
	}
	first, again, pack := filepath.Join(dir, "first"), filepath.Join(dir, "again"), "WO-5513-A-pack.pdf"
	matchmark("print", filepath.Join(dir, "plant/unit/used.yaml"), "--out", first)
	matchmark("unpack", filepath.Join(first, pack), "--out", filepath.Join(dir, "kept"))
	matchmark("print", filepath.Join(dir, "kept/used.yaml"), "--out", again)
	one, err := os.ReadFile(filepath.Join(first, pack))
	if err != nil {
		t.Fatal(err)
	}
	two, err := os.ReadFile(filepath.Join(again, pack))
	if err != nil || !bytes.Equal(one, two) {
		t.Errorf("printed again: %d bytes, first %d; %v", len(two), len(one), err)
	}
	for _, name := range []string{"look/plain.ttf", "look/logo.svg", "common/sleeve.yaml", "common/cautions.yaml", "matchmark-site.yaml"} {
		if _, err := os.Stat(filepath.Join(dir, "kept", name)); err != nil {
			t.Error(err)
		}
	}
	if !bytes.Contains(one, []byte("+Site-regular")) {
		t.Error("the site's font is not in the pack")
	}
}

// TestSiteFonts: what the site's font has no sign for is told at its place; a font too
// wide for the paper is told where the font is named, not at the texts of the definition.
func TestSiteFonts(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		font        []byte
		do, yes, no string
	}{
		{goregular.TTF, "Look for Ѩ.", "p.yaml:4:", "matchmark-site.yaml"},
		{gosmallcaps.TTF, "Look.", "matchmark-site.yaml:1:", "p.yaml:4:"},
	} {
		dir := t.TempDir()
		for name, data := range map[string]string{
			"plain.ttf": string(c.font), "matchmark-site.yaml": "fonts: {regular: plain.ttf, bold: plain.ttf}\n",
			"p.yaml": "pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: WO-1, title: Try, revision: A, issued: 2026-03-02}\n" +
				"steps: [{step: look, do: \"" + c.do + "\", remove: [cap], into: C1}]\nparts: {cap: {name: Cap}}\ncontainers: {C1: {name: Cap, kind: bag}}\n",
		} {
			if err := os.WriteFile(filepath.Join(dir, name), []byte(data), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		var out bytes.Buffer
		run([]string{"check", filepath.Join(dir, "p.yaml")}, strings.NewReader(""), &out, &out)
		if !strings.Contains(out.String(), c.yes) || strings.Contains(out.String(), c.no) {
			t.Errorf("%s:\n%s", c.do, out.String())
		}
	}
}
