package templates_test

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// starterPages are the pages of a starter on A4, apart by their sheets.
func starterPages(t *testing.T, name string) []layout.Frame {
	t.Helper()
	jb, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: name})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	if misfits.Errors() > 0 {
		t.Fatal(misfits)
	}
	return pack.Pages.BySheet()
}

// The last line about matched sets stood on the frames of the first cards.
func TestMatchedSetsStandClearOfTheCards(t *testing.T) {
	t.Parallel()
	tested := false
	for _, f := range starterPages(t, "storm-pump.yaml") {
		var last, frame layout.Mm
		for _, it := range f.Items {
			text, is := it.Shape.(layout.Text)
			if is && strings.Contains(text.S, "stamped A and B") && f.Sheet == "register" && it.X < 60 {
				last = it.Y
			}
		}
		if last == 0 {
			continue
		}
		for _, it := range f.Items {
			if r, is := it.Shape.(layout.Rect); is && r.W > 80 && it.Y > last-2 && (frame == 0 || it.Y < frame) {
				frame = it.Y
			}
		}
		if tested = true; frame-last < 1.5 {
			t.Errorf("p. %d: the base line is at %.1f mm, the frame at %.1f", f.Number, last, frame)
		}
	}
	if !tested {
		t.Error("no page tells the matched sets")
	}
}

// Where initials stand below the mark, the boxes as left stood below the head "initials".
func TestBoxesOutOfTheirColumnsSayTheirSide(t *testing.T) {
	t.Parallel()
	tested := 0
	for _, f := range starterPages(t, "triplex-pump.yaml") {
		for _, it := range f.Items {
			mark, is := it.Shape.(layout.Text)
			if !is || !regexp.MustCompile(`^D18/[0-9]$`).MatchString(mark.S) || f.Sheet != "critical" {
				continue
			}
			tested++
			sides := 0
			for _, x := range f.Items {
				if text, is := x.Shape.(layout.Text); is && (text.S == "as found" || text.S == "as left") && x.Y > it.Y-8 && x.Y < it.Y+8 {
					sides++
				}
			}
			if sides != 2 {
				t.Errorf("p. %d: %s has %d sides named", f.Number, mark.S, sides)
			}
		}
	}
	if tested != 3 {
		t.Errorf("%d rows of D18 are looked at, want 3", tested)
	}
}

// What the numbers in circles mean stood at the foot of a page, the drawings on the next one.
func TestHowNumbersAreReadStandsWithTheirDrawing(t *testing.T) {
	t.Parallel()
	tested := 0
	for _, f := range starterPages(t, "bevel-gearbox.yaml") {
		for _, it := range f.Items {
			text, is := it.Shape.(layout.Text)
			if !is || !strings.HasPrefix(text.S, "The number in a circle") {
				continue
			}
			tested++
			drawn := 0
			for _, x := range f.Items {
				if n, is := x.Shape.(layout.Text); is && n.S == "1" && x.Y > it.Y-45 && x.Y < it.Y+60 {
					drawn++
				}
			}
			if drawn == 0 {
				t.Errorf("p. %d says how numbers are read, and has none", f.Number)
			}
		}
	}
	if tested == 0 {
		t.Error("no page says how the numbers are read")
	}
}
