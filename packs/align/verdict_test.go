package align

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/units"
)

// The lines that a person works out on paper come to what Judge works out by another
// way, from the line through the moves.
func TestTheLinesOfAVerdictComeToTheJudgement(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := func(label string, low, high int64) *units.Quantity {
			n := units.Whole(rapid.Int64Range(low, high).Draw(t, label)).Quo(units.Whole(100))
			return &units.Quantity{Number: units.Exact(n.Rat(), 2), Unit: units.Millimetre}
		}
		near := rapid.Int64Range(5000, 90000).Draw(t, "near")
		s := Setup{
			Method: ReverseDials, Unit: units.Millimetre, Reads: mm("reads", 1, 1), Span: mm("span", 5000, 50000), Sag: mm("sag", 0, 20), SagOther: mm("other sag", 0, 20),
			Feet: []Foot{{Name: "front", At: mm("front", near, near)}, {Name: "rear", At: mm("rear", near+1000, near+90000)}},
		}
		readings := map[Reading]units.Quantity{}
		for _, d := range s.Dials() {
			for _, c := range []Clock{Top, Right, Bottom, Left} {
				readings[Reading{d, c}] = *mm("reading", -80, 80)
			}
		}
		l := Limits{Source: "sheet", Speed: 1000, At: mm("at", -10000, 10000), Over: mm("over", 2500, 20000), Rows: []LimitRow{{UpTo: 1500, Offset: *mm("offset", 5, 10), Angle: *mm("angle", 5, 10)}}}
		res, err := s.Work(readings)
		if err != nil {
			t.Fatal(err)
		}
		want, err := s.Judge(res, l)
		if err != nil {
			t.Fatal(err)
		}
		ladder, err := s.LadderTo(l)
		if err != nil {
			t.Fatal(err)
		}
		all := res.Extended(ladder)
		for i, r := range all.Rungs {
			is := map[RungCode]units.Number{AngleUp: want.AngleUp, AngleRight: want.AngleRight, OffsetAtUp: want.OffsetUp, OffsetAtRight: want.OffsetRight}
			if v, ok := is[r.Code]; ok && all.Values[i].Cmp(v) != 0 {
				t.Errorf("line %d comes to %s, Judge to %s", i, all.Values[i].Text(), v.Text())
			}
		}
	})
}
