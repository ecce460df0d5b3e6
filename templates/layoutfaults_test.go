package templates_test

import (
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
	"matchmark/templates/block"
	"matchmark/templates/step"
	"matchmark/templates/words"
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
			if is && strings.Contains(text.S, "stamped A and B") && f.Sheet == "register" {
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

// The list of openings named the page on which a step begins for what is ticked on the next one,
// and the steps the page of the first row of an isolation whose later rows stand on the next.
func TestPagesToldAreThoseOfTheTicks(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"bevel-gearbox.yaml", "storm-pump.yaml"} {
		jb, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: name})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
		tested := 0
		for _, o := range jb.Openings {
			page, ticked := pack.Anchors[step.ClosedAnchor(o)]
			if o.ClosedAt == nil || !ticked {
				continue
			}
			tested++
			shut := o.ClosedAt
			if o.ShutAt != nil {
				shut = o.ShutAt
			}
			want := shut.No + " p. " + strconv.Itoa(page)
			if !saidOn(pack, "openings", want) {
				t.Errorf("%s: the openings do not say %q of %s", name, want, o.What)
			}
		}
		for _, x := range jb.Isolations {
			for i := range x.Periods {
				if pack.Anchors[step.LockAnchor(x, i)] == 0 {
					t.Errorf("%s: the row of %s, locked for time %d, is not found", name, x.Point, i+1)
				}
			}
		}
		if tested == 0 {
			t.Errorf("%s: no opening is closed by a tick", name)
		}
	}
}

// saidOn reports whether a text of a sheet has some words in it.
func saidOn(pack *templates.Pack, sheet, words string) bool {
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != sheet {
			continue
		}
		for _, it := range f.Items {
			if text, is := it.Shape.(layout.Text); is && strings.Contains(strings.ReplaceAll(text.S, "\u00a0", " "), words) {
				return true
			}
		}
	}
	return false
}

// Who looked for J4 between J3 and J5 could not know whether a page was missing.
func TestMarksThatAreLeftOutAreTold(t *testing.T) {
	t.Parallel()
	for serial, want := range map[string]string{"TH-0431": "J4, J8", "TH-0400": "J1, J7"} {
		text, err := os.ReadFile("../packs/starters/storm-pump.yaml")
		if err != nil {
			t.Fatal(err)
		}
		files := fstest.MapFS{"pump.yaml": {Data: []byte(strings.Replace(string(text), "serial: TH-0431", "serial: "+serial, 1))}}
		jb, problems := packs.Load(files, packs.Inputs{Definition: "pump.yaml"})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
		if !saidOn(pack, "front", "Not in the pack: "+want+".") || !saidOn(pack, "tightening", want) {
			t.Errorf("the pack of %s does not say that %s are not in it", serial, want)
		}
	}
}

// The tick that an opening is closed stood alone on the page after its step.
func TestNoTickStandsAloneOnTheNextPage(t *testing.T) {
	t.Parallel()
	jb, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: "bevel-gearbox.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	tested := 0
	for _, st := range jb.Steps() {
		ps := step.Pieces(c, st)
		last := len(ps) - 2 // the rule stands behind it
		boxes := 0
		ps[last].Block.Each(func(it layout.Item) {
			switch {
			case it.Role == layout.RoleTick:
				boxes++
			case strings.HasPrefix(it.Role, "box:"):
				boxes += 9 // no tick alone
			}
		})
		if boxes == 1 && last > 1 {
			if tested++; !ps[last-1].KeepNext {
				t.Errorf("%s: what stands above its last box may stay behind", st.Name())
			}
		}
	}
	if tested == 0 {
		t.Error("no step ends with one tick")
	}
}
