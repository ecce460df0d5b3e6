package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// outageTable is a table of n jobs of the fan, each of a day and machine of its own.
func outageTable(t *testing.T, dir string, n int, more ...string) string {
	t.Helper()
	var b strings.Builder
	b.WriteString("number,title,revision,issued,serial\n")
	for i := range n {
		fmt.Fprintf(&b, "WO-%d,Bearing change,A,2026-03-%02d,%d\n", 100+i, i%28+1, 7000+i)
	}
	for _, row := range more {
		b.WriteString(row + "\n")
	}
	file := filepath.Join(dir, "jobs.csv")
	if err := os.WriteFile(file, []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
	return file
}

// shortJob is a definition that prints in a moment.
const shortJob = `pack: 1
equipment: {tag: P-1, name: Pump}
parts: {cap: {name: Cap}}
containers: {C1: {name: Cap, kind: box, keep: dry}}
holds: {W1: {kind: hold, what: Cap seen, releases: supervisor}}
steps:
  - section: Open
    steps: [{step: cap, do: Take the cap off., remove: [cap], into: C1, hours: 1.5, people: 2}]
  - section: Look
    steps: [{step: look, do: Look into the pump., hold: W1, hours: 0.5}]
  - reverse: [Open]
`

func writeShortJob(t *testing.T, dir string) string {
	t.Helper()
	file := filepath.Join(dir, "pump.yaml")
	if err := os.WriteFile(file, []byte(shortJob), 0o644); err != nil {
		t.Fatal(err)
	}
	return file
}

// contents are all files below a folder, by path, without the indexes.
func contents(t *testing.T, dir string) map[string]string {
	t.Helper()
	out := map[string]string{}
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasPrefix(d.Name(), "index") {
			return err
		}
		data, err := os.ReadFile(path)
		rel, _ := filepath.Rel(dir, path)
		out[rel] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// TestOutage: many jobs, one folder each, with an index that counts them; bad ones are
// named and stop no other. TestBatchIsFlat looks at the memory.
func TestOutage(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	jobs := outageTable(t, dir, 30, "WO-100,Bearing change,A,2026-03-01,1", "WO-900,Bearing change,A,first of May,1")
	file := writeShortJob(t, dir)
	var out, talk bytes.Buffer
	code := run([]string{"print", file, "--jobs", jobs, "--out", filepath.Join(dir, "out")}, nil, &out, &talk)
	if code != exitProblems || !strings.Contains(out.String(), "30 jobs of 32 printed") {
		t.Fatalf("exit %d: %s%.2000s", code, &out, &talk)
	}
	for _, want := range []string{"not printed: WO-100 A (" + jobs + " row 32): number and revision are those of " + jobs + " row 2", "not printed: WO-900 A"} {
		if !strings.Contains(talk.String(), want) {
			t.Errorf("%q is not told", want)
		}
	}
	if n := strings.Count(talk.String(), " of 32: "); n != 32 {
		t.Errorf("%d lines of progress", n)
	}
	index, err := os.ReadFile(filepath.Join(dir, "out", "index.csv"))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"\njob,WO-100,A,P-1,Pump,Bearing change,2026-03-01,", ",2.0,3.5,WO-129-A,\n", "\nhold,WO-128,A,,,,,at 2.0 h,W1,Cap seen: supervisor"} {
		if !strings.Contains(string(index), want) {
			t.Errorf("%q is not in the index:\n%.600s", want, index)
		}
	}
	if _, err := os.Stat(filepath.Join(dir, "out", "WO-129-A", "WO-129-A-pack.pdf")); err != nil {
		t.Error(err)
	}
}

// TestShards: the shares of an outage are the same files as the whole, each once.
func TestShards(t *testing.T) {
	dir := t.TempDir()
	jobs, file := outageTable(t, dir, 12), writeShortJob(t, dir)
	print := func(out string, more ...string) {
		var said, talk bytes.Buffer
		if code := run(append([]string{"print", file, "--jobs", jobs, "--out", out}, more...), nil, &said, &talk); code != exitDone {
			t.Fatal(talk.String())
		}
	}
	whole, shares := filepath.Join(dir, "whole"), filepath.Join(dir, "shares")
	print(whole)
	for i := 1; i <= 8; i++ {
		print(shares, "--shard", fmt.Sprintf("%d/8", i))
	}
	a, b := contents(t, whole), contents(t, shares)
	if len(a) != len(b) || len(a) < 36 {
		t.Errorf("%d files of the whole, %d of the shares", len(a), len(b))
	}
	for path, data := range a {
		if b[path] != data {
			t.Errorf("%s differs", path)
		}
	}
	// A job of an outage is the same paper as printed alone.
	alone := filepath.Join(dir, "job.yaml")
	if err := os.WriteFile(alone, []byte("job:\n  number: 'WO-107'\n  title: 'Bearing change'\n  revision: 'A'\n  issued: '2026-03-08'\nequipment:\n  serial: '7007'\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	var said, talk bytes.Buffer
	if code := run([]string{"print", file, "--job", alone, "--out", "-"}, nil, &said, &talk); code != exitDone || said.String() != a[filepath.Join("WO-107-A", "WO-107-A-pack.pdf")] {
		t.Errorf("printed alone it differs: %s", &talk)
	}
}
