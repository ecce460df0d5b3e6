package reading

import (
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/units"
)

// TestLimitsAgainstOutsideValues works published limits out from readings, and rounds
// limits that change their unit.
func TestLimitsAgainstOutsideValues(t *testing.T) {
	data, err := os.ReadFile("../../testdata/outside/readings.txt")
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(string(data), "\n") {
		f := strings.Split(line, " | ")
		if len(f) != 8 || strings.HasPrefix(line, "#") {
			continue
		}
		in := strings.Split(f[2], " ; ")
		env := Env{Readings: told(t, in[1:])}
		var got []units.Number
		switch f[1] {
		case "highest":
			j := limit(t, in[0]).Judge([]*units.Quantity{ptr(size(t, "0 in"))}, env)
			if j.Verdict != In || j.Findings[0].High == nil {
				t.Errorf("%s: %+v", f[0], j)
				continue
			}
			got = append(got, j.Findings[0].High.Number)
		case "formula":
			v, fault := ParseFormula(in[0])
			if fault != nil {
				t.Errorf("%s: %s", f[0], fault.Message)
				continue
			}
			if q, err := v.Work(env); err == nil {
				got = append(got, q.Number)
			}
		case "inward", "nearest":
			down, up := units.Down, units.Up
			if f[1] == "nearest" {
				down, up = units.Nearest, units.Nearest
			}
			low, high, _ := limit(t, in[0]).Tests[0].Limits()
			got = append(got, inches(t, *high).Round(3, down), inches(t, *low).Round(3, up))
		case "steps":
			band, ok := limit(t, in[0]).Band()
			if !ok {
				t.Errorf("%s: no band", f[0])
				continue
			}
			got = append(got, band.Number.Quo(size(t, in[1]).Number))
		case "intrusion":
			neverPasses(t, in[0], size(t, f[3]+" %").Number)
			continue
		default:
			t.Errorf("%s: a row of kind %q is not used", f[0], f[1])
		}
		for i, w := range strings.Split(f[3], "/") {
			want, within := size(t, w+" in").Number, size(t, f[5]+" in").Number
			if i >= len(got) || got[i].Sub(want).Abs().Cmp(within) > 0 {
				t.Errorf("%s %s: got %v, want %s ± %s %s\nsource (%s): %s", f[0], f[2], got, w, f[5], f[4], f[6], f[7])
			}
		}
	}
}

// told looks readings up that stand in a row as "D1 4 in".
func told(t testing.TB, rows []string) func(Mark) []*units.Quantity {
	return func(m Mark) []*units.Quantity {
		for _, r := range rows {
			if text, ok := strings.CutPrefix(r, string(m)+" "); ok {
				return []*units.Quantity{ptr(size(t, text))}
			}
		}
		return nil
	}
}

func inches(t testing.TB, q units.Quantity) units.Number {
	t.Helper()
	c, err := q.Convert(units.Inch)
	if err != nil {
		t.Fatal(err)
	}
	return c.Number
}

// neverPasses sees that limits rounded inward never pass the limit, which is less than
// the share of the tolerance that the standard lets pass.
func neverPasses(t *testing.T, way string, most units.Number) {
	from, to := units.Millimetre, units.Inch
	if strings.HasPrefix(way, "in") {
		from, to = to, from
	}
	rapid.Check(t, func(t *rapid.T) {
		low := units.Exact(units.Whole(int64(rapid.IntRange(1, 200000).Draw(t, "low"))).Quo(units.Whole(1000)).Rat(), 3)
		band := units.Exact(units.Whole(int64(rapid.IntRange(20, 2000).Draw(t, "band"))).Quo(units.Whole(1000)).Rat(), 3)
		for _, end := range []struct {
			n   units.Number
			how units.Rounding
			up  int
		}{{low, units.Up, 1}, {low.Add(band), units.Down, -1}} {
			c, err := quantity(end.n, from).Convert(to)
			if err != nil {
				t.Fatal(err)
			}
			back, err := c.Round(4, end.how).Convert(from)
			if err != nil {
				t.Fatal(err)
			}
			inward := back.Number.Sub(end.n)
			if end.up < 0 {
				inward = inward.Neg()
			}
			if past := inward.Neg().Mul(units.Whole(100)).Quo(band); inward.Sign() < 0 || past.Cmp(most) > 0 {
				t.Fatalf("%s in %s is %s: %s %% of the tolerance past it", quantity(end.n, from).Text(), to.Text(), c.Text(), past.Text())
			}
		}
	})
}
