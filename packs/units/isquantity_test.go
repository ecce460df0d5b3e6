package units

import "testing"

// TestIsQuantity: a text is a quantity where ParseQuantity reads one, with every unit and with what
// is none.
func TestIsQuantity(t *testing.T) {
	texts := []string{"", "1", "1 ", "1 x", "mm", "1 mm of", "1 mm", "1/2 in", "-3 °C", "1,5 mm", "1 mmm", "1 of", "0.05 mm ", "12 bolts", "1 μm"}
	for _, word := range UnitWords() {
		texts = append(texts, "1 "+word, "1"+word, "2.5 "+word+"x", "1 "+word+" "+word)
	}
	for _, text := range texts {
		if _, err := ParseQuantity(text); IsQuantity(text) != (err == nil) {
			t.Errorf("%q: is a quantity %v, but %v", text, IsQuantity(text), err)
		}
	}
}
