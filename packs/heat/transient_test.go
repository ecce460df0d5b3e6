package heat

import (
	"math"
	"testing"
)

// A solid cylinder made of a shaft in a hub of one material with perfect
// contact: the joint half way out must not show. Ends insulated.
type cylinder struct {
	*bodies
	radius, k, diffusivity float64
}

func newCylinder(cells int, start, air, film, flux float64) *cylinder {
	const k, rho, c, r = 50.0, 7800.0, 500.0, 0.1
	m := flat(k, rho, c, 12e-6)
	b := newBodies(&Hub{Outside: 200, Length: 1000, Material: m, Start: Celsius(start)}, &Shaft{Material: m, Start: Celsius(start)},
		Fit{100, 100, Measured, 0}, Contact{Perfect: true}, Surroundings{Celsius(air), Conductance(film)},
		grid{hub: cells / 2, shaft: cells / 2, slice: 0.1})
	clear(b.rings.air)
	b.faceLoss = 0
	b.putPower(flux*2*math.Pi*r*1, 0)
	return &cylinder{b, r, k, k / (rho * c)}
}

// runs steps to a Fourier number, the first steps implicit and small.
func (c *cylinder) runs(t *testing.T, fo float64, steps int) {
	t.Helper()
	end := fo * c.radius * c.radius / c.diffusivity
	dt := end / float64(steps)
	small := dt / 16
	for range 16 {
		c.must(t, small, 1)
	}
	for range steps - 1 {
		c.must(t, dt, 0.5)
	}
	near(t, "clock", c.clock, end, end*1e-9)
}

func (c *cylinder) must(t *testing.T, dt, theta float64) {
	t.Helper()
	if !c.step(dt, theta) {
		t.Fatal("no solution")
	}
}

// centre carries the two innermost rings to the axis by a parabola.
func (c *cylinder) centre() float64 {
	return c.rings.t[0] - (c.rings.t[1]-c.rings.t[0])/8
}

func TestTheYardsticksAgreeWithPublishedTables(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	first := zerosOfJ1(1)[0]
	for number, bi := range map[string]float64{
		"F121": 0.01, "F122": 0.02, "F123": 0.1, "F124": 0.2, "F125": 0.5, "F126": 1, "F127": 2, "F128": 5, "F129": 10,
	} {
		z, c := convectiveTerm(bi, 0, first)
		agree(t, all, number, z, c)
	}
	for number, bi := range map[string]float64{"F130": 0.1, "F131": 1, "F132": 10} {
		z, c := wallTerm(bi)
		agree(t, all, number, z, c)
	}
	agree(t, all, "F133", math.J0(1), math.J1(1))
	agree(t, all, "F134", math.J0(2), math.J1(2))
	agree(t, all, "F142", first0(0.1))

	// Worked example of a long shaft, cooled from 400 °C in air of 150 °C.
	bi, fo := 60*0.175/14.9, 3.95e-6*1200/(0.175*0.175)
	agree(t, all, "F135", bi)
	agree(t, all, "F136", fo)
	z, c := convectiveTerm(bi, 0, first)
	theta := c * math.Exp(-z*z*fo)
	agree(t, all, "F137", theta)
	agree(t, all, "F138", 150+250*theta)
	// The source goes on with theta rounded to 0.96.
	agree(t, all, "F140", 1-2*math.Round(100*theta)/100*math.J1(z)/z)
	agree(t, all, "F149", heatedSlab(0.5, 1))
	agree(t, all, "F151", math.Exp(-2*0.1*5))
}

// first0 is the first root for a film by the explicit formula of Yovanovich.
func first0(bi float64) float64 {
	return 2.4048 / math.Pow(1+math.Pow(2.4048/math.Sqrt(2*bi), 2.238), 1/2.238)
}

func TestTheSolverAgreesWithTheInfiniteCylinder(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	for _, c := range []struct {
		number string
		bi, fo float64
	}{{"F143", 1, 1}, {"F144", 1, 0.2}, {"F145", 5, 0.2}, {"F146", 0.1, 5}} {
		cyl := newCylinder(200, 1, 0, c.bi*50/0.1, 0)
		cyl.runs(t, c.fo, 2000)
		agree(t, all, c.number, cyl.centre(), cyl.skin())
		// Rings between, against the series.
		series := convective(c.bi, 40)
		for _, i := range []int{20, 99, 100, 170} {
			x := (float64(i) + 0.5) / 200
			near(t, c.number, cyl.rings.t[i], series(c.fo, x), 4e-5)
		}
	}
	for number, fo := range map[string]float64{"F147": 0.2, "F148": 1} {
		cyl := newCylinder(160, 0, 0, 0, 1000)
		cyl.runs(t, fo, 1200)
		unit := cyl.k / (1000 * cyl.radius)
		agree(t, all, number, cyl.centre()*unit, cyl.skin()*unit)
		near(t, number+" against the series", cyl.skin()*unit, heated(fo, 1), 3e-5)
	}
}

func TestTheSolverAgreesWithWorkedExamples(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")

	// A long shaft of 350 mm: one kilogram per metre and its heat, then the
	// temperature of its axis after twenty minutes.
	m := flat(14.9, 7900, 477, 17e-6)
	q, err := Energy(m, 760.1, 150, 400)
	if err != nil {
		t.Fatal(err)
	}
	agree(t, all, "F139", float64(q)/1000)
	shaft := newCylinder(80, 400, 150, 0.7047*50/0.1, 0)
	shaft.runs(t, 3.95e-6*1200/(0.175*0.175), 200)
	agree(t, all, "F141", shaft.centre())

	// An aluminium cylinder read off a chart, at 0.8 of its radius.
	bar := newCylinder(80, 530, 30, 0.285*50/0.1, 0)
	bar.runs(t, 1.0011, 200)
	agree(t, all, "F152", (bar.rings.t[63]+bar.rings.t[64])/2)
}

func TestRowsOfSlicesAgreeWithTheSlab(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	m := flat(50, 7800, 500, 12e-6)
	// A bar of 100 mm and 1 m² heated with 1000 W at its face.
	bar := func(fo float64) float64 {
		const n = 400
		ch := newChain(n, 0)
		dx := 0.1 / n
		for i := range n {
			ch.of[i], ch.rhoV[i] = &m, 7800*dx
			ch.in[i], ch.out[i] = dx/2, dx/2
		}
		ch.put[0] = 1000
		steps := 2000
		dt := fo * 0.01 / (50.0 / (7800 * 500)) / float64(steps)
		for i := range steps {
			theta := 0.5
			if i < 4 {
				theta = 1
			}
			ch.begin(dt)
			for range 2 {
				ch.assemble(dt, theta)
				ch.solve(theta)
				ch.accept(0)
			}
			ch.end(dt)
		}
		return (ch.t[0] + 1000*dx/2/50) * 50 / (1000 * 0.1)
	}
	agree(t, all, "F149", bar(0.5))
	agree(t, all, "F150", bar(0.05))
	near(t, "slab and endless bar at Fo 0.05", heatedSlab(0.05, 1), 2*math.Sqrt(0.05/math.Pi), 1e-5)
}

// Two bodies of one temperature each, exchanging heat through the joint alone.
func TestTwoLumpsExchangeHeatExactly(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	m := flat(1e6, 7850, 480, 12e-6)
	b := newBodies(&Hub{180, 1000, m, 200}, &Shaft{Material: m, Start: 20}, Fit{100, 100, Measured, 0},
		Contact{Touching: 3000}, Surroundings{20, 0}, usualGrid)
	for range 400 {
		if !b.step(0.05, 0.5) {
			t.Fatal("no solution")
		}
	}
	agree(t, all, "F153", b.seat(), b.meanHub())
}

// meanHub is the mean temperature of the hub's section.
func (b *bodies) meanHub() float64 {
	sum, mass := 0.0, 0.0
	for i := b.nShaft; i < len(b.rings.t); i++ {
		sum += b.rings.rhoV[i] * b.rings.t[i]
		mass += b.rings.rhoV[i]
	}
	return sum / mass
}
