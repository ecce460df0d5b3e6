package align_test

import (
	"os"
	"strings"
	"testing"

	"matchmark/packs/align"
	"matchmark/packs/units"
)

type tester interface {
	Helper()
	Fatal(...any)
	Fatalf(string, ...any)
}

func q(t tester, s string) *units.Quantity {
	t.Helper()
	x, err := units.ParseQuantity(s)
	if err != nil {
		t.Fatal(err)
	}
	return &x
}

func num(t tester, s string) units.Number {
	t.Helper()
	x, err := units.ParseNumber(s)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// turned reads all dials: the values of top, right, bottom and left of each.
type turned map[align.Dial][4]string

func (r turned) readings(t tester, unit string) map[align.Reading]units.Quantity {
	out := map[align.Reading]units.Quantity{}
	for d, four := range r {
		for i, at := range []align.Clock{align.Top, align.Right, align.Bottom, align.Left} {
			out[align.Reading{Dial: d, At: at}] = *q(t, four[i]+" "+unit)
		}
	}
	return out
}

// reverse is a pair of dials on shafts 14 in apart, feet at 26 and 52 in.
func reverse(t tester) align.Setup {
	return align.Setup{
		Method: align.ReverseDials, Unit: units.Inch, Reads: q(t, "0.0005 in"), Span: q(t, "14 in"), Sag: q(t, "0 in"), SagOther: q(t, "0 in"),
		Feet: []align.Foot{{Name: "front", At: q(t, "26 in")}, {Name: "rear", At: q(t, "52 in")}},
	}
}

// rimFace is the set-up of the formula sheet: dials on the stationary hub.
func rimFace(t tester) align.Setup {
	return align.Setup{
		Method: align.RimFace, Unit: units.Mil, Reads: q(t, "0.5 mil"), DialsOn: align.Stationary, FaceDiameter: q(t, "10 in"), Sag: q(t, "0 mil"),
		Feet: []align.Foot{{Name: "front", At: q(t, "12 in")}, {Name: "rear", At: q(t, "30 in")}},
	}
}

func work(t tester, s align.Setup, r map[align.Reading]units.Quantity) align.Result {
	t.Helper()
	res, err := s.Work(r)
	if err != nil {
		t.Fatal(err)
	}
	return res
}

func times(n units.Number, k int64) string { return n.Mul(units.Whole(k)).Text() }

func TestAgainstOutsideValues(t *testing.T) {
	data, err := os.ReadFile("../../testdata/outside/align.txt")
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(string(data), "\n") {
		f := strings.Split(line, " | ")
		if len(f) != 8 || strings.HasPrefix(line, "#") {
			continue
		}
		in := strings.Split(f[2], "; ")
		var got []units.Number
		switch f[1] {
		case "reverse up", "reverse right":
			s := reverse(t)
			s.Feet = []align.Foot{{Name: "near", At: q(t, "1 in")}, {Name: "foot", At: q(t, in[3]+" in")}}
			s.Span = q(t, in[2]+" in")
			// On the stationary hub the dial shows twice the offset at the bottom (left),
			// on the movable hub twice the offset with its sign turned round.
			st, mv := times(num(t, in[0]), 2), times(num(t, in[1]), -2)
			if f[1] == "reverse up" {
				r := turned{align.OnStationary: {"0", "0", st, st}, align.OnMovable: {"0", "0", mv, mv}}
				got = append(got, work(t, s, r.readings(t, "in")).Moves[1].Up)
			} else {
				r := turned{align.OnStationary: {"0", "0", st, st}, align.OnMovable: {"0", "0", mv, mv}}
				got = append(got, work(t, s, r.readings(t, "in")).Moves[1].Right)
			}
		case "rim and face":
			s := rimFace(t)
			s.FaceDiameter = q(t, in[2]+" mil")
			s.Feet[0].At, s.Feet[1].At = q(t, in[3]+" mil"), q(t, in[4]+" mil")
			r := turned{align.Rim: {"0", "0", in[1], in[1]}, align.Face: {"0", "0", in[0], in[0]}}
			res := work(t, s, r.readings(t, "mil"))
			got = append(got, res.Moves[0].Up, res.Moves[1].Up)
		case "sag":
			got = append(got, sagOut(t, in)...)
		case "offset of run-out":
			got = append(got, align.OffsetOf(*q(t, in[0]+" mil")).Number)
		case "growth":
			g, err := align.RiseOf(*q(t, in[0]+" in"), num(t, in[1]), *q(t, in[2]+" F rise"))
			if err != nil {
				t.Fatal(err)
			}
			got = append(got, g.Number)
		default:
			t.Errorf("%s: a row of kind %q is not used", f[0], f[1])
		}
		for i, w := range strings.Split(f[3], "/") {
			if got[i].Sub(num(t, w)).Abs().Cmp(num(t, f[4])) > 0 {
				t.Errorf("%s %s %v: got %s, want %s ± %s %s\nsource (%s): %s", f[0], f[1], in, got[i].Round(6, units.Nearest).Text(), w, f[4], f[5], f[6], f[7])
			}
		}
	}
}

// The ladder without readings has the same lines as the one that is filled in, and every
// line stands on lines above it.
func TestLadderStandsAlone(t *testing.T) {
	for _, s := range []align.Setup{reverse(t), rimFace(t)} {
		rungs, err := s.Ladder()
		if err != nil {
			t.Fatal(err)
		}
		moves := 0
		for i, r := range rungs {
			if r.Code == align.MoveUp || r.Code == align.MoveRight {
				moves++
			}
			for _, term := range r.Terms {
				if term.Rung >= i || term.Over.Sign() <= 0 {
					t.Errorf("line %d takes line %d over %s", i, term.Rung, term.Over.Text())
				}
			}
		}
		if moves != 2*len(s.Feet) {
			t.Errorf("%d moves for %d planes of feet", moves, len(s.Feet))
		}
	}
}

// A dial that was bumped: top and bottom are not left and right. 1.5 mil are 3 of its steps.
func TestReadingsThatDoNotClose(t *testing.T) {
	r := turned{align.Rim: {"0", "4", "10", "4.5"}, align.Face: {"0", "1", "2", "1"}}
	res := work(t, rimFace(t), r.readings(t, "mil"))
	if c := res.Checks[0]; c.Sum.Text() != "1.5" || c.Steps != 3 {
		t.Errorf("the rim dial: %+v", c)
	}
	if c := res.Checks[1]; c.Sum.Sign() != 0 || c.Steps != 0 {
		t.Errorf("the face dial: %+v", c)
	}
}

// sagOut takes the sag out of a bottom and a side reading, and sees that the ladder does the
// same.
func sagOut(t *testing.T, in []string) []units.Number {
	t.Helper()
	var got []units.Number
	for i, at := range []align.Clock{align.Bottom, align.Left} {
		c, err := align.CorrectSag(*q(t, in[i]+" mil"), *q(t, in[2]+" mil"), at)
		if err != nil {
			t.Fatal(err)
		}
		got = append(got, c.Number)
	}
	// The ladder does the same with the bottom.
	s := rimFace(t)
	s.Sag = q(t, in[2]+" mil")
	r := turned{align.Rim: {"0", in[1], in[0], in[1]}, align.Face: {"0", "0", "0", "0"}}
	if v := work(t, s, r.readings(t, "mil")).Values[0]; v.Cmp(got[0]) != 0 {
		t.Errorf("%v: the ladder has %s at the bottom", in, v.Text())
	}
	return got
}
