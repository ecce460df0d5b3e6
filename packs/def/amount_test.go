package def

import (
	"strings"
	"testing"

	"matchmark/packs/source"
)

// TestEveryAmountIsBounded: "hours: 0" and "reads: -1 bar" were taken in silence. Each key of the
// table that takes a number is tried with nothing, with less, and with a slipped unit; what has
// no sense there is told at its place.
func TestEveryAmountIsBounded(t *testing.T) {
	tried, seen := 0, map[*entry]bool{}
	for _, s := range shapes() {
		for _, e := range s.entries() {
			whole := e.form == numberForm || e.form == varyingCountForm
			if seen[e] || !whole && !e.takesAmount() {
				continue
			}
			seen[e], tried = true, tried+1
			first, _, _ := strings.Cut(strings.Trim(e.example, "[]"), ",")
			number := digits.FindString(first)
			unit := strings.TrimPrefix(first, number)
			hot := strings.HasSuffix(unit, "°C")
			for _, x := range []struct {
				value string
				told  bool
			}{
				{first, false}, {number + unit, false},
				{"0" + unit, whole || !hot && e.least == overNone},
				{"0.0" + unit, whole || !hot && e.least == overNone},
				{"-1" + unit, whole || !hot && e.least != anyAmount || e.form == decimalForm},
				{"-0.5" + unit, whole || !hot && e.least != anyAmount || e.form == decimalForm},
				{"1000000000000" + unit, whole || unit != ""},
				{"0.0000000000001" + unit, whole || unit != "" && !hot},
				{"NaN", whole || e.form == decimalForm},
				{"some", whole || e.form == decimalForm},
			} {
				r := &reader{}
				r.check(e, source.Text{Value: x.value, At: source.Pos{File: "a.yaml", Line: 3, Col: 7, Width: len(x.value)}})
				if told := len(r.problems) > 0; told != x.told {
					t.Errorf("%s.%s: %s: told %v, want %v: %v", s.title(), e.name, x.value, told, x.told, r.problems)
				}
				for _, p := range r.problems {
					if p.Pos.Line != 3 || p.Pos.Col != 7 || p.Severity != source.Error && p.Code != "beyond-machines" {
						t.Errorf("%s.%s: %s is told at %v", s.title(), e.name, x.value, p.Pos)
					}
				}
			}
		}
	}
	if tried < 138 {
		t.Errorf("%d keys take a number; the table had more", tried)
	}
}

// Sizes that a store writes, steps of fine instruments and long coils were refused, and so was a
// step that takes no time. Common practice, no source.
func TestWhatIsWrittenBehindAmounts(t *testing.T) {
	t.Parallel()
	type row struct{ in, key, value, code string }
	var rows []row
	for _, size := range []string{
		"-214", "0000", "00", "0", "0 x 60", "0 gauge", "0 – 25 mm", "0 .. 25 mm", "0 bis 25 mm", "0 a 16 bar", "-1/0 bar", "-1 bis 0 bar", "-30 … 150 °C",
		"0 to 25 mm", "00000 mm", "1/2", "-40 °C", "0.0000000000001 mm", "000 kg", "0-10", "-6 AN", "20 t", "0 size", "№ 0",
	} {
		rows = append(rows, row{"thing to fetch", "size", size, ""})
	}
	rows = append(rows, row{"joint", "class", "8.8", ""}, row{"joint", "class", "0", ""}, row{"joint", "class", "-4", ""}, row{"joint", "class", "04", ""},
		row{"instrument", "reads", "0.01 s", ""}, row{"instrument", "reads", "0.01 g", ""}, row{"dimension", "nominal", "0.08 s", ""}, row{"instrument", "reads", "0.001 µm", ""},
		row{"instrument", "reads", "0.0005 l", ""}, row{"thing to fetch", "count", "2000 m", ""}, row{"instrument", "reads", "0.001 g", ""}, row{"instrument", "reads", "0.0001 mbar", ""},
		row{"instrument", "reads", "0.00001°", ""}, row{"thing to fetch", "count", "40000 m", ""}, row{"dimension", "nominal", "20000 h", ""}, row{"part", "mass", "6000 t", ""},
		row{"part", "mass", "0.05 g", ""}, row{"instrument", "reads", "0.1 Pa", ""}, row{"thing to fetch", "count", "0.2 l", ""}, row{"dimension", "nominal", "0.001 s", ""},
		row{"step", "hours", "0", ""}, row{"step", "back-hours", "0", ""}, row{"step", "hours", "0.0", ""}, row{"step", "hours", "-1", "less-than-none"}, row{"step", "back-hours", "-0.5", "less-than-none"},
		row{"layout of a joint", "first", "-15°", ""}, row{"layout of a joint", "first", "0°", ""}, row{"layout of a joint", "circle", "-15 mm", "less-than-none"},
		row{"part", "mass", "0 kg", "less-than-none"}, row{"instrument", "reads", "0 bar", "less-than-none"}, row{"instrument", "reads", "-0.1 bar", "less-than-none"},
		row{"part", "mass", "0.00000001 kg", "beyond-machines"}, row{"instrument", "reads", "20000000000 mm", "beyond-machines"}, row{"thing to fetch", "count", "2000000000 m", "beyond-machines"})
	keys := map[[2]string]*entry{}
	for _, s := range shapes() {
		for _, e := range s.entries() {
			keys[[2]string{s.title(), e.name}] = e
		}
	}
	for _, c := range rows {
		e := keys[[2]string{c.in, c.key}]
		if e == nil {
			t.Fatalf("no key %s of %s", c.key, c.in)
		}
		r := &reader{}
		r.check(e, source.Text{Value: c.value, At: source.Pos{File: "a.yaml", Line: 3, Col: 7, Width: len(c.value)}})
		got := ""
		for _, p := range r.problems {
			got += p.Code
			if warns := p.Severity == source.Warning; warns != (p.Code == "beyond-machines") {
				t.Errorf("%s: %s: a warning is %v", c.key, c.value, warns)
			}
			if _, unit, ok := strings.Cut(c.value, " "); ok && !strings.HasSuffix(p.Help[0], "… "+unit) {
				t.Errorf("%s: %s: the help %q has another unit", c.key, c.value, p.Help[0])
			}
		}
		if got != c.code {
			t.Errorf("%s: %s: told %q, want %q", c.key, c.value, got, c.code)
		}
	}
}
