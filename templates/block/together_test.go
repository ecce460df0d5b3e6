package block

import "testing"

// "draw it down over the last 9" stood at the end of a line, its "mm" on the next.
func TestTogether(t *testing.T) {
	for _, x := range []struct{ in, want string }{
		{"over the last 9 mm; four in", "over the last 9\u00a0mm; four in"},
		{"first to 190 N·m, then at 250 N·m.", "first to 190\u00a0N·m, then at 250\u00a0N·m."},
		{"at 80 °C: stop", "at 80\u00a0°C: stop"},
		{"(33 kg)", "(33\u00a0kg)"},
		{"bolts 1 to 14, take 2 of them", "bolts 1 to 14, take 2 of them"},
		{"9", "9"}, {"9 ", "9 "}, {"", ""},
	} {
		if got := Together(x.in); got != x.want {
			t.Errorf("%q: got %q, want %q", x.in, got, x.want)
		}
	}
}
