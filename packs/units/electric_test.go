package units

import (
	"strings"
	"testing"
)

// TestUnitsThatLookAlike: the signs of a resistance are read by the size of their letter, and
// what leaves it open which is meant is refused with both.
func TestUnitsThatLookAlike(t *testing.T) {
	for typed, want := range map[string]Unit{"5 mΩ": Milliohm, "5 MΩ": Megohm, "5 megohm": Megohm, "5 milliohm": Milliohm, "5 \u2126": Ohm, "5 mA": Milliampere, "5 A": Ampere,
		"5 V": Volt, "5 drops/min": DropPerMinute, "5 US gal/min": GallonPerMinute, "5 US gal": Gallon, "5 mm/m": MillimetrePerMetre, "5 mm2/s": SquareMillimetrePerSecond, "200 HBW": HB,
		"60 Shore A": ShoreA, "3 l": Litre, "3 l/min": LitrePerMinute, "10 m/s": MetrePerSecond, "10 m/s²": MetrePerSecondSquared} {
		q, err := ParseQuantity(typed)
		if err != nil || q.Unit != want {
			t.Errorf("%s: %v %v, want %s", typed, q.Unit.Text(), err, want.Text())
		}
	}
	for _, typed := range []string{"5 Mohm", "5 mohm", "5 MOhm"} {
		_, err := ParseQuantity(typed)
		if err == nil || !strings.Contains(err.Error(), "milliohm or megohm?") {
			t.Errorf("%s: %v", typed, err)
		}
	}
}

// TestUnitsAreToldApart: no two units have one spelling, typed or printed on one paper, but the
// degrees of a rise and of a temperature; each is read back as it is typed and as it is printed.
func TestUnitsAreToldApart(t *testing.T) {
	printed := map[string]Unit{}
	for i := 1; i < len(spellings); i++ {
		u := Unit(i)
		for _, text := range []string{u.Text(), u.Print()} {
			if got, width := LeadingUnit(text); width != len([]rune(text)) || got != u && got.Dimension().String() != "temperature" {
				t.Errorf("%q is read as %q", text, got.Text())
			}
		}
		if v, twice := printed[u.Print()]; twice && v.Dimension() != Temperature {
			t.Errorf("%s and %s both print %s", v.Text(), u.Text(), u.Print())
		}
		printed[u.Print()] = u
		if u.Dimension().String() == "" {
			t.Errorf("%s measures nothing", u.Text())
		}
		if u.factor().Sign() <= 0 {
			t.Errorf("%s has no size", u.Text())
		}
	}
}

// TestHelpIsNoThousandOff: a unit with a prefix that is not read was helped to the unit without it,
// which is a thousand times as much. The prefixes are those of the SI.
func TestHelpIsNoThousandOff(t *testing.T) {
	for typed, want := range map[string]string{"5 mW": "kW", "5 mN": "kN", "5 Mmm": "in", "5 Mbar": "MPa", "5 Mrpm": "rpm"} {
		_, err := ParseQuantity(typed)
		f, ok := err.(*Fault)
		if !ok || !strings.HasPrefix(strings.Join(f.Help, ""), "one of: ") || !strings.Contains(f.Help[0], want) {
			t.Errorf("%s: %v, want the units of its kind", typed, err)
		}
	}
}
