package step

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// "torque at 250" stood at the end of a line of a remark, its "N·m" on the next; the words of
// the step above it held together.
func TestRemarksHoldNumbersToUnits(t *testing.T) {
	st := &job.Step{Section: &job.Section{}, No: "1.1", Note: "torque at 250 N·m", Missed: "last 9 mm by hand"}
	const note, missing = "torque at 250\u00a0N·m", "last 9\u00a0mm by hand"
	c := block.New(pdf.NewFaces(), layout.Pen{}, &job.Job{}, words.English, 180)
	of := func(b layout.Block) string {
		var out []string
		for _, item := range b.Items() {
			if text, ok := item.Shape.(layout.Text); ok {
				out = append(out, text.S)
			}
		}
		return strings.Join(out, " ")
	}
	if got := of(layout.Above(0, underWords(c, st, 180)...)); !strings.Contains(got, note) {
		t.Errorf("the remark is %q", got)
	}
	if got := missed(c, st).Text; !strings.Contains(got, missing) {
		t.Errorf("what is easily missed is %q", got)
	}
	row := &table{Composer: c, steps: []*job.Step{st}, grid: c.Grid(block.Col("", 12), block.Col("", 90)), sameText: true}
	if got := of(layout.Above(0, row.place(0)...)); !strings.Contains(got, note) || !strings.Contains(got, missing) {
		t.Errorf("the row of a table is %q", got)
	}
	// The same in the second language stands there once.
	c.Other = block.NewSecond(&block.Composer{Job: &job.Job{Sections: []*job.Section{{Steps: []*job.Step{st}}}}, W: words.English})
	if got := remark(c, st); len(got) != 1 {
		t.Errorf("the remark is told in %d runs, want one", len(got))
	}
}
