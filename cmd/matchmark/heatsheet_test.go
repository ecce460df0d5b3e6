package main

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates"
)

// A heatPaper is one heat as it lies on paper: its job's figures, and the page with
// one of its drawings.
type heatPaper struct {
	name string
	heat *job.Heat
	page layout.Frame
}

// drawnHeats are the heats of every definition that has some, on both papers, each with
// the page on which a line of its drawings stands: the shaft of the section, the field of
// the chart.
func drawnHeats(t *testing.T, line string) []heatPaper {
	t.Helper()
	var out []heatPaper
	for _, f := range ownWith(t, 6, "heats") {
		for _, paper := range papers {
			jb, pack := composedFile(t, f, templates.Options{Paper: paper})
			for _, p := range pack.Pages.BySheet() {
				for _, h := range jb.Heats {
					if p.Sheet == "heats" && len(withRole(p, h, line)) > 0 {
						out = append(out, heatPaper{filepath.Base(f) + " " + paper.Name + " " + h.Mark, h, p})
					}
				}
			}
		}
	}
	return out
}

// withRole gives the corners of the lines that have a role, on the page.
func withRole(p layout.Frame, h *job.Heat, of string) [][]layout.Point {
	var out [][]layout.Point
	for _, it := range p.Items {
		path, ok := it.Shape.(layout.Path)
		if !ok || it.Role != "heat:"+h.Mark+":"+of {
			continue
		}
		var ps []layout.Point
		for _, op := range path.Ops {
			if op.Verb != layout.Close {
				ps = append(ps, layout.Point{X: it.X + op.P.X, Y: it.Y + op.P.Y})
			}
		}
		out = append(out, ps)
	}
	return out
}

// spanOf is the least and greatest of both coordinates.
func spanOf(lines ...[]layout.Point) (left, right, top, bottom float64) {
	left, top, right, bottom = math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, ps := range lines {
		for _, p := range ps {
			left, right = min(left, float64(p.X)), max(right, float64(p.X))
			top, bottom = min(top, float64(p.Y)), max(bottom, float64(p.Y))
		}
	}
	return left, right, top, bottom
}

// TestHeatSectionIsToScale measures the section of every hot joint with a rule: hub
// outside, length of fit, seat and the distance of each neighbour stand in one scale
// to what the definition says, and the caption names that scale.
func TestHeatSectionIsToScale(t *testing.T) {
	t.Parallel()
	neighbours := 0
	all := drawnHeats(t, "shaft")
	for _, x := range all {
		h := x.heat
		hub := withRole(x.page, h, "hub")
		if len(hub) != 2 {
			t.Errorf("%s: the hub is drawn as %d cut faces, want 2", x.name, len(hub))
			continue
		}
		left, right, top, bottom := spanOf(hub...)
		scale := (bottom - top) / float64(h.Ring.Outside)
		check := func(what string, drawn float64, real heat.Mm) {
			if math.Abs(drawn-scale*float64(real)) > 1e-6 {
				t.Errorf("%s: %s is %.4f mm on paper, and %g mm at 1:%.3f would be %.4f mm", x.name, what, drawn, float64(real), 1/scale, scale*float64(real))
			}
		}
		check("the length of the fit", right-left, h.Ring.Length)
		_, _, seatTop, seatBottom := spanOf(withRole(x.page, h, "shaft")...)
		check("the seat", seatBottom-seatTop, h.Fit.Diameter)
		_, _, _, upperEnd := spanOf(hub[0])
		_, _, lowerTop, _ := spanOf(hub[1])
		check("the bore of the hub", lowerTop-upperEnd, h.Fit.Diameter)
		for i, n := range h.Neighbours {
			face, _, _, _ := spanOf(withRole(x.page, h, "near:"+strconv.Itoa(i+1))...)
			check(n.Name, face-right, n.Distance)
			neighbours++
		}
		if want := fmt.Sprintf("1:%.1f.", 1/scale); !strings.Contains(squeezed(x.page), want) {
			t.Errorf("%s: drawn at 1:%.2f, and the page does not say %s", x.name, 1/scale, want)
		}
	}
	if len(all) < 20 || neighbours < 4 {
		t.Errorf("only %d sections and %d neighbours were measured", len(all), neighbours)
	}
}

// squeezed is the text of a page without blanks.
func squeezed(p layout.Frame) string {
	return area{0, 0, p.W, p.H}.text(p)
}

// heatText is the text of the heat sheets of a definition, without blanks.
func heatText(t *testing.T, files string, name string, change ...string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(files, name))
	if err != nil {
		t.Fatal(err)
	}
	text := strings.NewReplacer(change...).Replace(string(data))
	jb, problems := packs.Load(fstest.MapFS{name: {Data: []byte(text)}}, packs.Inputs{Definition: name})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	if len(misfits) > 0 {
		t.Fatal(misfits)
	}
	var out strings.Builder
	for _, p := range pack.Pages.BySheet() {
		if p.Sheet == "heats" {
			out.WriteString(squeezed(p))
		}
	}
	return out.String()
}

// TestHeatInInches: who writes inches, °F and psi reads them on paper. By hand, with
// E = 30.46e6 psi (210 GPa) and Lamé's formula for a solid shaft of the same steel,
// p = (interference / diameter) E (1 - (5/8.5)²) / 2, as in Bloch, Improving
// Machinery Reliability, chapter 3:
//
//	0.0042 in: p = 8366 psi, cold pull pi 5 6 p 0.24 = 189,200 lbf
//	0.0012 in: p = 2390 psi, torque pi 5² 6 p 0.12 / 2 = 67,600 lb-in = 5630 lb-ft
//	rise = 0.0052 / (5 × 12.49e-6) = 83.3 K, 150 °F warmer (not 182, a temperature)
//	bearing at 220 °F, 104.4 °C: strain 1.0553e-3 (EN 1993-1-2, 3.4.1.1) × 4 in
//	less 0.0020 in leaves 0.0022 in
//
// The skin's ceiling of 450 °F leaves the crayon of 425 °F, the next lower step of 25.
func TestHeatInInches(t *testing.T) {
	t.Parallel()
	text := heatText(t, filepath.Join(testdata, "good"), "inch-heats.yaml")
	for _, want := range []string{
		"Interference0.0012into0.0042in.", "8400psi", "190000lbf", "5600lb-ft", "goodfor60000lbf",
		"neverabove450°F(", "Crayonof425°F", "3.5inaway:neverabove210°F", "150°Fhotter", "openedby0.0052in",
		"Heatitto220°F.Neverabove248°F.", "At220°Fitopensby0.0022in", "mil,at", "shaftof68°F", "cooledbelow104°F",
		"oven350°F",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not on the heat sheets", want)
		}
	}
	// What is worked out in metric says so; nothing else on the sheets is metric.
	body, _, _ := strings.Cut(strings.NewReplacer("common", "", "memory", "", "hammer", "").Replace(text), "inmillimetresand°C:")
	for _, not := range []string{"mm", "°C", "MPa", "kN", "N·m"} {
		if strings.Contains(body, not) {
			t.Errorf("%q stands on a sheet in inches and °F: …%s", not, body[max(0, strings.Index(body, not)-60):])
		}
	}
}

// TestPullerIsJudged: the coupling hub takes about 610 kN to move cold (the pressure
// p = (0.076 / 120) 210,000 (1 - (120/210)²) / 2 = 44.8 MPa by Lamé, over
// pi 120 150 mm with friction 0.24, is 608 kN). A puller of 400 kN is
// told to be too weak for that, one of 700 kN not; a rating is never rounded up.
func TestPullerIsJudged(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ rated, says, not string }{
		{"400 kN", "goodfor400kN.Thatistoolittletomoveitcold", "movesitcoldaswell"},
		{"700 kN", "goodfor700kN.Thatmovesitcoldaswell", "toolittle"},
		{"605.9 kN", "goodfor605kN.Thatistoolittle", "movesitcoldaswell"},
	} {
		text := heatText(t, startersDir, "storm-pump.yaml", "pulls-with: 400 kN", "pulls-with: "+c.rated)
		if !strings.Contains(text, c.says) || strings.Contains(text, c.not) {
			t.Errorf("a puller of %s: %q is not on paper, or %q is", c.rated, c.says, c.not)
		}
	}
}

// TestMakersTemperatureOpensMore: where the maker gives a temperature, the room on
// the shaft is that at his temperature. Growth by EN 1993-1-2, 3.4.1.1, from 20 to
// 100 °C: 1.2e-5 t + 0.4e-8 t² - 2.416e-4 = 0.9984e-3.
func TestMakersTemperatureOpensMore(t *testing.T) {
	t.Parallel()
	jb, _ := composed(t, "bevel-gearbox.yaml", templates.Options{Paper: layout.A4})
	const growth = 1.2e-5*100 + 0.4e-8*100*100 - 2.416e-4
	for _, h := range jb.Heats {
		want := growth*float64(h.Fit.Diameter) - float64(h.Fit.Greatest)
		if got := float64(h.PutOn.Plan.Room); h.PutOn.SetTo != 100 || math.Abs(got-want) > 1e-4 {
			t.Errorf("%s: room of %.4f mm at %g °C, want %.4f at 100 °C", h.Mark, got, float64(h.PutOn.SetTo), want)
		}
		if need := float64(h.PutOn.Plan.Need.Hub); need > 100 {
			t.Errorf("%s: needs %.1f °C and is heated to 100", h.Mark, need)
		}
	}
	if len(jb.Heats) != 5 {
		t.Errorf("%d heats, want one for each of the six bearings but the one that slides", len(jb.Heats))
	}
}
