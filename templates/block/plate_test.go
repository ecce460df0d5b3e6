package block

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/words"
)

// The panels of the signal words differed with the length of their word and with the lines of
// their note: on one page a WARNING was larger than a DANGER.
func TestSignalPlatesOfAPageAreAlike(t *testing.T) {
	t.Parallel()
	var notes []*job.Caution
	for _, signal := range []string{"danger", "warning", "caution", "notice"} {
		for _, text := range []string{"Stand clear.", "Stand clear of the load and of the way that it takes. Nobody goes under it before it stands on its timbers and the one in charge has said so."} {
			notes = append(notes, &job.Caution{Key: signal + text, Signal: signal, Hazard: "Load on the hook.", Avoid: text, Signs: []string{"W015"}, Steps: []*job.Step{{}}})
		}
	}
	set := layout.NewSetter(pdf.NewFaces(), layout.Pen{})
	for _, code := range []string{"en", "de", "es", "fr", "pl"} {
		w, err := words.In(code)
		if err != nil {
			t.Fatal(err)
		}
		c := &Composer{Setter: set, Job: &job.Job{Notes: notes}, W: w, Span: 180}
		var plate layout.Rect
		for _, n := range notes {
			for _, b := range []layout.Block{c.Caution(n), c.CautionAgain(n), c.CautionsInRow([]*job.Caution{n})} {
				found := false
				for _, it := range b.Items() {
					r, ok := it.Shape.(layout.Rect)
					if !ok || r.Fill != layout.Black {
						continue
					}
					found = true
					if plate.W == 0 {
						plate = r
					}
					if off := max(r.W-plate.W, plate.W-r.W, r.H-plate.H, plate.H-r.H); off > 0.01 {
						t.Errorf("%s: the panel of %s is %.1f by %.1f mm, another one %.1f by %.1f", code, n.Signal, r.W, r.H, plate.W, plate.H)
					}
				}
				if !found {
					t.Errorf("%s: no panel of %s was found", code, n.Signal)
				}
			}
		}
	}
}

// The third line of the sentence beside the title of the lift sheet stood on the rule below it.
func TestTheSentenceBesideATitleStandsClearOfItsRule(t *testing.T) {
	t.Parallel()
	c := &Composer{Setter: layout.NewSetter(pdf.NewFaces(), layout.Pen{}), W: words.English, Span: 180}
	for lines := 1; lines <= 4; lines++ {
		sentence := strings.Repeat("No tag, no lift. Look at every piece before it is used. ", 2*lines-1)
		b := c.TitleLine("Lift sheet", layout.T(layout.Sub, sentence)).Block
		high, low, rule := layout.Mm(100), layout.Mm(0), layout.Mm(0)
		for _, it := range b.Items() {
			_, top, _, bottom := it.Bounds()
			switch s := it.Shape.(type) {
			case layout.Text:
				high, low = min(high, top), max(low, bottom)
			case layout.Line:
				if s.DX > 100 {
					rule = top
				}
			}
		}
		if rule-low < 0.3 || high < 0 {
			t.Errorf("%d: the letters reach from %.2f to %.2f mm, the rule begins at %.2f mm", lines, high, low, rule)
		}
	}
}
