package lift

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// The statics a second time, apart from the closed forms of tension.go, rest.go and
// fourlegs.go: the balance of forces and moments of a rigid load on legs that only
// pull, written as a linear program. The largest pull of a leg is reached where no
// more legs pull than the balance takes (the fundamental theorem of linear
// programming), so every set of legs is tried: its pulls by least squares, and
// kept where they balance the load and none of them pushes.

// most gives the largest x[k] with a x = b and x not below zero. ok is false where
// no x does that.
func most(a [][]float64, b []float64, k int) (best float64, ok bool) {
	n := len(a[0])
	for set := 1; set < 1<<n; set++ {
		var legs []int
		for j := range n {
			if set>>j&1 == 1 {
				legs = append(legs, j)
			}
		}
		x, off := fitted(a, b, legs)
		if off > 1e-7 || slices.Min(x) < -1e-7 {
			continue
		}
		ok = true
		for i, j := range legs {
			if j == k {
				best = max(best, x[i])
			}
		}
	}
	return best, ok
}

// fitted solves a x = b in the columns named, by orthogonal columns (Gram and
// Schmidt), and gives how far off the balance stays. Columns that depend on each
// other are off without end.
func fitted(a [][]float64, b []float64, columns []int) (x []float64, off float64) {
	n := len(columns)
	q, r := make([][]float64, n), make([][]float64, n)
	x = make([]float64, n)
	rest := append([]float64(nil), b...)
	along := func(u, v []float64) (sum float64) {
		for i := range u {
			sum += u[i] * v[i]
		}
		return sum
	}
	for i, c := range columns {
		q[i], r[i] = make([]float64, len(a)), make([]float64, n)
		for row := range a {
			q[i][row] = a[row][c]
		}
		for k := range i {
			r[k][i] = along(q[k], q[i])
			for row := range a {
				q[i][row] -= r[k][i] * q[k][row]
			}
		}
		r[i][i] = math.Sqrt(along(q[i], q[i]))
		if r[i][i] < 1e-9 {
			return x, math.Inf(1)
		}
		for row := range a {
			q[i][row] /= r[i][i]
		}
		x[i] = along(q[i], rest)
		for row := range a {
			rest[row] -= x[i] * q[i][row]
		}
	}
	for i := n - 1; i >= 0; i-- {
		for k := i + 1; k < n; k++ {
			x[i] -= r[i][k] * x[k]
		}
		x[i] /= r[i][i]
	}
	return x, math.Sqrt(along(rest, rest))
}

// equilibrium writes the balance of the load as it hangs: three forces and three
// moments about its centre of gravity, in shares of the weight.
func equilibrium(r *Result) (a [][]float64, b []float64) {
	g := vecOf(r.Drawing.CoG)
	far := float64(r.HookHeight) - g.z
	a = make([][]float64, 6)
	for _, l := range r.Legs {
		u := vecOf(l.From).sub(vecOf(l.To)).unit()
		turn := vecOf(l.To).sub(g).cross(u).by(1 / far)
		for i, v := range []float64{u.x, u.y, u.z, turn.x, turn.y, turn.z} {
			a[i] = append(a[i], v)
		}
	}
	return a, []float64{0, 0, 1, 0, 0, 0}
}

// without leaves the columns of slack legs empty: they cannot pull.
func without(r *Result, a [][]float64) [][]float64 {
	out := make([][]float64, len(a))
	for i, row := range a {
		for j, v := range row {
			if r.Legs[j].Slack > lengthSlack {
				v = 0
			}
			out[i] = append(out[i], v)
		}
	}
	return out
}

// drawnInHand is a load on legs of lengths in hand: off from those that hang it
// level by up to far, or by nothing.
func drawnInHand(t *rapid.T, n int, far float64) Plan {
	p := drawnBridle(t, n)
	level := mustCompute(t, p)
	p.HookHeight = 0
	for i := range p.Legs {
		p.Legs[i].Length = level.Legs[i].Length + Mm(rapid.Float64Range(-far, far).Draw(t, "off"))
	}
	return p
}

// The closed forms and the program agree on what each leg may have to carry: two,
// three and four legs, level or not.
func TestClosedFormsAgreeWithTheLinearProgram(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		r := mustCompute(t, drawnInHand(t, rapid.IntRange(2, 4).Draw(t, "legs"), rapid.SampledFrom([]float64{0, 60}).Draw(t, "far")))
		a, b := equilibrium(r)
		for i, l := range r.Legs {
			share, ok := most(a, b, i)
			if !ok {
				t.Fatal("the position found is none of balance")
			}
			if want := share * float64(r.Gross); math.Abs(float64(l.Tension)-want) > 1e-5*float64(r.Gross) {
				t.Fatalf("leg %d carries %g by the closed form and %g by the program", i, l.Tension, want)
			}
		}
	})
}

// Whatever sharing is named, no leg is counted with less than equilibrium with the
// stated lengths gives it, the slack legs pulling nothing.
func TestNoConventionLowersALoad(t *testing.T) {
	t.Parallel()
	slack := 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawnInHand(t, 4, 60)
		p.Sharing = rapid.SampledFrom([]Sharing{ThreeOfFour, Skew}).Draw(t, "sharing")
		if p.Sharing == Skew {
			p.SkewFactor = Ratio(rapid.Float64Range(leastSkew, 2).Draw(t, "skew"))
		}
		p.Load.CoGTolerance = Point{X: Mm(rapid.Float64Range(0, 30).Draw(t, "within"))}
		r := mustCompute(t, p)
		all, b := equilibrium(r)
		a := without(r, all)
		uneven := false
		for i, l := range r.Legs {
			uneven = uneven || l.Slack > lengthSlack
			share, ok := most(a, b, i)
			if !ok {
				t.Fatal("the tight legs do not hold the load")
			}
			if l.Slack <= lengthSlack && uneven {
				slack++
			}
			if want := share * float64(r.Gross); anySlack(r) && float64(l.Tension) < want-1e-6*float64(r.Gross) {
				t.Fatalf("leg %d is counted with %g and carries %g", i, l.Tension, want)
			}
			if l.High < l.Tension {
				t.Fatalf("leg %d: the most within the tolerance, %g, is under %g", i, l.High, l.Tension)
			}
		}
		if uneven && !cautioned(r, UnevenLegs) {
			t.Fatalf("a slack leg under a named sharing: no caution among %+v", r.Cautions)
		}
	})
	if slack == 0 {
		t.Error("no drawn load had a slack leg")
	}
}

func anySlack(r *Result) bool {
	for _, l := range r.Legs {
		if l.Slack > lengthSlack {
			return true
		}
	}
	return false
}

// oneLongLeg is four slings for 450 kg on picks ±600 and ±400, one of them 12 mm
// longer than the others.
func oneLongLeg(sharing Sharing, weight float64) Plan {
	p := inHand(weight, Point{Z: -300}, []float64{2000, 2000, 2000, 2012},
		Point{X: 600, Y: 400}, Point{X: -600, Y: 400}, Point{X: -600, Y: -400}, Point{X: 600, Y: -400})
	p.Sharing, p.DecidedBy, p.Reason = sharing, "A. Person", "slings of one lot"
	if sharing == Skew {
		p.SkewFactor = 1.25
	}
	return rate(p, 450)
}

// By hand: the diagonal of picks is 721.1 mm long each way, so the hook stands
// sqrt(2000² - 721.1²) = 1865.5 mm over them, and the two legs that are tight on the
// other diagonal carry W/2 × 2000/1865.5 each: 549.0 kg of 1024.2 kg. It stood on the
// sheet as 366 kg, a third of the load in each of four legs.
func TestOneLongLegOfFour(t *testing.T) {
	t.Parallel()
	h := math.Sqrt(2000*2000 - 600*600 - 400*400)
	for _, sharing := range []Sharing{TwoCarry, ThreeOfFour, Skew} {
		r := compute(t, oneLongLeg(sharing, 1024.2))
		near(t, "the tight diagonal", float64(r.Legs[0].Tension), 1024.2/2*2000/h, 1e-6)
		near(t, "its other end", float64(r.Legs[2].Tension), 1024.2/2*2000/h, 1e-6)
		if got := r.Legs[0].Tension.Up(); got != "550 kg" {
			t.Errorf("the message says %s", got)
		}
		if used := component(t, r, "legs[0].sling").Used; used < 1.2 || !cautioned(r, Overloaded) {
			t.Errorf("a sling for 450 kg is used %s", used.Percent())
		}
	}
	// Legs of one length are what the convention is for.
	even := oneLongLeg(ThreeOfFour, 1024.2)
	even.Legs[3].Length = 2000
	near(t, "four equal legs", float64(compute(t, even).Legs[0].Tension), 1024.2/4*4/3*2000/h, 1e-6)
	// With one slack an EN bridle is rated by the band of two legs.
	en := oneLongLeg(ThreeOfFour, 1024.2)
	en.Basis = EN
	near(t, "EN, one slack", float64(component(t, compute(t, en), "legs").Allowed), 1.4*450, 1e-9)
	en.Legs[3].Length = 2000
	near(t, "EN, four equal", float64(component(t, compute(t, en), "legs").Allowed), 2.1*450, 1e-9)
}
