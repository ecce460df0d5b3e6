package main

import (
	"math"
	"strings"
	"testing"

	"matchmark/layout"
)

// TestGoodOnPaper sees that every page of every good definition keeps the sizes of
// boxes, on both papers, for bare hands and for gloves.
func TestGoodOnPaper(t *testing.T) {
	t.Parallel()
	for _, name := range definitions(t, "good") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			for _, paper := range papers {
				for _, gloves := range []bool{false, true} {
					_, pack := goodPack(t, name, paper, gloves)
					for i, f := range pack.Pages.BySheet() {
						checkFrame(t, name, i+1, f, gloves)
					}
				}
			}
		})
	}
}

// arrangements is how many boxes of how many characters each kind of limit and each
// arrangement of every-arrangement.yaml asks for. The numbers are counted by hand
// from the definition: places times positions, and one a side.
var arrangements = []struct {
	name, mark, sheet, role string
	cells, count            int
}{
	{"range", "D1", "traveler", layout.RoleValue, 4, 1},
	{"temperature of a cold part", "D1", "traveler", layout.RoleValue, 3, 1},
	{"goes back, mended, renewed", "D1", "traveler", layout.RoleTick, 0, 3},
	{"copy and left", "D1", "reassembly", layout.RoleValue, 4, 2},
	{"stations by planes, two ends", "D2", "traveler", layout.RoleValue, 7, 2 * 2 * 2},
	{"temperature, degrees over", "D2", "traveler", layout.RoleValue, 3, 2 * 2},
	{"correction to 20 °C", "D2", "traveler", layout.RoleValue, 6, 2},
	{"clock of eight", "D3", "traveler", layout.RoleValue, 4, 8},
	{"signs of a clock", "D3", "traveler", layout.RoleSign, 0, 8},
	{"clock of four and its spread", "D4", "traveler", layout.RoleValue, 4, 4 + 1},
	{"12 cylinders by 4 valves, found and left", "D5", "readings", layout.RoleValue, 4, 12 * 4 * 2},
	{"initials of each cylinder", "D5", "readings", layout.RoleInitials, 0, 12*2 + 1},
	{"20 gates by 7 places", "D6", "readings", layout.RoleValue, 4, 20 * 7},
	{"three plungers by two places in one block", "D7", "traveler", layout.RoleValue, 6, 3 * 2},
	{"log of eight rows by three", "D8", "readings", layout.RoleValue, 3, 8*3 + 1},
	{"clock time of a log", "D8", "readings", layout.RoleTime, 0, 1},
	{"sketch", "D9", "traveler", layout.RoleSketch, 0, 1},
	{"percent", "D10", "traveler", layout.RoleValue, 3, 1},
	{"none allowed, and in or out", "D11", "traveler", layout.RoleTick, 0, 2 + 2},
	{"must be free, two ends", "D12", "traveler", layout.RoleTick, 0, 2 * (2 + 2)},
	{"choose, two ends", "D13", "traveler", layout.RoleTick, 0, 2 * 2},
	{"words, two ends", "D14", "traveler", layout.RoleWords, 0, 2},
	{"six places, mean and spread", "D15", "traveler", layout.RoleValue, 4, 6 + 2},
	{"three places, two spare, sum", "D16", "traveler", layout.RoleValue, 5, 3 + 2 + 1},
	{"by build", "D17", "traveler", layout.RoleValue, 4, 1},
	{"as found, on the traveler, two ends", "D18", "traveler", layout.RoleValue, 5, 2},
	{"as found: copy, left, difference, from and to, two ends", "D18", "reassembly", layout.RoleValue, 5, 2 * 5},
	{"pieces", "D19", "traveler", layout.RoleValue, 2, 1},
	{"rise of temperature", "D22", "traveler", layout.RoleValue, 3, 1},
	{"in two units", "D24", "traveler", layout.RoleValue, 4, 1},
	{"up to four beside each other, and their spread", "D28", "traveler", layout.RoleValue, 4, 4 + 1},
	{"yes or no", "D29", "traveler", layout.RoleTick, 0, 2},
	{"angle", "D31", "traveler", layout.RoleValue, 4, 1},
	{"force", "D32", "traveler", layout.RoleValue, 3, 1},
}

func TestArrangementsOnPaper(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := goodPack(t, "every-arrangement.yaml", paper, false)
		for _, c := range arrangements {
			got := boxesOf(pack, c.sheet, c.role, atOf(t, jb, c.mark), c.cells)
			if len(got) != c.count {
				t.Errorf("%s: %s (%s): %d boxes %s on the %s sheet, want %d", paper.Name, c.mark, c.name, len(got), c.role, c.sheet, c.count)
			}
			for _, it := range got {
				// 5.5 mm a character and 4 mm: the size that was tried with real pens.
				if r := it.Shape.(layout.Rect); c.cells > 0 && math.Abs(float64(r.W)-(5.5*float64(c.cells)+4)) > 0.01 {
					t.Errorf("%s: %s (%s): a box for %d characters is %.1f mm wide", paper.Name, c.mark, c.name, c.cells, float64(r.W))
				}
			}
		}
	}
}

// TestPlacesOfBoxes sees that the boxes stand where their places are: round the
// clock face, in rows and columns.
func TestPlacesOfBoxes(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := goodPack(t, "every-arrangement.yaml", paper, false)
		upright := layout.Frame{W: paper.W, H: paper.H}
		// Eight boxes clockwise: 45° to 135° go down on the right, 225° to 315° up on
		// the left.
		clock := boxesOf(pack, "traveler", layout.RoleValue, atOf(t, jb, "D3"), 4)
		x, y := make([]float64, 8), make([]float64, 8)
		for i, it := range clock {
			x[i], y[i] = corner(it, upright)
		}
		for i := 1; i < 4; i++ {
			if !(y[i] > y[i-1] || i == 1) || !(x[i] > x[8-i]) || !(y[8-i] > y[(9-i)%8] || i == 1) {
				t.Errorf("%s: clock boxes at %.0f, %.0f", paper.Name, x, y)
				break
			}
		}
		if !(y[0] < y[1] && y[4] > y[3]) {
			t.Errorf("%s: top and bottom of the clock at %.0f, %.0f", paper.Name, x, y)
		}
		checkLattice(t, paper, pack, "traveler", atOf(t, jb, "D2"), 7, 2)
		checkLattice(t, paper, pack, "readings", atOf(t, jb, "D5"), 4, 4)
		checkLattice(t, paper, pack, "readings", atOf(t, jb, "D6"), 4, 7)
	}
}

// TestLimitsInWords sees that each limit is printed as it is said. The sizes by letter
// and grade are those of testdata/outside/iso286.txt, where the source of each row
// stands; the words are our own.
func TestLimitsInWords(t *testing.T) {
	t.Parallel()
	jb, pack := goodPack(t, "every-arrangement.yaml", layout.A4, false)
	for mark, words := range map[string][]string{
		"D1": {"0.20 – 0.40 mm", "old part", "0.20 – 0.60 mm", "mended", "0.20 – 0.80 mm", "over: renew both halves", "under: tell the engineer",
			"source: letter 11", "sources differ", "sheet 3: 2.0 to 4.0 mm (a slipped point)", "USED, chosen at W1",
			"pushed: toward the flywheel, then away from it", "load: 500 N each way", "taken cold", "by: Dial indicator"},
		"D2":  {"Ø130 m6", "130.015 – 130.040 mm", "Ø130 k6", "130.003 – 130.028 mm", "on the diameter", "part not at 20 °C (steel)", "× 0.00150 mm"},
		"D3":  {"−0.05 to +0.05 mm", "seen from the flywheel"},
		"D4":  {"spread at most 0.10 mm", "plane: square to the shaft"},
		"D7":  {"Ø45 f7", "44.950 – 44.975 mm", "44.900 – 44.975 mm"},
		"D10": {"at least 70 %"}, "D11": {"none allowed"}, "D12": {"free"}, "D13": {"lip", "labyrinth"},
		"D15": {"mean 0.10 – 0.20 mm", "spread at most 0.04 mm"},
		"D16": {"sum 1.400 – 1.600 mm"},
		"D17": {"0.60 – 0.80 mm"}, // the medium slide that the job has
		"D18": {"to be left as found ± 0.10 mm"},
		"D19": {"exactly 8 pcs"},
		"D20": {"at most 0.50 mm"}, // serial 880 is an early build
		"D21": {"about 12.50 mm", "no tolerance in the source: judge and sign"},
		"D22": {"60 – 80 °C above the part beside it", "108 – 144 °F", "never 140 – 176"}, // × 1.8, and what 32 added would make of it
		"D23": {"30.00 +0.02 / −0.00 mm", "30.00 – 30.02"},
		"D24": {"0.30 – 0.40 mm", "0.012 – 0.015 in as printed in the source"},
		"D25": {"1250.0 ± 1.0 mm", "1249.0 – 1251.0"},
		"D26": {"at most 0.50 mm for each m of D25"}, "D27": {"at most 50 % of D1"},
		"D28": {"0.20 – 0.35 mm", "spread at most 0.10 mm"}, "D29": {"yes", "no"}, "D30": {"at least 4.00 mm"},
		"D31": {"44.5 – 45.5°"}, "D32": {"410 – 450 N"},
	} {
		got := textsOf(pack, "traveler", atOf(t, jb, mark))
		for _, w := range words {
			if !strings.Contains(got, w) {
				t.Errorf("%s: %q is not printed; the block says %q", mark, w, got)
			}
		}
	}
	for mark, words := range map[string][]string{
		"D5": {"A, B: 0.25 – 0.35 mm", "C, D: 0.40 – 0.50 mm", "found", "left", "12"},
		"D6": {"G1", "G20", "upper third", "record"},
		"D8": {"hub: at most 200 °C", "cover: at most 100 °C", "taken hot", "14 min", "over: stop and let it cool"},
	} {
		got := textsOf(pack, "readings", atOf(t, jb, mark))
		for _, w := range words {
			if !strings.Contains(got, w) {
				t.Errorf("%s: %q is not printed; the sheet says %q", mark, w, got)
			}
		}
	}
}
