package joint_test

import (
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"matchmark/packs/joint"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// outsideRow is one line of the file of outside values.
type outsideRow struct {
	key, kind, unit, how, source string
	in                           []string
	want                         []float64
	tolerance                    []string
}

func outside(t *testing.T) []outsideRow {
	t.Helper()
	data, err := os.ReadFile("../../testdata/outside/joint.txt")
	if err != nil {
		t.Fatal(err)
	}
	var out []outsideRow
	for _, l := range strings.Split(string(data), "\n") {
		if l == "" || l[0] == '#' {
			continue
		}
		f := strings.Split(l, " | ")
		if len(f) != 8 {
			t.Fatalf("%d fields: %s", len(f), l)
		}
		r := outsideRow{key: f[0], kind: f[1], unit: f[5], how: f[6], source: f[7], in: strings.Split(f[2], "; "), tolerance: strings.Split(f[4], "/")}
		for _, w := range strings.Split(f[3], "/") {
			r.want = append(r.want, num(t, w))
		}
		out = append(out, r)
	}
	return out
}

// tester is what both a test and a law give.
type tester interface {
	Helper()
	Fatal(...any)
	Fatalf(string, ...any)
}

func num(t tester, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// compare sets values against the row and shows its source where they differ.
func (r outsideRow) compare(t *testing.T, got ...float64) {
	t.Helper()
	if len(got) != len(r.want) {
		t.Errorf("%s %v: %d values, want %d", r.key, r.in, len(got), len(r.want))
		return
	}
	for i, w := range r.want {
		text, percent := strings.CutSuffix(r.tolerance[min(i, len(r.tolerance)-1)], "%")
		within := num(t, text)
		if percent {
			within *= w / 100
		}
		if math.IsNaN(got[i]) || math.Abs(got[i]-w) > within+1e-9*w {
			t.Errorf("%s %s %v: got %.6g, want %g ± %g %s\nsource (%s): %s", r.key, r.kind, r.in, got[i], w, within, r.unit, r.how, r.source)
		}
	}
}

func parse(t tester, s string) *thread.Thread {
	t.Helper()
	th, err := thread.Parse(s)
	if err != nil {
		t.Fatal(err)
	}
	return &th
}

func q(t tester, s string) units.Quantity {
	t.Helper()
	x, err := units.ParseQuantity(s)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func n(t tester, s string) *units.Number {
	t.Helper()
	x, err := units.ParseNumber(s)
	if err != nil {
		t.Fatal(err)
	}
	return &x
}

// unitOf turns SI into the unit of a row.
func unitOf(t tester, value float64, unit string) float64 {
	t.Helper()
	// Exact factors by definition, worked out here and not by package units.
	const pound = 0.45359237 * 9.80665
	switch unit {
	case "lbf":
		return value / pound
	case "lb-ft":
		return value / (pound * 0.3048)
	case "psi":
		return value / (pound / (0.0254 * 0.0254) / 1e6)
	}
	return value
}

func compute(t tester, s joint.Spec) joint.Result {
	t.Helper()
	r, err := joint.Compute(s)
	if err != nil {
		t.Fatalf("%s %s: %v", s.Thread, s.Class, err)
	}
	return r
}

// raw gives the torque of a result as it was worked out, before it is rounded to be set.
func raw(t tester, r joint.Result) float64 {
	t.Helper()
	for _, w := range r.Workings {
		if w.What == "torque" {
			return float64(w.Figures[len(w.Figures)-1].Value)
		}
	}
	t.Fatal("no torque is worked out")
	return 0
}

func nutFactor(t tester, k string) *joint.Friction {
	return &joint.Friction{NutFactor: n(t, k), Source: "the row"}
}

func TestAgainstOutsideValues(t *testing.T) {
	for _, r := range outside(t) {
		in := r.in
		switch r.kind {
		case "proof load", "strength", "misprint", "torque of share", "preload of share", "torque and force":
			r.ofClass(t)
		case "torque of force":
			f := q(t, in[1])
			res := compute(t, joint.Spec{Thread: parse(t, in[0]), Class: "grade 8", Friction: nutFactor(t, in[2]), Preload: &joint.Target{Force: &f}})
			r.compare(t, unitOf(t, raw(t, res), r.unit))
			back := compute(t, joint.Spec{Thread: parse(t, in[0]), Class: "grade 8", Friction: nutFactor(t, in[2]), Torque: res.Torque})
			if off := float64(back.Preload.Aim/res.Preload.Aim) - 1; off > 1e-9 || off < -0.01 {
				t.Errorf("%s: the torque set gives %.4g of the preload back", r.key, 1+off)
			}
		case "torque by coefficients":
			f, face, hole := q(t, in[1]), q(t, in[4]+" mm"), q(t, in[5]+" mm")
			res := compute(t, joint.Spec{Thread: parse(t, in[0]), Class: "8.8", Preload: &joint.Target{Force: &f},
				Friction: &joint.Friction{Thread: n(t, in[2]), Bearing: n(t, in[3]), Face: &face, Hole: &hole, Source: "the row"}})
			r.compare(t, raw(t, res))
		case "stage shares":
			r.ofStages(t)
		case "dry rule":
			d, ok := joint.DryTorqueFor(in[0])
			set := d.Torque(q(t, "100 lb-ft"))
			aim, _ := set.Aim.Number.Rat().Float64()
			high, _ := set.High.Number.Rat().Float64()
			r.compare(t, 100*(high/aim-1), 100-aim)
			if !ok {
				t.Errorf("%s: no rule for %s", r.key, in[0])
			}
		case "plan share":
			p, _ := joint.PlanNamed(in[0])
			var got []float64
			for _, s := range p.Stages {
				x, _ := s.Setting.Aim.Number.Rat().Float64()
				got = append(got, x)
			}
			r.compare(t, got...)
		case "circle order":
			p, err := joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: int(num(t, in[0])), Diameter: 300}.Pattern()
			if err != nil {
				t.Fatal(err)
			}
			var want []int
			for _, w := range r.want {
				want = append(want, int(w))
			}
			if !slices.Equal(p.Order, want) {
				t.Errorf("%s: order of %s is %v, want %v\nsource (%s): %s", r.key, in[0], p.Order, want, r.how, r.source)
			}
		default:
			t.Errorf("%s: a row of kind %q is not used", r.key, r.kind)
		}
	}
}

// ofClass checks a row that begins with a thread and a class.
func (r outsideRow) ofClass(t *testing.T) {
	t.Helper()
	s := joint.Spec{Thread: parse(t, r.in[0]), Class: r.in[1], Preload: &joint.Target{Percent: n(t, "75")}, Friction: nutFactor(t, "0.20")}
	if len(r.in) > 2 && r.kind != "misprint" {
		s.Preload.Percent = n(t, r.in[2])
	}
	if len(r.in) > 3 {
		s.Friction = nutFactor(t, r.in[3])
	}
	res := compute(t, s)
	switch r.kind {
	case "proof load":
		r.compare(t, unitOf(t, float64(res.ProofLoad), r.unit))
	case "strength":
		r.compare(t, unitOf(t, float64(res.Strength.Proof), r.unit), unitOf(t, float64(res.Strength.Tensile), r.unit))
	case "misprint":
		r.compare(t, float64(res.Ultimate))
		if bad := num(t, r.in[2]); math.Abs(float64(res.Ultimate)-bad) < 0.005*bad {
			t.Errorf("%s: %v gives the misprint %g N", r.key, r.in, bad)
		}
	case "torque of share":
		r.compare(t, unitOf(t, raw(t, res), r.unit))
	case "preload of share":
		r.compare(t, unitOf(t, float64(res.Preload.Aim), r.unit))
	case "torque and force":
		r.compare(t, unitOf(t, raw(t, res), "lb-ft"), unitOf(t, float64(res.Preload.Aim), "lbf"))
	}
}

// ofStages checks a row of stages.
func (r outsideRow) ofStages(t *testing.T) {
	t.Helper()
	var stages []joint.Stage
	for _, s := range r.in {
		set := joint.Exactly(q(t, s))
		stages = append(stages, joint.Stage{Kind: joint.Tighten, Setting: &set})
	}
	last := stages[len(stages)-1].Setting
	res := compute(t, joint.Spec{Thread: parse(t, "3/4-10"), Class: "grade 8", Friction: nutFactor(t, "0.13"), Torque: last, Stages: stages})
	var got []float64
	for _, round := range res.Rounds {
		got = append(got, float64(round.Share))
	}
	r.compare(t, got...)
}
