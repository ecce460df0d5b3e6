package main

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/fit"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates"
)

// TestStormPumpOfAnotherStation: a pump of the old build without ejector and probes
// prints from the same definition. The counts are those of the maker's two builds:
// 24 studs M30 at 570 N·m up to TH-0417, 28 studs M36 at 1000 N·m from TH-0418, four
// of each build short (the demonstration's own sheet, no outside source).
func TestStormPumpOfAnotherStation(t *testing.T) {
	t.Parallel()
	j, packs := sister(t, "storm-pump.yaml", "equipment: {tag: P-07, serial: TH-0398}\njob: {number: WO-2455}\noptions: {ejector: no, probes: no}\n")
	var all strings.Builder
	for _, f := range packs[0].Pages.BySheet() {
		all.WriteString(area{0, 0, f.W, f.H}.text(f))
	}
	text := all.String()
	for _, want := range []string{"blankingpluginthecasingtop", "J4JointnutsM30(24pieces)", "570N·m", "P-07", "WO-2455"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not on paper", want)
		}
	}
	for _, not := range []string{"2Vibrationprobe", "Primingpipe", "JointnutM36", "J1Joint"} {
		if strings.Contains(text, not) {
			t.Errorf("%q is on paper", not)
		}
	}
	for i, tag := range j.Tags[:j.Tagged()] {
		if tag.N != i+1 || tag.Of != j.Tagged() {
			t.Errorf("tag %s is %d of %d, want %d of %d", tag.Mark, tag.N, tag.Of, i+1, j.Tagged())
		}
	}
}

// TestStormPumpFits holds the sizes of the storm pump against ISO 286-2 as tabulated
// (testdata/outside/iso286.txt tests the tables themselves). The maker's figures, in
// micrometres, are those of its sheets: 120.054 to 120.076 for the hub seat, and so on.
func TestStormPumpFits(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name     string
		low, top string
	}{
		{"120 H7", "120.000", "120.035"}, {"120 r6", "120.054", "120.076"},
		{"130 m6", "130.015", "130.040"}, {"110 k6", "110.003", "110.025"},
		{"230 H7", "230.000", "230.046"}, {"240 H7", "240.000", "240.046"},
		{"420 H7", "420.000", "420.063"},
	} {
		z, err := fit.Parse(c.name)
		if err != nil {
			t.Fatal(err)
		}
		if z.Min().Decimal() != c.low || z.Max().Decimal() != c.top {
			t.Errorf("%s: %s to %s, want %s to %s", c.name, z.Min().Decimal(), z.Max().Decimal(), c.low, c.top)
		}
	}
	hub, err := fit.ParseFit("120 H7/r6")
	if err != nil {
		t.Fatal(err)
	}
	if got := [2]string{hub.LeastInterference().Decimal(), hub.GreatestInterference().Decimal()}; got != [2]string{"0.019", "0.076"} {
		t.Errorf("interference of the hub %v, want 0.019 to 0.076", got)
	}
	// Wear ring: 420 H7 over an impeller ring of 419.240 to 419.300 leaves 0.70 to 0.82.
	ring, err := fit.Parse("420 H7")
	if err != nil {
		t.Fatal(err)
	}
	least, most := ring.Min()-419_300_000, ring.Max()-419_240_000
	if least.Decimal() != "0.700" || most.Decimal() != "0.823" {
		t.Errorf("wear ring clearance %s to %s, want 0.700 to 0.823", least.Decimal(), most.Decimal())
	}
	jb, _ := composed(t, "storm-pump.yaml", templates.Options{Paper: layout.A4})
	for _, d := range jb.Dims {
		if d.Base == "D20" && d.Left.Text() != "0.70 to 0.82 mm" {
			t.Errorf("%s is left at %s, want what the ring sizes leave", d.Mark, d.Left.Text())
		}
	}
}

// TestSumsStandWhereTheyAreRead: a ladder that copies the sum of several readings
// finds that sum in a box beside them, on the page it names.
func TestSumsStandWhereTheyAreRead(t *testing.T) {
	t.Parallel()
	jb, pack := composed(t, "storm-pump.yaml", templates.Options{Paper: layout.A4})
	copied := 0
	for _, d := range jb.Dims {
		for _, l := range []*job.Ladder{d.FoundWork.Formula, d.LeftWork.Formula} {
			if l == nil {
				continue
			}
			for _, r := range l.Rungs {
				for _, p := range r.Parts {
					if p.Blank != reading.BlankReading || p.Index != reading.WholeOf(reading.WordSumOf) {
						continue
					}
					copied++
					for _, u := range l.Uses {
						if u.Mark == p.Mark && !sumBox(pack, u) {
							t.Errorf("%s copies the sum of %s, which has no box", d.Mark, u.Dims[0].Mark)
						}
					}
				}
			}
		}
	}
	if copied < 6 {
		t.Errorf("%d sums are copied, and D14, D20 and D22 take eight", copied)
	}
}

// sumBox reports whether a box for the sum of the readings stands with them, as
// found or as left.
func sumBox(pack *templates.Pack, u job.Use) bool {
	want := "sum, as found"
	if u.Left {
		want = "sum, as left"
	}
	d := u.Dims[0]
	for _, f := range pack.Pages.BySheet() {
		caption, box := false, false
		for _, it := range f.Items {
			if it.Ref != layout.Ref(d.At) {
				continue
			}
			text, isText := it.Shape.(layout.Text)
			caption = caption || isText && strings.HasPrefix(text.S, want)
			rect, isBox := it.Shape.(layout.Rect)
			box = box || isBox && it.Role == layout.RoleValue && rect.Cells == d.SumBox().Before+1+d.SumBox().After
		}
		if caption && box {
			return true
		}
	}
	return false
}
