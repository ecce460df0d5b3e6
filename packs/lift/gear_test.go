package lift

import (
	"math"
	"testing"
)

// left gives what a sling keeps of its rating in its hitch.
func left(t *testing.T, s Sling, b Basis) float64 {
	t.Helper()
	rs, no := s.reductions("sling", b, 1000, 0)
	if no != nil {
		t.Fatalf("refused: %v", no)
	}
	return product(rs)
}

// shackleLeft and eyeLeft give what gear keeps at an angle.
func gearLeft(t *testing.T, h Hardware, angle float64) float64 {
	t.Helper()
	s, c := math.Sincos(radians(Degree(angle)))
	rs, no := h.reductions("gear", vec{s, 0, c})
	if no != nil {
		t.Fatalf("refused: %v", no)
	}
	return product(rs)
}

var eyebolt = Hardware{Name: "eyebolt", Kind: ShoulderEyebolt, Rated: 1000, Axis: Point{Z: 1}}

// atUse gives the weight at which the most used sling of a plan is used whole.
func atUse(t *testing.T, p Plan, w float64) float64 {
	t.Helper()
	most := 0.0
	for _, c := range compute(t, p).Components {
		if c.Field != "crane" {
			most = max(most, float64(c.Used))
		}
	}
	return w / most
}

func rate(p Plan, each float64) Plan {
	for i := range p.Legs {
		p.Legs[i].Sling.Rated = Kg(each)
	}
	return p
}

// threeAt is three legs at 120° and an angle from horizontal.
func threeAt(w, angle float64) Plan {
	p := bare(w, Point{Z: -500}, Point{X: 1000}, Point{X: -500, Y: Mm(500 * math.Sqrt(3))}, Point{X: -500, Y: Mm(-500 * math.Sqrt(3))})
	p.Aim = Degree(angle)
	return p
}

// quadAt is four legs counted as three.
func quadAt(w, angle float64) Plan {
	p := bare(w, Point{Z: -500}, Point{X: 1000}, Point{Y: 1000}, Point{X: -1000}, Point{Y: -1000})
	p.Aim, p.Sharing, p.DecidedBy, p.Reason = Degree(angle), ThreeOfFour, "A. Person", "table of the slings"
	return p
}

func TestGearAgainstOutsideValues(t *testing.T) {
	runOutside(t, "lift-gear.txt", map[string]func(*testing.T, outsideRow){
		"EN band": func(t *testing.T, r outsideRow) {
			got, _ := bandFactor(int(r.in(t, "legs")), TwoCarry, Degree(r.in(t, "angle")))
			r.compare(t, got)
		},
		"EN endless choke": func(t *testing.T, r outsideRow) {
			c, _ := hitchChoker(WireRope, EN)
			r.compare(t, 2*float64(c.Factor))
		},
		// The whole bridle at 45° and at 30° from horizontal, two legs and three.
		"EN sling table": func(t *testing.T, r outsideRow) {
			each := r.in(t, "single")
			var got []float64
			for _, p := range []Plan{flatPlan(1000, 45), flatPlan(1000, 30), threeAt(1000, 45), threeAt(1000, 30)} {
				p.Basis = EN
				got = append(got, atUse(t, rate(p, each), 1000))
			}
			r.compare(t, got...)
		},
		"EN mode": func(t *testing.T, r outsideRow) {
			s := Sling{Rated: 1, Fibre: Web, Hitch: Hitch(r.in(t, "hitch")), ChokeAngle: 135, Spread: Degree(2 * r.in(t, "half"))}
			s.Parallel = s.Spread == 0
			r.compare(t, left(t, s, EN))
		},
		"chain sling table": func(t *testing.T, r outsideRow) {
			each := r.in(t, "single")
			var got []float64
			for _, a := range []float64{60, 45, 30} {
				got = append(got, atUse(t, rate(flatPlan(1000, a), each), 1000))
			}
			for _, a := range []float64{60, 45, 30} {
				three, four := atUse(t, rate(threeAt(1000, a), each), 1000), atUse(t, rate(quadAt(1000, a), each), 1000)
				near(t, "three of four against three", four, three, 1e-6*three)
				got = append(got, four)
			}
			r.compare(t, got...)
		},
		"rope basket table": func(t *testing.T, r outsideRow) {
			var got []float64
			for _, angle := range []float64{90, 60, 45, 30} {
				s := Sling{Fibre: NaturalRope, Hitch: Basket, Spread: Degree(180 - 2*angle), Parallel: angle == 90}
				got = append(got, r.in(t, "vertical")*left(t, s, US))
			}
			r.compare(t, got...)
		},
		"US choke": func(t *testing.T, r outsideRow) {
			r.compare(t, left(t, Sling{Fibre: Fibre(r.in(t, "fibre")), Hitch: Choker, ChokeAngle: Degree(r.in(t, "angle"))}, US))
		},
		"choke angle": func(t *testing.T, r outsideRow) {
			s := Sling{Fibre: WireRope, Hitch: Choker, ChokeAngle: Degree(r.in(t, "angle"))}
			free := s
			free.ChokeAngle = 135
			r.compare(t, left(t, s, US)/left(t, free, US))
		},
		"choke example": func(t *testing.T, r outsideRow) {
			r.compare(t, r.in(t, "rating")*float64(chokeFactor(Degree(r.in(t, "angle")))))
		},
		"US basket": func(t *testing.T, r outsideRow) {
			var got []float64
			for _, half := range []Degree{0, 30, 45, 60} {
				got = append(got, left(t, Sling{Fibre: Web, Hitch: Basket, Spread: 2 * half, Parallel: half == 0}, US))
			}
			r.compare(t, got...)
		},
		// At the threshold nothing is taken off, just under it the bend is.
		"enough bend": func(t *testing.T, r outsideRow) {
			tucked := r.in(t, "tucked") == 1
			r.compare(t, float64(enoughBend(tucked)))
			s := Sling{Fibre: WireRope, Hitch: Basket, Parallel: true, Rope: 10, Around: Mm(10 * r.want[0]), HandTucked: tucked}
			near(t, "at the threshold", left(t, s, US), 2, 1e-12)
			s.Around--
			if got := left(t, s, US); got >= 2 {
				t.Errorf("just under the threshold: got %g, want under 2", got)
			}
		},
		// Two manuals print × 4 for one basket; two parts carry × 2.
		"single inclined basket, misprinted": func(t *testing.T, r outsideRow) {
			l, h := r.in(t, "L"), r.in(t, "H")
			s := Sling{Fibre: Web, Hitch: Basket, Spread: 2 * degrees(math.Acos(h/l))}
			r.compare(t, 2*left(t, s, US)*l/h)
		},
		"bend factor": func(t *testing.T, r outsideRow) {
			r.compare(t, 1/float64(bendEfficiency(Ratio(r.in(t, "bend")))))
		},
		"bend efficiency": func(t *testing.T, r outsideRow) {
			s := Sling{Fibre: WireRope, Hitch: Basket, Parallel: true, Rope: 20, Around: Mm(20 * r.in(t, "bend"))}
			r.compare(t, left(t, s, US)/2)
		},
		"shackle": func(t *testing.T, r outsideRow) {
			r.compare(t, gearLeft(t, Hardware{Kind: Shackle, OffLine: Degree(r.in(t, "angle"))}, 0))
		},
		// Legs flatter than 30° are refused, so no two stand wider than this.
		"widest legs in a bow": func(t *testing.T, r outsideRow) {
			res := compute(t, flatPlan(1000, 30))
			r.compare(t, float64(180-res.Legs[0].Angle-res.Legs[1].Angle))
		},
		// At 45° another table gives 25 %, and the lower one is taken.
		"eyebolt list": func(t *testing.T, r outsideRow) {
			got := gearLeft(t, eyebolt, r.in(t, "angle"))
			if r.in(t, "angle") == 45 {
				near(t, "at 45°", got, 0.25, 1e-12)
				if got > r.want[0] {
					t.Errorf("got %g, over the list's %g", got, r.want[0])
				}
				return
			}
			r.compare(t, got)
		},
		"eyebolt example": func(t *testing.T, r outsideRow) {
			r.compare(t, r.in(t, "rated")*gearLeft(t, eyebolt, 15), r.in(t, "rated")*gearLeft(t, eyebolt, 90))
		},
		"eyebolt at 45": func(t *testing.T, r outsideRow) {
			r.compare(t, r.in(t, "rated")*gearLeft(t, eyebolt, 45))
		},
	})
}

// Between two rungs the worse one counts; published tables say not to interpolate.
func TestNextWorseStep(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name string
		got  float64
		want float64
	}{
		{"shackle a little off line", gearLeft(t, Hardware{Kind: Shackle, OffLine: 1}, 0), 0.7},
		{"shackle past 45°", gearLeft(t, Hardware{Kind: Shackle, OffLine: 46}, 0), 0.5},
		{"eyebolt past 5°", gearLeft(t, eyebolt, 6), 0.8},
		{"eyebolt past 30°", gearLeft(t, eyebolt, 31), 0.25},
		{"choke of 59.5°", float64(chokeFactor(59.5)), 0.62},
		{"choke of 89.9°", float64(chokeFactor(89.9)), 0.74},
	} {
		if math.Abs(c.got-c.want) > 1e-12 {
			t.Errorf("%s: got %g, want %g", c.name, c.got, c.want)
		}
	}
}

// The tangents from a point to a circle: half their angle has the sine R/distance
// (Euclid III.17; any handbook of geometry).
func TestBasketRoundAShaftOpensByItsTangents(t *testing.T) {
	t.Parallel()
	s := Sling{Fibre: Web, Hitch: Basket, Around: 1000}
	near(t, "R 500 at a reach of 1000", left(t, s, US), 2*math.Cos(math.Pi/6), 1e-12)
}

func TestGearIsRefused(t *testing.T) {
	t.Parallel()
	plain := eyebolt
	plain.Kind = PlainEyebolt
	sling := Sling{Name: "s", Fibre: WireRope, Hitch: Basket}
	for _, c := range []struct {
		name, field string
		no          *Refusal
	}{
		{"plain eyebolt pulled 10° off its axis", "gear.kind", second(plain.reductions("gear", vec{math.Sin(0.1745), 0, math.Cos(0.1745)}))},
		{"eyebolt without an axis", "gear.axis", second(Hardware{Kind: ShoulderEyebolt}.reductions("gear", zUp))},
		{"shackle pulled 95° off", "gear.offline", second(Hardware{Kind: Shackle, OffLine: 95}.reductions("gear", zUp))},
		{"maker's ladder without its source", "gear.laddersource", second(Hardware{Kind: Shackle, Ladder: []Rung{{90, 0.5}}}.reductions("gear", zUp))},
		{"maker's ladder that rises", "gear.ladder", second(Hardware{Kind: Shackle, Ladder: []Rung{{10, 0.5}, {90, 0.6}}, LadderSource: "x"}.reductions("gear", zUp))},
		{"choke without its angle", "sling.chokeangle", second(Sling{Fibre: Web, Hitch: Choker}.reductions("sling", US, 1000, 0))},
		{"EN natural fibre choked", "sling.hitch", second(Sling{Fibre: NaturalRope, Hitch: Choker, ChokeAngle: 135}.reductions("sling", EN, 1000, 0))},
		{"basket without its spread", "sling.spread", second(sling.reductions("sling", US, 1000, 0))},
		{"basket parts flatter than 30°", "sling.spread", second(Sling{Fibre: Web, Hitch: Basket, Spread: 121}.reductions("sling", US, 1000, 0))},
		{"wire rope basket without its bend", "sling.around", second(Sling{Fibre: WireRope, Hitch: Basket, Parallel: true}.reductions("sling", US, 1000, 0))},
		{"wire rope on a body thinner than itself", "sling.around", second(Sling{Fibre: WireRope, Hitch: Basket, Parallel: true, Rope: 20, Around: 19}.reductions("sling", US, 1000, 0))},
		{"hook inside the body", "sling.around", second(Sling{Fibre: Web, Hitch: Basket, Around: 2100}.reductions("sling", US, 1000, 0))},
	} {
		if c.no == nil {
			t.Errorf("%s: not refused", c.name)
		} else if c.no.Field != c.field {
			t.Errorf("%s: refused at %s, want %s", c.name, c.no.Field, c.field)
		}
	}
}

func second(_ []Reduction, no *Refusal) *Refusal { return no }
