package main

import (
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
	"matchmark/templates/dimension"
)

// goodPack loads and composes a definition of testdata/good.
func goodPack(t *testing.T, name string, paper layout.Paper, gloves bool) (*job.Job, *templates.Pack) {
	t.Helper()
	files := os.DirFS(filepath.Join(testdata, "good"))
	in := packs.Inputs{Definition: name}
	base := strings.TrimSuffix(name, ".yaml")
	if exists(files, base+".job.yaml") {
		in.Job = base + ".job.yaml"
	}
	if exists(files, base+".site.yaml") {
		in.Site = base + ".site.yaml"
	}
	jb, problems := packs.Load(files, in)
	if len(problems) > 0 {
		t.Fatalf("%s: %v", name, problems)
	}
	pack, misfits := templates.Compose(jb, templates.Options{Paper: paper, Pen: layout.Pen{Gloves: gloves}}, pdf.NewFaces(), nil)
	if len(misfits) > 0 {
		t.Fatalf("%s on %s: %v", name, paper.Name, misfits)
	}
	return jb, pack
}

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

// boxesOf lists the write-in boxes of a role for the dimension, or other thing, that
// stands at a place of the file, on the pages of a sheet, without those that say which
// readings were not taken. cells chooses value boxes by their characters, 0 takes all.
func boxesOf(pack *templates.Pack, sheet, role string, at source.Pos, cells int) []layout.Item {
	var out []layout.Item
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != sheet {
			continue
		}
		for _, it := range f.Items {
			r, ok := it.Shape.(layout.Rect)
			if ok && it.Role == role && it.Ref == layout.Ref(at) && (cells == 0 || r.Cells == cells) && !ofNotTaken(f, it) {
				out = append(out, it)
			}
		}
	}
	return out
}

// ofNotTaken reports whether a box says that a reading was not taken: the one for the
// reason, by its caption, or the one to tick before the mark of a dimension.
func ofNotTaken(f layout.Frame, box layout.Item) bool {
	if box.Role != layout.RoleWords && box.Role != layout.RoleTick {
		return false
	}
	left, top, right, bottom := box.Bounds()
	for _, it := range f.Items {
		s, ok := it.Shape.(layout.Text)
		if !ok || it.Ref != box.Ref || it.Y < top || it.Y > bottom {
			continue
		}
		switch {
		case box.Role == layout.RoleWords && strings.HasPrefix(s.S, "not") && strings.Contains(s.S, "because") && it.X > left && it.X < right:
			return true
		case box.Role == layout.RoleTick && markAlone.MatchString(s.S) && it.X > right && it.X < right+2:
			return true
		}
	}
	return false
}

// markAlone is the mark of a dimension and nothing else.
var markAlone = regexp.MustCompile(`^D[0-9]+(/[^ ]+)?$`)

// atOf is the place of a dimension in the file.
func atOf(t *testing.T, jb *job.Job, base string) source.Pos {
	t.Helper()
	for _, d := range jb.Dims {
		if d.Base == base {
			return d.At
		}
	}
	t.Fatalf("no dimension %s", base)
	return source.Pos{}
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

// corner is where an item stands as the page is read: of a page that lies, turned
// back.
func corner(it layout.Item, f layout.Frame) (x, y float64) {
	if it.Turn == 90 {
		return float64(f.H - it.Y), float64(it.X)
	}
	return float64(it.X), float64(it.Y)
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

// checkLattice sees that boxes stand in rows of so many, each on one height, the
// columns below each other within a page.
func checkLattice(t *testing.T, paper layout.Paper, pack *templates.Pack, sheet string, at source.Pos, cells, cols int) {
	t.Helper()
	for _, f := range pack.Pages.BySheet() {
		one := &templates.Pack{Pages: &layout.Doc{Pages: []layout.Frame{f}}}
		boxes := boxesOf(one, sheet, layout.RoleValue, at, cells)
		rows := map[int][]float64{}
		for _, it := range boxes {
			x, y := corner(it, f)
			rows[int(math.Round(10*y))] = append(rows[int(math.Round(10*y))], x)
		}
		var first []float64
		for y, xs := range rows {
			slices.Sort(xs)
			if first == nil {
				first = xs
			}
			if len(xs) != cols || math.Abs(xs[0]-first[0]) > 0.05 || math.Abs(xs[cols-1]-first[len(first)-1]) > 0.05 {
				t.Errorf("%s %s page %d: a row of boxes at height %.1f stands at %.1f, want %d columns as %.1f", paper.Name, sheet, f.Number, float64(y)/10, xs, cols, first)
			}
		}
	}
}

// textsOf joins the texts that stand for a thing on the pages of a sheet.
func textsOf(pack *templates.Pack, sheet string, at source.Pos) string {
	var out []string
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != sheet {
			continue
		}
		for _, it := range f.Items {
			if s, ok := it.Shape.(layout.Text); ok && it.Ref == layout.Ref(at) {
				out = append(out, strings.ReplaceAll(s.S, "\u00a0", " "))
			}
		}
	}
	return strings.Join(out, " ")
}

// TestLimitsInWords sees that each limit is printed as it is said. The sizes by letter
// and grade are those of testdata/outside/iso286.txt, where the source of each row
// stands; the words are our own.
func TestLimitsInWords(t *testing.T) {
	t.Parallel()
	jb, pack := goodPack(t, "every-arrangement.yaml", layout.A4, false)
	for mark, words := range map[string][]string{
		"D1": {"0.20 – 0.40 mm", "old part", "at most 0.60 mm", "mended", "at most 0.80 mm", "over: renew both halves", "under: tell the engineer",
			"source: letter 11", "sources differ", "sheet 3: 2.0 to 4.0 mm (a slipped point)", "USED, chosen at W1",
			"pushed: toward the flywheel, then away from it", "load: 500 N each way", "taken cold", "by: Dial indicator"},
		"D2":  {"Ø130 m6", "130.015 – 130.040 mm", "Ø130 k6", "130.003 – 130.028 mm", "on the diameter", "part not at 20 °C (steel)", "× 0.00150 mm"},
		"D3":  {"−0.05 to +0.05 mm", "seen from the flywheel"},
		"D4":  {"spread at most 0.10 mm", "plane: square to the shaft"},
		"D7":  {"Ø45 f7", "44.950 – 44.975 mm", "at least 44.900 mm"},
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

// TestMatrixHeadsStandOnEachPage sees that a matrix over several pages repeats its
// mark and the names of its columns.
func TestMatrixHeadsStandOnEachPage(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := goodPack(t, "every-arrangement.yaml", paper, false)
		at := atOf(t, jb, "D6")
		pages := 0
		for _, f := range pack.Pages.BySheet() {
			one := &templates.Pack{Pages: &layout.Doc{Pages: []layout.Frame{f}}}
			if len(boxesOf(one, "readings", layout.RoleValue, at, 4)) == 0 {
				continue
			}
			pages++
			got := textsOf(one, "readings", at)
			for _, w := range []string{"D6", "Gap of the gate", "top", "upper third", "middle", "lower third", "bottom", "sill", "side"} {
				if !strings.Contains(got, w) {
					t.Errorf("%s page %d: no %q over the boxes of D6", paper.Name, f.Number, w)
				}
			}
			if f.W > f.H {
				t.Errorf("%s page %d is a wide page; a wide sheet is drawn turned on the upright one", paper.Name, f.Number)
			}
		}
		if pages < 2 {
			t.Errorf("%s: D6 stands on %d pages, want several", paper.Name, pages)
		}
	}
}

// TestStacksAndMarks sees the boxes for the order of a stack, for match marks and
// for the way round, and their ticks in putting back.
func TestStacksAndMarks(t *testing.T) {
	t.Parallel()
	jb, pack := goodPack(t, "every-arrangement.yaml", layout.A4, false)
	step := map[string]source.Pos{}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			step[st.Key] = st.At
		}
	}
	// Six pieces at each of two ends.
	if n := len(boxesOf(pack, "traveler", layout.RoleWords, step["gland"], 0)); n != 2*6 {
		t.Errorf("%d boxes for the order of the gland, want %d", n, 2*6)
	}
	// At each end: mark used, where it stands, which way the lip faced.
	if n := len(boxesOf(pack, "traveler", layout.RoleWords, step["cover"], 0)); n != 2*3 {
		t.Errorf("%d boxes for match mark and way round of the cover, want %d", n, 2*3)
	}
	found := textsOf(pack, "traveler", step["gland"])
	for _, w := range []string{"K1/DE", "K1/NDE", "counted from the bearing outward", "lantern", "piece 6 as found"} {
		if !strings.Contains(found, w) {
			t.Errorf("the order of the gland does not say %q: %q", w, found)
		}
	}
	back := textsOf(pack, "reassembly", step["cover"]) + textsOf(pack, "reassembly", step["gland"])
	for _, w := range []string{"match marks of End cover meet", "Lip seal: lip faces the oil", "in the order from the bearing outward"} {
		if !strings.Contains(back, w) {
			t.Errorf("putting back does not say %q: %q", w, back)
		}
	}
}

// TestDimensionSheets sees every dimension in the index, and those with a limit on
// the critical sheet with their traps, with the page numbers that the boxes have.
func TestDimensionSheets(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"every-arrangement.yaml", "inch-blower.yaml"} {
		jb, pack := goodPack(t, name, layout.Letter, false)
		for _, d := range jb.Dims {
			index := textsOf(pack, "dimensions", d.At)
			if !strings.Contains(index, d.What) || !strings.Contains(index, d.Base) {
				t.Errorf("%s: %s is not in the index: %q", name, d.Mark, index)
			}
			critical := textsOf(pack, "critical", d.At)
			if d.Critical != strings.Contains(critical, d.Base) {
				t.Errorf("%s: %s critical %v, but the sheet says %q", name, d.Mark, d.Critical, critical)
			}
			if d.FoundAt == nil {
				continue
			}
			p := pageWith(pack, d)
			if p == 0 || !strings.Contains(index, d.FoundAt.No+" p. "+strconv.Itoa(p)) {
				t.Errorf("%s: %s is read at %s on page %d, the index says %q", name, d.Mark, d.FoundAt.No, p, index)
			}
		}
	}
	_, pack := goodPack(t, "every-arrangement.yaml", layout.A4, false)
	if got := sheetTexts(t, pack.Pages)["critical"]; !strings.Contains(got, "left-hand screw behind the plug") {
		t.Errorf("the trap at the NDE is not told on the critical sheet: %q", got)
	}
}

// pageWith is the first page that has a box of a dimension to be written in while
// the machine is taken apart. Places of one dimension share the place in the file, so
// it is the page with the mark as well: in a frame in the head, or at the row of one of
// several places under one head.
func pageWith(pack *templates.Pack, d *job.Dim) int {
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != "traveler" && f.Sheet != "readings" {
			continue
		}
		one := &templates.Pack{Pages: &layout.Doc{Pages: []layout.Frame{f}}}
		boxes := 0
		for _, role := range []string{layout.RoleValue, layout.RoleFraction, layout.RoleSketch, layout.RoleTick, layout.RoleWords} {
			boxes += len(boxesOf(one, f.Sheet, role, d.At, 0))
		}
		sheet := d.Sheet || d.In != nil && d.In.Sheet
		told := d.Sheet && strings.Contains(textsOf(one, f.Sheet, d.At), d.Mark) // a sheet of its own has a head of its own
		if boxes > 0 && sheet == (f.Sheet == "readings") && (d.In != nil || told || boxedMark(f, d.Mark) || boxedMark(f, d.Base) && markOfRow(f, d)) {
			return f.Number
		}
	}
	return 0
}

// boxedMark reports whether a mark stands in a frame of its own on a page.
func boxedMark(f layout.Frame, mark string) bool {
	for _, it := range f.Items {
		s, ok := it.Shape.(layout.Text)
		if !ok || s.S != mark {
			continue
		}
		x, y := it.X, it.Y
		for _, frame := range f.Items {
			r, ok := frame.Shape.(layout.Rect)
			left, top, right, bottom := frame.Bounds()
			if ok && r.Radius > 0 && frame.Role == "" && x >= left && x <= left+2 && y >= top && y <= bottom && right-left < s.Width+6 {
				return true
			}
		}
	}
	return false
}

// markOfRow reports whether the mark of a dimension stands alone on a page, not as the
// name of a box to tick.
func markOfRow(f layout.Frame, d *job.Dim) bool {
	return slices.ContainsFunc(f.Items, func(it layout.Item) bool {
		s, ok := it.Shape.(layout.Text)
		if !ok || s.S != d.Mark || it.Ref != layout.Ref(d.At) {
			return false
		}
		return !slices.ContainsFunc(f.Items, func(box layout.Item) bool {
			_, top, right, bottom := box.Bounds()
			return box.Role == layout.RoleTick && it.Y >= top && it.Y <= bottom && it.X > right && it.X < right+2
		})
	})
}

// asksMark reports whether the caption in a box asks which reading was not taken.
func asksMark(f layout.Frame, box layout.Item) bool {
	left, top, right, bottom := box.Bounds()
	return slices.ContainsFunc(f.Items, func(it layout.Item) bool {
		s, ok := it.Shape.(layout.Text)
		return ok && strings.Contains(s.S, "which") && it.X > left && it.X < right && it.Y > top && it.Y < bottom
	})
}

// TestNotTakenOnceAStep sees that a step of the traveler that takes several readings has
// one box for why some were not taken, and of four the mark of each to tick, unless that box
// asks for the mark.
func TestNotTakenOnceAStep(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := goodPack(t, "every-arrangement.yaml", paper, false)
		want, got := map[layout.Ref]int{}, map[layout.Ref]int{} // boxes for the reason, by step
		ticked := map[string]int{}                              // boxes to tick, by mark
		asks := map[layout.Ref]bool{}                           // the box for the reason asks for the mark
		for _, f := range pack.Pages.BySheet() {
			for _, it := range f.Items {
				if f.Sheet != "traveler" || !ofNotTaken(f, it) {
					continue
				}
				if it.Role == layout.RoleWords {
					got[it.Ref]++
					asks[it.Ref] = asksMark(f, it)
					continue
				}
				_, top, right, bottom := it.Bounds()
				for _, x := range f.Items {
					if s, ok := x.Shape.(layout.Text); ok && x.Y >= top && x.Y <= bottom && x.X > right && x.X < right+2 {
						ticked[s.S]++
					}
				}
			}
		}
		fours := 0
		for _, s := range jb.Sections {
			for _, st := range s.Steps {
				written := dimension.Written(st.Measure, dimension.Found)
				if st.Undoes != nil || len(written) < 2 {
					continue
				}
				want[layout.Ref(st.At)]++
				ticks := 0
				if len(written) == 4 && !asks[layout.Ref(st.At)] {
					ticks = 1
				}
				for _, d := range written {
					if n := ticked[d.Mark]; n != ticks && len(written) >= 4 {
						t.Errorf("%s: step %s with %d readings has %d boxes to tick for %s", paper.Name, st.No, len(written), n, d.Mark)
					}
				}
				if len(written) == 4 {
					fours++
				}
			}
		}
		if fours == 0 {
			t.Errorf("%s: no step takes four readings", paper.Name)
		}
		for at, n := range want {
			if got[at] != n {
				t.Errorf("%s: %v: %d boxes for why readings were not taken, want %d", paper.Name, at, got[at], n)
			}
		}
	}
}
