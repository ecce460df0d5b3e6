package main

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/templates"
)

// TestHeatSectionKeepsItsNames: however long the names of the neighbours are and however
// many there are, every text of the heat sheets stands within the page and is there in full,
// or is refused at its place. A long name beside the section ran off the paper.
func TestHeatSectionKeepsItsNames(t *testing.T) {
	longTest(t)
	t.Parallel()
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		word := rapid.StringMatching(`[A-Za-z]{1,14}`)
		var names, list []string
		for i := range rapid.IntRange(1, 4).Draw(t, "neighbours") {
			words := rapid.SliceOfN(word, 1, 14).Draw(t, "name")
			name := fmt.Sprintf("N%d %s", i+1, strings.Join(words, " "))
			names = append(names, name)
			list = append(list, fmt.Sprintf("{what: %s, away: %d mm, at-most: 110 °C, source: site rule, kept-cool: wet cloth}", name, rapid.IntRange(20, 500).Draw(t, "away")))
		}
		way := "put-on: {by: oven, clearance: 0.10 mm}"
		text := "pack: 1\nequipment: {tag: P-03, name: Pump}\njob: {number: WO-1, title: Hub, revision: A, issued: 2026-03-02}\n" +
			"parts:\n  shaft: {name: Shaft}\n  hub: {name: Hub}\nheats:\n  H1:\n    what: Hub\n    fit: 120 H7/r6\n" +
			fmt.Sprintf("    hub: {part: hub, material: carbon steel, outside: %d mm, length: %d mm, kind: plain carbon steel hub}\n", rapid.IntRange(150, 400).Draw(t, "outside"), rapid.IntRange(20, 400).Draw(t, "length")) +
			"    shaft: {part: shaft, material: carbon steel, behind: 900 mm}\n    neighbours: [" + strings.Join(list, ", ") + "]\n    " + way + "\n" +
			"steps:\n  - {step: off, do: Take the hub off., remove: [hub], into: bench}\n  - {step: back, do: Put it on., fit: [hub], heat: [H1]}\n"
		d := drafted(text, rapid.SampledFrom(papers).Draw(t, "paper"))
		if d.misfits.Errors() > 0 {
			return // told at its place
		}
		checkHeatNames(t, d.pack, names)
		seen++
	})
	if seen < 50 {
		t.Errorf("only %d packs were looked at", seen)
	}
}

// checkHeatNames looks for each name on the heat sheets, and for text beyond the page.
func checkHeatNames(t *rapid.T, pack *templates.Pack, names []string) {
	var all strings.Builder
	for _, p := range pack.Pages.BySheet() {
		if p.Sheet != "heats" {
			continue
		}
		for _, it := range p.Items {
			s, ok := it.Shape.(layout.Text)
			if !ok {
				continue
			}
			all.WriteString(s.S + " ")
			if it.X < 0 || it.X+s.Width > p.W || it.Y < 0 || it.Y > p.H {
				t.Fatalf("%q stands from %.1f to %.1f mm on a page of %.1f mm", s.S, float64(it.X), float64(it.X+s.Width), float64(p.W))
			}
		}
	}
	for _, n := range names {
		if !strings.Contains(unspaced(all.String()), unspaced(n)) {
			t.Fatalf("%q is not on the heat sheets", n)
		}
	}
}
