package putback

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// What was only recorded stood at "IF 1.2 was done" though it was read in any case, and at a row
// that is always done though it was read only then: its box asked for a number that nobody wrote.
// However rows that work, that look up and that hang on one of two conditions follow one another,
// each reading stands once, at a row of its own condition where there is one.
func TestRecordedReadingsStandAtRowsOfTheirCondition(t *testing.T) {
	t.Parallel()
	moved := 0
	rapid.Check(t, func(t *rapid.T) {
		var rows []*job.Step
		of := map[*job.Dim]*job.Step{}
		can := map[string]bool{} // the conditions of rows that work
		works := false
		for range rapid.IntRange(1, 6).Draw(t, "rows") {
			st := &job.Step{}
			when := rapid.SampledFrom([]string{"", "D1 is over 0.50 mm", "is it worn?"}).Draw(t, "condition")
			if when != "" {
				st.If = &job.Asked{Wrote: source.Text{Value: when}}
			}
			row := &job.Step{Undoes: st}
			if rapid.Bool().Draw(t, "works") {
				row.Do, works, can[when] = "Put it back.", true, true
			}
			if row.Do == "" || rapid.Bool().Draw(t, "looks up as well") {
				d := &job.Dim{}
				row.Recall, of[d] = []*job.Dim{d}, row
			}
			rows = append(rows, row)
		}
		name := func(row *job.Step) string {
			if row.Undoes.If == nil {
				return ""
			}
			return row.Undoes.If.Wrote.Value
		}
		got := map[*job.Dim]*job.Step{}
		for _, row := range recalled(rows) {
			for _, d := range row.Recall {
				if got[d] != nil {
					t.Fatal("a reading stands twice")
				}
				got[d] = row
			}
		}
		for d, row := range of {
			at := got[d]
			switch when := name(row); {
			case !works && row.Do == "" && at == nil: // a section that does nothing has no rows
			case at == nil:
				t.Fatalf("what was read under %q stands nowhere", when)
			case name(at) != when && (when != "" || can[""]):
				t.Fatalf("what was read under %q stands at a row under %q", when, name(at))
			case at != row:
				moved++
			}
		}
	})
	if moved == 0 {
		t.Error("no reading went to another row")
	}
}
