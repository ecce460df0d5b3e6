package layout

import "testing"

// Lines set nearer than 120 % of their size run into each other for an eye at arm's length: the
// usual rule for running text; common practice, no source. What is much wider takes paper.
func TestLeadIsThatOfRunningText(t *testing.T) {
	t.Parallel()
	for name, st := range map[string]Style{
		"body": Body, "strong": Strong, "limit": Limit, "step number": StepNo, "sub": Sub, "sub bold": SubBold,
		"caption": Caption, "head": Head, "plate": Plate, "section": Section, "code": CodeText, "typed": Typed,
	} {
		if share := float64(st.Lead / st.Size.Mm()); share < 1.2 || share > 1.31 {
			t.Errorf("the lead of %s is %.1f %% of its size, want 120 %% or a little more", name, 100*share)
		}
	}
}
