package main

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/fit"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates"
)

const bevel = "bevel-gearbox.yaml"

// TestBevelGearboxFits holds the bearing seats against ISO 286: the lower deviation of
// m6 is IT7 less IT6 (ISO 286-1, A.3.2, as read in IS 919-1 and Narayana, Machine
// Drawing, Table 15.4), and IT6 and IT7 are 19 and 30, 22 and 35, 25 and 40 µm in the
// steps to 80, 120 and 180 mm (the standard's table of grades).
func TestBevelGearboxFits(t *testing.T) {
	t.Parallel()
	jb, _ := composed(t, bevel, templates.Options{Paper: layout.A4})
	for _, c := range []struct {
		mark, zone string
		size       fit.Nanometre
		it6, it7   fit.Nanometre
		says       string
	}{
		{"D24", "70 m6", 70_000_000, 19_000, 30_000, "70.011 to 70.030 mm"},
		{"D25", "85 m6", 85_000_000, 22_000, 35_000, "85.013 to 85.035 mm"},
		{"D26", "150 m6", 150_000_000, 25_000, 40_000, "150.015 to 150.040 mm"},
	} {
		z, err := fit.Parse(c.zone)
		if err != nil {
			t.Fatal(err)
		}
		low := c.size + c.it7 - c.it6
		if z.Min() != low || z.Max() != low+c.it6 {
			t.Errorf("%s: %s to %s, want %s", c.zone, z.Min().Decimal(), z.Max().Decimal(), c.says)
		}
		for _, d := range jb.Dims {
			if d.Mark == "D24/M" { // the cone that slides: h6 of 50 to 80 mm, 0 to -19 µm, ISO 286-2
				if d.Found.Text() != "69.981 to 70.000 mm" {
					t.Errorf("D24/M must be %q", d.Found.Text())
				}
				continue
			}
			if d.Base == c.mark && d.Found.Text() != c.says {
				t.Errorf("%s must be %q, want %q", d.Mark, d.Found.Text(), c.says)
			}
		}
	}
	// The tightest fit is the largest seat in the smallest bore: 0 to -15, -20 and -25 µm
	// for tapered roller bearings of normal class, ISO 492, from memory.
	bore := map[string][2]float64{"H1": {0.030, 0.015}, "H2": {0.035, 0.020}, "H3": {0.040, 0.025}}
	for _, h := range jb.Heats {
		if want := bore[h.Base][0] + bore[h.Base][1]; math.Abs(float64(h.Fit.Greatest)-want) > 1e-9 {
			t.Errorf("%s: interference up to %.3f mm, want %.3f", h.Mark, float64(h.Fit.Greatest), want)
		}
	}
}

// bare is the plan of a lift with the load alone: no gear, no tolerance.
func bare(t *testing.T, jb *job.Job, mark string) *lift.Result {
	t.Helper()
	for _, l := range jb.Lifts {
		if l.Mark != mark {
			continue
		}
		plan := l.Plan
		plan.Load.MassTolerance, plan.Load.CoGTolerance = 0, lift.Point{}
		plan.DecidedBy, plan.Reason = "the test", "as the figures were worked out by hand"
		for _, legs := range [][]lift.Leg{plan.Legs, plan.TopLegs} {
			for i := range legs {
				legs[i].Sling.Mass, legs[i].Gear = 0, nil
			}
		}
		plan.Bar.Mass = 0
		r, err := lift.Compute(plan)
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	t.Fatalf("no lift %s", mark)
	return nil
}

// TestBevelGearboxLifts: plain statics by hand. The cover hangs on two eyes 720 mm
// apart, its centre of gravity 90 mm toward the input, 450 mm from the output eye and
// 270 mm from the input eye; a sling of 1000 mm in hand on the output eye leaves
// h = √(1000² - 450²) = 893.03 mm, so the other leg is √(270² + 893.03²) = 932.95 mm
// for a level load. Moments about the eyes give T = W b L / (s h), 60.89 and 94.68 kg:
// plain statics of two legs that meet at the hook. The lever rule under the spreader,
// where the drops hang plumb, is that of published sling sheets (10,000 lb at 8 and 2
// ft gives 8,000 and 2,000 lb, testdata/outside/lift-statics.txt): 212 × 350 / 760
// and 212 × 410 / 760 kg. Above it the flattest leg stands at 60° over 410 mm, so
// h = 410 tan 60° = 710.14 mm.
func TestBevelGearboxLifts(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS(startersDir), packs.Inputs{Definition: bevel})
	type leg struct{ length, tension, angle float64 }
	for mark, want := range map[string]map[string]leg{
		"L1": {
			"output": {1000, 145 * 270 * 1000 / (720 * 893.029), 63.256},
			"input":  {932.951, 145 * 450 * 932.951 / (720 * 893.029), 73.178},
		},
		"L2": {
			"L": {760, 212 * 350.0 / 760, 90},
			"R": {760, 212 * 410.0 / 760, 90},
			// Above the spreader.
			"L above": {820, 212 * 350 * 820 / (760 * 710.141), 60},
			"R above": {791.70, 212 * 410 * 791.70 / (760 * 710.141), 63.763},
		},
	} {
		r := bare(t, jb, mark)
		if len(r.Legs) != len(want) {
			t.Errorf("%s: %d legs, want %d", mark, len(r.Legs), len(want))
		}
		for _, got := range r.Legs {
			name := got.Name
			if got.Above {
				name += " above"
			}
			w := want[name]
			if math.Abs(float64(got.Length)-w.length) > 0.05 || math.Abs(float64(got.Tension)-w.tension) > 0.02 || math.Abs(float64(got.Angle)-w.angle) > 0.01 {
				t.Errorf("%s %s: %.2f mm, %.2f kg at %.2f°, want %.2f mm, %.2f kg at %.2f°", mark, name,
					float64(got.Length), float64(got.Tension), float64(got.Angle), w.length, w.tension, w.angle)
			}
		}
		if r.Tilt.Total > 0.01 {
			t.Errorf("%s hangs %.2f° out of level", mark, float64(r.Tilt.Total))
		}
	}
}

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
	{"backlash: copy, left, difference", "D3", "reassembly", layout.RoleValue, 4, 4 * 3},
	{"backlash: goes back or renewed", "D3", "traveler", layout.RoleTick, 0, 2},
	{"contact on drive and coast flank", "D4", "traveler", layout.RoleSketch, 0, 2},
	{"contact that stays, on both flanks", "D4", "reassembly", layout.RoleSketch, 0, 2},
	{"share of the tooth, both flanks", "D5", "traveler", layout.RoleValue, 3, 2},
	{"share of the tooth: copy, left", "D5", "reassembly", layout.RoleValue, 3, 2 * 2},
	{"output float", "D6", "traveler", layout.RoleValue, 4, 1},
	{"input float", "D8", "traveler", layout.RoleValue, 5, 1},
	{"run-out", "D17", "traveler", layout.RoleValue, 5, 1},
	{"crown packs: four leaves and their sum, two sides", "D12", "traveler", layout.RoleValue, 4, 2 * 5},
	{"pinion pack: four leaves and their sum", "D13", "traveler", layout.RoleValue, 4, 5},
	{"output packs: four leaves and their sum, two sides", "D14", "traveler", layout.RoleValue, 4, 2 * 5},
	{"gap under the crown cover at four places and its sum", "D15", "reassembly", layout.RoleValue, 0, 4 + 1},
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
var bevelWords = []struct{ sheet, text string }{
	// Easily missed.
	{"traveler", "left-handthread"}, {"reassembly", "left-handthread"},
	{"traveler", "circlipbehindbearing"}, {"reassembly", "circlipbehindbearing"},
	{"traveler", "dowelsproud"}, {"reassembly", "dowelsproud"},
	{"traveler", "baffle,LONGscrew"}, {"traveler", "1LONGbafflescrewM8x45"}, {"traveler", "5BafflescrewM8x20"},
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
	{"reassembly", "AGAINuntil:backlash,contactandfloatinlimits?(3triesatmost)"},
	{"reassembly", "WITNESSW4Contactpatternondriveandcoastflank"},
	{"traveler", "driveflank"}, {"traveler", "coastflank"},
	// What stays together, which way round, in which order.
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
	for _, paper := range papers {
		_, pack := composed(t, bevel, templates.Options{Paper: paper})
		sheets := map[string]string{}
		for _, f := range append(pack.Pages.BySheet(), pack.Tags.Pages...) {
			sheets[f.Sheet] += squeezed(f)
		}
		for _, w := range bevelWords {
			if !strings.Contains(sheets[w.sheet], w.text) {
				t.Errorf("%s: %q is not on the %s sheet", paper.Name, w.text, w.sheet)
			}
		}
	}
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

// TestBevelGearboxCounts counts what the demonstration's own sheet counts: ten
// containers, five shim packs, 14 bolts of the shrink disc by number, six bearings
// with cup and cone in one bag each, one baffle screw that is longer.
func TestBevelGearboxCounts(t *testing.T) {
	t.Parallel()
	jb, _ := composed(t, bevel, templates.Options{Paper: layout.A4})
	if len(jb.Containers) != 10 {
		t.Errorf("%d containers, want 10", len(jb.Containers))
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
	for mark, n := range map[string]int{"C6/LONG": 1, "C6": 7, "C7": 15, "C8/joint": 16, "C5/circlip": 1,
		"C5/input-M": 2, "C5/input-P": 2, "C5/crown-L": 2, "C5/crown-R": 2, "C5/output-L": 2, "C5/output-R": 2} {
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

// TestBevelGearboxWithoutBackstop: the gearbox of a level conveyor has none, and its
// pack holds nothing of it.
func TestBevelGearboxWithoutBackstop(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(startersDir, bevel))
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{"box.yaml": {Data: data}, "job.yaml": {Data: []byte("equipment: {tag: G-9}\njob: {number: WO-6411}\noptions: {backstop: no}\n")}}
	jb, problems := packs.Load(files, packs.Inputs{Definition: "box.yaml", Job: "job.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, paper := range papers {
		pack, misfits := templates.Compose(jb, templates.Options{Paper: paper}, pdf.NewFaces(), nil)
		if len(misfits) > 0 {
			t.Fatalf("on %s: %v", paper.Name, misfits)
		}
		for _, f := range append(pack.Pages.BySheet(), pack.Tags.Pages...) {
			text := squeezed(f)
			for _, not := range []string{"1Backstop", "Backstopscrew", "BackstopR:arrow", "C8/backstop", "B7"} {
				if strings.Contains(text, not) {
					t.Errorf("%s %s page %d speaks of %q", paper.Name, f.Sheet, f.Number, not)
				}
			}
		}
	}
}
