package main

import (
	"regexp"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// bevelBoxes is how many boxes the awkward things of the gearbox ask for, counted by
// hand from the definition: places times positions, and one a side.
var bevelBoxes = []struct {
	name, mark, sheet, role string
	cells, count            int
}{
	{"oil stick: inches over a fraction, three boxes", "D1", "traveler", layout.RoleFraction, 0, 3},
	{"oil stick: copied and left", "D1", "reassembly", layout.RoleFraction, 0, 3 * 2},
	{"disc gap at four places and its spread", "D2", "traveler", layout.RoleValue, 4, 4 + 1},
	{"disc gap: copy, left, and two spreads", "D2", "reassembly", layout.RoleValue, 4, 4*2 + 2},
	{"backlash at four angles", "D3", "traveler", layout.RoleValue, 4, 4},
	{"backlash: copy, left, difference, two tries that were no good", "D3", "reassembly", layout.RoleValue, 4, 4*3 + 2*4},
	{"backlash: goes back or renewed", "D3", "traveler", layout.RoleTick, 0, 2},
	{"contact on drive and coast flank", "D4", "traveler", layout.RoleSketch, 0, 2},
	{"contact that stays, on both flanks", "D4", "reassembly", layout.RoleSketch, 0, 2},
	{"share of the tooth, both flanks", "D5", "traveler", layout.RoleValue, 3, 2},
	{"share of the tooth: copy, left, two tries that were no good", "D5", "reassembly", layout.RoleValue, 3, 2*2 + 2*2},
	{"distance of the pinion: copy, sum, band, left, two tries", "D10", "reassembly", layout.RoleValue, 6, 1 + 1 + 2 + 1 + 2},
	{"gap of the disc after the last round, and its spread", "D31", "close-out", layout.RoleValue, 4, 4 + 1},
	{"output float", "D6", "traveler", layout.RoleValue, 4, 1},
	{"input float", "D8", "traveler", layout.RoleValue, 5, 1},
	{"run-out", "D17", "traveler", layout.RoleValue, 5, 1},
	{"crown packs: four leaves and their sum, two sides", "D12", "traveler", layout.RoleValue, 4, 2 * 5},
	{"pinion pack: four leaves and their sum", "D13", "traveler", layout.RoleValue, 4, 5},
	{"output packs: four leaves and their sum, two sides", "D14", "traveler", layout.RoleValue, 4, 2 * 5},
	{"gap under the crown cover at four places, its mean and its spread", "D15", "reassembly", layout.RoleValue, 0, 4 + 1 + 1},
	{"span over seven teeth at four places", "D18", "traveler", layout.RoleValue, 6, 4},
	{"span over three teeth at three", "D19", "traveler", layout.RoleValue, 5, 3},
	{"lip tracks of both sides", "D21", "traveler", layout.RoleValue, 4, 2},
	{"two dowels", "D22", "traveler", layout.RoleValue, 5, 2},
	{"six seats, two planes", "D24", "traveler", layout.RoleValue, 6, 2 * 2},
}

// TestBevelGearboxBoxes: what the gearbox asks for has its boxes on paper.
func TestBevelGearboxBoxes(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := composed(t, bevel, templates.Options{Paper: paper})
		for _, c := range bevelBoxes {
			if got := boxesOf(pack, c.sheet, c.role, atOf(t, jb, c.mark), c.cells); len(got) != c.count {
				t.Errorf("%s: %s (%s): %d boxes %s of %d characters on the %s sheet, want %d", paper.Name, c.mark, c.name, len(got), c.role, c.cells, c.sheet, c.count)
			}
		}
	}
}

// bevelWords are what a mechanic must find, each on its sheet, blanks and slashes left out.
var bevelWords = []onSheet{
	// Easily missed.
	{"traveler", "left-handthread"}, {"reassembly", "left-handthread"},
	{"traveler", "circlipbehindbearing"}, {"reassembly", "circlipbehindbearing"},
	{"traveler", "dowelsproud"}, {"reassembly", "dowelsproud"},
	{"traveler", "baffle,LONGscrew"}, {"traveler", "1LONGbafflescrewM8x45"}, {"traveler", "5BafflescrewM8x20"},
	// The blocks came out while the cover hung, and a hot cover was felt while it ran.
	{"traveler", "onY1,slingsslack"}, {"reassembly", "ownlockonbreaker4-11,alicensedelectricianprovesdead,earths:onlynowtouch,readthecovers"},
	{"isolations", "lockedagainatR8.3"},
	// Cups lay loose on their cones, or the ties stayed in; 0° of the backlash was nowhere marked.
	{"traveler", "Tieeachofthefourcupstoitscone"}, {"reassembly", "fourcupshome,fourtiesout"}, {"traveler", "andthatgap:0°"},
	// The oil was drained before its level was read.
	{"traveler", "notchoftheoldstickLASTCHANCE:gonewithinthisstep"},
	{"traveler", "nevercrosswise"}, {"reassembly", "nevercrosswise"},
	// The shrink disc, round and round.
	{"reassembly", "J1ShrinkdiscboltsM1612.9(14pieces)to250N·m"}, {"reassembly", "instages:190N·m250N·m"},
	{"reassembly", "oneaftertheotherroundthedisc,aquarterturneach,nevercrosswise"},
	{"reassembly", "AGAINuntil:at250N·m:noboltmovedinawholeround?(6triesatmost)"}, {"reassembly", "try6yesno"},
	{"close-out", "tightenJ10ShrinkdiscboltsM1612.9,lastround"},
	// Setting the gears.
	{"traveler", "×0.01mm="}, {"traveler", "Numberetchedonthepinion—numberontheendfaceofBevelpinion"}, {"reassembly", "byhand:D11=118.00mm+D9−D10"},
	{"reassembly", "D11Piniontobemovedawayfromthecrownwheel"}, {"reassembly", "leavesof0.05,0.10,0.20,0.50mm"},
	{"reassembly", "sumofD15Gapunderthecrowncoverwithoutshims"}, {"reassembly", "oldpackstays,itssumisin"},
	{"traveler", "0.20–0.35mm"}, {"traveler", "oldpartasfound±0.05mm"},
	{"traveler", "with:preloadspringoff"}, {"traveler", "aslippeddecimal"}, {"reassembly", "maker'sletter31:0.02to0.06mmUSED"},
	{"reassembly", "oneturnoftheInputnut(M65x2)movesit2.000mm"},
	{"reassembly", "AGAINuntil:backlashandcontactinlimits?(3triesatmost)"}, {"reassembly", "cartridgeout"}, {"reassembly", "J3L75N·m"},
	{"reassembly", "WITNESSW5Contactpatternondriveandcoastflank"},
	{"traveler", "driveflank"}, {"traveler", "coastflank"},
	// What stays together, which way round, in which order.
	{"reassembly", "K1Inputshaftintheorderfromthepinionteethoutwardthatwaswrittendown"},
	{"traveler", "orderofInputshaft,countedfromthepinionteethoutward"},
	{"reassembly", "lipfacestheoil"}, {"reassembly", "Backstop:arrowfacesthewaythebeltruns"},
	{"tags", "matchedsetS1"},
	// Hot and heavy.
	{"reassembly", "heatto100°C,neverabove120°C"},
	{"heats", "Heatitto100°C.Neverabove120°C.Noflameonit."}, {"heats", "At100°Citopensby0.024mm"},
	{"lifts", "145kg±2kg"}, {"lifts", "212kg±8.5kg"}, {"lifts", "TurnbuckleM20"}, {"lifts", "Thedowelsstayinthehousing"},
	// The old stick is in inches.
	{"traveler", "1716±116in"}, {"traveler", "thestickisininches"},
}

// TestBevelGearboxOnPaper: the awkward points stand on their sheets.
func TestBevelGearboxOnPaper(t *testing.T) {
	t.Parallel()
	standOnSheets(t, bevel, bevelWords)
}

// TestToothIsDrawnTheSameWayRound: on every field for a contact the toe stands on
// the left, at the low end of the flank, and the heel on the right, at the high one
// (a bevel tooth grows toward its outer end, the heel: ANSI/AGMA 1012, from memory).
func TestToothIsDrawnTheSameWayRound(t *testing.T) {
	t.Parallel()
	_, pack := composed(t, bevel, templates.Options{Paper: layout.A4})
	fields := 0
	for _, f := range pack.Pages.BySheet() {
		for _, field := range f.Items {
			r, ok := field.Shape.(layout.Rect)
			if !ok || field.Role != layout.RoleSketch {
				continue
			}
			words := map[string]layout.Item{}
			for _, it := range f.Items {
				if s, ok := it.Shape.(layout.Text); ok && it.X >= field.X && it.X <= field.X+r.W && it.Y >= field.Y && it.Y <= field.Y+r.H {
					words[s.S] = it
				}
			}
			toe, heel := words["toe"], words["heel"]
			if toe.Shape == nil || heel.Shape == nil {
				continue
			}
			fields++
			if toe.X >= heel.X || toe.Y <= heel.Y {
				t.Errorf("page %d: the toe stands at %.1f, %.1f and the heel at %.1f, %.1f", f.Number, toe.X, toe.Y, heel.X, heel.Y)
			}
		}
	}
	if fields != 4 {
		t.Errorf("%d contact fields, want drive and coast flank, found and left", fields)
	}
}

// TestBevelGearboxCounts counts what the demonstration's own sheet counts: eleven
// containers, five shim packs, 14 bolts of the shrink disc by number, six bearings
// with cup and cone in one bag each, one baffle screw that is longer.
func TestBevelGearboxCounts(t *testing.T) {
	t.Parallel()
	jb, _ := composed(t, bevel, templates.Options{Paper: layout.A4})
	if len(jb.Containers) != 11 {
		t.Errorf("%d containers, want 11", len(jb.Containers))
	}
	bags, packsOfShims := map[string]int{}, 0
	for _, tag := range jb.Tags {
		bags[tag.Mark] = job.Pieces(tag.In)
	}
	for mark, n := range map[string]int{"C1": 1, "C2/L": 1, "C2/R": 1, "C3/L": 1, "C3/R": 1} {
		if bags[mark] == n {
			packsOfShims++
		}
	}
	if packsOfShims != 5 {
		t.Errorf("%d shim packs in bags of their own, want 5", packsOfShims)
	}
	for mark, n := range map[string]int{"C6/LONG": 1, "C6": 15, "C7": 15, "C8/joint": 16,
		"C5/input-M": 2, "C5/input-P": 2, "C5/crown-L": 2, "C5/crown-R": 3, "C5/output-L": 2, "C5/output-R": 2} {
		if bags[mark] != n {
			t.Errorf("%s holds %d pieces, want %d", mark, bags[mark], n)
		}
	}
	sets := map[string]int{}
	for _, s := range jb.Sets {
		for _, p := range s.Members {
			sets[s.Mark] += p.Count
		}
	}
	for mark, n := range map[string]int{"S1": 2, "S2/M": 2, "S2/P": 2, "S3/L": 2, "S3/R": 2, "S4/L": 2, "S4/R": 2} {
		if sets[mark] != n {
			t.Errorf("the matched set %s has %d pieces, want %d", mark, sets[mark], n)
		}
	}
}

// aside is where a pack tells which marks of the definition it does not hold.
var aside = regexp.MustCompile(`Notinthepack:[A-Z0-9,]+\.|[A-Z0-9,]+:notonthismachine\.`)

// TestBevelGearboxWithoutBackstop: the gearbox of a level conveyor has none, and its
// pack holds nothing of it.
func TestBevelGearboxWithoutBackstop(t *testing.T) {
	t.Parallel()
	_, set := sister(t, bevel, "equipment: {tag: G-9}\njob: {number: WO-6411}\noptions: {backstop: no}\n")
	for i, pack := range set {
		paper := papers[i]
		for _, f := range append(pack.Pages.BySheet(), pack.Tags.Pages...) {
			text := aside.ReplaceAllString(squeezed(f), "")
			for _, not := range []string{"1Backstop", "Backstopscrew", "BackstopR:arrow", "C8/backstop", "B7"} {
				if strings.Contains(text, not) {
					t.Errorf("%s %s page %d speaks of %q", paper.Name, f.Sheet, f.Number, not)
				}
			}
		}
	}
}
