package joint_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"matchmark/packs/joint"
	"matchmark/packs/units"
)

func set(t tester, s string) *joint.Setting {
	x := joint.Exactly(q(t, s))
	return &x
}

// base is a joint with nothing to say against it.
func base(t tester) joint.Spec {
	scatter, _ := joint.ScatterOf("lubricated")
	return joint.Spec{Thread: parse(t, "M16"), Class: "8.8", Count: 12, Torque: set(t, "190 N·m"), Friction: nutFactor(t, "0.16"), Scatter: &scatter}
}

func codes(r joint.Result) []joint.CautionCode {
	var out []joint.CautionCode
	for _, c := range r.Cautions {
		out = append(out, c.Code)
	}
	return out
}

// What is told for paper, worked out here by another path: from the thread's own
// numbers, in kN and mm.
func TestToldFigures(t *testing.T) {
	r := compute(t, base(t))
	area := 157.0 // ISO 898-1, M16
	preload := 190 / (0.16 * 16.0)
	want := map[joint.ToldCode]string{
		joint.ToldArea:        "157 mm2",
		joint.ToldProofStress: "580 MPa",
		joint.ToldProofLoad:   "91.0 kN",
		joint.ToldPreload:     "74.2 kN", // 74.22
		joint.ToldPreloadLow:  "55.6 kN", // 55.66, down
		joint.ToldPreloadHigh: "92.8 kN", // 92.77, up
		joint.ToldClamp:       "667 kN",  // 667.97, down
		joint.ToldStress:      "473 MPa", // 472.7, up
		joint.ToldShare:       "81.6 %",  // 81.51, up
		joint.ToldStressHigh:  "591 MPa", // 590.9, up
		joint.ToldShareHigh:   "102 %",   // 101.9, up
	}
	for _, told := range r.Told() {
		if got := told.Value.Text(); got != want[told.Code] {
			t.Errorf("figure %d is %s, want %s", told.Code, got, want[told.Code])
		}
		delete(want, told.Code)
	}
	if len(want) > 0 {
		t.Errorf("not told: %v", want)
	}
	if math.Abs(float64(r.Preload.Aim)/1000-preload) > 1e-9 || math.Abs(float64(r.Stress)-preload*1000/area) > 1e-9 {
		t.Errorf("preload %g N and stress %g MPa, want %g kN and %g MPa", r.Preload.Aim, r.Stress, preload, preload*1000/area)
	}
	if !slices.Equal(codes(r), []joint.CautionCode{joint.ScatterOverProof}) {
		t.Errorf("cautions %v", r.Cautions)
	}
}

// A torque in pounds is told in pounds first.
func TestToldInPounds(t *testing.T) {
	s := base(t)
	s.Thread, s.Class = parse(t, "5/8-11"), "grade 5"
	pm := joint.PlusMinus(q(t, "90 lb-ft"), *n(t, "10"))
	s.Torque = &pm
	r := compute(t, s)
	// F = T/(K d) = 90 × 12/(0.16 × 0.625) = 10 800 lbf; stress at 100 lb-ft 12 000/0.226 = 53 100 psi.
	for _, told := range r.Told() {
		switch told.Code {
		case joint.ToldPreload:
			if told.Value.Text() != "10800 lbf" || told.Other.Text() != "48.0 kN" {
				t.Errorf("preload %s, %s", told.Value.Text(), told.Other.Text())
			}
		case joint.ToldStress:
			if told.Value.Text() != "53100 psi" && told.Value.Text() != "53200 psi" {
				t.Errorf("stress %s", told.Value.Text())
			}
		}
	}
	if pm.Text() != "90 +/- 10 lb-ft" {
		t.Errorf("the setting is told as %s", pm.Text())
	}
	// The lower end of a range stood a shade below it: 190 lb-ft are 257.6 N·m (1 lb-ft =
	// 1.355818 N·m, NIST SP 811, appendix B), and the sheet had 257.
	if o, ok := joint.OtherTorqueLeast(q(t, "190 lb-ft")); !ok || o.Text() != "258 N·m" {
		t.Errorf("190 lb-ft are at least %v %v, want 258 N·m", o, ok)
	}
	// A target was cut: 1450 N·m are 1069.5 lb-ft, and the sheet had 1060; 75 N·m are 55.32
	// (the same source). The upper end of a range is a bound, and stays below.
	for _, c := range [][2]string{{"90 lb-ft", "122 N·m"}, {"1450 N·m", "1070 lb-ft"}, {"75 N·m", "55.3 lb-ft"}, {"90 N·m", "66.4 lb-ft"}, {"400 N·m", "295 lb-ft"}} {
		if o, ok := joint.OtherTorque(q(t, c[0])); !ok || o.Text() != c[1] {
			t.Errorf("%s is %s, want %s", c[0], o.Text(), c[1])
		}
	}
	if o, ok := joint.OtherTorqueMost(q(t, "1450 N·m")); !ok || o.Text() != "1060 lb-ft" {
		t.Errorf("1450 N·m are at most %s", o.Text())
	}
}

// The tensioner of a large stud: 1150 bar on 5570 mm² are 640.55 kN (statics).
func TestTensioner(t *testing.T) {
	for _, torque := range []string{"1150 bar", "640.55 kN"} {
		s := joint.Spec{Thread: parse(t, "M39"), Class: "10.9", Count: 8, Torque: set(t, torque)}
		s.Tensioner = &joint.Tensioner{Area: q(t, "5570 mm2"), Retained: n(t, "80"), Source: "tensioner's sheet"}
		r := compute(t, s)
		if math.Abs(float64(r.Pull.Aim)-640550) > 1e-6 || math.Abs(float64(r.Preload.Aim)-0.8*640550) > 1e-6 {
			t.Errorf("%s: pull %g N, preload %g N", torque, r.Pull.Aim, r.Preload.Aim)
		}
		if math.Abs(float64(r.Stress)-640550.0/976) > 1e-6 {
			t.Errorf("%s: stress %g MPa, want that of the whole pull", torque, r.Stress)
		}
		if r.NutFactor != 0 || r.Torque != nil && r.Torque.Low.Unit == units.NewtonMetre {
			t.Errorf("%s: a tensioner has no torque", torque)
		}
		s.Tensioner.Retained = nil
		if !slices.Contains(codes(compute(t, s)), joint.NoRetained) {
			t.Errorf("%s: nothing is said of what the nut loses", torque)
		}
	}
	s := joint.Spec{Thread: parse(t, "M39"), Class: "10.9", Torque: set(t, "1150 bar")}
	refused(t, "a pressure without an area", s, "tensioner.area")
	s.Torque = set(t, "900 kN")
	refused(t, "a pull over proof", s, "torque")
}

// refused sees that Compute names the field.
func refused(t *testing.T, what string, s joint.Spec, field string) {
	t.Helper()
	_, err := joint.Compute(s)
	var rs joint.Refusals
	if !errors.As(err, &rs) {
		t.Errorf("%s: not refused", what)
		return
	}
	for _, r := range rs {
		if r.Field == field && r.Message != "" && !strings.Contains(r.Error(), "%!") {
			return
		}
	}
	t.Errorf("%s: refused as %v, want the field %s", what, rs, field)
}

func TestRefusals(t *testing.T) {
	for _, c := range []struct {
		what, field string
		spoil       func(*joint.Spec)
	}{
		{"no thread", "thread", func(s *joint.Spec) { s.Thread = nil }},
		{"a trapezoidal thread", "thread", func(s *joint.Spec) { s.Thread = parse(t, "Tr 40x7") }},
		{"no class", "class", func(s *joint.Spec) { s.Class = "" }},
		{"an unknown class", "class", func(s *joint.Spec) { s.Class = "7.7" }},
		{"9.8 over 16 mm", "class", func(s *joint.Spec) { s.Thread, s.Class = parse(t, "M20"), "9.8" }},
		{"8.8 over M39", "class", func(s *joint.Spec) { s.Thread = parse(t, "M42") }},
		{"8.8 on a unified thread", "class", func(s *joint.Spec) { s.Thread = parse(t, "5/8-11") }},
		{"grade 5 on a metric thread", "class", func(s *joint.Spec) { s.Class = "grade 5" }},
		{"grade 5.2 over 1 in", "class", func(s *joint.Spec) { s.Thread, s.Class = parse(t, "1-1/8-7"), "grade 5.2" }},
		{"grade 5 on a number size", "class", func(s *joint.Spec) { s.Thread, s.Class = parse(t, "#10-24"), "grade 5" }},
		{"two strengths", "class", func(s *joint.Spec) { s.Proof = &joint.Proof{Stress: q(t, "720 MPa"), Source: "sheet"} }},
		{"a proof stress without source", "proof.source", func(s *joint.Spec) { s.Class, s.Proof = "", &joint.Proof{Stress: q(t, "720 MPa")} }},
		{"a proof stress in N·m", "proof.stress", func(s *joint.Spec) {
			s.Class, s.Proof = "", &joint.Proof{Stress: q(t, "720 N·m"), Source: "sheet"}
		}},
		{"no friction", "friction", func(s *joint.Spec) { s.Friction = nil }},
		{"friction without source", "friction.source", func(s *joint.Spec) { s.Friction.Source = "" }},
		{"a slipped nut factor", "friction.nutfactor", func(s *joint.Spec) { s.Friction.NutFactor = n(t, "16") }},
		{"half the coefficients", "friction.bearing", func(s *joint.Spec) {
			s.Friction = &joint.Friction{Thread: n(t, "0.12"), Source: "sheet"}
		}},
		{"coefficients without a face", "friction.face", func(s *joint.Spec) {
			s.Friction = &joint.Friction{Thread: n(t, "0.12"), Bearing: n(t, "0.12"), Source: "sheet"}
		}},
		{"no torque", "torque", func(s *joint.Spec) { s.Torque = nil }},
		{"torque and preload", "torque", func(s *joint.Spec) { s.Preload = &joint.Target{Percent: n(t, "75")} }},
		{"torque over proof", "torque", func(s *joint.Spec) { s.Torque = set(t, "240 N·m") }},
		{"the upper end over proof", "torque", func(s *joint.Spec) {
			x := joint.PlusMinus(q(t, "225 N·m"), *n(t, "15"))
			s.Torque = &x
		}},
		{"a torque in mm", "torque", func(s *joint.Spec) { s.Torque = set(t, "190 mm") }},
		{"preload over proof", "preload", func(s *joint.Spec) {
			f := q(t, "92 kN")
			s.Torque, s.Preload = nil, &joint.Target{Force: &f}
		}},
		{"110 % of proof", "preload.percent", func(s *joint.Spec) { s.Torque, s.Preload = nil, &joint.Target{Percent: n(t, "110")} }},
		{"an empty preload", "preload", func(s *joint.Spec) { s.Torque, s.Preload = nil, &joint.Target{} }},
		{"a scatter without source", "scatter.source", func(s *joint.Spec) { s.Scatter = &joint.Scatter{Percent: *n(t, "25")} }},
		{"a scatter of 250 %", "scatter.percent", func(s *joint.Spec) { s.Scatter = &joint.Scatter{Percent: *n(t, "250"), Source: "x"} }},
		{"a negative count", "count", func(s *joint.Spec) { s.Count = -1 }},
		{"to break loose with a length", "breaksloose", func(s *joint.Spec) { x := q(t, "45 mm"); s.BreaksLoose = &x }},
		{"for now with a pressure", "fornow", func(s *joint.Spec) { s.ForNow = set(t, "40 bar") }},
	} {
		s := base(t)
		c.spoil(&s)
		refused(t, c.what, s, c.field)
	}
}

func TestCautions(t *testing.T) {
	for _, c := range []struct {
		what string
		code joint.CautionCode
		turn func(*joint.Spec)
	}{
		{"over 90 % of proof", joint.NearProof, func(s *joint.Spec) { s.Torque = set(t, "215 N·m") }},
		{"no scatter", joint.NoScatter, func(s *joint.Spec) { s.Scatter = nil }},
		{"no count", joint.NoCount, func(s *joint.Spec) { s.Count = 0 }},
		{"left-hand", joint.LeftHanded, func(s *joint.Spec) { s.Thread = parse(t, "M16 LH") }},
		{"a permitted pitch", joint.Unlisted, func(s *joint.Spec) {
			s.Thread, s.Class, s.Proof = parse(t, "M16x0.75"), "", &joint.Proof{Stress: q(t, "600 MPa"), Source: "sheet"}
		}},
		{"breaks loose too hard", joint.BreaksLooseHigh, func(s *joint.Spec) { x := q(t, "200 N·m"); s.BreaksLoose = &x }},
		{"tighter for now than at last", joint.ForNowHigh, func(s *joint.Spec) { s.ForNow = set(t, "200 N·m") }},
	} {
		s := base(t)
		c.turn(&s)
		r, err := joint.Compute(s)
		if err != nil || !slices.Contains(codes(r), c.code) {
			t.Errorf("%s: %v, %v", c.what, r.Cautions, err)
		}
	}
	s := base(t)
	s.Torque = set(t, "209 N·m") // 89.66 % of proof
	if r := compute(t, s); slices.Contains(codes(r), joint.NearProof) {
		t.Errorf("under 90 %% it is told: %v", r.Cautions)
	}
}
