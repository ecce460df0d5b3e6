package align_test

import (
	"errors"
	"strings"
	"testing"

	"matchmark/packs/align"
	"matchmark/packs/units"
)

// A pump that rises 10 mil evenly and a motor that rises 4 and 2: the motor is set 6 and
// 8 mil high. By hand.
func TestGrowthIsMetCold(t *testing.T) {
	s := rimFace(t)
	g := align.Growth{Stationary: []align.Support{{At: *q(t, "-8 in"), Rise: *q(t, "10 mil")}}, Movable: []units.Quantity{*q(t, "4 mil"), *q(t, "2 mil")}, Source: "maker"}
	target, err := g.Target(s)
	if err != nil || target.Up[0].Number.Text() != "6" || target.Up[1].Number.Text() != "8" {
		t.Fatalf("target %+v, %v", target, err)
	}
	s.Target = target
	still := turned{align.Rim: {"0", "0", "0", "0"}, align.Face: {"0", "0", "0", "0"}}
	res := work(t, s, still.readings(t, "mil"))
	if res.Moves[0].Up.Text() != "6" || res.Moves[1].Up.Text() != "8" || res.Moves[1].Right.Sign() != 0 {
		t.Errorf("moves %+v", res.Moves)
	}
	// Supports at -20 and -8 in that rise 4 and 10 mil: at 12 in the line is at 20 mil.
	g.Stationary = []align.Support{{At: *q(t, "-20 in"), Rise: *q(t, "4 mil")}, {At: *q(t, "-8 in"), Rise: *q(t, "10 mil")}}
	if target, err = g.Target(s); err != nil || target.Up[0].Number.Text() != "16" {
		t.Errorf("target %+v, %v", target, err)
	}
}

func TestLimitsOfTheSource(t *testing.T) {
	s := rimFace(t)
	l := align.Limits{Source: "maker's sheet 12", Speed: 1480, At: q(t, "0 in"), Over: q(t, "1 in"), Rows: []align.LimitRow{
		{UpTo: 1000, Offset: *q(t, "4 mil"), Angle: *q(t, "1.0 mil")}, {UpTo: 1800, Offset: *q(t, "3 mil"), Angle: *q(t, "0.7 mil")},
	}}
	for _, c := range []struct {
		bottom, face string
		in           bool
	}{{"6", "0", true}, {"6.5", "0", false}, {"-6", "7", true}, {"0", "7.5", false}} {
		r := turned{align.Rim: {"0", "0", c.bottom, c.bottom}, align.Face: {"0", "0", c.face, c.face}}
		// Left takes the bottom's reading so that the dials close; the other direction is judged as well.
		res := work(t, s, r.readings(t, "mil"))
		j, err := s.Judge(res, l)
		if err != nil || j.In() != c.in || j.Row.UpTo != 1800 {
			t.Errorf("rim %s, face %s: %+v, %v; want in %v", c.bottom, c.face, j, err, c.in)
		}
	}
	for field, spoil := range map[string]func(*align.Limits){
		"limits.source":       func(l *align.Limits) { l.Source = "" },
		"limits.speed":        func(l *align.Limits) { l.Speed = 0 },
		"limits.rows":         func(l *align.Limits) { l.Speed = 3600 },
		"limits.rows[1].upto": func(l *align.Limits) { l.Rows = []align.LimitRow{l.Rows[1], l.Rows[0]} },
		"limits.at":           func(l *align.Limits) { l.At = nil },
		"limits.over":         func(l *align.Limits) { l.Over = q(t, "0 in") },
		"limits.offset":       func(l *align.Limits) { l.Rows = []align.LimitRow{{UpTo: 1800, Angle: *q(t, "1 mil")}} },
	} {
		bad := l
		spoil(&bad)
		_, err := s.Judge(align.Result{}, bad)
		names(t, err, field)
	}
}

// names sees that an error is about a field.
func names(t *testing.T, err error, field string) {
	t.Helper()
	var rs align.Refusals
	if !errors.As(err, &rs) {
		t.Errorf("%s: not refused: %v", field, err)
		return
	}
	for _, r := range rs {
		if r.Field == field && r.Message != "" && !strings.Contains(r.Error(), "%!") {
			return
		}
	}
	t.Errorf("refused as %v, want the field %s", rs, field)
}

func TestRefusals(t *testing.T) {
	for field, spoil := range map[string]func(*align.Setup){
		"unit":         func(s *align.Setup) { s.Unit = units.Bar },
		"reads":        func(s *align.Setup) { s.Reads = nil },
		"dialson":      func(s *align.Setup) { s.DialsOn = 0 },
		"facediameter": func(s *align.Setup) { s.FaceDiameter = nil },
		"method":       func(s *align.Setup) { s.Method = 0 },
		"span":         func(s *align.Setup) { s.Method = align.ReverseDials },
		"sagother":     func(s *align.Setup) { s.Method = align.ReverseDials },
		"sag":          func(s *align.Setup) { s.Sag = nil },
		"feet":         func(s *align.Setup) { s.Feet = s.Feet[:1] },
		"feet[1].at":   func(s *align.Setup) { s.Feet[1].At = s.Feet[0].At },
		"feet[0].at":   func(s *align.Setup) { s.Feet[0].At = q(t, "12 bar") },
		"target.up":    func(s *align.Setup) { s.Target = &align.Target{Up: []units.Quantity{*q(t, "3 mil")}, Source: "maker"} },
		"target.source": func(s *align.Setup) {
			s.Target = &align.Target{Up: []units.Quantity{*q(t, "3 mil"), *q(t, "3 mil")}}
		},
	} {
		s := rimFace(t)
		spoil(&s)
		_, err := s.Ladder()
		names(t, err, field)
		_, err = s.Work(nil)
		names(t, err, field)
	}
	s := rimFace(t)
	s.Sag = q(t, "-3 mil")
	_, err := s.Ladder()
	names(t, err, "sag")
	r := turned{align.Rim: {"0", "4", "10", "4.5"}, align.Face: {"0", "1", "2", "1"}}.readings(t, "mil")
	delete(r, align.Reading{Dial: align.Rim, At: align.Left})
	r[align.Reading{Dial: align.Face, At: align.Bottom}] = *q(t, "2 N·m")
	_, err = rimFace(t).Work(r)
	names(t, err, "readings.rim.left")
	names(t, err, "readings.face.bottom")
	for _, c := range [][2]string{{"20 bar", "40 C rise"}, {"20 in", "40 °C"}} {
		if _, err := align.RiseOf(*q(t, c[0]), num(t, "12"), *q(t, c[1])); err == nil {
			t.Errorf("%v: a growth without sense", c)
		}
	}
	if _, err := align.RiseOf(*q(t, "20 in"), num(t, "120"), *q(t, "40 C rise")); err == nil {
		t.Error("an expansion with a slipped point")
	}
}

// Soft foot: common practice, no source; 0.002 in is API RP 686, from memory.
func TestSoftFoot(t *testing.T) {
	feet := func(rises ...string) []align.FootRise {
		var out []align.FootRise
		for i, r := range rises {
			out = append(out, align.FootRise{Name: string(rune('A' + i)), Rise: *q(t, r+" in")})
		}
		return out
	}
	limit := *q(t, "0.002 in")
	for _, c := range []struct {
		rises    []string
		over     int
		worst    int
		diagonal bool
	}{
		{[]string{"0.001", "0.002", "0.001", "0.000"}, 0, 1, false},
		{[]string{"0.006", "0.001", "0.005", "0.001"}, 2, 0, true},
		{[]string{"0.001", "0.007", "0.006", "0.001"}, 2, 1, false},
		{[]string{"0.001", "0.007", "0.001", "0.001"}, 1, 1, false},
	} {
		got, err := align.SoftFoot(feet(c.rises...), limit, "API RP 686")
		if err != nil || len(got.Over) != c.over || got.Worst != c.worst || got.Diagonal != c.diagonal {
			t.Errorf("%v: %+v, %v", c.rises, got, err)
		}
	}
	_, err := align.SoftFoot(feet("0.001", "0.002", "-0.001", "0.000"), limit, "")
	names(t, err, "feet[2].rise")
	names(t, err, "limit.source")
	_, err = align.SoftFoot(feet("0.001"), *q(t, "0 in"), "maker")
	names(t, err, "feet")
	names(t, err, "limit")
}
