package main

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates"
)

// TestLiftDrawingsAreToScale measures every leg on paper, in the side view and in
// the plan, as one would with rule and protractor: length and angle from
// horizontal are those that the lift was computed with, and those of the table.
func TestLiftDrawingsAreToScale(t *testing.T) {
	t.Parallel()
	measured := 0
	for _, f := range ownWith(t, 8, "lifts") {
		for _, paper := range papers {
			jb, pack := composedFile(t, f, templates.Options{Paper: paper})
			for _, l := range jb.Lifts {
				if l.Result != nil {
					measured += measureLift(t, filepath.Base(f)+" "+paper.Name, l, pack.Pages.Pages)
				}
			}
		}
	}
	if measured < 20 {
		t.Errorf("only %d legs were measured on paper", measured)
	}
}

// measureLift measures the legs of one lift and gives how many there are.
func measureLift(t *testing.T, where string, l *job.Lift, pages []layout.Frame) int {
	t.Helper()
	scale := 0.0
	for i, leg := range l.Result.Legs {
		role := func(view string) string { return fmt.Sprintf("leg:%s:%s:%d", l.Mark, view, i+1) }
		su, sz := drawn(t, where, pages, role("side"))
		px, py := drawn(t, where, pages, role("plan"))
		// The side view shows one of the two ways of the plan; the other is seen only there.
		across := px
		if math.Abs(math.Abs(px)-math.Abs(su)) < 1e-6 {
			across = py
		} else if math.Abs(math.Abs(py)-math.Abs(su)) > 1e-6 {
			t.Errorf("%s %s leg %d: the side view shows %.4f mm across and the plan %.4f by %.4f", where, l.Mark, i+1, su, px, py)
		}
		flat := math.Hypot(su, across)
		angle := math.Atan2(sz, flat) * 180 / math.Pi
		if math.Abs(angle-float64(leg.Angle)) > 1e-6 {
			t.Errorf("%s %s leg %d: drawn at %.6f° and computed %.6f°", where, l.Mark, i+1, angle, leg.Angle)
		}
		length := math.Hypot(flat, sz)
		if scale == 0 {
			scale = float64(leg.Length) / length
		}
		if math.Abs(length*scale-float64(leg.Length)) > 1e-3 {
			t.Errorf("%s %s leg %d: drawn %.4f mm long at 1:%g, computed %.4f mm", where, l.Mark, i+1, length, scale, leg.Length)
		}
	}
	if whole := math.Round(scale*10) / 10; math.Abs(scale-whole) > 1e-6 || !saysScale(pages, l, whole) {
		t.Errorf("%s %s: drawn at 1:%g, and the sheet does not say so", where, l.Mark, scale)
	}
	return len(l.Result.Legs)
}

// saysScale reports whether the page with the lift's drawing names the scale, in
// both views.
func saysScale(pages []layout.Frame, l *job.Lift, scale float64) bool {
	want := strings.TrimSuffix(fmt.Sprintf("1 : %.1f", scale), ".0")
	for _, p := range pages {
		text, here := "", false
		for _, it := range p.Items {
			here = here || strings.HasPrefix(it.Role, "leg:"+l.Mark+":")
			if s, ok := it.Shape.(layout.Text); ok {
				text += s.S + " "
			}
		}
		if here && strings.Count(text, want+".") == 2 {
			return true
		}
	}
	return false
}

// drawn gives how far a line of a role goes to the right and up on paper.
func drawn(t *testing.T, where string, pages []layout.Frame, role string) (right, up float64) {
	t.Helper()
	for _, p := range pages {
		for _, it := range p.Items {
			if it.Role != role {
				continue
			}
			ops := it.Shape.(layout.Path).Ops
			foot, top := ops[1].P, ops[0].P
			return float64(top.X - foot.X), float64(foot.Y - top.Y)
		}
	}
	t.Fatalf("%s: no line %s on any page", where, role)
	return 0, 0
}

// TestCasingIsNotSplitEvenly: the even split by levers that a planner may have in
// mind (532, 293, 422 and 233 kg upright for 1480 kg) is not what a stiff load
// does; two corners may carry more, and no leg is counted with less.
func TestCasingIsNotSplitEvenly(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS(filepath.Join(testdata, "good")), packs.Inputs{Definition: "lift-casing.yaml"})
	plan := jb.Lifts[0].Plan
	plan.Load.MassTolerance, plan.Load.CoGTolerance = 0, lift.Point{}
	plan.DecidedBy, plan.Reason = "the test", "as the shares were worked out by hand"
	for i := range plan.Legs {
		plan.Legs[i].Sling.Mass, plan.Legs[i].Gear = 0, nil
	}
	r, err := lift.Compute(plan)
	if err != nil {
		t.Fatal(err)
	}
	// By hand: corners of the lugs 520 and 640 mm off, centre of gravity at 60 and 185 mm.
	even := map[string]float64{"DE-DIS": 532, "DE-SUC": 293, "NDE-DIS": 422, "NDE-SUC": 233}
	length := map[string]float64{"DE-DIS": 2007, "DE-SUC": 2122, "NDE-DIS": 2038, "NDE-SUC": 2151}
	side := map[string][2]float64{"DE-DIS": {580.0 / 1040, 825.0 / 1280}, "DE-SUC": {580.0 / 1040, 455.0 / 1280}, "NDE-DIS": {460.0 / 1040, 825.0 / 1280}, "NDE-SUC": {460.0 / 1040, 455.0 / 1280}}
	if len(r.Legs) != len(even) {
		t.Errorf("%d legs, want %d", len(r.Legs), len(even))
	}
	for _, leg := range r.Legs {
		upright := float64(leg.Even) * math.Sin(float64(leg.Angle)*math.Pi/180)
		if math.Abs(upright-even[leg.Name]) > 1 {
			t.Errorf("%s: even split %.1f kg upright, want %.0f", leg.Name, upright, even[leg.Name])
		}
		if math.Abs(float64(leg.Length)-length[leg.Name]) > 1 {
			t.Errorf("%s: %.1f mm, want %.0f", leg.Name, leg.Length, length[leg.Name])
		}
		most := 1480 * min(side[leg.Name][0], side[leg.Name][1])
		if math.Abs(float64(leg.Vertical)-most) > 1e-6*most || float64(leg.Vertical) < upright {
			t.Errorf("%s: counted with %.1f kg upright, want %.1f, the smaller of its two side shares", leg.Name, leg.Vertical, most)
		}
	}
}

// TestStepsPointToTheirLiftSheet: the step that makes a lift names the sheet with
// its page, the mass, how level it hangs and the trial lift; a lift that cannot be
// computed says so at the step and on its sheet, with the reason.
func TestStepsPointToTheirLiftSheet(t *testing.T) {
	t.Parallel()
	pages := func(dir, name string) []string {
		jb, _ := packs.Load(os.DirFS(filepath.Join(testdata, dir)), packs.Inputs{Definition: name})
		pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4, Draft: true}, pdf.NewFaces(), nil)
		if len(misfits) > 0 {
			t.Errorf("%s: %v", name, misfits)
		}
		var out []string
		for _, p := range pack.Pages.BySheet() {
			text := fmt.Sprintf("sheet %s page %d ", p.Sheet, p.Number)
			for _, it := range p.Items {
				if s, ok := it.Shape.(layout.Text); ok {
					text += s.S + " "
				}
			}
			out = append(out, strings.Join(strings.Fields(strings.ReplaceAll(text, "\u00a0", " ")), " "))
		}
		return out
	}
	has := func(pages []string, sheet string, words ...string) {
		t.Helper()
	next:
		for _, p := range pages {
			if strings.HasPrefix(p, "sheet "+sheet+" ") {
				for _, w := range words {
					if !strings.Contains(p, w) {
						continue next
					}
				}
				return
			}
		}
		t.Errorf("no page of %s has %q", sheet, words)
	}
	good := pages("good", "lift-casing.yaml")
	at := 0
	for _, p := range good {
		if n, err := fmt.Sscanf(p, "sheet lifts page %d", &at); n == 1 && err == nil {
			break
		}
	}
	line := fmt.Sprintf("Lift sheet L1, p. %d: 1480 kg ± 44.4 kg", at)
	has(good, "traveler", line, "out of level", "Trial lift 25 mm")
	has(good, "reassembly", line)
	has(good, "lifts", "Shared evenly by levers")
	has(good, "lifts", "A competent person, the site's lift rules and the local code decide")
	// In pounds: 325 lb x 1.1 dynamic, 60 % on one of two timbers 40 in x 6 in, is
	// 128.7 lb/ft² (force over area, by hand).
	has(pages("good", "lift-gearbox.yaml"), "lifts", "presses 129 lb/ft²", "on a floor for 400 lb/ft²")
	bad := pages("bad", "lift-missing.yaml")
	has(bad, "traveler", "CANNOT BE COMPUTED. Do not lift.")
	has(bad, "lifts", "L2 cannot be computed, because", "does not lie between the picks", "Do not lift by this sheet.")
}
