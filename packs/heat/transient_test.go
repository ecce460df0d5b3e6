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

// A bar is what a cylinder is made of.
type bar struct{ radius, k, rho, c float64 }

var testBar = bar{0.1, 50, 7800, 500}

func newCylinder(cells int, start, air, film, flux float64) *cylinder {
	return testBar.cylinder(cells, start, air, film, flux)
}

func (x bar) cylinder(cells int, start, air, film, flux float64) *cylinder {
	m := flat(x.k, x.rho, x.c, 12e-6)
	d := Mm(2000 * x.radius)
	b := newBodies(&Hub{Outside: d, Length: 1000, Material: m, Start: Celsius(start)}, &Shaft{Material: m, Start: Celsius(start)},
		Fit{Diameter: d / 2, Interference: d / 2}, Contact{Perfect: true}, Surroundings{Celsius(air), Conductance(film)},
		grid{hub: cells / 2, shaft: cells / 2, along: 1})
	clear(b.air)
	clear(b.faceLoss)
	b.putPower(flux*2*math.Pi*x.radius, 0)
	return &cylinder{b, x.radius, x.k, x.k / (x.rho * x.c)}
}

// runs steps on by a Fourier number, the first steps implicit and small.
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
}

func (c *cylinder) must(t *testing.T, dt, theta float64) {
	t.Helper()
	if !c.step(dt, theta) {
		t.Fatal("no solution")
	}
}

// at is where the temperature of a ring stands, as a share of the radius.
func (c *cylinder) at(ring int) float64 {
	return middle(c.span(&Shaft{}, ring)) / c.radius
}

// centre carries the two innermost rings to the axis by a parabola.
func (c *cylinder) centre() float64 {
	x, y := c.at(0)*c.at(0), c.at(1)*c.at(1)
	return c.t[0] - (c.t[1]-c.t[0])*x/(y-x)
}

// section is the mean temperature of the whole section.
func (c *cylinder) section() float64 { return c.mean(0, c.nShaft+c.nHub) }

// A mode is the slowest way in which a body loses heat, as the solver shows it once
// the others have died: theta = first exp(-root² Fo) at the centre, and what the
// surface and the mean of the section are of that.
type mode struct{ root, first, surface, mean float64 }

// modeOf cools a cylinder by a film and reads its slowest mode between two times.
func (x bar) modeOf(t *testing.T, film float64) mode {
	t.Helper()
	const early = 1
	late := min(20, 0.5+0.2*x.k/(film*x.radius))
	c := x.cylinder(200, 1, 0, film, 0)
	c.runs(t, early, 1500)
	one := c.centre()
	m := mode{surface: c.skin() / one, mean: c.section() / one}
	start := c.clock
	c.runs(t, late, 1500)
	fo := (c.clock - start) * c.diffusivity / (x.radius * x.radius)
	m.root = math.Sqrt(math.Log(one/c.centre()) / fo)
	m.first = one * math.Exp(m.root*m.root*early)
	return m
}

// The published coefficients of the series are those of what the solver does.
func TestTheSolverHasTheRootsOfPublishedTables(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	film := func(bi float64) float64 { return bi * testBar.k / testBar.radius }
	for number, bi := range map[string]float64{
		"F121": 0.01, "F122": 0.02, "F123": 0.1, "F124": 0.2, "F125": 0.5, "F126": 1, "F127": 2, "F128": 5, "F129": 10,
	} {
		m := testBar.modeOf(t, film(bi))
		agree(t, all, number, m.root, m.first)
		if number == "F123" {
			agree(t, all, "F142", m.root)
		}
	}
	for number, bi := range map[string]float64{"F130": 0.1, "F131": 1, "F132": 10} {
		root, first := slabMode(bi)
		agree(t, all, number, root, first)
	}
	// The film that makes the root 1 or 2, by the printed J0 and J1: then the surface
	// has J0 of the centre, and the mean 2 J1/root.
	for number, root := range map[string]float64{"F133": 1, "F134": 2} {
		j0, j1 := printed(t, all[number], 0), printed(t, all[number], 1)
		m := testBar.modeOf(t, film(root*j1/j0))
		near(t, number+" root", m.root, root, 4e-4)
		agree(t, all, number, m.surface, m.mean*m.root/2)
	}
}

// Worked example of a long shaft of 350 mm, cooled from 400 °C in air of 150 °C for
// twenty minutes: what its author works out with one term of the series is what the
// solver's slowest mode gives, carried back to that time.
func TestTheSolverAgreesWithTheWorkedShaft(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	shaft := bar{0.175, 14.9, 7900, 477}
	shaft.rho = shaft.k / (3.95e-6 * shaft.c) // the diffusivity of the example
	m := shaft.modeOf(t, 60)
	// z J1(z) = Bi J0(z), with J0 and J1 as the profile shows them.
	agree(t, all, "F135", m.root*m.root*m.mean/2/m.surface)
	c := shaft.cylinder(80, 400, 150, 60, 0)
	c.runs(t, 3.95e-6*1200/(0.175*0.175), 400)
	near(t, "clock", c.clock, 1200, 1e-6)
	agree(t, all, "F141", c.centre())
	// Twenty minutes on, once the mode is alone, it has fallen by root² Fo.
	later := shaft.cylinder(80, 400, 150, 60, 0)
	later.runs(t, 1, 400)
	one, from := later.centre()-150, later.clock
	for later.clock < from+1200 {
		later.must(t, 1, 0.5)
	}
	fo := math.Log(one/(later.centre()-150)) / (m.root * m.root)
	agree(t, all, "F136", fo)
	theta := m.first * math.Exp(-m.root*m.root*fo)
	agree(t, all, "F137", theta)
	agree(t, all, "F138", 150+250*theta)
	// The source goes on with theta rounded to 0.96.
	agree(t, all, "F140", 1-math.Round(100*theta)/100*m.mean)
	q, err := Energy(flat(14.9, 7900, 477, 17e-6), 760.1, 150, 400)
	if err != nil {
		t.Fatal(err)
	}
	agree(t, all, "F139", float64(q)/1000)
}

// A body that conducts without hindrance cools as one lump.
func TestTheSolverCoolsALump(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	lump := bar{0.1, 50e6, 7800, 500}
	c := lump.cylinder(20, 1, 0, 0.1*50/0.1, 0)
	c.runs(t, 5e6, 400) // Fo 5 of a bar that conducts 50 W/m K
	agree(t, all, "F151", c.centre())
}

func TestTheSolverAgreesWithTheInfiniteCylinder(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	for _, c := range []struct {
		number string
		bi, fo float64
	}{{"F143", 1, 1}, {"F144", 1, 0.2}, {"F145", 5, 0.2}, {"F146", 0.1, 5}} {
		cyl := newCylinder(300, 1, 0, c.bi*50/0.1, 0)
		cyl.runs(t, c.fo, 2000)
		agree(t, all, c.number, cyl.centre(), cyl.skin())
		// Rings between, against the series.
		series := convective(c.bi, 40)
		for _, i := range []int{20, 149, 150, 270} {
			near(t, c.number, cyl.t[i], series(c.fo, cyl.at(i)), 4e-5)
		}
	}
	for number, fo := range map[string]float64{"F147": 0.2, "F148": 1} {
		cyl := newCylinder(300, 0, 0, 0, 1000)
		cyl.runs(t, fo, 1200)
		unit := cyl.k / (1000 * cyl.radius)
		agree(t, all, number, cyl.centre()*unit, cyl.skin()*unit)
		near(t, number+" against the series", cyl.skin()*unit, heated(fo, 1), 3e-5)
	}
	// An aluminium cylinder read off a chart, at 0.8 of its radius.
	c := newCylinder(80, 530, 30, 0.285*50/0.1, 0)
	c.runs(t, 1.0011, 200)
	for i := range 80 {
		if c.at(i) >= 0.8 {
			agree(t, all, "F152", c.t[i])
			break
		}
	}
}

// slab is a bar of 100 mm and 1 m², insulated at its end, as cells from its face.
func slab(cells int, film float64) *net {
	m := flat(50, 7800, 500, 12e-6)
	dx := 0.1 / float64(cells)
	var links []link
	for i := range cells - 1 {
		links = append(links, link{a: i, b: i + 1, in: dx / 2, out: dx / 2})
	}
	n := newNet(cells, links, 0, 0)
	for i := range cells {
		n.of[i], n.rhoV[i] = &m, 7800*dx
	}
	if film > 0 {
		n.air[0] = 1 / (1/film + dx/2/50)
	}
	return n
}

func (n *net) coolFor(fo float64, steps int) {
	dt := fo * 0.01 / (50.0 / (7800 * 500)) / float64(steps)
	one := func(dt, theta float64) {
		n.begin(dt)
		n.assemble(dt, theta)
		for range 2 {
			n.turn(dt, theta)
		}
		n.end(dt)
	}
	for range 16 {
		one(dt/16, 1)
	}
	for range steps - 1 {
		one(dt, 0.5)
	}
}

// slabMode is the slowest mode of a wall cooled by a film: its root, and its share in
// the middle, where this bar is insulated.
func slabMode(bi float64) (root, first float64) {
	const cells = 300
	n := slab(cells, bi*50/0.1)
	for i := range n.t {
		n.t[i], n.before[i] = 1, 1
	}
	mid := func() float64 { return n.t[cells-1] + (n.t[cells-1]-n.t[cells-2])/8 }
	n.coolFor(1, 2000)
	one := mid()
	n.coolFor(1, 2000)
	root = math.Sqrt(math.Log(one / mid()))
	return root, one * math.Exp(root*root)
}

func TestRowsOfSlicesAgreeWithTheSlab(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	// Heated with 1000 W at its face.
	face := func(fo float64) float64 {
		n := slab(400, 0)
		n.put[0] = 1000
		n.coolFor(fo, 2000)
		return (n.t[0] + 1000*0.1/400/2/50) * 50 / (1000 * 0.1)
	}
	agree(t, all, "F149", face(0.5))
	agree(t, all, "F150", face(0.05))
}

// Two bodies of one temperature each, exchanging heat through the joint alone.
func TestTwoLumpsExchangeHeatExactly(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	m := flat(1e6, 7850, 480, 12e-6)
	b := newBodies(&Hub{Outside: 180, Length: 1000, Material: m, Start: 200}, &Shaft{Material: m, Start: 20}, Fit{Diameter: 100, Interference: 100},
		Contact{Touching: 3000}, Surroundings{20, 0}, usualGrid)
	for range 400 {
		if !b.step(0.05, 0.5) {
			t.Fatal("no solution")
		}
	}
	agree(t, all, "F153", b.seatAt(b.lags()), b.mean(b.nShaft, b.nHub))
}

// Every row of the file is compared by one of the tests above.
func TestEveryRowOfTheTransientIsUsed(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-transient.txt")
	for n := 121; n <= 153; n++ {
		delete(all, "F"+string(rune('0'+n/100))+string(rune('0'+n/10%10))+string(rune('0'+n%10)))
	}
	allAsked(t, all)
}
