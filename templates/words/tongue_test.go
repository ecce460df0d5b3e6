package words

import (
	"testing"

	"golang.org/x/text/language"
	"golang.org/x/text/message"
	"golang.org/x/text/number"
)

// What is counted has its name in the language; all else stays.
func TestUnit(t *testing.T) {
	de, err := In("de")
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]string{"5 – 20\u00a0pcs": "5 – 20\u00a0St.", "pcs": "St.", "0⎖05\u00a0mm": "0⎖05\u00a0mm", "D7": "D7", "": "", "1/2\u00a0turn": "1/2\u00a0Umdr."} {
		if got := de.Unit(text); got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
		if got := English.Unit(text); got != text {
			t.Errorf("%q in English is %q", text, got)
		}
	}
}

// The decimal sign of each language is that of the Unicode CLDR, as golang.org/x/text has it.
func TestDecimalSignIsThatOfCLDR(t *testing.T) {
	for _, lang := range Languages() {
		c, err := In(lang)
		if err != nil {
			t.Fatal(err)
		}
		want := message.NewPrinter(language.MustParse(lang)).Sprint(number.Decimal(0.5))
		if got := "0" + c.Common.Decimal + "5"; got != want {
			t.Errorf("%s: %s, CLDR has %s", lang, got, want)
		}
	}
}
