package main

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// withoutHoles tells whether all that a heat is for is worked out.
func withoutHoles(h *job.Heat) bool {
	return (h.Pull != nil || h.PutOn != nil) && (h.Pull == nil || h.Pull.Plan != nil) && (h.PutOn == nil || h.PutOn.Plan != nil || h.PutOn.Cold != nil)
}

// TestAnyKeyOfAHeatLeftOut: whatever is left out of what is written of a heat, check tells
// of it or the heat is worked out, and the draft prints what is known, says what is not,
// and invents nothing. A heat with pull: alone that was fitted again with heat: made check
// panic, and a draft printed "heat it to 0 °C. Never above 0 °C".
func TestAnyKeyOfAHeatLeftOut(t *testing.T) {
	longTest(t)
	t.Parallel()
	without := 0
	for _, x := range eachKeyLeftOut(t, 70, ownWith(t, 6, "heats"), "heats") {
		without += checkHeatHole(t, x.where, x.text())
	}
	if without < 30 {
		t.Errorf("only %d heats had no figures", without)
	}
}

// checkHeatHole checks and prints one definition with a hole, and counts its heats that
// have no figures.
func checkHeatHole(t *testing.T, where, text string) int {
	t.Helper()
	d := drafted(text, layout.A4)
	checkHeatHelp(t, where, d.problems)
	n := 0
	for _, h := range d.jb.Heats {
		if withoutHoles(h) {
			continue
		}
		n++
		if d.problems.Errors() == 0 {
			t.Errorf("%s: %s has no figures, and check is silent", where, h.Mark)
		}
		sheet := unspaced(heatSheet(d.pack, h))
		if len(h.Because) == 0 {
			t.Errorf("%s: %s has no figures and no reason\n%v", where, h.Mark, d.problems)
		}
		for _, why := range h.Because {
			if !strings.Contains(sheet, unspaced(why.Message)) {
				t.Errorf("%s: the sheet of %s does not say: %s\n%s", where, h.Mark, why.Message, sheet)
			}
		}
		if m := zeroFigure.FindString(sheet); m != "" {
			t.Errorf("%s: the sheet of %s prints %q for what is not known\n%s", where, h.Mark, m, sheet)
		}
	}
	return n
}

// zeroFigure is a figure of nothing, or a sentence that ends before its figure.
var zeroFigure = regexp.MustCompile(`(to|above|by|of|after|for)(-17|0|0\.0+|32)(°C|°F|mm|in|kN|lbf|min|MPa|psi)|above\.|to\.|after,`)

// heatSheet is what stands on the pages of a heat, without their heads and feet.
func heatSheet(pack *templates.Pack, h *job.Heat) string {
	var out strings.Builder
	for _, p := range pack.Pages.BySheet() {
		for _, it := range p.Items {
			if s, ok := it.Shape.(layout.Text); ok && it.Ref == layout.Ref(h.At) && p.Sheet == "heats" {
				out.WriteString(s.S + " ")
			}
		}
	}
	return out.String()
}

// heatOffered is an amount in a help text.
var heatOffered = regexp.MustCompile(`[0-9] ?(kg|mm|µm|m3|in|%|°C|°F|kN|N·m|kW|min|s|l|C rise|K|MPa)\b|[0-9]+ [HJ][0-9]/`)

// heatCodes are the codes of what is told of heats.
var heatCodes = []string{"heat-refused", "no-fit", "no-grip", "no-grip-given", "no-clearance", "no-ceiling", "no-source", "no-neighbour", "no-room", "heat-unit",
	"fit", "fit-twice", "heat-does-nothing", "heat-depth", "heat-oven", "no-shield", "flame", "workable", "friction-unbacked", "thin-hub", "shaft-yields", "holds-not",
	"short-window", "neighbour-hot", "neighbour-stuck", "hub-yields", "thermal-shock", "too-quick", "room-air", "above-ceiling", "missing-key"}

// checkHeatHelp sees that what is told of a heat says what to do about it, and offers no
// number that has to be measured or looked up.
func checkHeatHelp(t *testing.T, where string, problems source.Problems) {
	t.Helper()
	for _, p := range problems {
		if !slices.Contains(heatCodes, p.Code) {
			continue
		}
		help := strings.Join(p.Help, " ")
		if strings.TrimSpace(help) == "" {
			t.Errorf("%s: nothing says what to do about: %s", where, p.Message)
		}
		// What is worked out for this joint, and what is common practice, is no figure that
		// has to be measured.
		help = workedOut.ReplaceAllString(help, "")
		if heatOffered.MatchString(help) {
			t.Errorf("%s: %s: the help offers a number: %s", where, p.Message, help)
		}
	}
}

// workedOut are the figures that a refusal works out: what would have to change.
var workedOut = regexp.MustCompile(`(an interference of|a ceiling of|puller good for|use at least|use at most|the hub needs) [0-9.]+ [^ ,]+|DIN 7190`)
