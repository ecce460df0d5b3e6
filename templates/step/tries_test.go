package step

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// stepsOfStarter are the steps of a starter that print is asked of, with what sets them.
func stepsOfStarter(name string) (*block.Composer, []*job.Step) {
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: name})
	return block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180), jb.Steps()
}

// The second try of the backlash began its row with the leaves that it put in, so that 90° stood
// below 180° of the first: who reads down a column compares two places.
func TestTriesHaveTheirReadingsInColumns(t *testing.T) {
	t.Parallel()
	c, steps := stepsOfStarter("bevel-gearbox.yaml")
	tested := 0
	for _, st := range steps {
		if st.Tries < 3 || len(st.EachTry) < 2 {
			continue
		}
		first, second := at(tryBlock(c, st, 0, 160)), at(tryBlock(c, st, 1, 160))
		for name, x := range first {
			if x2, is := second[name]; is && !strings.HasPrefix(name, "try") {
				tested++
				if x != x2 {
					t.Errorf("%s: %q stands at %.1f mm in try 1, at %.1f mm in try 2", st.Name(), name, x, x2)
				}
			}
		}
	}
	if tested < 6 {
		t.Errorf("%d readings of tries were compared, want the six of backlash and contact", tested)
	}
}

// at is where the texts of a block begin, across.
func at(b layout.Block) map[string]layout.Mm {
	out := map[string]layout.Mm{}
	for _, it := range b.Items() {
		if text, ok := it.Shape.(layout.Text); ok {
			out[text.S] = it.X
		}
	}
	return out
}

// Yes and no had a row of their own wherever they did not go beside the boxes.
func TestTicksOfATryStandAboveEachOtherWhereThatSavesARow(t *testing.T) {
	t.Parallel()
	box, tick := layout.Drawn(40, 12, layout.Item{Shape: layout.Rect{W: 40, H: 12}}), layout.Drawn(20, 6, layout.Item{Shape: layout.Rect{W: 6, H: 6}})
	acts, good := []layout.Block{box, box}, []layout.Block{tick, tick}
	for _, x := range []struct {
		what  string
		width layout.Mm
		high  layout.Mm
	}{
		{"room for all", 140, 12},
		{"room for one tick", 110, 6 + layout.GapY + 6},
		{"room for none", 90, 12 + layout.GapY + 7.5},
	} {
		if got := tryRows(acts, nil, good, nil, x.width); got.H != x.high || got.W > x.width {
			t.Errorf("%s: %.1f mm by %.1f mm, want %.1f mm high", x.what, got.W, got.H, x.high)
		}
	}
}

// A row held the oil ring of one end alone, and below it that of the other beside the split
// pins of both.
func TestAShortRowOfWhatComesOutIsNotSetAlone(t *testing.T) {
	t.Parallel()
	c, steps := stepsOfStarter("storm-pump.yaml")
	tested := false
	for _, st := range steps {
		groups := groupByPlace(st.Fit, func(m *job.Move) job.Where { return m.From })
		if len(groups) < 3 || whereMark(c, groups[0].where) != "C10/DE" || whereMark(c, groups[1].where) != "C10/NDE" {
			continue
		}
		tested = true
		if row := said(fitRun(c, st).lines(c.Span - block.NumberWidth)[0]); !strings.Contains(row, "C10/DE") || !strings.Contains(row, "C10/NDE") {
			t.Errorf("%s: the first row is %q, want both oil rings", st.Name(), row)
		}
	}
	if !tested {
		t.Error("no step fetches something from C10 of both ends first")
	}
}
