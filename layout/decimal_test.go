package layout

import "testing"

// A number is set with the decimal sign of the paper; the commas of a list of numbers
// give way where it is a comma, those of a sentence stay.
func TestDecimals(t *testing.T) {
	for _, row := range []struct{ text, point, comma string }{
		{"0⎖05 mm", "0.05 mm", "0,05 mm"},
		{"1⎖5, 2⎖5 and 3", "1.5, 2.5 and 3", "1,5; 2,5 and 3"},
		{"−0⎖1, −0⎖2", "−0.1, −0.2", "−0,1; −0,2"},
		{"pulls 4⎖5 kN, 36° steep", "pulls 4.5 kN, 36° steep", "pulls 4,5 kN, 36° steep"},
		{"step 3.10, 2 men", "step 3.10, 2 men", "step 3.10, 2 men"},
		{"⎖", ".", ","},
		{"1⎖5,", "1.5,", "1,5,"},
		{"", "", ""},
	} {
		if got := NewSetter(fake{}, Pen{}).Decimals(row.text); got != row.point {
			t.Errorf("%q with a point: got %q, want %q", row.text, got, row.point)
		}
		if got := NewSetter(fake{}, Pen{Comma: true}).Decimals(row.text); got != row.comma {
			t.Errorf("%q with a comma: got %q, want %q", row.text, got, row.comma)
		}
	}
}

// No way of setting a text leaves the mark on a page.
func TestNoDecimalMarkOnAPage(t *testing.T) {
	for sign, pen := range map[string]Pen{".": {}, ",": {Comma: true}} {
		s := NewSetter(fake{}, pen)
		for _, b := range []Block{
			s.Words(Body, "0⎖05"), s.Para(50, []Run{T(Body, "0⎖05")}, ParaOpts{}),
			s.Line(0, []Run{{Text: "0⎖05", Style: Body, Deco: Boxed}}, ParaOpts{}),
			s.Value(Number{Before: 3, After: 1, Typed: "0⎖05"}),
		} {
			if got := b.someText(); got != "0"+sign+"05" {
				t.Errorf("got %q", got)
			}
		}
	}
}
