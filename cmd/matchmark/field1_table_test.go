package main

import "matchmark/layout"

// fieldPoints are the awkward points of each definition.
var fieldPoints = map[string][]point{
	"field-water-turbine.yaml": {
		{no: 9, name: "plumb per inch of shaft", at: "D15", role: layout.RoleValue, cells: 6, count: 4 + 1, words: []string{"at most 0.000025 in for each in of D13", "× 0.000025"}},
		{no: 9, name: "gate spacing per inch of gate circle", at: "D18", role: layout.RoleValue, cells: 6, count: 12 + 2, words: []string{"24.800 in", "× 0.0001", "at least", "at most", "11 to 12", "12 to 1"}},
		{no: 9, name: "gate to centre per inch of radius", at: "D19", words: []string{"÷ 2", "a × 0.0002", "48.000 in"}},
		{no: 10, name: "centre of the bearing in percent of its clearance", at: "D3", words: []string{"at most 20 % of D2", "× 0.2"}},
		{no: 10, name: "centre of the seal ring, both rings", at: "D7", words: []string{"at most 10 % of D6", "D7/TOP", "D7/BOT", "× 0.1"}},
		{no: 10, name: "air gap in percent of the nominal one", at: "D9", role: layout.RoleValue, cells: 5, count: 8 + 2, words: []string{"95 % of D8", "105 % of D8", "× 0.95", "× 1.05", "rotor top", "rotor bottom", "left bank"}},
		{no: 11, name: "largest less smallest of the run-out, within a rate per diameter of a length", at: "D12", words: []string{"spread at most 0.002 in for each D14 in D13", "÷", "× 0.002", "largest less smallest"}},
		{no: 21, name: "four quarters of a bearing", at: "D1", role: layout.RoleValue, cells: 5, count: 4, words: []string{"upstream", "right bank", "seen from above"}},
		{no: 21, name: "every shoe of the segmented bearing", at: "D4", role: layout.RoleValue, cells: 5, count: 8},
		{no: 21, name: "two seal rings by four quarters", at: "D5", role: layout.RoleValue, cells: 5, count: 2 * 4},
		{no: 21, name: "five turns of the dial", at: "D10", role: layout.RoleSign, count: 5, words: []string{"0°", "90°", "180°", "270°", "360°"}},
		{no: 33, name: "clearance that is gone with the shells", at: "D1", words: []string{"LAST CHANCE: gone once"}},
		{no: 33, name: "plumb that is gone with the shells", at: "D15", words: []string{"LAST CHANCE: gone once"}},
		{no: 34, name: "again until the dials are back at zero", at: "turn", role: layout.RoleTick, count: 2 * 2, words: []string{"AGAIN", "2 tries at most", "a dial has slipped"}},
		{no: 34, name: "keys first only if they are in the way", at: "keys-in-way", role: layout.RoleTick, count: 2, words: []string{"IF", "are the keys in the way of the slings?", "Rig and level the block first"}},
		{no: 35, name: "witness", at: "W2", words: []string{"WITNESS", "W2"}},
		{no: 35, name: "hold", at: "W1", words: []string{"HOLD", "W1"}},
	},
	"field-fire-pump.yaml": {
		{no: 4, name: "bore with one deviation of nothing", at: "D4", words: []string{"5.250 +0.002 / −0.000 in", "5.250 – 5.252"}},
		{no: 7, name: "clearance from two diameters, two ends", at: "D3", words: []string{"by hand: D3/DE = D1 − D2", "by hand: D3/NDE = D1 − D2"}},
		{no: 7, name: "clearance of the rings, copies and result", at: "D6", role: layout.RoleValue, cells: 5, count: 2 * 3},
		{no: 9, name: "ring clearance by its diameter, and worn at twice that", at: "D9", words: []string{"× 0.001", "0.010 in", "0.012 in", "at least", "at most", "old part at most", "a × 2"}},
		{no: 15, name: "least and most worn clearance of the first seal", at: "D3", words: []string{"at least 0.009 in", "old part 0.009 – 0.018 in", "at least 0.015 in", "old part 0.015 – 0.031 in"}},
		{no: 15, name: "goes back or is renewed, each ring", at: "D6", role: layout.RoleTick, count: 2 * 2, words: []string{"goes back", "renewed"}},
		{no: 24, name: "balance if there is a new impeller", at: "D10", sheet: "reassembly", role: layout.RoleValue, cells: 5, count: 2 * 2, words: []string{"at most 0.024 lb", "turning at 650 rpm"}},
		{no: 28, name: "clearance in both units, new and old", at: "D6", words: []string{"0.23 mm as printed in the source", "0.46 mm as printed in the source"}},
		{no: 28, name: "unbalance in both units", at: "D10", sheet: "reassembly", words: []string{"11 g as printed in the source"}},
		{no: 28, name: "torque in both units", at: "open", sheet: "reassembly", words: []string{"J1", "60 lb-ft (81 N·m)"}},
		{no: 1, name: "twelve diameters: bushings", at: "D1", role: layout.RoleValue, cells: 5, count: 2},
		{no: 1, name: "twelve diameters: sleeves", at: "D2", role: layout.RoleValue, cells: 5, count: 2},
		{no: 1, name: "twelve diameters: casing rings", at: "D4", role: layout.RoleValue, cells: 5, count: 2},
		{no: 1, name: "twelve diameters: impeller rings", at: "D5", role: layout.RoleValue, cells: 5, count: 2},
		{no: 1, name: "twelve diameters: interstage rings", at: "D7", role: layout.RoleValue, cells: 5, count: 2},
		{no: 1, name: "twelve diameters: impeller hubs", at: "D8", role: layout.RoleValue, cells: 5, count: 2},
	},
	"field-gas-compressor.yaml": {
		{no: 2, name: "greatest out of round and taper, two rods", at: "D2", words: []string{"at most 0.0020 in", "by hand: D2/1 = spread of D1", "by hand: D2/2 = spread of D1"}},
		{no: 2, name: "greatest clearance of the ring grooves", at: "D10", role: layout.RoleValue, cells: 6, count: 2 * 3, words: []string{"at most 0.0120 in"}},
		{no: 15, name: "rod in the packing: new, goes back, mended", at: "D1", words: []string{"2.9990 – 3.0000 in", "old part 2.9980 – 3.0000 in", "mended 2.9950 – 3.0000 in", "under: renew the rod"}},
		{no: 15, name: "goes back, mended, renewed, two rods", at: "D1", role: layout.RoleTick, count: 2 * 3},
		{no: 15, name: "rod in the piston", at: "D3", words: []string{"1.9975 – 1.9980 in", "old part 1.9960 – 1.9980 in"}},
		{no: 19, name: "spring pressed to a length, between two forces", at: "D6", role: layout.RoleValue, cells: 4, count: 2 * 2 * 6, words: []string{"with: pressed to 1.250 in", "12.0 – 15.0 lbf", "D6/1-HE", "D6/2-CE"}},
		{no: 21, name: "rod at A, B, C by two planes, two rods", at: "D1", role: layout.RoleValue, cells: 6, count: 2 * 6, words: []string{"vertical 6-12", "horizontal 3-9"}},
		{no: 21, name: "rod at D, E by two planes, two rods", at: "D3", role: layout.RoleValue, cells: 6, count: 2 * 4},
		{no: 21, name: "run-out at F A B C G D E H, two rods", at: "D4", role: layout.RoleValue, cells: 6, count: 2 * 8, words: []string{"F", "G", "H"}},
		{no: 21, name: "signs of the run-out", at: "D4", role: layout.RoleSign, count: 2 * 8, words: []string{"−0.0010 to +0.0010 in"}},
		{no: 21, name: "bore at three places by two directions, two cylinders", at: "D5", role: layout.RoleValue, cells: 6, count: 2 * 6, words: []string{"outer end of ring travel", "middle"}},
		{no: 22, name: "which cylinder, from which end counted", at: "D7", words: []string{"D7/1-HE", "D7/2-CE"}},
		{no: 23, name: "both ends and both cylinders alike", at: "D7", role: layout.RoleValue, cells: 5, count: 2 * 2},
		{no: 6, name: "end clearance as found, with what one turn of the rod moves", at: "D7", sheet: "reassembly", words: []string{"one turn of the Piston rod (1-3/4-12 UN) moves it 0.0833 in"}},
		{no: 37, name: "which way the nut faces, two rods", at: "piston", role: layout.RoleWords, count: 2, words: []string{"spigot side faces the piston"}},
		{no: 35, name: "hold over both forms", at: "W1", words: []string{"HOLD", "W1"}},
	},
	"field-diesel-engine.yaml": {
		{no: 15, name: "main clearance: least, greatest, worn", at: "D1", role: layout.RoleValue, cells: 6, count: 7, words: []string{"0.0036 – 0.0075 in", "old part 0.0036 – 0.0095 in", "M7"}},
		{no: 15, name: "shells: the worn limit below the new ones", at: "D4", sheet: "readings", role: layout.RoleValue, cells: 6, count: 7 * 2 * 2, words: []string{"0.1237 – 0.1242 in", "old part 0.1222 – 0.1242 in", "upper", "lower"}},
		{no: 16, name: "goes back or is renewed", at: "D3", role: layout.RoleTick, count: 2, words: []string{"0.0050 – 0.0150 in", "old part 0.0050 – 0.0200 in"}},
		{no: 17, name: "no cracks", at: "D11", role: layout.RoleTick, count: 2 + 2, words: []string{"none allowed"}},
		{no: 17, name: "scores not deeper than", at: "D10", role: layout.RoleValue, cells: 6, count: 1, words: []string{"at most 0.0030 in", "over: rebuild the engine"}},
		{no: 21, name: "liners, six by four, found and left", at: "D6", sheet: "readings", role: layout.RoleValue, cells: 7, count: 6 * 4 * 2, words: []string{"6.2495 – 6.2510 in", "old part 6.2495 – 6.2550 in", "low 90-270°"}},
		{no: 21, name: "six rods", at: "D2", role: layout.RoleValue, cells: 6, count: 6},
		{no: 21, name: "seven journals out of round", at: "D8", role: layout.RoleValue, cells: 6, count: 7, words: []string{"at most 0.0020 in"}},
		{no: 21, name: "seven journals tapered", at: "D9", role: layout.RoleValue, cells: 6, count: 7, words: []string{"at most 0.0005 in"}},
		{no: 7, name: "a row that says see another row", at: "D5", role: layout.RoleValue, cells: 6, count: 1, words: []string{"by hand: D5 = D3", "D3 End float of the crankshaft"}},
		{no: 28, name: "main clearance in both units", at: "D1", words: []string{"0.0914 – 0.1905 mm as printed in the source", "0.2413 mm as printed in the source"}},
		{no: 32, name: "both halves renewed if one is thin", at: "D4", sheet: "readings", words: []string{"under: renew both halves, even if one is good"}},
		{no: 32, name: "halves renewed as a set", at: "mains", sheet: "reassembly", words: []string{"if one is renewed, renew the set"}},
		{no: 32, name: "rod nuts always new", at: "rods", sheet: "reassembly", words: []string{"Rod nut", "new, from stores; count the old against the new"}},
		{no: 20, name: "cap bolts in three stages, seven mains", at: "mains", sheet: "reassembly", words: []string{"300 lb-ft (407 N·m)", "100 lb-ft", "200 lb-ft"}},
		{no: 40, name: "rod clearance that the table prints wrong in mm", at: "D2", words: []string{"sources differ", "0.0025 in (0.089 mm)", "0.0025 in is 0.0635 mm", "USED, chosen at W1"}},
		{no: 40, name: "bore with a slipped point", at: "D7", role: layout.RoleValue, cells: 7, count: 6, words: []string{"about 7.4915 in", "74.915 in", "a slipped point", "USED, chosen at W1"}},
	},
	"field-lobe-blower.yaml": {
		{no: 1, name: "least clearance C, three places by two sides", at: "D2", role: layout.RoleValue, cells: 6, count: 6, words: []string{"at least 0.0100 in", "inlet", "outlet", "1 in from A", "1 in from B"}},
		{no: 3, name: "clearance CC, three places by two sides", at: "D1", role: layout.RoleValue, cells: 6, count: 6, words: []string{"0.0040 – 0.0080 in"}},
		{no: 21, name: "end plates at twelve places", at: "D3", role: layout.RoleValue, cells: 6, count: 12, words: []string{"D3/A", "D3/B", "at least 0.0070 in", "at least 0.0120 in"}},
		{no: 21, name: "housing, inlet, six places", at: "D4", role: layout.RoleValue, cells: 6, count: 6, words: []string{"at least 0.0150 in"}},
		{no: 21, name: "housing, outlet, six places", at: "D5", role: layout.RoleValue, cells: 6, count: 6, words: []string{"at least 0.0040 in"}},
		{no: 25, name: "the build told by the serial number", at: "D1", words: []string{"0.0040 – 0.0080 in"}},
		{no: 26, name: "editions that differ", at: "D1", words: []string{"sources differ", "0.002 to 0.006 in", "former reduction blower", "USED"}},
		{no: 29, name: "which way the rotor is pushed", at: "D3", words: []string{"pushed: toward the plate that is measured"}},
		{no: 29, name: "how the rotors stand", at: "D1", words: []string{"with: rotors turned until the two flanks are nearest"}},
		{no: 30, name: "leaves behind each gear and their sum", at: "D7", role: layout.RoleValue, cells: 5, count: 2 * (4 + 1), words: []string{"leaf 4", "sum", "0.002, 0.003, 0.005, 0.010 in"}},
		{no: 30, name: "what shims move, with the sum to do", at: "D1", sheet: "reassembly", words: []string{"0.003 in of Gear shims moves it 0.001 in", "÷ 0.001 × 0.003 =", "shims to add"}},
		{no: 34, name: "again until CC is in", at: "gears-on", sheet: "reassembly", words: []string{"AGAIN", "3 tries at most"}},
		{no: 34, name: "copied, left and three tries of six boxes, and how far to go", at: "D1", sheet: "reassembly", role: layout.RoleValue, cells: 6, count: 6 + 6 + 3*6 + 1},
		{no: 34, name: "new gears only if the backlash is over", at: "new-gears", words: []string{"IF", "D6 is over 0.0040 in", "The gears go back as a pair."}},
		{no: 37, name: "spacer against the bearing, each rotor", at: "gears-on", sheet: "reassembly", role: layout.RoleTick, count: 2 + 2 + 3*2, words: []string{"flat side faces the bearing"}},
		{no: 38, name: "order behind the gear, each rotor", at: "gears", role: layout.RoleWords, count: 2 * 4, words: []string{"counted from the bearing outward", "spacer 0.140 in"}},
		{no: 32, name: "gears renewed as a set", at: "gears-on", sheet: "reassembly", words: []string{"if one is renewed, renew the set"}},
	},
	"field-motor-pinion.yaml": {
		{no: 2, name: "greatest bearing clearance", at: "D10", role: layout.RoleValue, cells: 6, count: 1, words: []string{"at most 0.0015 in"}},
		{no: 2, name: "greatest pitting", at: "D9", role: layout.RoleValue, cells: 3, count: 1, words: []string{"at most 20 %", "over: renew gear and pinion"}},
		{no: 7, name: "advance, the mean of hot less the mean of cold: two sums, two means, the difference, two tries", at: "D7", sheet: "reassembly", role: layout.RoleValue, cells: 6, count: 2 + 2 + 1 + 2, words: []string{"by hand: D7 = mean of D6 − mean of D3", "÷ 3 =", "0.046 – 0.056 in"}},
		{no: 7, name: "three cold depths and their sum", at: "D3", sheet: "reassembly", role: layout.RoleValue, cells: 5, count: 3, words: []string{"sum, as left"}},
		{no: 7, name: "three hot depths and their sum", at: "D6", sheet: "reassembly", role: layout.RoleValue, cells: 5, count: 3, words: []string{"sum, as left"}},
		{no: 17, name: "contact by blue", at: "D2", sheet: "reassembly", role: layout.RoleValue, cells: 3, count: 1, words: []string{"at least 75 %", "at least 85 %"}},
		{no: 17, name: "no cracks", at: "D8", role: layout.RoleTick, count: 2 + 2, words: []string{"none allowed", "some"}},
		{no: 17, name: "shims in place", at: "D13", sheet: "reassembly", role: layout.RoleTick, count: 2 + 2, words: []string{"in place"}},
		{no: 27, name: "a rise over the shaft, never a temperature", at: "D5", sheet: "reassembly", words: []string{"about 134 °C above the part beside it", "241 °F", "by hand: D5 = D4 − D15"}},
		{no: 27, name: "inch fractions", at: "D11", role: layout.RoleFraction, count: 3, words: []string{"at most 5/16 in"}},
		{no: 27, name: "whole inches and a fraction", at: "D14", role: layout.RoleFraction, count: 3, words: []string{"3/4 – 2-1/4 in"}},
		{no: 28, name: "advance in both units", at: "D7", sheet: "reassembly", words: []string{"1.17 – 1.42 mm as printed in the source"}},
		{no: 34, name: "again until the advance is in", at: "shrink", sheet: "reassembly", words: []string{"AGAIN", "2 tries at most", "taper or pinion is wrong"}},
		{no: 40, name: "the rise that the manual prints wrong", at: "D5", sheet: "reassembly", words: []string{"273.2 °F above the shaft", "a rise with 32 added", "USED, chosen at W1"}},
		{no: 26, name: "two ceilings of the heat", at: "D4", sheet: "reassembly", words: []string{"at most 200 °C", "at most 375 °F", "at most 190 °C", "374 °F as printed in the source"}},
	},
}

// A fieldSum is a limit that hangs on readings, with its ends for some of them.
type fieldSum struct {
	file, mark, source string
	old                bool // the limit for old parts
	taken              map[string]string
	low, high          string
}

// fieldSums are worked out by hand from the rule of the source.
var fieldSums = []fieldSum{
	// 20 % of a diametral clearance of 0.024 in is 0.0048 in.
	{file: "field-water-turbine.yaml", mark: "D3", source: "FIST 2-7 appendix C, guide bearing", taken: map[string]string{"this": "0.0040 in", "D2": "0.024 in"}, high: "0.0048 in"},
	// 10 % of a diametral clearance of 0.080 in.
	{file: "field-water-turbine.yaml", mark: "D7/TOP", source: "FIST 2-7 appendix C, seal ring", taken: map[string]string{"this": "0.0040 in", "D6": "0.080 in"}, high: "0.008 in"},
	// ±5 % of a nominal gap of 0.500 in is 0.025 in.
	{file: "field-water-turbine.yaml", mark: "D9", source: "FIST 2-7 appendix C, air gap", taken: map[string]string{"this": "0.500 in", "D8": "0.500 in"}, low: "0.475 in", high: "0.525 in"},
	// 0.000025 x 192 in = 0.0048 in.
	{file: "field-water-turbine.yaml", mark: "D15", source: "FIST 2-7 appendix C, plumb", taken: map[string]string{"this": "0.0040 in", "D13": "192.0 in"}, high: "0.004800 in"},
	// ±0.0001 x 96 in = ±0.0096 in about 24.800 in.
	{file: "field-water-turbine.yaml", mark: "D18", source: "FIST 2-7 appendix C, gate spacing", taken: map[string]string{"this": "24.800 in", "D17": "96.0 in"}, low: "24.7904 in", high: "24.8096 in"},
	// ±0.0002 x 48 in = ±0.0096 in about 48.000 in.
	{file: "field-water-turbine.yaml", mark: "D19", source: "FIST 2-7 appendix C, gate to centre", taken: map[string]string{"this": "48.000 in", "D17": "96.0 in"}, low: "47.9904 in", high: "48.0096 in"},
	// 0.010 in to 0.012 in and 0.001 in x 3.5 = 0.0135 to 0.0155 in; renewed at twice, 0.031 in.
	{file: "field-fire-pump.yaml", mark: "D9/1", source: "ring method of NAVEDTRA 14113, new", taken: map[string]string{"this": "0.0140 in", "D7": "3.500 in"}, low: "0.0135 in", high: "0.0155 in"},
	{file: "field-fire-pump.yaml", mark: "D9/1", source: "ring method of NAVEDTRA 14113, worn", old: true, taken: map[string]string{"this": "0.0140 in", "D7": "3.500 in"}, high: "0.031 in"},
}
