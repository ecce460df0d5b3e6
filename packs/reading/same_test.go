package reading

import "testing"

// Limits that allow the same, and some that do not. By arithmetic alone.
func TestSameLimits(t *testing.T) {
	for _, x := range []struct {
		a, b string
		want bool
	}{
		{"0.25 to 0.35 mm", "0.25 mm to 0.35 mm", true},
		{"0.25 to 0.35 mm", "0.30 mm +/- 0.05 mm", true},
		{"0.25 to 0.35 mm", "0.250 to 0.350 mm", true},
		{"at most 2.54 mm", "at most 0.1 in", true},
		{"0.25 to 0.35 mm", "0.25 to 0.36 mm", false},
		{"0.25 to 0.35 mm", "at most 0.35 mm", false},
		{"at least 0.35 mm", "at most 0.35 mm", false},
		{"at most 0.35 mm", "mean at most 0.35 mm", false},
		{"0.25 to 0.35 mm", "record to 0.01 mm", false},
	} {
		a, faultA := Parse(x.a)
		b, faultB := Parse(x.b)
		if faultA != nil || faultB != nil {
			t.Fatalf("%q, %q: %v, %v", x.a, x.b, faultA, faultB)
		}
		if got := Same(a, b); got != x.want || Same(b, a) != got {
			t.Errorf("%q and %q are the same: %t, want %t", x.a, x.b, got, x.want)
		}
	}
}
