package block

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/words"
)

// A hazard that is longer than a line ran over the edge of the paper on each page that its
// step goes on to.
func TestLongHazardsStayOnThePaper(t *testing.T) {
	t.Parallel()
	c := &Composer{Setter: layout.NewSetter(pdf.NewFaces(), layout.Pen{}), Job: &job.Job{}, W: words.English, Span: 190}
	long := strings.Repeat("A load hangs over the way of the crane. ", 6)
	b := c.CautionsInRow([]*job.Caution{{Key: "short", Signal: "warning", Hazard: "Puller under load."}, {Key: "long", Signal: "danger", Hazard: long, Signs: []string{"W015"}}})
	for _, it := range b.Items() {
		if left, _, right, _ := it.Bounds(); left < -0.2 || right > c.Span+0.2 {
			t.Errorf("%v reaches from %.1f to %.1f mm, and the paper has %.0f", it.Shape, left, right, c.Span)
		}
	}
	if b.W > c.Span || len(b.Misfits()) > 0 {
		t.Errorf("the notes are %.1f mm wide, with %v", b.W, b.Misfits())
	}
}

// Notes that stand again say in the second language as well what they warn of: who reads
// that one alone saw only signs.
func TestNotesInARowSpeakTheSecondLanguage(t *testing.T) {
	t.Parallel()
	set := layout.NewSetter(pdf.NewFaces(), layout.Pen{})
	german, err := words.In("de")
	if err != nil {
		t.Fatal(err)
	}
	other := &job.Caution{Key: "load", Signal: "warning", Hazard: "Last am Haken."}
	c := &Composer{Setter: set, Job: &job.Job{}, W: words.English, Span: 180}
	c.Other = NewSecond(&Composer{Setter: set, Job: &job.Job{Notes: []*job.Caution{other}}, W: german, Span: 180})
	b := c.CautionsInRow([]*job.Caution{{Key: "load", Signal: "warning", Hazard: "Load on the hook."}})
	said := layout.Readable(layout.Frame{Items: b.Items()})
	for _, want := range []string{"Load on the hook.", other.Hazard} {
		if !strings.Contains(said, want) {
			t.Errorf("%q lacks %q", said, want)
		}
	}
}

// A note that its author has in one language alone stood twice on paper of two, once large
// and once small.
func TestANoteOfOneLanguageStandsOnce(t *testing.T) {
	t.Parallel()
	set := layout.NewSetter(pdf.NewFaces(), layout.Pen{})
	for _, n := range []*job.Caution{
		{Key: "belt", Signal: "danger", Hazard: "Loaded belt.", Short: "Clamped before it is touched. The backstop is no lock."},
		{Key: "belt", Signal: "danger", Hazard: "Loaded belt.", Avoid: "Clamped before it is touched. The backstop is no lock."},
	} {
		c := &Composer{Setter: set, Job: &job.Job{}, W: words.English, Span: 180}
		c.Other = NewSecond(&Composer{Setter: set, Job: &job.Job{Notes: []*job.Caution{n}}, W: words.English, Span: 180})
		for _, b := range []layout.Block{c.Caution(n), c.CautionAgain(n)} {
			if said := layout.Readable(layout.Frame{Items: b.Items()}); strings.Count(said, n.Hazard) != 1 {
				t.Errorf("%q says it more than once", said)
			}
		}
	}
}
