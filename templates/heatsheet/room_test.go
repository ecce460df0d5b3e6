package heatsheet

import (
	"os"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/picture"
	"matchmark/templates/words"
)

// stormPump is the starter whose coupling hub is drawn off hot and whose two bearings, H2/DE and
// H3/NDE, are put on alike, and a composer for it.
func stormPump(width layout.Mm) *block.Composer {
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: "storm-pump.yaml"})
	return block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, width)
}

// The bearings of a shaft had a frame each that said the same of how hot they are made, twice on a
// page: one frame stands above their acts, where they are made as hot as each other and neither
// frame points to a table of its own.
func TestAFrameThatSaysTheSameStandsOnce(t *testing.T) {
	t.Parallel()
	frames := func(change func(h *job.Heat)) int {
		c := stormPump(180)
		if change != nil {
			for _, h := range c.Job.Heats {
				if strings.HasPrefix(h.Mark, "H3") {
					change(h)
				}
			}
		}
		said := strings.Join(wordsOf(Sheet(c)), " ")
		return strings.Count(said, words.English.HeatOn.Title.With(words.English.Heat.ByWay.With("induction"))+".")
	}
	for _, h := range stormPump(180).Job.Heats {
		if at := "heat on " + h.Mark; !slices.ContainsFunc(Sheet(stormPump(180)), func(p layout.Piece) bool {
			return slices.ContainsFunc(p.Block.Anchors(), func(a layout.Anchor) bool { return a.Name == at })
		}) {
			t.Errorf("no piece of the sheet is found as %q", at)
		}
	}
	if got := frames(nil); got != 1 {
		t.Errorf("two bearings made equally hot have %d frames, want 1", got)
	}
	if got := frames(func(h *job.Heat) { h.Limit.At -= 5 }); got != 2 {
		t.Errorf("two bearings of which one may be less hot have %d frames, want 2", got)
	}
	c := stormPump(180)
	rungs := []job.HeatRung{{UpTo: 0.04, SetTo: 100}, {UpTo: 0.06, SetTo: 110}}
	var family [][]*job.Heat
	for _, h := range c.Job.Heats {
		if h.Pull == nil {
			h.PutOn.Ladder = rungs
			family = append(family, []*job.Heat{h})
		}
	}
	if says := sharedFrame(c, family); len(family) != 2 || says != "" {
		t.Errorf("%d heats with tables of their own share the frame %q", len(family), says)
	}
}

// A clock time is told with its unit once on the sheet of a pull: in the frame, where there is
// one that tells the pace.
func TestTheUnitOfAClockIsToldOnce(t *testing.T) {
	t.Parallel()
	c := stormPump(180)
	s := sheetOf(c, c.Job.Heats[0])
	unit := "(minutes:seconds)"
	if got := s.longest(); strings.Contains(got, unit) || !strings.Contains(strings.Join(s.paceLines(), " "), unit) {
		t.Errorf("%q, and the frame says %q", got, s.paceLines())
	}
	s.h.Pull.Plan.Band.Pace = nil
	if got := s.longest(); !strings.Contains(got, unit) {
		t.Errorf("where no frame has told it: %q", got)
	}
}

// Pictures beside sentences take no more room than the two need: the chart is wide where its
// sentences are few, and narrower where they are higher than it; the joint is as high as it may be
// where its sentences are higher.
func TestPicturesAreNoHigherThanTheirWordsNeed(t *testing.T) {
	t.Parallel()
	c := stormPump(180)
	s := sheetOf(c, c.Job.Heats[0])
	plan := s.h.Pull.Plan
	wide := picture.Opening(s.Setter, s.W, s.h, plan, 98)
	text := s.parasIn(s.Span-98-4, layout.Body, s.courseLines(plan))
	if text.H <= wide.H {
		t.Fatalf("the sentences are %.1f mm high beside a chart of %.1f mm, no case", text.H, wide.H)
	}
	if got := s.courseAndChart(plan); got.H >= text.H {
		t.Errorf("chart and sentences are %.1f mm high, no less than with the widest chart, %.1f", got.H, text.H)
	}
	high := picture.Joint(s.Setter, s.W, s.h, 76, picture.JointHeight+4)
	if got := s.besidePicture([]string{"short"}).Block; got.H >= high.H {
		t.Errorf("a joint beside one word is %.1f mm high, no less than %.1f", got.H, high.H)
	}
	many := []string{strings.Repeat("many words ", 200)}
	want := layout.Beside(4, high, s.parasIn(s.Span-76-4, layout.Body, many))
	if got := s.besidePicture(many).Block; !slices.EqualFunc(got.Items(), want.Items(), func(a, b layout.Item) bool { return a.X == b.X && a.Y == b.Y }) {
		t.Errorf("a joint beside many words is not drawn as high as it may be")
	}
}
