package main

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// legendMark is a mark in the legend of the front sheet, which stands before what it means.
var legendMark = regexp.MustCompile(`(?:Marks and boxes | · )(SCRAP|RX|[A-Z]) [a-z]`)

// TestLegendHasTheMarksOfThePack: the front sheet explained alignments, lifts and heats of a fan
// that has none, the sheet of cautions a DANGER that stood nowhere, and neither SCRAP nor RX
// was explained.
func TestLegendHasTheMarksOfThePack(t *testing.T) {
	t.Parallel()
	for _, name := range starters(t) {
		j, pack := composed(t, name, templates.Options{Paper: layout.A4})
		sheets := sheetTexts(t, pack.Pages)
		front := strings.Join(strings.Fields(sheets["front"]), " ")
		legend := between(front, "Marks and boxes", "A mark stays")
		var told []string
		for _, m := range legendMark.FindAllStringSubmatch("Marks and boxes"+legend, -1) {
			told = append(told, m[1])
		}
		for letter, has := range map[string]bool{"D": len(j.Dims) > 0, "C": len(j.Containers) > 0, "B": len(j.Bigs) > 0, "W": len(j.Holds) > 0, "K": len(j.Stacks) > 0,
			"A": len(j.Alignments) > 0, "H": len(j.Heats) > 0, "J": len(j.Joints) > 0, "RX": strings.Contains(sheets["found"], "RX1"), "SCRAP": strings.Contains(sheets["register"], "SCRAP")} {
			if slices.Contains(told, letter) != has {
				t.Errorf("%s: mark %s is explained: %t, used: %t", name, letter, !has, has)
			}
		}
		if lifts := strings.Contains(legend, "L lift"); lifts != (len(j.Lifts) > 0) {
			t.Errorf("%s: L is explained as a lift: %t, and there are %d", name, lifts, len(j.Lifts))
		}
		if !strings.Contains(front, j.Digest+" at the head of each page") {
			t.Errorf("%s: what stands for the pack at the head of its pages is not explained", name)
		}
		words := between(sheets["cautions"], "What the words mean", "Words as in")
		for _, signal := range []string{"DANGER", "WARNING", "CAUTION", "NOTICE"} {
			used := false
			for _, n := range j.Cautions {
				used = used || len(n.Steps) > 0 && strings.EqualFold(n.Signal, signal)
			}
			if strings.Contains(words, signal) != used {
				t.Errorf("%s: %s is explained: %t, used: %t", name, signal, !used, used)
			}
		}
	}
}
