package main

import (
	"math"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/templates"
)

// roleText joins the texts of one sheet with a role, or all of them, in the order of the
// pages, their blanks made plain.
func roleText(pack *templates.Pack, sheet, role string) string {
	var out []string
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != sheet {
			continue
		}
		for _, it := range f.Items {
			if t, ok := it.Shape.(layout.Text); ok && (role == "" || it.Role == role) {
				out = append(out, t.S)
			}
		}
	}
	return strings.Join(strings.Fields(strings.ReplaceAll(strings.Join(out, " "), "\u00a0", " ")), " ")
}

// tightenedOnPaper composes every definition that has joints with a class, on both
// papers.
func tightenedOnPaper(t *testing.T, visit func(t *testing.T, jb *job.Job, pack *templates.Pack)) {
	t.Helper()
	for _, file := range []string{filepath.Join(startersDir, "storm-pump.yaml"), filepath.Join(startersDir, "bevel-gearbox.yaml"), filepath.Join(startersDir, "triplex-pump.yaml"), filepath.Join(goodDir, "joints.yaml")} {
		for _, paper := range papers {
			t.Run(filepath.Base(file)+" "+paper.Name, func(t *testing.T) {
				jb, pack := composedFile(t, file, templates.Options{Paper: paper})
				visit(t, jb, pack)
			})
		}
	}
}

// number reads a figure as printed, its thousands apart.
func number(s string) float64 {
	v, err := strconv.ParseFloat(strings.ReplaceAll(s, " ", ""), 64)
	if err != nil {
		return math.NaN()
	}
	return v
}

// A figure as printed, with its thousands apart.
const printed = `([0-9]+(?: [0-9]{3})*(?:\.[0-9]+)?)`

// sameFigures reports whether two figures of four digits are the same.
func sameFigures(got, want float64) bool { return math.Abs(got-want) <= 1e-3*math.Abs(want) }

// TestWorkingsOfJointsComeOut does every formula on the tightening sheets again with the
// numbers printed below it for each joint. Formulas: ISO 898-1 for the stress area and proof load, any
// machinery handbook for the others.
func TestWorkingsOfJointsComeOut(t *testing.T) {
	longTest(t)
	t.Parallel()
	forms := []struct {
		name, formula string
		find          *regexp.Regexp
		does          func(n []float64) float64
	}{
		{"stress area", "0.9382 P)²", regexp.MustCompile(`: d = ` + printed + ` mm, P = ` + printed + ` mm, As = ` + printed + ` mm²`),
			func(n []float64) float64 { return math.Pi / 4 * math.Pow(n[0]-0.9382*n[1], 2) }},
		{"stress area, unified", "0.9743 P)²", regexp.MustCompile(`: d = ` + printed + ` mm, P = ` + printed + ` mm, As = ` + printed + ` mm²`),
			func(n []float64) float64 { return 0.7854 * math.Pow(n[0]-0.9743*n[1], 2) }},
		{"proof load", "Fp = As Sp", regexp.MustCompile(`: As = ` + printed + ` mm², Sp = ` + printed + ` MPa, Fp = ` + printed + ` N`),
			func(n []float64) float64 { return n[0] * n[1] }},
		{"preload", "F = T/(K d)", regexp.MustCompile(`: T = ` + printed + ` N·m, K = ` + printed + `, d = ` + printed + ` mm, F = ` + printed + ` N`),
			func(n []float64) float64 { return n[0] / (n[1] * n[2] / 1000) }},
		{"pull", "F = p A", regexp.MustCompile(`: p = ` + printed + ` MPa, A = ` + printed + ` mm², F = ` + printed + ` N`),
			func(n []float64) float64 { return n[0] * n[1] }},
		{"torque", "T = K d F", regexp.MustCompile(`: K = ` + printed + `, d = ` + printed + ` mm, F = ` + printed + ` N, T = ` + printed + ` N·m`),
			func(n []float64) float64 { return n[0] / 1000 * n[1] * n[2] }},
		{"stress", "σ = F/As", regexp.MustCompile(`: F = ` + printed + ` N, As = ` + printed + ` mm², σ = ` + printed + ` MPa`),
			func(n []float64) float64 { return n[0] / n[1] }},
	}
	met := map[string]int{}
	tightenedOnPaper(t, func(t *testing.T, _ *job.Job, pack *templates.Pack) {
		text := roleText(pack, "tightening", "working")
		for _, f := range forms {
			_, numbers, worked := strings.Cut(text, f.formula)
			if strings.Contains(numbers, f.formula) {
				t.Errorf("%s: the formula stands twice on the sheet", f.name)
			}
			for _, next := range forms {
				if worked {
					numbers, _, _ = strings.Cut(numbers, next.formula)
				}
			}
			for _, m := range f.find.FindAllStringSubmatch(numbers, -1) {
				var n []float64
				for _, s := range m[1:] {
					n = append(n, number(s))
				}
				met[f.name]++
				slack := sameFigures(n[len(n)-1], f.does(n))
				if strings.HasPrefix(f.name, "stress area") {
					// Three figures, as ISO 898-1 has it.
					slack = math.Abs(n[2]-f.does(n)) <= 0.006*n[2]
				}
				if !slack {
					t.Errorf("%s: %q comes to %.6g", f.name, m[0], f.does(n))
				}
			}
		}
	})
	for _, f := range forms {
		if met[f.name] == 0 {
			t.Errorf("no sheet works out the %s", f.name)
		}
	}
}

// TestWhatATorqueDoesIsToldOnTheSafeSide reads the sentences of the sheet and holds
// them against the workings: preload down, share of the proof stress up, the scatter to
// both sides, the same in pounds (4.448 222 N to the pound, NIST SP 811).
func TestWhatATorqueDoesIsToldOnTheSafeSide(t *testing.T) {
	longTest(t)
	t.Parallel()
	const lbf = 4.4482216152605
	says := regexp.MustCompile(`Each then presses with about ` + printed + ` kN \(` + printed + ` lbf\)\. One bolt may be as low as ` + printed + ` kN \([^)]*\) and as high as ` + printed + ` kN \([^)]*\)(?:: a wrench feels friction, not pull)? \(` + printed + ` % .*? That is ` + printed + ` % of what the bolt may carry: ` + printed + ` MPa \([^)]*\), and its proof stress is ` + printed + ` MPa`)
	found := 0
	tightenedOnPaper(t, func(t *testing.T, jb *job.Job, pack *templates.Pack) {
		text := roleText(pack, "tightening", "")
		for _, m := range says.FindAllStringSubmatch(text, -1) {
			found++
			kN, pounds, low, high, scatter := number(m[1]), number(m[2]), number(m[3]), number(m[4]), number(m[5])/100
			share, stress, proof := number(m[6]), number(m[7]), number(m[8])
			switch {
			case pounds > kN*1000/lbf*1.006 || pounds < kN*1000/lbf*0.994:
				t.Errorf("%v kN is not %v lbf", kN, pounds)
			case low > kN*(1-scatter)*1.01 || high < kN*(1+scatter)*0.999:
				t.Errorf("%v kN with %v to either side is not %v to %v", kN, scatter, low, high)
			case share < 100*stress/proof*0.99 || share > 100*stress/proof*1.01:
				t.Errorf("%v of %v MPa is not %v %%", stress, proof, share)
			}
		}
		for _, j := range jb.Joints {
			if j.Result != nil && float64(j.Result.Share) > 1 {
				t.Errorf("%s is printed at %v of its proof stress", j.Mark, j.Result.Share)
			}
		}
	})
	if found < 20 {
		t.Errorf("%d joints say what their torque does, there are more", found)
	}
}

// drawnOrder gives the middles of the circles of a joint on the tightening sheet by
// their numbers in the order, in millimetres of paper.
func drawnOrder(pack *templates.Pack, mark string) map[int]layout.Point {
	out := map[int]layout.Point{}
	for _, f := range pack.Pages.BySheet() {
		for _, it := range f.Items {
			at, ok := strings.CutPrefix(it.Role, "joint:"+mark+":")
			if !ok || f.Sheet != "tightening" {
				continue
			}
			n, _ := strconv.Atoi(at)
			l, top, r, b := it.Bounds()
			out[n] = layout.Point{X: (l + r) / 2, Y: (top + b) / 2}
		}
	}
	return out
}

// TestOrdersAreDrawnToScale measures the drawings of orders with a rule: every number
// stands once, crosswise the second lies opposite the first, outward none is nearer to
// the middle than the one before, and the size is that of the file.
func TestOrdersAreDrawnToScale(t *testing.T) {
	longTest(t)
	t.Parallel()
	dist := func(a, b layout.Point) float64 { return math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y)) }
	scales := regexp.MustCompile(`To scale 1 : ([0-9.]+)\.`)
	drawn := 0
	tightenedOnPaper(t, func(t *testing.T, jb *job.Job, pack *templates.Pack) {
		met := scales.FindAllStringSubmatch(roleText(pack, "tightening", ""), -1)
		for _, j := range jb.Joints {
			at := drawnOrder(pack, j.Mark)
			if len(at) == 0 {
				continue
			}
			drawn++
			var numbers []int
			var all []layout.Point
			for n, p := range at {
				numbers, all = append(numbers, n), append(all, p)
			}
			slices.Sort(numbers)
			if numbers[0] != 1 || numbers[len(numbers)-1] != j.Count() || len(numbers) != j.Count() {
				t.Errorf("%s is drawn with the numbers %v", j.Mark, numbers)
				continue
			}
			wide := 0.0
			for _, p := range all {
				for _, q := range all {
					wide = max(wide, dist(p, q))
				}
			}
			want := 0.0
			for _, p := range j.Order.Places {
				for _, q := range j.Order.Places {
					want = max(want, math.Hypot(float64(p.X-q.X), float64(p.Y-q.Y)))
				}
			}
			if !slices.ContainsFunc(met, func(m []string) bool { return math.Abs(want/number(m[1])-wide) < 0.1 }) {
				t.Errorf("%s is %.1f mm wide on paper and %.1f mm on the machine, and no scale says so", j.Mark, wide, want)
			}
			middle := layout.Point{}
			for _, p := range all {
				middle.X, middle.Y = middle.X+p.X/layout.Mm(len(all)), middle.Y+p.Y/layout.Mm(len(all))
			}
			if j.Layout.Method == 1 && len(at)%2 == 0 && dist(layout.Point{X: (at[1].X + at[2].X) / 2, Y: (at[1].Y + at[2].Y) / 2}, middle) > 0.3 { // crosswise
				t.Errorf("%s: number 2 does not lie opposite number 1", j.Mark)
			}
			if j.Layout.Method == 2 && j.Layout.Shape == 4 { // outward on a split line
				for n := 2; n <= len(at); n++ {
					if math.Abs(float64(at[n].X-middle.X)) < math.Abs(float64(at[n-1].X-middle.X))-0.1 {
						t.Errorf("%s: number %d lies farther inside than number %d", j.Mark, n, n-1)
					}
				}
			}
		}
	})
	if drawn < 20 {
		t.Errorf("%d orders are drawn, there are more", drawn)
	}
}

// TestEveryFastenerHasATickInEveryRound counts the boxes of the tightening sheet: those of the
// rounds, and of the last that is tightened at once one more in each further try of a step that
// goes round again until what is asked in words, and does nothing else.
func TestEveryFastenerHasATickInEveryRound(t *testing.T) {
	longTest(t)
	t.Parallel()
	tightenedOnPaper(t, func(t *testing.T, jb *job.Job, pack *templates.Pack) {
		want := map[any]int{}
		for _, j := range jb.Joints {
			for _, s := range jb.Sections {
				for _, st := range s.Steps {
					if slices.ContainsFunc(st.Tighten, func(f job.Fastening) bool { return f.Joint == j }) {
						want[j] += j.Count() * (max(len(j.Rounds), 1) + furtherRounds(j, st))
					}
				}
			}
		}
		all := 0
		for _, n := range want {
			all += n
		}
		got := 0
		for _, f := range pack.Pages.BySheet() {
			for _, it := range f.Items {
				if f.Sheet == "tightening" && it.Role == layout.RoleTick {
					got++
				}
			}
		}
		if got != all {
			t.Errorf("%d boxes to tick, want %d", got, all)
		}
	})
}

// furtherRounds is how many rounds more a joint has on its sheet for further tries of a step.
func furtherRounds(j *job.Joint, st *job.Step) int {
	if st.Until == nil || st.Until.Dim != nil || len(st.EachTry) > 0 {
		return 0
	}
	set := false // by a wrench, in the last round that does not wait
	for _, r := range j.Rounds {
		if r.Kind == joint.AgainAfter || r.Kind == joint.AgainRunning {
			break
		}
		set = r.Setting != nil
	}
	if !set {
		return 0
	}
	return st.Tries - 1
}
