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
