package templates_test

import (
	"fmt"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates"
)

// bearingsOn puts a bearing on at each end and a thrust bearing between them; what is near each
// is left open.
const bearingsOn = `pack: 1
equipment: {tag: P-03, name: Storm-water pump}
job: {number: WO-613, title: Bearings on, revision: A, issued: 2026-03-02}
places:
  end:
    DE: {name: drive end, viewed-from: the motor}
    NDE: {name: thrust end, viewed-from: the open end}
parts:
  shaft: {name: Pump shaft}
  bearing: {name: Rolling bearing, each: end, renew: always}
  sleeve: {name: Thrust bearing, renew: always}
containers:
  C1: {name: Old bearings, kind: box, each: end, keep: dry}
heats:
  %s:
    what: Rolling bearing
    each: end
    interference: 0.015 to 0.065 mm
    diameter: 130 mm
    hub: {part: bearing, material: carbon steel, outside: 155 mm, length: 40 mm, kind: rolling bearing}
    shaft: {part: shaft, material: carbon steel, behind: 500 mm, front: 80 mm}
    %s
    put-on: {by: induction, net: 0.8 kW, clearance: 0.06 mm, heat-to: 110 °C}
  %s:
    what: Thrust bearing
    interference: 0.010 to 0.045 mm
    diameter: 100 mm
    hub: {part: sleeve, material: carbon steel, outside: 125 mm, length: 40 mm, kind: rolling bearing}
    shaft: {part: shaft, material: carbon steel, behind: 300 mm}
    %s
    put-on: {by: induction, net: 0.8 kW, clearance: 0.06 mm, heat-to: 110 °C}
steps:
  - section: Old ones off
    steps:
      - {step: off, each: end, do: Pull the old bearing off its shaft., remove: [bearing], into: C1}
      - {step: off2, do: Pull the thrust bearing off its shaft., remove: [sleeve], into: scrap}
  - section: New ones on
    steps:
`

// Heats that share an order of work printed the neighbours of the first of them, with one box
// for all: those of the second were watched by nobody, or its limit was that of another part.
// Each heat that has one is told which, and has a box for it that bears its mark.
func TestEachHeatWatchesItsOwnNeighbours(t *testing.T) {
	t.Parallel()
	const (
		none  = "nothing-near: the seals go on after"
		seal  = "neighbours: [{what: Lip seal, away: 10 mm, kind: rubber seal, at-most: 80 °C, source: seal sheet}]"
		cable = "neighbours: [{what: Probe cable, away: 10 mm, kind: rubber seal, at-most: 60 °C, source: probe sheet}]"
		// longer than the column of the table is wide
		long = "neighbours: [{what: Bearing_RTD_TE4711A_spare, away: 10 mm, kind: rubber seal, at-most: 60 °C, source: probe sheet}]"
	)
	for _, x := range []struct{ name, ends, thrust string }{
		{"only the second", none, cable}, {"only the first", seal, none}, {"each another", seal, cable},
		{"both the same", cable, cable}, {"a long name", none, long}, {"none", none, none},
	} {
		for _, thrustFirst := range []bool{false, true} {
			t.Run(fmt.Sprintf("%s, thrust bearing first %t", x.name, thrustFirst), func(t *testing.T) {
				t.Parallel()
				ends, thrust := "H2", "H3"
				on := []string{"      - {step: ends, each: end, do: Put the bearing on., fit: [bearing], heat: [H2]}\n", "      - {step: thrust, do: Put the thrust bearing on., fit: [sleeve], heat: [H3]}\n"}
				if thrustFirst {
					ends, thrust = thrust, ends
					on[0], on[1] = strings.Replace(on[1], "H3", "H2", 1), strings.Replace(on[0], "H2", "H3", 1)
				}
				jb, err := loadText(fmt.Sprintf(bearingsOn, ends, x.ends, thrust, x.thrust) + strings.Join(on, ""))
				if err != nil {
					t.Fatal(err)
				}
				watchedOnPaper(t, jb)
			})
		}
	}
}

func watchedOnPaper(t *testing.T, jb *job.Job) {
	t.Helper()
	pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	if len(misfits) > 0 {
		t.Fatal(misfits)
	}
	of, all := map[layout.Ref]string{}, ""
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != "heats" {
			continue
		}
		for _, it := range f.Items {
			if s, ok := it.Shape.(layout.Text); ok {
				all += " " + s.S
				of[it.Ref] += " " + s.S
			}
		}
	}
	boxes, limits := 0, map[string]bool{}
	for _, h := range jb.Heats {
		for _, n := range h.Neighbours {
			boxes++
			limits[fmt.Sprintf("Never above %g\u00a0°C.", float64(n.Limit.At))] = true
			for _, want := range []string{n.Name, h.Mark} {
				if !strings.Contains(of[layout.Ref(h.At)], want) {
					t.Errorf("%s: %q is not on its sheet: %q", h.Mark, want, of[layout.Ref(h.At)])
				}
			}
		}
	}
	for limit := range limits {
		if !strings.Contains(squeeze(all), squeeze(limit)) {
			t.Errorf("nobody is told %q: %q", limit, all)
		}
	}
	if got := strings.Count(squeeze(all), squeeze("hottest")); got != boxes {
		t.Errorf("%d boxes for how warm a neighbour gets, want %d: %q", got, boxes, all)
	}
}
