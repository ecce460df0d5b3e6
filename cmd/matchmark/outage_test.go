package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"strings"
	"testing"
	"time"
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

// TestOutage: two hundred jobs, one folder each, with an index that counts them; bad ones
// are named and stop no other, and the memory that is kept does not grow with the jobs.
func TestOutage(t *testing.T) {
	if testing.Short() {
		t.Skip("takes half a minute")
	}
	defer debug.SetGCPercent(debug.SetGCPercent(30)) // what is held is to be seen, not what waits to be tidied up
	dir := t.TempDir()
	jobs := outageTable(t, dir, 200, "WO-100,Bearing change,A,2026-03-01,1", "WO-900,Bearing change,A,first of May,1")
	file := writeShortJob(t, dir)
	stop, peak := make(chan struct{}), make(chan uint64)
	go func() {
		var most uint64
		for {
			select {
			case <-stop:
				peak <- most
				return
			case <-time.After(20 * time.Millisecond):
				var m runtime.MemStats
				runtime.ReadMemStats(&m)
				most = max(most, m.HeapAlloc)
			}
		}
	}()
	var out, talk bytes.Buffer
	code := run([]string{"print", file, "--jobs", jobs, "--out", filepath.Join(dir, "out")}, nil, &out, &talk)
	close(stop)
	most := <-peak
	if code != exitProblems || !strings.Contains(out.String(), "200 jobs of 202 printed") {
		t.Fatalf("exit %d: %s%.2000s", code, &out, &talk)
	}
	t.Logf("200 jobs, at most %d MB in use", most>>20)
	if most > 400<<20 {
		t.Errorf("%d MB are in use at a time", most>>20)
	}
	for _, want := range []string{"not printed: WO-100 A (" + jobs + " row 202): number and revision are those of " + jobs + " row 2", "not printed: WO-900 A"} {
		if !strings.Contains(talk.String(), want) {
			t.Errorf("%q is not told", want)
		}
	}
	if n := strings.Count(talk.String(), " of 202: "); n != 202 {
		t.Errorf("%d lines of progress", n)
	}
	index, err := os.ReadFile(filepath.Join(dir, "out", "index.csv"))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"\njob,WO-100,A,P-1,Pump,Bearing change,2026-03-01,", ",2.0,3.5,WO-299-A,\n", "\nhold,WO-128,A,,,,,at 2.0 h,W1,Cap seen: supervisor"} {
		if !strings.Contains(string(index), want) {
			t.Errorf("%q is not in the index:\n%.600s", want, index)
		}
	}
	if _, err := os.Stat(filepath.Join(dir, "out", "WO-299-A", "WO-299-A-pack.pdf")); err != nil {
		t.Error(err)
	}
}

// TestShards: the shares of an outage are the same files as the whole, each once.
func TestShards(t *testing.T) {
	dir := t.TempDir()
	jobs, file := outageTable(t, dir, 20), writeShortJob(t, dir)
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
	if len(a) != len(b) || len(a) < 60 {
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
