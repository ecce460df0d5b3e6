package main

import (
	"os"
	"regexp"
	"strconv"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// The counts in the README are those of the pack that its first command prints.
func TestReadmeCounts(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	jb, pack := composed(t, "storm-pump.yaml", templates.Options{Paper: layout.A4})
	m := regexp.MustCompile(`storm-water pump: more than ([a-z]+) steps at its two ends, (\d+)\s+dimensions, ([a-z]+) lifts, a hot pull, (\d+) tags`).FindStringSubmatch(string(data))
	if m == nil {
		t.Fatal("the README does not count steps, dimensions, lifts and tags of its pump")
	}
	bases := map[string]bool{}
	for _, d := range jb.Dims {
		bases[d.Base] = true
	}
	steps := 0
	for _, s := range jb.Sections {
		steps += len(s.Steps)
	}
	words := map[string]int{"two": 2, "three": 3, "forty": 40, "fifty": 50, "sixty": 60}
	if most := words[m[1]]; most == 0 || steps <= most || steps > most+15 {
		t.Errorf("the README has more than %s steps, the pack has %d", m[1], steps)
	}
	if n := strconv.Itoa(len(bases)); n != m[2] {
		t.Errorf("the README has %s dimensions, the pack %s", m[2], n)
	}
	if len(jb.Lifts) != words[m[3]] {
		t.Errorf("the README has %s lifts, the pack %d", m[3], len(jb.Lifts))
	}
	if n := strconv.Itoa(jb.Tagged()); n != m[4] || pack.TagCount != len(jb.Tags) {
		t.Errorf("the README has %s tags, the pack %s; %d of %d are printed", m[4], n, pack.TagCount, len(jb.Tags))
	}
}
