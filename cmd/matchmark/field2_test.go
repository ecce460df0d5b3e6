package main

import (
	"maps"
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// The points of six more published procedures go through the same tests as the first
// six: on the page, on both papers, and missed when a box or a word is gone. Boxes are
// counted by hand from the procedures.
func init() {
	maps.Copy(fieldPoints, moreFieldPoints)
	fieldSums = append(fieldSums, moreFieldSums...)
}

var moreFieldPoints = map[string][]point{
	"field-swing-brake.yaml": {
		{no: 12, name: "two gaps, half a turn apart", at: "D1", sheet: "reassembly", role: layout.RoleValue, cells: 5, count: 2, words: []string{"no shims, brake clamped at both places", "180° on"}},
		{no: 12, name: "their mean: two copies, sum, mean, rounded to the thousandth", at: "D2", sheet: "reassembly", role: layout.RoleValue, count: 4 + 1, words: []string{"by hand: D2 = mean of D1", "÷ 2 =", "rounded"}},
		{no: 7, name: "shim from the mean: copy, target, its two ends; leaves copied, leaves left", at: "D3", sheet: "reassembly", role: layout.RoleValue, cells: 5, count: 1 + 3 + 9 + 9, words: []string{"worked out +0.000 / −0.002 in", "0.020 in", "target − 0.002 =", "target + 0.000 ="}},
		{no: 30, name: "laminated shim, leaf by leaf", at: "D3", role: layout.RoleValue, cells: 5, count: 8 + 1, words: []string{"leaves of 0.003 in, at most 8 in the pack", "leaf 8", "sum"}},
		{no: 30, name: "table of packs, rounded down", at: "D3", sheet: "reassembly", words: []string{"0.009 – 0.011", "3×0.003"}},
		{no: 34, name: "no shim where the gap is small", at: "shim", sheet: "reassembly", role: layout.RoleTick, count: 2 + 1, words: []string{"IF", "D2 is over 0.022 in", "No shim. The old leaves stay in C2"}},
		{no: 34, name: "round again until all bolts hold", at: "brake-on", sheet: "reassembly", role: layout.RoleTick, count: 1 + 4*2, words: []string{"AGAIN", "do all bolts hold 200 lb-in?", "4 tries at most"}},
		{no: 34, name: "apart again until the end play is in", at: "drum-on", sheet: "reassembly", words: []string{"AGAIN", "D6 is in limits", "3 tries at most"}},
		{no: 36, name: "three screws for now, with a torque of their own", at: "trial", sheet: "reassembly", role: layout.RoleTick, count: 1 + 1, words: []string{"for a while", "3 Drum screw", "(3 pieces)", "20–25 lb-ft", "FOR A WHILE, at last J3 40–45 lb-ft"}},
		{no: 36, name: "taken out again", at: "drum-on", sheet: "reassembly", words: []string{"take out again", "3 Drum screw", "(9 pieces)", "40–45 lb-ft"}},
		{no: 37, name: "lip and hole, as found", at: "drum", role: layout.RoleWords, count: 2, words: []string{"lip faces the pinion", "hole faces the grease fitting"}},
		{no: 37, name: "lip and hole, as left", at: "shaft-in", sheet: "reassembly", role: layout.RoleTick, count: 2, words: []string{"lip faces the pinion", "hole faces the grease fitting", "ring hole to fitting"}},
		{no: 3, name: "end play found", at: "D6", role: layout.RoleValue, cells: 6, count: 1, words: []string{"0.0030 – 0.0050 in", "LAST CHANCE: gone once"}},
		{no: 3, name: "end play: copied, left, three tries", at: "D6", sheet: "reassembly", role: layout.RoleValue, cells: 6, count: 2 + 3},
		{no: 40, name: "a torque that the manual prints cut short", at: "brake-on", sheet: "reassembly", words: []string{"200 lb-in (23 N·m)", "sources differ", "22 N·m (200 lb-in is 22.6 N·m)"}},
	},
	"field-grid-coupling.yaml": {
		{no: 11, name: "largest less smallest gap, four points", at: "D1", role: layout.RoleValue, cells: 5, count: 4 + 1, words: []string{"spread at most 0.010 in", "largest less smallest", "270°"}},
		{no: 11, name: "gap in putting back: copied, left; two tries with their spread", at: "D1", sheet: "reassembly", role: layout.RoleValue, cells: 5, count: 2*4 + 2 + 2*(4+1)},
		{no: 11, name: "difference of the offsets", at: "D3", role: layout.RoleValue, cells: 5, count: 2 + 1, words: []string{"largest of D2", "smallest of D2"}},
		{no: 21, name: "offset at four points", at: "D2", role: layout.RoleValue, cells: 5, count: 4, words: []string{"at most 0.010 in", "0°", "90°", "180°", "seen from the motor"}},
		{no: 34, name: "set screws last, then again", at: "last", sheet: "reassembly", role: layout.RoleTick, count: 1 + 2*2, words: []string{"AGAIN", "2 tries at most", "set screws last"}},
		{no: 37, name: "cut ends one way, as found", at: "grid", role: layout.RoleWords, count: 1, words: []string{"cut end faces the same way as all others"}},
		{no: 37, name: "cut ends one way, as left", at: "grid", sheet: "reassembly", role: layout.RoleTick, count: 1, words: []string{"cut end faces the same way as all others"}},
		{no: 37, name: "match marks of the cover on one side", at: "cover", role: layout.RoleWords, count: 1 + 2, words: []string{"marked edge faces the same side"}},
		{no: 29, name: "spacer bar counted in", at: "D1", words: []string{"spacer bar counted in", "Spacer bar 0.125 in and feelers"}},
	},
	"field-safety-valve.yaml": {
		{no: 8, name: "E of the orifice chosen, found and left", at: "D8", role: layout.RoleValue, cells: 5, count: 1 + 2, words: []string{"0.028 +0.002 / −0.003 in", "0.025 – 0.030"}},
		{no: 8, name: "B of the orifice chosen", at: "D6", role: layout.RoleValue, cells: 5, count: 1 + 2, words: []string{"at most 1.182 in", "over: discard the bushing"}},
		{no: 8, name: "the least G, copied from a table that was not at hand", at: "D10", role: layout.RoleValue, count: 2*1 + 1 + 2, words: []string{"at least D12"}},
		{no: 4, name: "C with nothing above", at: "D7", role: layout.RoleValue, cells: 5, count: 1 + 2, words: []string{"1.304 +0.000 / −0.003 in", "1.301 – 1.304"}},
		{no: 4, name: "F with unequal deviations", at: "D9", role: layout.RoleValue, cells: 5, count: 1 + 2, words: []string{"0.079 +0.002 / −0.003 in", "0.076 – 0.081"}},
		{no: 15, name: "worn limit below the new ones", at: "D8", words: []string{"old part 0.020 – 0.030 in", "under: re-cut all of B, C, E and F", "goes back"}},
		{no: 28, name: "C in both units", at: "D7", words: []string{"33.12 +0.00 / −0.07 mm as printed in the source"}},
		{no: 28, name: "least E in both units", at: "D8", words: []string{"0.51 – 0.76 mm as printed in the source"}},
		{no: 6, name: "notches come back to the very number: copied, from and to, left, apart", at: "D2", sheet: "reassembly", role: layout.RoleValue, cells: 2, count: 5},
		{no: 6, name: "notches, the limit in words", at: "D2", sheet: "critical", words: []string{"as found ± 0 pcs"}},
		{no: 6, name: "screw above the yoke, and what a flat of it moves", at: "D1", sheet: "reassembly", words: []string{"one flat of the Compression screw", "0.53 mm"}},
		{no: 34, name: "lapped again until it is a mirror", at: "lap", role: layout.RoleTick, count: 3 * 2, words: []string{"AGAIN", "D11 is mirror"}},
	},
	"field-draft-fan.yaml": {
		{no: 27, name: "housing gap in µm, the source in mm too: three places, two ends", at: "D1", role: layout.RoleValue, cells: 3, count: 2 * 3, words: []string{"56 – 108 µm", "0.056 – 0.108 mm as printed in the source"}},
		{no: 27, name: "clearance in mm beside it", at: "D2", role: layout.RoleValue, cells: 5, count: 2, words: []string{"0.180 – 0.240 mm"}},
		{no: 8, name: "row of the chart for this band and class", at: "D2", words: []string{"0.180 – 0.240 mm", "source: ISO 5753-1"}},
		{no: 40, name: "the row that the chart prints wrong", at: "D2", words: []string{"sources differ", "at most 0.600 mm", "a slipped decimal", "USED"}},
		{no: 7, name: "mounted clearance from that before: copies, two ends, copied, left, three tries, two bearings", at: "D3", sheet: "reassembly", role: layout.RoleValue, cells: 5, count: 2 * (2 + 2 + 2 + 3), words: []string{"0.100 mm", "0.075 mm", "at least", "at most"}},
		{no: 37, name: "marks across wheel, clamp and shaft", at: "marks", role: layout.RoleWords, count: 2*2 + 1, words: []string{"Fan wheel", "Wheel clamp", "photo no."}},
		{no: 35, name: "hold", at: "W1", words: []string{"HOLD", "the chart and its misprint"}},
	},
	"field-steam-turbine.yaml": {
		{no: 15, name: "new least and most, worn above them", at: "D1", role: layout.RoleValue, cells: 5, count: 1 + 1, words: []string{"0.010 – 0.018 in", "0.254 – 0.457 mm as printed in the source", "old part 0.010 – 0.025 in", "renew the locating bearing, it is not adjustable", "renewed"}},
		{no: 33, name: "float before the cover", at: "D1", words: []string{"LAST CHANCE: gone once"}},
		{no: 33, name: "reached with the rotor out only", at: "rings", role: layout.RoleInitials, count: 2, words: []string{"reached with the rotor out only", "Take oil ring and shaft seal out"}},
		{no: 34, name: "lifted and set down until level", at: "raise", role: layout.RoleTick, count: 3 * 2, words: []string{"AGAIN", "are both ends level?", "Trial lift 1.0 in", "L1"}},
		{no: 34, name: "new locating bearing only if the float is over", at: "judge", role: layout.RoleTick, count: 2, words: []string{"IF", "D1 is over 0.025 in", "The locating bearing goes back."}},
		{no: 37, name: "shielded side and bevelled edge, as found", at: "locating", role: layout.RoleWords, count: 2, words: []string{"shielded side faces the trip body", "bevelled edge faces the trip body"}},
		{no: 37, name: "shielded side and bevelled edge, as left", at: "locating", sheet: "reassembly", role: layout.RoleTick, count: 2, words: []string{"shielded side faces the trip body"}},
		{no: 23, name: "ends alike", at: "boxes", role: layout.RoleInitials, count: 2, words: []string{"trip body end", "coupling end"}},
	},
	"field-reduction-gear.yaml": {
		{no: 21, name: "three lines by two faces, four bearings; the stamp copied and the least beside each", at: "D1", role: layout.RoleValue, cells: 6, count: 4*6 + 4*2, words: []string{"D1/P-F", "D1/S-A", "forward", "after"}},
		{no: 14, name: "number stamped on each shell", at: "D3", role: layout.RoleValue, cells: 6, count: 4, words: []string{"number on the back of Loaded half"}},
		{no: 14, name: "limit from the number stamped", at: "D1", words: []string{"D3/P-F Thickness stamped on the shell when new", "0.0050 in", "at least"}},
		{no: 14, name: "depth against the engraved constant: two copies, the most, the reading", at: "D7", role: layout.RoleValue, count: 2 + 1 + 1, words: []string{"D6 to worked out", "0.010 in"}},
		{no: 7, name: "wear from the stamp and the smallest of six", at: "D4", role: layout.RoleValue, cells: 6, count: 4 * 4, words: []string{"by hand: D4/P-F = D3 − smallest of D1", "at most 0.0050 in"}},
		{no: 6, name: "thrust end play as found", at: "D5", sheet: "reassembly", role: layout.RoleValue, cells: 6, count: 3 + 2},
		{no: 6, name: "thrust end play, the limit in words", at: "D5", sheet: "critical", words: []string{"as found ± 0.0030 in"}},
		{no: 17, name: "contact of the teeth", at: "D9", sheet: "reassembly", role: layout.RoleValue, cells: 3, count: 2, words: []string{"at least 80 %", "5 to 10 teeth"}},
		{no: 17, name: "no scoring, each journal", at: "D10", role: layout.RoleTick, count: 4 * (2 + 2), words: []string{"none allowed"}},
		{no: 18, name: "pattern drawn, each pinion", at: "D8", sheet: "reassembly", role: layout.RoleSketch, count: 2},
		{no: 35, name: "opened by a named authority only", at: "W1", words: []string{"HOLD", "authorises in writing"}},
		{no: 35, name: "searched before closing", at: "W2", sheet: "reassembly", words: []string{"HOLD", "has searched the case"}},
		{no: 34, name: "the other end is looked at, each bearing", at: "failed", role: layout.RoleTick, count: 4 * 2, words: []string{"is over 0.0050 in", "at the other end of this pinion"}},
	},
}

// moreFieldSums are worked out by hand from the rules of the sources.
var moreFieldSums = []fieldSum{
	// 0.031 in less 0.020 in is 0.011 in, +0.000/-0.002 in.
	{file: "field-swing-brake.yaml", mark: "D3", source: "TM 5-3810-306-34 p. 15-125", taken: map[string]string{"this": "0.009 in", "D2": "0.031 in"}, low: "0.009 in", high: "0.011 in"},
	// Two ends of a bearing of 0.235 mm: 0.100 and 0.075 mm are taken away, and 0.16 mm,
	// the reading of the report, is in.
	{file: "field-draft-fan.yaml", mark: "D3/DE", source: "fan report, about 0.16 mm in limits; reductions FROM MEMORY", taken: map[string]string{"this": "0.160 mm", "D2": "0.235 mm"}, low: "0.135 mm", high: "0.160 mm"},
	// 1.2502 in stamped, 0.0050 in of wear.
	{file: "field-reduction-gear.yaml", mark: "D1/P-F", source: "NAVEDTRA 14075 ch. 4, thickness against the stamp", taken: map[string]string{"this": "1.2490 in", "D3": "1.2502 in"}, low: "1.2452 in"},
	// A constant of 2.250 in, and 0.010 in of wear-down.
	{file: "field-reduction-gear.yaml", mark: "D7", source: "NAVEDTRA 14115, depth constant", taken: map[string]string{"this": "2.255 in", "D6": "2.250 in"}, low: "2.250 in", high: "2.260 in"},
	// An end play of 0.0140 in that shall become 0.003 to 0.005 in takes 0.009 to 0.011 in.
	{file: "field-swing-brake.yaml", mark: "D5", source: "TM 5-3810-294-34 5-47", taken: map[string]string{"this": "0.010 in", "D4": "0.0140 in"}, low: "0.0090 in", high: "0.0110 in"},
}

// TestSizeTableByOrifice: the job chooses the row of the size table that is printed.
// Figures: safety-valve maker's manual, 1511 series, table 8b and its note 1.
func TestSizeTableByOrifice(t *testing.T) {
	t.Parallel()
	const name = "field-safety-valve.yaml"
	text, err := os.ReadFile(filepath.Join(testdata, "good", name))
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		orifice string
		points  []point
	}{
		{"N", []point{
			{at: "D6", words: []string{"at most 2.773 in", "70.43 mm"}},
			{at: "D7", words: []string{"2.950 +0.006 / −0.000 in", "2.950 – 2.956"}},
			{at: "D8", words: []string{"0.025 +0.005 / −0.000 in", "old part 0.020 – 0.030 in", "0.51 – 0.76 mm"}},
		}},
		{"Q", []point{
			{at: "D6", words: []string{"at most 4.424 in", "112.37 mm"}},
			{at: "D8", words: []string{"0.036 +0.005 / −0.000 in", "old part 0.025 – 0.041 in", "0.64 – 1.041 mm"}},
			{at: "D9", words: []string{"0.285 +0.005 / −0.000 in", "7.24 +0.12 / −0.00 mm"}},
		}},
	} {
		jb := "job: {number: WO-2291}\noptions: {orifice: orifice " + c.orifice + "}\n"
		files := fstest.MapFS{name: {Data: text}, "job.yaml": {Data: []byte(jb)}}
		j, problems := packs.Load(files, packs.Inputs{Definition: name, Job: "job.yaml"})
		if len(problems) > 0 {
			t.Fatalf("orifice %s: %v", c.orifice, problems)
		}
		pack, misfits := templates.Compose(j, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
		if len(misfits) > 0 {
			t.Fatalf("orifice %s: %v", c.orifice, misfits)
		}
		for _, p := range c.points {
			items := p.lookedFor(t, j, pack)
			if lack := p.missing(items); lack != "" {
				t.Errorf("orifice %s, %s: %s", c.orifice, p.at, lack)
			}
			if (&point{words: []string{"1.182 in"}}).missing(items) == "" {
				t.Errorf("orifice %s, %s: a row of orifice H is printed", c.orifice, p.at)
			}
		}
	}
}
