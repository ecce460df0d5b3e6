package joint_test

import (
	"math"
	"testing"

	"matchmark/packs/joint"
)

// stages reads stages as they stand in a definition, enough of them for the tests.
func stages(t tester, list ...string) []joint.Stage {
	var out []joint.Stage
	for _, s := range list {
		switch {
		case s == "by hand":
			out = append(out, joint.Stage{Kind: joint.ByHand})
		case s == "slacken all":
			out = append(out, joint.Stage{Kind: joint.SlackenAll})
		case s == "last round":
			out = append(out, joint.Stage{Kind: joint.LastRound})
		case s == "again after running":
			out = append(out, joint.Stage{Kind: joint.AgainRunning})
		case len(s) > 12 && s[:12] == "again after ":
			h := q(t, s[12:])
			out = append(out, joint.Stage{Kind: joint.AgainAfter, Hours: &h})
		case len(s) > 5 && s[:5] == "turn ":
			x := q(t, s[5:])
			out = append(out, joint.Stage{Kind: joint.Turn, Angle: &x})
		default:
			out = append(out, joint.Stage{Kind: joint.Tighten, Setting: set(t, s)})
		}
	}
	return out
}

func TestRounds(t *testing.T) {
	s := base(t)
	s.Stages = stages(t, "by hand", "60 N·m", "70 %", "190 N·m", "slacken all", "100 N·m", "190 N·m", "last round", "again after 24 h", "again after running")
	r := compute(t, s)
	want := []struct {
		way    joint.Way
		share  float64
		repeat int
	}{
		{joint.InPattern, 0, 0}, {joint.InPattern, 60.0 / 190, 0}, {joint.InPattern, 0.7, 0}, {joint.InPattern, 1, 0}, {joint.Backward, 0, 0},
		{joint.InPattern, 100.0 / 190, 1}, {joint.InPattern, 1, 1}, {joint.Around, 1, 1}, {joint.InPattern, 1, 1}, {joint.InPattern, 1, 1},
	}
	if len(r.Rounds) != len(want) {
		t.Fatalf("%d rounds, want %d", len(r.Rounds), len(want))
	}
	for i, w := range want {
		got := r.Rounds[i]
		if got.Way != w.way || math.Abs(float64(got.Share)-w.share) > 1e-9 || got.Repeat != w.repeat {
			t.Errorf("round %d: %+v, want %+v", i, got, w)
		}
	}
	if got := r.Rounds[2].Setting.Text(); got != "133 N·m" {
		t.Errorf("70 %% of 190 N·m is %s", got)
	}
	// Stress goes with the torque: 60 of 190 N·m.
	if got := float64(r.Rounds[1].Stress); math.Abs(got-float64(r.Share)*60/190) > 1e-9 {
		t.Errorf("stress of the first stage %g", got)
	}
}

// Rod bolts: a torque, then an angle. 30° of M12 with 1.75 mm move the nut by 0.1458 mm
// (geometry).
func TestAngleStage(t *testing.T) {
	s := base(t)
	s.Thread, s.Torque, s.Stages = parse(t, "M12"), set(t, "65 N·m"), stages(t, "40 N·m", "65 N·m", "turn 30°")
	r := compute(t, s)
	last := r.Rounds[2]
	if last.Angle != 30 || math.Abs(float64(last.Travel)-1.75/12) > 1e-9 || last.Stress != 0 {
		t.Errorf("the angle is %+v", last)
	}
	found := false
	for _, c := range r.Cautions {
		found = found || c.Code == joint.AngleGoverns
	}
	if !found {
		t.Error("the preload of the torque is told as that of the angle")
	}
	s.Stages = stages(t, "40 N·m", "65 N·m", "turn 1/12 turn")
	if again := compute(t, s).Rounds[2]; again.Angle != last.Angle {
		t.Errorf("1/12 turn is %g°", again.Angle)
	}
}

func TestStagesRefused(t *testing.T) {
	for _, c := range []struct {
		what, field string
		list        []string
	}{
		{"stages that fall", "stages[1]", []string{"130 N·m", "60 N·m", "190 N·m"}},
		{"stages that end below the torque", "stages", []string{"60 N·m", "130 N·m"}},
		{"stages that go over the torque", "stages", []string{"60 N·m", "200 N·m"}},
		{"a pressure among torques", "stages[0]", []string{"60 bar", "190 N·m"}},
		{"an angle first", "stages[0]", []string{"turn 30°", "190 N·m"}},
		{"slack at the end", "stages", []string{"190 N·m", "slacken all"}},
		{"slackened before anything", "stages[0]", []string{"slacken all", "190 N·m"}},
		{"by hand after a torque", "stages[1]", []string{"60 N·m", "by hand", "190 N·m"}},
		{"a last round of nothing", "stages[0]", []string{"last round", "190 N·m"}},
		{"again after a length", "stages[1]", []string{"190 N·m", "again after 24 mm"}},
		{"four turns", "stages[1]", []string{"190 N·m", "turn 4 turns"}},
		{"a length", "stages[0]", []string{"30 mm", "190 N·m"}},
	} {
		s := base(t)
		s.Stages = stages(t, c.list...)
		refused(t, c.what, s, c.field)
	}
	s := base(t)
	s.Stages = []joint.Stage{{Kind: joint.Tighten}, {Kind: joint.Turn}, {Kind: joint.AgainAfter}, {Kind: 99}}
	refused(t, "a stage without a torque", s, "stages[0]")
	refused(t, "a turn without an angle", s, "stages[1]")
	refused(t, "a stage of no kind", s, "stages[3]")
}

// The published plans end at the torque and can be gone through.
func TestPlans(t *testing.T) {
	if len(joint.PlanNames()) < 3 {
		t.Errorf("plans %v", joint.PlanNames())
	}
	for _, name := range joint.PlanNames() {
		p, ok := joint.PlanNamed(name)
		if !ok || p.Source == "" {
			t.Errorf("plan %s: %+v", name, p)
		}
		s := base(t)
		s.Stages = p.Stages
		r := compute(t, s)
		last := joint.Ratio(0)
		for _, round := range r.Rounds {
			if round.Kind == joint.Tighten {
				if round.Share < last {
					t.Errorf("plan %s falls", name)
				}
				last = round.Share
			}
		}
		if last != 1 {
			t.Errorf("plan %s ends at %g", name, last)
		}
	}
	if _, ok := joint.PlanNamed("quick"); ok {
		t.Error("a plan of any name is known")
	}
}
