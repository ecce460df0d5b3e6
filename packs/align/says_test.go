package align

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/units"
)

// Whoever worked a rim and face alignment out came back, four lines below the moves, to the
// figures above them. Where the limits judge what the dials read, those lines come to what
// Judge works out, and there are no others.
func TestRimAndFaceAreJudgedByThemselves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := func(label string, low, high int64) *units.Quantity {
			n := units.Whole(rapid.Int64Range(low, high).Draw(t, label)).Quo(units.Whole(100))
			return &units.Quantity{Number: units.Exact(n.Rat(), 2), Unit: units.Millimetre}
		}
		near, face := rapid.Int64Range(5000, 90000).Draw(t, "near"), mm("face", 5000, 40000)
		s := Setup{
			Method: RimFace, Unit: units.Millimetre, Reads: mm("reads", 1, 1), FaceDiameter: face, Sag: mm("sag", 0, 20), DialsOn: Stationary,
			Feet: []Foot{{Name: "front", At: mm("front", near, near)}, {Name: "rear", At: mm("rear", near+1000, near+90000)}},
		}
		if rapid.Bool().Draw(t, "dials on the movable") {
			s.DialsOn = Movable
		}
		readings := map[Reading]units.Quantity{}
		for _, d := range s.Dials() {
			for _, c := range []Clock{Top, Right, Bottom, Left} {
				readings[Reading{d, c}] = *mm("reading", -80, 80)
			}
		}
		nought := units.Quantity{Number: units.Whole(0), Unit: units.Millimetre}
		l := Limits{Source: "sheet", Speed: 1000, At: &nought, Over: face, Rows: []LimitRow{{UpTo: 1500, Offset: *mm("offset", 5, 10), Angle: *mm("angle", 5, 10)}}}
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
		seen := 0
		for i, r := range all.Rungs {
			is := map[RungCode]units.Number{OffsetUp: want.OffsetUp, OffsetRight: want.OffsetRight, FaceUp: want.AngleUp, FaceRight: want.AngleRight}
			if v, ok := is[r.Code]; ok {
				seen++
				if all.Values[i].Abs().Cmp(v.Abs()) != 0 {
					t.Errorf("line %d comes to %s, Judge to %s", i, all.Values[i].Text(), v.Text())
				}
			}
			if r.Code >= AngleUp {
				t.Errorf("line %d works a reading back", i)
			}
		}
		if seen != 4 {
			t.Errorf("%d lines are judged, want 4", seen)
		}
		// At another place, or on another length, the lines are there.
		l.Over = mm("other length", 40100, 50000)
		if more, err := s.LadderTo(l); err != nil || len(more) != len(ladder)+4 {
			t.Errorf("on another length %d lines, want %d: %v", len(more), len(ladder)+4, err)
		}
	})
}
