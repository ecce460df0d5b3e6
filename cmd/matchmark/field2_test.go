package main

import (
	"maps"

	"matchmark/layout"
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
		{no: 30, name: "table of packs, rounded down", at: "D3", sheet: "reassembly", words: []string{"0.009 – 0.011", "3 × 0.003"}},
		{no: 34, name: "no shim where the gap is small", at: "shim", sheet: "reassembly", role: layout.RoleTick, count: 2, words: []string{"IF", "D2 is over 0.022 in", "No shim. The old leaves stay in C2"}},
		{no: 34, name: "round again until all bolts hold", at: "brake-on", sheet: "reassembly", role: layout.RoleTick, count: 1 + 4*2, words: []string{"AGAIN", "do all bolts hold 200 lb-in?", "4 tries at most"}},
		{no: 34, name: "apart again until the end play is in", at: "drum-on", sheet: "reassembly", words: []string{"AGAIN", "D6 is in limits", "3 tries at most"}},
		{no: 36, name: "three screws for now, with a torque of their own", at: "trial", sheet: "reassembly", role: layout.RoleTick, count: 1, words: []string{"for now", "3 Drum screw", "(3 pieces)", "20–25 lb-ft", "FOR NOW, at last J3 40–45 lb-ft"}},
		{no: 36, name: "taken out again", at: "drum-on", sheet: "reassembly", words: []string{"take out again", "3 Drum screw", "(9 pieces)", "40–45 lb-ft"}},
		{no: 37, name: "lip and hole, as found", at: "drum", role: layout.RoleWords, count: 2, words: []string{"lip faces the pinion", "hole faces the grease fitting"}},
		{no: 37, name: "lip and hole, as left", at: "shaft-in", sheet: "reassembly", role: layout.RoleTick, count: 2, words: []string{"lip faces the pinion", "hole faces the grease fitting", "ring hole to fitting"}},
		{no: 3, name: "end play found", at: "D6", role: layout.RoleValue, cells: 6, count: 1, words: []string{"0.0030 – 0.0050 in", "LAST CHANCE: gone after"}},
		{no: 3, name: "end play: copied, left, how far it went, three tries", at: "D6", sheet: "reassembly", role: layout.RoleValue, cells: 6, count: 3 + 3},
		{no: 40, name: "a torque that the manual prints cut short", at: "brake-on", sheet: "reassembly", words: []string{"200 lb-in (23 N·m)", "sources differ", "22 N·m (200 lb-in is 22.6 N·m)"}},
	},
	"field-grid-coupling.yaml": {
		{no: 11, name: "largest less smallest gap, four points", at: "D1", role: layout.RoleValue, cells: 5, count: 4 + 1, words: []string{"spread at most 0.010 in", "largest less smallest", "270°"}},
		{no: 11, name: "gap in putting back: copied, left, apart; two tries with their spread", at: "D1", sheet: "reassembly", role: layout.RoleValue, cells: 5, count: 3*4 + 2 + 2*(4+1)},
		{no: 11, name: "difference of the offsets", at: "D3", role: layout.RoleValue, cells: 5, count: 2 + 1, words: []string{"largest of D2", "smallest of D2"}},
		{no: 21, name: "offset at four points", at: "D2", role: layout.RoleValue, cells: 5, count: 4, words: []string{"at most 0.010 in", "0°", "90°", "180°", "seen from the motor"}},
		{no: 34, name: "set screws last, then again", at: "last", sheet: "reassembly", role: layout.RoleTick, count: 1 + 2*2, words: []string{"AGAIN", "2 tries at most", "set screws last"}},
		{no: 37, name: "cut ends one way, as found", at: "grid", role: layout.RoleWords, count: 1, words: []string{"cut end faces the same way as all others"}},
		{no: 37, name: "cut ends one way, as left", at: "grid", sheet: "reassembly", role: layout.RoleTick, count: 1, words: []string{"cut end faces the same way as all others"}},
		{no: 37, name: "match marks of the cover on one side", at: "cover", role: layout.RoleWords, count: 1 + 2, words: []string{"marked edge faces the same side"}},
		{no: 29, name: "spacer bar counted in", at: "D1", words: []string{"spacer bar counted in", "Spacer bar 0.125 in and feelers"}},
	},
}

// moreFieldSums are worked out by hand from the rules of the sources.
var moreFieldSums = []fieldSum{
	// 0.031 in less 0.020 in is 0.011 in, +0.000/-0.002 in.
	{file: "field-swing-brake.yaml", mark: "D3", source: "TM 5-3810-306-34 p. 15-125", taken: map[string]string{"this": "0.009 in", "D2": "0.031 in"}, low: "0.009 in", high: "0.011 in"},
	// An end play of 0.0140 in that shall become 0.003 to 0.005 in takes 0.009 to 0.011 in.
	{file: "field-swing-brake.yaml", mark: "D5", source: "TM 5-3810-294-34 5-47", taken: map[string]string{"this": "0.010 in", "D4": "0.0140 in"}, low: "0.0090 in", high: "0.0110 in"},
}
