package main

import (
	"math"
	"os"
	"testing"

	"matchmark/layout"
	"matchmark/packs"
	"matchmark/packs/fit"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates"
)

const bevel = "bevel-gearbox.yaml"

// TestBevelGearboxFits holds the bearing seats against ISO 286: the lower deviation of
// m6 is IT7 less IT6 (ISO 286-1, A.3.2, as read in IS 919-1 and Narayana, Machine
// Drawing, Table 15.4), and IT6 and IT7 are 19 and 30, 22 and 35, 25 and 40 µm in the
// steps to 80, 120 and 180 mm (the standard's table of grades).
func TestBevelGearboxFits(t *testing.T) {
	t.Parallel()
	jb, _ := composed(t, bevel, templates.Options{Paper: layout.A4})
	for _, c := range []struct {
		mark, zone string
		size       fit.Nanometre
		it6, it7   fit.Nanometre
		says       string
	}{
		{"D24", "70 m6", 70_000_000, 19_000, 30_000, "70.011 to 70.030 mm"},
		{"D25", "85 m6", 85_000_000, 22_000, 35_000, "85.013 to 85.035 mm"},
		{"D26", "150 m6", 150_000_000, 25_000, 40_000, "150.015 to 150.040 mm"},
	} {
		z, err := fit.Parse(c.zone)
		if err != nil {
			t.Fatal(err)
		}
		low := c.size + c.it7 - c.it6
		if z.Min() != low || z.Max() != low+c.it6 {
			t.Errorf("%s: %s to %s, want %s", c.zone, z.Min().Decimal(), z.Max().Decimal(), c.says)
		}
		for _, d := range jb.Dims {
			if d.Mark == "D24/M" { // the cone that slides: h6 of 50 to 80 mm, 0 to -19 µm, ISO 286-2
				if d.Found.Text() != "69.981 to 70.000 mm" {
					t.Errorf("D24/M must be %q", d.Found.Text())
				}
				continue
			}
			if d.Base == c.mark && d.Found.Text() != c.says {
				t.Errorf("%s must be %q, want %q", d.Mark, d.Found.Text(), c.says)
			}
		}
	}
	// The tightest fit is the largest seat in the smallest bore: 0 to -15, -20 and -25 µm
	// for tapered roller bearings of normal class, ISO 492, from memory.
	bore := map[string][2]float64{"H1": {0.030, 0.015}, "H2": {0.035, 0.020}, "H3": {0.040, 0.025}}
	for _, h := range jb.Heats {
		if want := bore[h.Base][0] + bore[h.Base][1]; math.Abs(float64(h.Fit.Greatest)-want) > 1e-9 {
			t.Errorf("%s: interference up to %.3f mm, want %.3f", h.Mark, float64(h.Fit.Greatest), want)
		}
	}
}

// bare is the plan of a lift with the load alone: no gear, no tolerance.
func bare(t *testing.T, jb *job.Job, mark string) *lift.Result {
	t.Helper()
	for _, l := range jb.Lifts {
		if l.Mark != mark {
			continue
		}
		plan := l.Plan
		plan.Load.MassTolerance, plan.Load.CoGTolerance = 0, lift.Point{}
		plan.DecidedBy, plan.Reason = "the test", "as the figures were worked out by hand"
		for _, legs := range [][]lift.Leg{plan.Legs, plan.TopLegs} {
			for i := range legs {
				legs[i].Sling.Mass, legs[i].Gear = 0, nil
			}
		}
		plan.Bar.Mass = 0
		r, err := lift.Compute(plan)
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	t.Fatalf("no lift %s", mark)
	return nil
}

// TestBevelGearboxLifts: plain statics by hand. The cover hangs on two eyes 720 mm
// apart, its centre of gravity 90 mm toward the input, 450 mm from the output eye and
// 270 mm from the input eye; a sling of 1000 mm in hand on the output eye leaves
// h = √(1000² - 450²) = 893.03 mm, so the other leg is √(270² + 893.03²) = 932.95 mm
// for a level load. Moments about the eyes give T = W b L / (s h), 60.89 and 94.68 kg:
// plain statics of two legs that meet at the hook. The lever rule under the spreader,
// where the drops hang plumb, is that of published sling sheets (10,000 lb at 8 and 2
// ft gives 8,000 and 2,000 lb, testdata/outside/lift-statics.txt): 212 × 350 / 760
// and 212 × 410 / 760 kg. Above it the flattest leg stands at 60° over 410 mm, so
// h = 410 tan 60° = 710.14 mm.
func TestBevelGearboxLifts(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS(startersDir), packs.Inputs{Definition: bevel})
	type leg struct{ length, tension, angle float64 }
	for mark, want := range map[string]map[string]leg{
		"L1": {
			"output": {1000, 145 * 270 * 1000 / (720 * 893.029), 63.256},
			"input":  {932.951, 145 * 450 * 932.951 / (720 * 893.029), 73.178},
		},
		"L2": {
			"L": {760, 212 * 350.0 / 760, 90},
			"R": {760, 212 * 410.0 / 760, 90},
			// Above the spreader.
			"L above": {820, 212 * 350 * 820 / (760 * 710.141), 60},
			"R above": {791.70, 212 * 410 * 791.70 / (760 * 710.141), 63.763},
		},
	} {
		r := bare(t, jb, mark)
		if len(r.Legs) != len(want) {
			t.Errorf("%s: %d legs, want %d", mark, len(r.Legs), len(want))
		}
		for _, got := range r.Legs {
			name := got.Name
			if got.Above {
				name += " above"
			}
			w := want[name]
			if math.Abs(float64(got.Length)-w.length) > 0.05 || math.Abs(float64(got.Tension)-w.tension) > 0.02 || math.Abs(float64(got.Angle)-w.angle) > 0.01 {
				t.Errorf("%s %s: %.2f mm, %.2f kg at %.2f°, want %.2f mm, %.2f kg at %.2f°", mark, name,
					float64(got.Length), float64(got.Tension), float64(got.Angle), w.length, w.tension, w.angle)
			}
		}
		if r.Tilt.Total > 0.01 {
			t.Errorf("%s hangs %.2f° out of level", mark, float64(r.Tilt.Total))
		}
	}
}
