package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// A saying is one of the awkward things that a definition must be able to say: the
// line that says it in a file, and what is then on paper. The things are those of
// a list made from published procedures and data sheets; each is shown by a file
// that is checked whole elsewhere.
type saying struct {
	no         int
	what       string
	file, line string // the file, and a line of it without its indent
	mark       string // whose texts and boxes are looked at; empty for the whole sheet
	sheet      string
	boxes      int // to write in, of all places of the mark; 0 where there are none
	words      []string
}

var sayings = []saying{
	{1, "a least size alone", "storm-pump", "found: at least 164.00 mm", "D18/DE", "traveler", 8, []string{"at least 164.00 mm"}},
	{2, "a largest size alone", "storm-pump", "found: at most 0.50 mm", "D32/DE", "traveler", 2, []string{"at most 0.50 mm"}},
	{3, "from one size to another", "storm-pump", "left: 0.050 to 0.120 mm", "D5", "traveler", 1, []string{"0.050 – 0.120 mm"}},
	{4, "a nominal size with unequal tolerances", "storm-pump", "left: 8.00 +0.50/-0.00 mm", "D3", "traveler", 4, []string{"8.00 +0.50 / −0.00 mm"}},
	{5, "a reading that is only recorded", "storm-pump", "found: record to 0.005 mm", "D28/DE", "traveler", 8, []string{"record"}},
	{6, "left as it was found", "storm-pump", "left: as found +/- 0.20 mm", "D4", "reassembly", 5, []string{"as found ± 0.20 mm", "found − 0.20 =", "found + 0.20 ="}},
	{7, "a limit worked out from another reading", "storm-pump", "left: half of D10 +/- 0.25 mm", "D11", "reassembly", 6, []string{"half of D10 ± 0.25 mm", "÷ 2 =", "target + 0.25 ="}},
	{8, "a table by size or build", "every-arrangement", "left: {small: 0.50 to 0.70 mm, medium: 0.60 to 0.80 mm, large: 0.70 to 0.90 mm}", "D17", "traveler", 1, []string{"0.60 – 0.80 mm"}},
	{9, "so much for each metre or inch of another reading", "every-arrangement", "left: at most 0.50 mm per m of D25", "D26", "traveler", 3, []string{"at most 0.50 mm for each m of D25", "× 0.0005"}},
	{10, "a percentage of another reading", "field-water-turbine", "left: at most 20 % of D2", "D3", "traveler", 0, []string{"at most 20 % of D2", "× 0.2"}},
	{11, "the difference between readings", "storm-pump", "left: spread at most 0.05 mm", "D2", "traveler", 5, []string{"spread at most 0.05 mm", "largest less smallest"}},
	{12, "the mean of several", "every-arrangement", "left: mean 0.10 to 0.20 mm and spread at most 0.04 mm", "D15", "traveler", 8, []string{"mean 0.10 – 0.20 mm", "mean, as found"}},
	{13, "a share of a whole, as float one way", "ladders", "left: 60 % of D10 +/- 0.25 mm", "D29", "traveler", 5, []string{"60 % of D10 ± 0.25 mm", "× 0.6"}},
	{14, "a nominal size and the number on the part", "bevel-gearbox", "left: 118.00 mm + D9 +/- 0.03 mm", "D10", "traveler", 0, []string{"worked out ± 0.03 mm", "D9", "118.00 mm", "target + 0.03 ="}},
	{15, "a limit for new and one for worn, on the proper side", "triplex-pump", "reuse: at least 44.900 mm", "D13/1", "traveler", 18, []string{"Ø45 f7", "old part", "44.900 – 44.975 mm"}},
	{16, "one limit for the old pair, one for a new one", "bevel-gearbox", "reuse: as found +/- 0.05 mm", "D3", "reassembly", 20, []string{"0.20 – 0.35 mm", "as found ± 0.05 mm"}},
	{17, "what is judged, not measured", "every-arrangement", "left: none", "D11", "traveler", 0, []string{"none allowed"}},
	{18, "a contact pattern, sketched", "bevel-gearbox", "found: sketch", "D4", "traveler", 0, []string{"Contact of the bevel teeth"}},
	{19, "a spring pressed to a length, between two forces", "bevel-gearbox", "found: 850 to 1050 N", "D23", "traveler", 1, []string{"850 – 1050 N", "with: pressed to a height of 6.0 mm"}},
	{20, "stages, an angle, the torque at which it lets go", "triplex-pump", "stages: [40 N·m, 85 N·m, turn 30°]", "", "reassembly", 0, []string{"in stages:", "40 N·m", "85 N·m", "turn 30°"}},
	{21, "readings by place, plane and instance", "every-arrangement", "left: {A: 0.25 to 0.35 mm, B: 0.25 to 0.35 mm, others: 0.40 to 0.50 mm}", "D5/1-A", "readings", 97, []string{"cylinder12", "A, B: 0.25 – 0.35 mm", "D: 0.40 – 0.50 mm"}},
	{22, "how instances are named and from where they are counted", "every-arrangement", "cylinder: {names: 1 to 12, counted-from: the flywheel}", "", "readings", 0, []string{"counted from the flywheel"}},
	{23, "both ends alike", "storm-pump", "left: as found +/- 2 pcs", "D6/DE", "traveler", 8, []string{"D6/DE", "D6/NDE"}},
	{24, "if fitted", "storm-pump", "fitted: probes", "D35/DE", "traveler", 4, []string{"Threads showing at the vibration probes"}},
	{25, "by serial number", "storm-pump", "builds: {M30-studs: serials up to TH-0417, M36-studs: serials from TH-0418}", "", "front", 0, []string{"M36 studs (serials from TH-0418), told by serial TH-0431"}},
	{26, "sources that differ", "bevel-gearbox", "- {source: maker's letter 31, text: 0.02 to 0.06 mm, used: yes}", "D8", "traveler", 0, []string{"sources differ", "USED"}},
	{27, "fractions of an inch, and every other unit", "bevel-gearbox", "left: 1 7/16 +/- 1/16 in", "D1", "traveler", 3, []string{"1 7/16 ± 1/16 in"}},
	{28, "a size in two units", "every-arrangement", "left: 0.30 to 0.40 mm (0.012 to 0.015 in)", "D24", "traveler", 1, []string{"0.30 – 0.40 mm", "0.012 – 0.015 in as printed in the source"}},
	{29, "the state in which it is taken", "storm-pump", "load: 500 N each way", "D5", "traveler", 1, []string{"with: both covers tight, coupling and packing off", "load: 500 N each way"}},
	{30, "one of a graded set, or leaves", "shims", "ring: {name: Snap ring, shims: {pick: 2.00 or 2.05 or 2.10 or 2.15 mm}}", "D6", "reassembly", 6, []string{"2.05", "2.10"}},
	{31, "an allowance added after setting", "ladders", "left: as found + 0.20 mm +/- 0.05 mm", "D28", "reassembly", 7, []string{"found", "+ 0.20 mm", "target + 0.05 ="}},
	{32, "always renewed, renewed as a set", "triplex-pump", "judge: [S2]", "", "traveler", 0, []string{"S2 All six valve springs", "all 6 pieces go back"}},
	{33, "the last chance to take a reading", "storm-pump", "lost-by: [brackets]", "D10", "traveler", 1, []string{"LAST CHANCE: gone once 6.3 begins"}},
	{34, "if, otherwise, and until", "branches", "until: D1 is in limits", "", "reassembly", 0, []string{"try 3"}},
	{35, "holds and witness points", "storm-pump", "hold: W4", "", "traveler", 0, []string{"HOLD W4", "released by: name and signature"}},
	{36, "tight for a while, at another torque", "field-swing-brake", "fit-for-now: [drum, {drum-screw: 3}]", "", "reassembly", 0, []string{"Three drum screws, 120° apart, to measure", "20 – 25 lb-ft"}},
	{37, "which way round", "storm-pump", "way-round: [{part: impeller, mark: vane tip, faces: away from the arrow}]", "", "reassembly", 0, []string{"vane tip faces away from the arrow"}},
	{38, "the order of a stack", "storm-pump", "stacks: [K1]", "", "traveler", 0, []string{"K1/DE", "counted from the impeller side outward", "piece 6 as found"}},
	{39, "an assembly that comes off whole and is stripped on the bench", "storm-pump", "impeller: {of: rotor, name: Impeller, mass: 360 kg}", "", "traveler", 0, []string{"on the bench", "1 Impeller"}},
	{40, "a figure of the source that is known to be wrong", "every-arrangement", "- {source: sheet 3, text: 2.0 to 4.0 mm, note: a slipped point}", "D1", "traveler", 2, []string{"2.0 to 4.0 mm (a slipped point)"}},
}

// inTree is the file of a saying.
func (s saying) inTree() string {
	for _, dir := range []string{filepath.Join("packs", "starters"), filepath.Join("testdata", "good")} {
		if _, err := os.Stat(filepath.Join("..", "..", dir, s.file+".yaml")); err == nil {
			return filepath.ToSlash(filepath.Join(dir, s.file+".yaml"))
		}
	}
	return s.file
}

// TestFortyThings finds each of the awkward things in its file, and its words and
// boxes on paper.
func TestFortyThings(t *testing.T) {
	t.Parallel()
	type printed struct {
		jb   *job.Job
		pack *templates.Pack
	}
	done := map[string]printed{}
	for i, s := range sayings {
		if s.no != i+1 {
			t.Fatalf("number %d stands in place %d", s.no, i+1)
		}
		path := s.inTree()
		p, ok := done[path]
		if !ok {
			if strings.HasPrefix(path, "packs/") {
				p.jb, p.pack = composed(t, s.file+".yaml", templates.Options{Paper: layout.A4})
			} else {
				p.jb, p.pack = goodPack(t, s.file+".yaml", layout.A4, false)
			}
			done[path] = p
		}
		data, err := os.ReadFile(filepath.Join("..", "..", filepath.FromSlash(path)))
		if err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(string(data), s.line) {
			t.Errorf("%d: %s does not say %q", s.no, path, s.line)
		}
		text, boxes := s.onPaper(t, p.jb, p.pack)
		for _, w := range s.words {
			if !strings.Contains(text, unspaced(w)) {
				t.Errorf("%d, %s: %q is not on the %s sheet; there is %s", s.no, s.what, w, s.sheet, text)
			}
		}
		if s.boxes > 0 && boxes != s.boxes {
			t.Errorf("%d, %s: %d boxes on the %s sheet, want %d", s.no, s.what, boxes, s.sheet, s.boxes)
		}
	}
}

// onPaper gives the texts of a saying without spaces, and how many boxes to write
// figures in it has.
func (s saying) onPaper(t *testing.T, jb *job.Job, pack *templates.Pack) (string, int) {
	t.Helper()
	var ref layout.Ref
	for _, d := range jb.Dims {
		if d.Mark == s.mark {
			ref = layout.Ref(d.At)
		}
	}
	if s.mark != "" && ref == nil {
		t.Fatalf("%d: there is no %s", s.no, s.mark)
	}
	var text strings.Builder
	boxes := 0
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != s.sheet {
			continue
		}
		for _, it := range f.Items {
			if ref != nil && it.Ref != ref {
				continue
			}
			if x, ok := it.Shape.(layout.Text); ok {
				text.WriteString(unspaced(x.S))
			}
			if it.Role == layout.RoleValue || it.Role == layout.RoleFraction {
				boxes++
			}
		}
	}
	return text.String(), boxes
}

// unspaced takes the spaces out, so that where a line breaks does not matter.
func unspaced(s string) string { return strings.Join(strings.Fields(s), "") }

// TestFortyListed keeps the table of the things in the docs as they are tested.
func TestFortyListed(t *testing.T) {
	t.Parallel()
	var b strings.Builder
	b.WriteString("# How to say it\n\nForty things that real procedures and data sheets ask for, with the line that says each, the file where it stands\n" +
		"whole, and the sheet on which its words and boxes are found by `TestFortyThings` (cmd/matchmark/forty_test.go,\n" +
		"`go test ./cmd/matchmark -run TestFortyThings`). The keys are explained in [KEYS.md](KEYS.md). This table is written by\n`go test ./cmd/matchmark -run TestFortyListed -update`.\n\n" +
		"| no. | to be said | line | file | found on |\n|---|---|---|---|---|\n")
	for _, s := range sayings {
		where := s.sheet + " sheet"
		if s.mark != "" {
			where += ", " + s.mark
		}
		if s.boxes > 0 {
			where += fmt.Sprintf(", %d boxes", s.boxes)
		}
		fmt.Fprintf(&b, "| %d | %s | `%s` | [%s](../../%s) | %s |\n", s.no, s.what, strings.ReplaceAll(s.line, "|", "\\|"), filepath.Base(s.inTree()), s.inTree(), where)
	}
	expect(t, filepath.Join("..", "packs", "def", "SAY.md"), b.String())
}
