package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/fit"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates"
)

const triplex = "triplex-pump.yaml"

// TestTriplexPumpFits holds the sizes of the plunger pump against ISO 286-2: the
// deviations, in micrometres, are those of its tables (45 f7 -25 and -50; 110 H7 +35
// and 0, f7 -36 and -71; 70 h6 0 and -19), from memory.
func TestTriplexPumpFits(t *testing.T) {
	t.Parallel()
	jb, _ := composed(t, triplex, templates.Options{Paper: layout.A4})
	limit := map[string]string{}
	for _, d := range jb.Dims {
		if d.Left != nil {
			limit[d.Base] = d.Left.Text()
		} else if d.Found != nil {
			limit[d.Base] = d.Found.Text()
		}
	}
	for _, c := range []struct{ mark, zone, low, top, says string }{
		{"D13", "45 f7", "44.950", "44.975", "44.950 to 44.975 mm"},
		{"D17", "70 h6", "69.981", "70.000", "69.981 to 70.000 mm and spread at most 0.015 mm"},
	} {
		z, err := fit.Parse(c.zone)
		if err != nil {
			t.Fatal(err)
		}
		if z.Min().Decimal() != c.low || z.Max().Decimal() != c.top {
			t.Errorf("%s: %s to %s, want %s to %s", c.zone, z.Min().Decimal(), z.Max().Decimal(), c.low, c.top)
		}
		if limit[c.mark] != c.says {
			t.Errorf("%s must be %q, want %q", c.mark, limit[c.mark], c.says)
		}
	}
	bore, err := fit.Parse("110 H7")
	if err != nil {
		t.Fatal(err)
	}
	head, err := fit.Parse("110 f7")
	if err != nil {
		t.Fatal(err)
	}
	least, most := bore.Min()-head.Max(), bore.Max()-head.Min()
	if got := least.Decimal() + " to " + most.Decimal() + " mm"; got != "0.036 to 0.106 mm" || limit["D18"] != got {
		t.Errorf("crosshead clearance: 110 H7/f7 leaves %s, D18 says %s, want 0.036 to 0.106 mm", got, limit["D18"])
	}
	// The inch of 1959 is 25.4 mm exactly: what the pin limit says in brackets, rounded
	// to its three decimals.
	for inch, mm := range map[string]string{"0.0005 in": "0.013 mm", "0.0012 in": "0.030 mm"} {
		q, err := units.ParseQuantity(inch)
		if err != nil {
			t.Fatal(err)
		}
		in, err := q.Convert(units.Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		if got := units.Pointed(in.Round(3, units.Nearest).Print()); !strings.Contains(got, strings.TrimSuffix(mm, " mm")) {
			t.Errorf("%s is %s, want %s", inch, got, mm)
		}
	}
	if want := "0.0005 to 0.0012 in (0.013 to 0.030 mm)"; limit["D23"] != want {
		t.Errorf("D23 must be %q, want %q", limit["D23"], want)
	}
}

// triplexBoxes is how many boxes the awkward things of the plunger pump ask for. The
// numbers are counted by hand from the definition: places times positions, and one a
// side.
var triplexBoxes = []struct {
	name, mark, sheet, role string
	cells, count            int
}{
	{"leak at three glands", "D2", "traveler", layout.RoleValue, 2, 3},
	{"lift of six valves, found", "D7", "traveler", layout.RoleValue, 3, 6},
	{"lift of six valves: copy, left", "D7", "reassembly", layout.RoleValue, 3, 6 * 2},
	{"seat width of six valves in one block", "D8", "traveler", layout.RoleValue, 3, 3 * 2},
	{"free length of six springs", "D9", "traveler", layout.RoleValue, 5, 3 * 2},
	{"length of six springs under load", "D10", "traveler", layout.RoleValue, 4, 3 * 2},
	{"force of six springs between two forces", "D11", "traveler", layout.RoleValue, 2, 3 * 2},
	{"six lapped pairs: none or some, in or out", "D12", "traveler", layout.RoleTick, 0, 6 * (2 + 2)},
	{"six lapped pairs, copied and left", "D12", "reassembly", layout.RoleTick, 0, 6 * (2 + 2 + 2)},
	{"three plungers, three stations by two planes", "D13", "traveler", layout.RoleValue, 6, 3 * 3 * 2},
	{"plunger: goes back or renewed", "D13", "traveler", layout.RoleTick, 0, 3 * 2},
	{"three packing boxes, two planes", "D14", "traveler", layout.RoleValue, 5, 3 * 2},
	{"crank pin clearance, two edges, mean and spread", "D15", "traveler", layout.RoleValue, 4, 3 * (2 + 2)},
	{"two shells of each rod", "D16", "traveler", layout.RoleValue, 5, 3 * 2},
	{"three crank pins, 2 x 2", "D17", "traveler", layout.RoleValue, 6, 3 * 4},
	{"crosshead clearance at four places", "D18", "traveler", layout.RoleValue, 5, 3 * 4},
	{"crosshead clearance: copy, left", "D18", "reassembly", layout.RoleValue, 5, 3 * 4 * 2},
	{"pins in inches, two planes", "D22", "traveler", layout.RoleValue, 6, 3 * 2},
	{"end float, found", "D24", "traveler", layout.RoleValue, 4, 1},
	{"end float: copy, left, three tries", "D24", "reassembly", layout.RoleValue, 4, 2 + 3},
	{"two shim packs as they came out, four leaves and the sum", "D25", "traveler", layout.RoleValue, 4, 2 * 5},
	{"two shim packs: copied and left, four leaves and the sum, and the sums of two further tries", "D25", "reassembly", layout.RoleValue, 4, 2*2*5 + 2*2},
	{"marks on the leaves", "D25", "traveler", layout.RoleWords, 0, 2 * 4},
	{"pins in inches, read again where one is renewed: copy, left", "D22", "reassembly", layout.RoleValue, 6, 3 * 2 * 2},
	{"wear of the crossheads, sketched", "D28", "traveler", layout.RoleSketch, 0, 1},
}

// TestTriplexPumpBoxes: each line and each valve has boxes of its own on paper.
func TestTriplexPumpBoxes(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := composed(t, triplex, templates.Options{Paper: paper})
		for _, c := range triplexBoxes {
			if got := boxesOf(pack, c.sheet, c.role, atOf(t, jb, c.mark), c.cells); len(got) != c.count {
				t.Errorf("%s: %s (%s): %d boxes %s of %d characters on the %s sheet, want %d", paper.Name, c.mark, c.name, len(got), c.role, c.cells, c.sheet, c.count)
			}
		}
	}
}

// TestTriplexPumpRepeats counts what stands once in the definition and at each place
// on paper: three lines, two valves at each, two sides of the crankshaft.
func TestTriplexPumpRepeats(t *testing.T) {
	t.Parallel()
	jb, _ := composed(t, triplex, templates.Options{Paper: layout.A4})
	steps, printed := map[string]int{}, 0
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			if st.Undoes == nil {
				steps[st.Key]++
				printed++
			}
		}
	}
	want := map[string]int{}
	for _, line := range []string{"valves", "plunger", "rod", "crosshead", "crosshead-in", "strip", "rod-on", "packing-in", "plunger-in", "valves-in", "covers-on"} {
		want[line] = 3
	}
	once := 0
	for key, n := range steps {
		if want[key] == 0 {
			once++
			want[key] = 1
		}
		if n != want[key] {
			t.Errorf("step %s is printed %d times, want %d", key, n, want[key])
		}
	}
	if len(steps) != 66 || once != 55 || printed != 55+11*3 {
		t.Errorf("%d steps, %d of them once, %d printed; want 66, 55 and 88", len(steps), once, printed)
	}
	sets := map[string]int{}
	for _, s := range jb.Sets {
		n := 0
		for _, p := range s.Members {
			n += p.Count
		}
		sets[s.Mark] = n
	}
	for mark, n := range map[string]int{"S1/1-SUC": 2, "S1/3-DIS": 2, "S2": 6, "S3/2": 2, "S4/1": 2} {
		if sets[mark] != n {
			t.Errorf("the matched set %s has %d pieces, want %d", mark, sets[mark], n)
		}
	}
	bags := map[string]int{} // pieces by tag
	for _, tag := range jb.Tags {
		bags[tag.Mark] = job.Pieces(tag.In)
	}
	for mark, n := range map[string]int{"C1/1": 5, "C1/1/SUC": 6, "C1/3/DIS": 6, "C2/2": 1, "C3/GS": 1, "C4/3": 3, "C5": 14, "C5/FS": 8, "C6/1": 5, "C7": 4} {
		if bags[mark] != n {
			t.Errorf("%s holds %d pieces, want %d", mark, bags[mark], n)
		}
	}
}

// triplexWords are what a mechanic must find, each on its sheet, blanks left out.
var triplexWords = []onSheet{
	{"traveler", "countedfromthegearside·seenfromtheplungerside"},
	{"traveler", "springseatwasher"}, {"traveler", "plungerwick"}, {"traveler", "magnetonthedrainplug"},
	{"traveler", "numbersfacethegearside"},
	{"traveler", "S2Allsixvalvesprings"}, {"traveler", "oneormoreout:all6piecesarerenewed"}, {"traveler", "allin:all6piecesgoback"},
	{"traveler", "0.0005–0.0012in"}, {"traveler", "0.013–0.030mm"}, {"traveler", "aslippeddecimal"},
	{"traveler", "load:85N"}, {"traveler", "with:pressedto24.0mm"}, {"traveler", "52–72N"},
	{"traveler", "mean0.07–0.12mm"}, {"traveler", "oldpart:mean0.07–0.18mm,spreadatmost0.03mm"},
	{"traveler", "Crossheadleft-hand"}, {"traveler", "Crossheadright-hand"},
	{"traveler", "orderofPackingoftheplunger,countedfromthewaterendoutward"}, {"traveler", "2people"},
	// A rod bolt was headed 85 N·m, as if that were the end, and its pull with it.
	{"reassembly", "to85N·m,turn30°"}, {"tightening", "85N·m:Eachthenpresses"},
	// Two were to lift more than the usual figure, decided in print beforehand.
	{"lifts", "theteammaylift33.3kg"},
	// The nitrogen and the wrench were listed for taking off alone.
	{"gather", "nitrogenbottlefor2.1,R7.2"},
	{"reassembly", "40N·m85N·mturn30°"}, {"reassembly", "new,fromstores:Rodbolt"},
	{"reassembly", "oldornew,all6alike,asdecidedforS2"},
	{"traveler", "C11SUC1Valvecover"}, {"reassembly", "C13DIS1Seat"}, {"reassembly", "K12Packingoftheplungerintheorderfromthewaterendoutward"}, {"reassembly", "D31Glandnutturned"}, {"reassembly", "isapinorabushrenewed,orabushtootight?"},
	// The first joint was opened after an hour at 60 bar, and no gauge was seen at zero before it.
	{"traveler", "gaugeatzero,ventandblockdrainopenanddry"},
	// New shells had no ticks, the tries of the float no stages, and no valve set the pressure.
	{"reassembly", "oldshellstoSCRAP"}, {"reassembly", "at20,then46N·m"}, {"reassembly", "DV-21andBV-21open"},
	// What is undone at once was to be set as found.
	{"traveler", "onlyread,itisfilledatR7.2"}, {"traveler", "onlyread,lappedorrenewedatR1.5"}, {"traveler", "outofround"}, {"gather", "Leverbarfor2.3,R7.1,R8.1"},
	{"reassembly", "leavesof0.05,0.10,0.20,0.50mm"}, {"reassembly", "AGAIN"},
	{"reassembly", "oilscoopfacestheletterbesidetheguide,LorR"}, {"reassembly", "oneflatoftheSlidestop(M12)movesit0.29mm"},
	// The pump ran on when it was isolated; the cover had no room to come off over the shaft end; the last run began against a shut bypass.
	{"traveler", "Stopthepump,lockbreaker14"}, {"traveler", "250mmfreebeforetheshaftend"}, {"reassembly", "Afteranhourat60barcountthedropsagain"},
	// New shells had no tick, nor the first round of the screws in a further try.
	{"reassembly", "shellskept;ornewonesin,oldtoSCRAP"}, {"reassembly", "bothcoversat20N·m"}, {"critical", "Clearanceofthecrankpininitsnewshells"},
}

// TestTriplexPumpOnPaper: the awkward points stand on their sheets.
func TestTriplexPumpOnPaper(t *testing.T) {
	t.Parallel()
	standOnSheets(t, triplex, triplexWords)
}

// TestTriplexPumpWithoutDamper: the sister pump in the same room has no damper. Its
// pack says what to look at instead, and holds nothing else of it.
func TestTriplexPumpWithoutDamper(t *testing.T) {
	t.Parallel()
	jb, set := sister(t, triplex, "equipment: {tag: W-3, serial: OT-2190}\njob: {number: WO-6311}\noptions: {damper: no}\n")
	for i, pack := range set {
		paper := papers[i]
		var all strings.Builder
		for _, f := range append(pack.Pages.BySheet(), pack.Tags.Pages...) {
			all.WriteString(area{0, 0, f.W, f.H}.text(f))
		}
		said := aside.ReplaceAllString(all.String(), "")
		for _, want := range []string{"blindflangeonthedischarge", "W-3", "WO-6311", "notfitted"} {
			if !strings.Contains(all.String(), want) {
				t.Errorf("%s: %q is not on paper", paper.Name, want)
			}
		}
		for _, not := range []string{"Fillinggauge", "Fillinghose", "Dampernut", "Dampergasket", "Nitrogen", "C7", "J6", "D4"} {
			if strings.Contains(said, not) {
				t.Errorf("%s: %q is on paper", paper.Name, not)
			}
		}
	}
	for _, tag := range jb.Tags {
		if tag.Base == "C7" || tag.Base == "B5" {
			t.Errorf("tag %s is printed for a pump without damper", tag.Mark)
		}
	}
}

// TestTriplexPumpOrder: check --order shows the valves free to be drawn in any order of the
// lines once water and lye are shut off.
func TestTriplexPumpOrder(t *testing.T) {
	t.Parallel()
	var out, errs bytes.Buffer
	if code := run([]string{"check", "--order", filepath.Join(startersDir, triplex)}, strings.NewReader(""), &out, &errs); code != 0 || errs.Len() > 0 {
		t.Fatalf("exit %d, says %s", code, errs.String())
	}
	for _, want := range []string{"3.1 valves", "water and lye are shut off there", "free: any time after 2.1, before 3.4", "9.11 bench"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("the order does not say %q:\n%s", want, out.String())
		}
	}
}
