package main

import (
	"math"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// alignedOnPaper composes every definition that has alignments, on both papers.
func alignedOnPaper(t *testing.T, visit func(t *testing.T, a *job.Alignment, pack *templates.Pack)) {
	t.Helper()
	for _, file := range []string{filepath.Join(startersDir, "storm-pump.yaml"), filepath.Join(goodDir, "joints.yaml")} {
		for _, paper := range papers {
			t.Run(filepath.Base(file)+" "+paper.Name, func(t *testing.T) {
				jb, pack := composedFile(t, file, templates.Options{Paper: paper})
				if len(jb.Alignments) != 1 {
					t.Fatalf("%d alignments", len(jb.Alignments))
				}
				visit(t, jb.Alignments[0], pack)
			})
		}
	}
}

var (
	exampleLine = regexp.MustCompile(`([a-z]) = ([^=]+) = ([+−]?[0-9.]+)`)
	term        = regexp.MustCompile(`([+−]?) ?(\(−[0-9.]+\)|−\(−[0-9.]+\)|[0-9.]+)(?: ÷ ([0-9.]+)| × ([0-9.]+)/([0-9.]+))?`)
)

// bracketed is a sum whose terms have one factor: ((−0.26) − 0.31) × 200/910.
var bracketed = regexp.MustCompile(`^\(((?:[^()]|\([^()]*\))*)\)(?: ÷ ([0-9.]+)| × ([0-9.]+)/([0-9.]+))$`)

// signedNumber reads a number as printed, with a true minus, brackets and all.
func signedNumber(s string) float64 {
	minus := strings.Count(s, "−")
	v := number(strings.Trim(strings.ReplaceAll(s, "−", ""), "()+"))
	if minus%2 == 1 {
		return -v
	}
	return v
}

// summed does a sum as it stands on paper: (−0.26) − 0.00 + 0.06.
func summed(s string) float64 {
	if m := bracketed.FindStringSubmatch(s); m != nil {
		sum := summed(m[1])
		if m[2] != "" {
			return sum / number(m[2])
		}
		return sum * number(m[3]) / number(m[4])
	}
	sum := 0.0
	for _, m := range term.FindAllStringSubmatch(s, -1) {
		v := signedNumber(m[2])
		if m[3] != "" {
			v /= number(m[3])
		}
		if m[4] != "" {
			v *= number(m[4]) / number(m[5])
		}
		if m[1] == "−" {
			v = -v
		}
		sum += v
	}
	return sum
}

// TestTheExampleOfAnAlignmentComesOut does the worked example again from the numbers on
// the page, line for line: what is printed behind the last = is what the line comes to.
func TestTheExampleOfAnAlignmentComesOut(t *testing.T) {
	longTest(t)
	t.Parallel()
	alignedOnPaper(t, func(t *testing.T, a *job.Alignment, pack *templates.Pack) {
		lines := exampleLine.FindAllStringSubmatch(roleText(pack, "alignment", "align-example"), -1)
		if len(lines) != len(a.Ladder) {
			t.Errorf("%d lines of the example, the ladder has %d", len(lines), len(a.Ladder))
		}
		for _, m := range lines {
			// By the figures on the page, so that nothing but its own rounding to 0.01 mm is left.
			if got, want := signedNumber(m[3]), summed(m[2]); math.Abs(got-want) > 0.0051 {
				t.Errorf("%s: %s comes to %.4f", m[0], m[2], want)
			}
		}
	})
}

// TestTheMovesOfTheExamplePutTheShaftInLine takes the readings of the example from the
// page and looks where the shaft stands by geometry alone: two straight shafts, the
// dial zeroed at the top reading twice the offset at the bottom less twice the sag of
// the bracket (published sheets for rim and face, and for reverse dials). When each pair
// of feet is moved as printed the shaft stands where it is meant to.
func TestTheMovesOfTheExamplePutTheShaftInLine(t *testing.T) {
	longTest(t)
	t.Parallel()
	dial := regexp.MustCompile(`0° top ([+−]?[0-9.]+), 90° right ([+−]?[0-9.]+), 180° bottom ([+−]?[0-9.]+), 270° left ([+−]?[0-9.]+)`)
	alignedOnPaper(t, func(t *testing.T, a *job.Alignment, pack *templates.Pack) {
		read := dial.FindAllStringSubmatch(roleText(pack, "alignment", ""), -1)
		if len(read) != 2 {
			t.Fatalf("the example has %d dials", len(read))
		}
		top, bottom := func(i int) float64 { return signedNumber(read[i][1]) }, func(i int) float64 { return signedNumber(read[i][3]) }
		of := func(text string) float64 { return number(strings.Fields(text)[0]) }
		s := a.Setup
		y0 := (bottom(0) - top(0) + 2*of(s.Sag.Text())) / 2
		slope := 0.0
		if s.Span == nil {
			// A gap that is smaller at the bottom: the shaft falls away from the hub.
			slope = -(bottom(1) - top(1)) / of(s.FaceDiameter.Text())
		} else {
			yM := -(bottom(1) - top(1) + 2*of(s.SagOther.Text())) / 2
			slope = (yM - y0) / of(s.Span.Text())
		}
		moved := 0
		text := roleText(pack, "alignment", "align-example")
		for i, f := range s.Feet {
			target := 0.0
			if s.Target != nil {
				target, _ = s.Target.Up[i].Number.Rat().Float64()
			}
			want := target - (y0 + slope*of(f.At.Text()))
			for _, m := range exampleLine.FindAllStringSubmatch(text, -1) {
				if math.Abs(signedNumber(m[3])-want) < 0.0051 {
					moved++
					break
				}
			}
		}
		if moved != len(s.Feet) {
			t.Errorf("%d of %d pairs of feet are moved to where the shaft is meant to stand", moved, len(s.Feet))
		}
	})
}

// TestAnAlignmentHasItsBoxes counts the boxes of the alignment sheet: four of each dial
// and one of each line for each set. Those as found are dashed because they are copied; they
// have boxes only where they need no table for themselves.
func TestAnAlignmentHasItsBoxes(t *testing.T) {
	longTest(t)
	t.Parallel()
	alignedOnPaper(t, func(t *testing.T, a *job.Alignment, pack *templates.Pack) {
		values, dashed := 0, 0
		for _, f := range pack.Pages.BySheet() {
			for _, it := range f.Items {
				if r, ok := it.Shape.(layout.Rect); ok && f.Sheet == "alignment" && it.Role == layout.RoleValue {
					values++
					if r.Dash > 0 {
						dashed++
					}
				}
			}
		}
		const across = 3
		sets, found := a.Tries, 0
		if (a.Tries+1)%across != 1 {
			sets, found = a.Tries+1, 4*len(a.Setup.Dials())
		}
		soft := 4 * len(a.Setup.Feet)
		if want := sets*(4*len(a.Setup.Dials())+len(a.Ladder)) + soft; values != want {
			t.Errorf("%d boxes for values, want %d", values, want)
		}
		if dashed != found {
			t.Errorf("%d boxes are copied, want %d", dashed, found)
		}
	})
}

// TestAlignmentsAreDrawnToScale measures the feet in the drawing: they lie apart as the
// file says.
func TestAlignmentsAreDrawnToScale(t *testing.T) {
	longTest(t)
	t.Parallel()
	scale := regexp.MustCompile(`Lengths to scale 1 : ([0-9.]+);`)
	alignedOnPaper(t, func(t *testing.T, a *job.Alignment, pack *templates.Pack) {
		var feet []float64
		for _, f := range pack.Pages.BySheet() {
			for _, it := range f.Items {
				if strings.HasPrefix(it.Role, "align:"+a.Mark+":foot:") {
					l, _, r, _ := it.Bounds()
					feet = append(feet, float64(l+r)/2)
				}
			}
		}
		m := scale.FindStringSubmatch(roleText(pack, "alignment", ""))
		if len(feet) != 2 || m == nil {
			t.Fatalf("%d feet are drawn, scale %v", len(feet), m)
		}
		apart := number(strings.Fields(a.Setup.Feet[1].At.Text())[0]) - number(strings.Fields(a.Setup.Feet[0].At.Text())[0])
		if got := (feet[1] - feet[0]) * number(m[1]); math.Abs(got-apart) > 0.01*apart {
			t.Errorf("the feet lie %.0f mm apart in the drawing, want %.0f", got, apart)
		}
	})
}
