package dimension

import "testing"

// "spread at" ended a line, and "most 0.50 mm" began the next.
func TestHeld(t *testing.T) {
	for _, x := range []struct{ in, want string }{
		{"spread at most 0.50 mm", "spread at\u00a0most\u00a00.50 mm"},
		{"old part at least 44.900\u00a0mm", "old part at\u00a0least\u00a044.900\u00a0mm"},
		{"au plus 5", "au\u00a0plus\u00a05"},
		{"mean 0.07 – 0.12", "mean\u00a00.07\u00a0–\u00a00.12"},
		{"as found ± 0.05", "as found\u00a0±\u00a00.05"},
		{"no limit at all", "no limit at all"},
		{"", ""},
	} {
		if got := held(x.in); got != x.want {
			t.Errorf("%q: got %q, want %q", x.in, got, x.want)
		}
	}
}
