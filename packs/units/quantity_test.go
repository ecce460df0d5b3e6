package units

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func ExampleParseQuantity() {
	q, _ := ParseQuantity("1-3/8 in")
	mm, _ := q.Convert(Millimetre)
	fmt.Println(q.Text(), "=", mm.Round(2, Nearest).Text())
	_, err := ParseQuantity("0,05 mm")
	fmt.Println(err)
	// Output:
	// 1-3/8 in = 34.93 mm
	// decimal comma: 0,05
}

func TestParseQuantityKeepsWhatWasTyped(t *testing.T) {
	for _, c := range []struct {
		typed, text, print string
		unit               Unit
		decimals           int
		den                int64
	}{
		{"36 kg", "36 kg", "36 kg", Kilogram, 0, 0},
		{"80.00 mm", "80.00 mm", "80.00 mm", Millimetre, 2, 0},
		{"0.5mm", "0.5 mm", "0.5 mm", Millimetre, 1, 0},
		{"-0.04 mm", "-0.04 mm", "−0.04 mm", Millimetre, 2, 0},
		{"−0.04 mm", "-0.04 mm", "−0.04 mm", Millimetre, 2, 0},
		{"+0.02 mm", "+0.02 mm", "+0.02 mm", Millimetre, 2, 0},
		{"3/16 in", "3/16 in", "3/16 in", Inch, 0, 16},
		{"2/16 in", "2/16 in", "2/16 in", Inch, 0, 16},
		{"1 3/8 in", "1 3/8 in", "1 3/8 in", Inch, 0, 8},
		{"60 C rise", "60 C rise", "60 °C", CelsiusRise, 0, 0},
		{"60 °C rise", "60 C rise", "60 °C", CelsiusRise, 0, 0},
		{"60 C", "60 °C", "60 °C", Celsius, 0, 0},
		{"55 K", "55 K", "55 K", KelvinRise, 0, 0},
		{"20°", "20°", "20°", Degree, 0, 0},
		{"310 Nm", "310 N·m", "310 N·m", NewtonMetre, 0, 0},
		{"0.5 μm", "0.5 µm", "0.5 µm", Micrometre, 1, 0},
		{"12 lb-ft", "12 lb-ft", "12 lb-ft", PoundFoot, 0, 0},
		{"70 %", "70 %", "70 %", Percent, 0, 0},
	} {
		q, err := ParseQuantity(c.typed)
		if err != nil {
			t.Errorf("%q: %v", c.typed, err)
			continue
		}
		print := Pointed(strings.ReplaceAll(q.Print(), "\u00a0", " "))
		if q.Text() != c.text || print != c.print || q.Unit != c.unit || q.Number.Decimals() != c.decimals || q.Number.Denominator() != c.den {
			t.Errorf("%q: got %q %q %s %d %d, want %q %q %s %d %d", c.typed, q.Text(), print, q.Unit.Text(), q.Number.Decimals(), q.Number.Denominator(),
				c.text, c.print, c.unit.Text(), c.decimals, c.den)
		}
	}
}

func TestParseQuantityRefuses(t *testing.T) {
	for _, c := range []struct {
		typed, code   string
		offset, width int
		help          string // the first line of it
	}{
		{"", "not-a-number", 0, 0, "12.5"},
		{"36", "no-unit", 0, 2, "for example 36 mm"},
		{"012 mm", "leading-zero", 0, 3, "12"},
		{"00.5 mm", "leading-zero", 0, 4, "0.5"},
		{"0,05 mm", "decimal-comma", 0, 4, "0.05"},
		{"1,000 mm", "decimal-comma", 0, 5, "1.000"},
		{"1_000 mm", "marks-in-number", 0, 5, "1000"},
		{"1'000 mm", "marks-in-number", 0, 5, "1000"},
		{"1 000 mm", "blank-in-number", 0, 5, "1000"},
		{"1e3 mm", "power", 0, 3, "1000"},
		{".5 mm", "no-digit-before-point", 0, 2, "0.5"},
		{"-.5 mm", "no-digit-before-point", 0, 3, "-0.5"},
		{"5. mm", "no-digit-behind-point", 0, 2, "5"},
		{"1.2.3 mm", "two-points", 0, 5, "12.5"},
		{"1/0 in", "fraction", 0, 3, "3/16"},
		{"1-9/8 in", "fraction", 0, 5, "2-1/8"},
		{"0-3/8 in", "fraction", 0, 5, "3/8"},
		{"1234567890123456 mm", "too-many-figures", 0, 16, "12.5"},
		{"12.5 kgs", "unknown-unit", 5, 3, "12.5 kg"},
		{"9 m2", "unknown-unit", 2, 2, "9 mm"},
		{"3 mm mm", "text-behind-unit", 5, 2, "3 mm"},
		{"about 3 mm", "not-a-number", 0, 5, "12.5"},
	} {
		_, err := ParseQuantity(c.typed)
		var f *Fault
		if !errors.As(err, &f) {
			t.Errorf("%q: read without a fault", c.typed)
			continue
		}
		if f.Code != c.code || f.Offset != c.offset || f.Width != c.width || len(f.Help) == 0 || f.Help[0] != c.help {
			t.Errorf("%q: got %s at %d+%d, help %q; want %s at %d+%d, help %q", c.typed, f.Code, f.Offset, f.Width, f.Help, c.code, c.offset, c.width, c.help)
		}
	}
	// A ton is three different things.
	if _, err := ParseQuantity("3 ton"); err == nil || !strings.Contains(err.Error(), "2000 lb") {
		t.Errorf("3 ton: %v", err)
	}
}

func TestParseRange(t *testing.T) {
	low, high, err := ParseRange("0.02 to 1.00 mm")
	if err != nil || low.Text() != "0.02 mm" || high.Text() != "1.00 mm" {
		t.Errorf("0.02 to 1.00 mm: %s, %s, %v", low.Text(), high.Text(), err)
	}
	for typed, code := range map[string]string{
		"0-150 mm": "dash", "0 – 150 mm": "dash", "150 to 0 mm": "range-order", "0 to 150": "no-unit", "0 in to 150 mm": "two-units",
		"0 to 150 mm deep": "text-behind-unit", "150 mm": "not-a-range", "0 to": "not-a-range",
	} {
		_, _, err := ParseRange(typed)
		var f *Fault
		if !errors.As(err, &f) || f.Code != code {
			t.Errorf("%q: got %v, want a fault %s", typed, err, code)
		} else if f.Offset+f.Width > len([]rune(typed)) {
			t.Errorf("%q: place %d+%d beyond its end", typed, f.Offset, f.Width)
		}
	}
}

// A rise is not a temperature: TM 55-2210-223-34 p. 3-247 shows what comes of it.
func TestRiseIsNoTemperature(t *testing.T) {
	rise, _ := ParseQuantity("134 C rise")
	if q, err := rise.Convert(Fahrenheit); err == nil {
		t.Errorf("134 C rise became %s", q.Text())
	}
	point, _ := ParseQuantity("60 °C")
	if _, err := point.Convert(KelvinRise); err == nil || !strings.Contains(err.Error(), "60 °C is a temperature") {
		t.Errorf("60 °C became a rise: %v", err)
	}
	hub, _ := ParseQuantity("90 °C")
	shaft, _ := ParseQuantity("68 °F") // 20 °C
	if got, err := hub.Sub(shaft); err != nil || got.Text() != "70 C rise" {
		t.Errorf("90 °C - 68 °F = %s, %v; want 70 C rise", got.Text(), err)
	}
	if got, err := hub.Add(rise); err != nil || got.Text() != "224 °C" {
		t.Errorf("90 °C + 134 C rise = %s, %v; want 224 °C", got.Text(), err)
	}
	if got, err := hub.Add(shaft); err == nil {
		t.Errorf("two temperatures were added: %s", got.Text())
	}
}

func TestEveryUnitReadsItself(t *testing.T) {
	for _, w := range UnitWords() {
		u, width := LeadingUnit(w)
		if width != len([]rune(w)) || u.Text() != w {
			t.Errorf("%q reads as %q, %d runes", w, u.Text(), width)
		}
		if u.Dimension() == NoDimension || u.Print() == "" {
			t.Errorf("%q: dimension %s, print %q", w, u.Dimension(), u.Print())
		}
	}
}

// genNumber draws texts of numbers as people type them.
func genNumber() *rapid.Generator[string] {
	return rapid.OneOf(
		rapid.StringMatching(`[+-]?(0|[1-9][0-9]{0,5})(\.[0-9]{1,5})?`),
		rapid.StringMatching(`[+-]?[1-9][0-9]?/[1-9][0-9]{0,2}`),
		rapid.StringMatching(`[+-]?[1-9][0-9]{0,2}-[1-9]/(16|32|64)`),
	)
}

// Text to value to text is the same, and value to text to value too.
func TestTextIsKept(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		typed := genNumber().Draw(t, "number")
		n, err := ParseNumber(typed)
		if err != nil {
			t.Fatalf("%q: %v", typed, err)
		}
		if n.Text() != typed {
			t.Fatalf("%q became %q", typed, n.Text())
		}
		unit := rapid.SampledFrom(UnitWords()).Draw(t, "unit")
		u, _ := LeadingUnit(unit)
		q, err := ParseQuantity(Quantity{n, u}.Text())
		if err != nil || q.Number.Cmp(n) != 0 || q.Unit != u {
			t.Fatalf("%s %s came back as %s, %v", typed, unit, q.Text(), err)
		}
	})
}

// Sums and rounded numbers print so that they read as the same value.
func TestWorkedOutNumbersReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, _ := ParseNumber(rapid.StringMatching(`-?(0|[1-9][0-9]{0,4})(\.[0-9]{1,4})?`).Draw(t, "a"))
		b, _ := ParseNumber(rapid.StringMatching(`-?(0|[1-9][0-9]{0,4})(\.[0-9]{1,4})?`).Draw(t, "b"))
		d := rapid.IntRange(0, 6).Draw(t, "decimals")
		how := rapid.SampledFrom([]Rounding{Nearest, Up, Down}).Draw(t, "rounding")
		for _, n := range []Number{a.Add(b), a.Sub(b), a.Neg(), a.Add(b).Round(d, how)} {
			back, err := ParseNumber(n.Text())
			if err != nil || back.Cmp(n) != 0 || back.Decimals() != n.Decimals() {
				t.Fatalf("%s came back as %s, %v", n.Text(), back.Text(), err)
			}
		}
		if a.Add(b).Sub(b).Cmp(a) != 0 {
			t.Fatalf("%s + %s - %s is not %s", a.Text(), b.Text(), b.Text(), a.Text())
		}
		off := a.Round(d, how).Sub(a)
		if off.Abs().Cmp(a.Round(d, how).Step()) >= 0 || how == Up && off.Sign() < 0 || how == Down && off.Sign() > 0 {
			t.Fatalf("%s rounded to %s", a.Text(), a.Round(d, how).Text())
		}
	})
}

// FuzzParseQuantity: no text breaks the reader, and a fault lies inside the text.
func FuzzParseQuantity(f *testing.F) {
	for _, s := range []string{"36 kg", "1-3/8 in", "0,05 mm", "1e3 mm", "−0.04 mm", "٣ mm", "1 000", "5.", "-", "60 °C rise", "\xff", "9/0 in", "1-"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		runes := len([]rune(s))
		if _, _, err := ParseRange(s); err != nil {
			inside(t, err, runes)
		}
		q, err := ParseQuantity(s)
		if err != nil {
			inside(t, err, runes)
			return
		}
		if back, err := ParseQuantity(q.Text()); err != nil || back.Text() != q.Text() {
			t.Errorf("%q became %q, %v", s, q.Text(), err)
		}
	})
}

func inside(t *testing.T, err error, runes int) {
	var f *Fault
	if !errors.As(err, &f) || f.Offset < 0 || f.Width < 0 || f.Offset+f.Width > runes || f.Message == "" {
		t.Errorf("fault out of place: %+v in %d runes", err, runes)
	}
}

// A unit under another name was answered with a list of all, which is no help where it is one of
// them. Factors: NIST Special Publication 811, appendix B.
func TestWhatToWriteForAnotherName(t *testing.T) {
	for word, want := range map[string]string{"RPM": "rpm", "l/s": "l/min", "kg/cm2": "bar", "hPa": "mbar", "m3/min": "m3/h"} {
		if write, say := UnitHint(word); write != want || say == "" {
			t.Errorf("%s: write %q: %s", word, write, say)
		}
		if q, err := ParseQuantity("1 " + want); err != nil {
			t.Errorf("%s is told to be written and not read: %v %v", want, q, err)
		}
	}
}
