package dimension

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// A limit that takes a reading which is not there yet is told as one that is worked out later: beside
// a result of a sum it would look as if the result were judged by it there. Without such a reading it
// stands beside each result.
func TestALimitThatComesLaterStandsBesideNoResult(t *testing.T) {
	t.Parallel()
	tested := 0
	for _, file := range []string{"bevel-gearbox.yaml", "storm-pump.yaml", "triplex-pump.yaml"} {
		jb, c := starter(file, 180)
		for _, d := range jb.Dims {
			sum := d.LeftWork.Formula
			if sum == nil || d.Left == nil || d.Left.Kind == reading.Record || d.LeftWork.Late != nil {
				continue
			}
			limit := strings.Fields(strings.ReplaceAll(eachLimit(c.W, d.Left), string(layout.DecimalMark), "."))
			if len(limit) == 0 {
				continue
			}
			for _, late := range []bool{false, true} {
				work := d.LeftWork
				if late {
					work.Late = &job.Use{Dims: []*job.Dim{d}}
				}
				text := textOf(ladders(c, d, sum, Side{caption: c.W.Common.AsLeft, When: job.AsLeft, work: &work}, false, 170))
				if strings.Contains(text, strings.Join(limit, " ")) == late {
					t.Errorf("%s %s: the limit %q is beside the result %t, with a reading that comes later %t: %s", file, d.Mark, limit, !late, late, text)
				}
			}
			tested++
		}
	}
	if tested == 0 {
		t.Error("no sum has a limit")
	}
}

// textOf are the words in some blocks, with one space between each two.
func textOf(blocks []layout.Block) string {
	var words []string
	for _, b := range blocks {
		for _, it := range b.Items() {
			if s, ok := it.Shape.(layout.Text); ok {
				words = append(words, strings.Fields(s.S)...)
			}
		}
	}
	return strings.Join(words, " ")
}
