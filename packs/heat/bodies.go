package heat

import "math"

// The grid: hub and shaft as rings along the radius and stations along the axis.
//
// Rings: face radii evenly spaced in the hub; in the shaft the thinner the nearer they are
// to the fit, for heat that has not gone far is all there. Stations: evenly spaced under the hub; on the
// shaft beyond it the first as thick as a twelfth of the fit is long, each next
// one a third thicker, until the shaft ends. The far ends of the shaft lose
// nothing: what is bolted there is warm as well. A hub without a shaft, or on one
// that ends at both its faces, is one station long.
//
// Each station grows by itself: the one where the opening is least decides, which
// is where the shaft is warmest: half way along a fit with shaft on both sides, at
// the shaft's end where there is none. The mean along a short fit would promise a
// tenth more than that.

// A grid is how finely the bodies are cut and time is stepped.
type grid struct {
	hub, shaft int     // rings
	along      int     // stations under the hub
	step       float64 // first step as a share of R²/diffusivity
	growth     float64 // of each step over the one before
}

// usualGrid was chosen so that openings and times are within a percent of a
// grid four times as fine; a test keeps it there.
var usualGrid = grid{hub: 10, shaft: 8, along: 8, step: 0.0004, growth: 1.06}

// towardsFit says how the rings of the shaft grow thinner: the thickness of the last of n is
// that of the wall divided by n to this power. With even rings, heat that was hardly in the
// shaft yet opened a hub that conducts far better 5 % too far.
const towardsFit = 1.6

// The first station beyond the hub as a share of the fit, and how much thicker
// each is than the one before.
const (
	firstBeyond = 1.0 / 12
	growsBeyond = 4.0 / 3
)

// bodies are hub and shaft at one instant. Lengths in metres, temperatures in
// °C, powers in watts.
type bodies struct {
	*net
	nShaft, nHub int       // rings
	stations     []station // from the front end of the shaft to its far end behind
	from, to     int       // stations under the hub
	joints       []int     // link of the joint at each station under the hub

	a, r, length float64 // joint radius, hub radius, fit length
	contact      Contact
	closes       float64 // opening on the diameter at which contact is made, m
	need         float64 // D, for openings, m
	apart        bool    // hub drawn off: no heat crosses any more
	reserve      float64 // kept back of the growths, see observe.go

	faceLoss  []float64 // of the skin ring at each station, without what comes through the skin
	skinPut   []float64 // put into the same ring, without what comes through the skin
	skinLink  []float64 // W/K from the ring to the skin, and on to the air
	skinFilm  []float64
	skinPower []float64 // W on the face itself

	power, depth float64 // of the source: W, m

	clock    float64
	in, lost float64 // J since the start
	started  float64 // J in the bodies at the start
	was      books   // before the last step
}

// A station is a slice across the axis.
type station struct {
	cell  int     // its innermost ring
	thick float64 // m
	place float64 // its middle, from the face of the hub that looks behind, m
}

// books are the clock and the heat counted so far.
type books struct{ clock, in, lost float64 }

// newBodies builds the grid of a pull at its start. With no shaft (nil) the hub
// is alone, as in an oven.
func newBodies(h *Hub, s *Shaft, f Fit, c Contact, air Surroundings, g grid) *bodies {
	b := &bodies{
		nHub: g.hub, contact: c,
		a: f.Diameter.metres() / 2, r: h.Outside.metres() / 2, length: h.Length.metres(),
		closes: (f.Interference + c.TouchUntil).metres(), need: f.Diameter.metres(),
	}
	along, behind, front := 1, Mm(0), Mm(0)
	if s != nil {
		b.nShaft, behind, front = g.shaft, s.Behind, s.Front
		b.reserve = reserveOf(&h.Material, &s.Material)
	}
	if behind+front > 0 {
		along = g.along
	}
	cells := b.layStations(along, beyond(front, b), beyond(behind, b))
	b.net = newNet(cells, b.linksOf(s), b.stations[len(b.stations)-1].cell, float64(air.Air))
	b.fillCells(h, s, float64(air.Film))
	copy(b.guess, b.t)
	b.findJoints()
	b.closeJoints()
	b.closeSkin()
	b.started = b.heat()
	return b
}

// beyond cuts a length of shaft beyond the hub into stations, the nearest first.
func beyond(long Mm, b *bodies) []float64 {
	var thick []float64
	sum := 0.0
	for dx := max(b.length*firstBeyond, b.a/20); sum < long.metres(); dx *= growsBeyond {
		thick = append(thick, dx)
		sum += dx
	}
	for i := range thick {
		thick[i] *= long.metres() / sum
	}
	return thick
}

// layStations numbers the cells, station by station from the front, and returns
// how many there are.
func (b *bodies) layStations(along int, front, behind []float64) int {
	cells, at := 0, -b.length
	for _, dx := range front {
		at -= dx
	}
	add := func(dx float64, rings int) {
		b.stations = append(b.stations, station{cells, dx, at + dx/2})
		at += dx
		cells += rings
	}
	for i := range front {
		add(front[len(front)-1-i], b.nShaft)
	}
	b.from = len(b.stations)
	for range along {
		add(b.length/float64(along), b.nShaft+b.nHub)
	}
	b.to = len(b.stations)
	for _, dx := range behind {
		add(dx, b.nShaft)
	}
	return cells
}

// rings is how many rings a station has.
func (b *bodies) rings(i int) int {
	if i >= b.from && i < b.to {
		return b.nShaft + b.nHub
	}
	return b.nShaft
}

// span is the inner and outer radius of a ring.
func (b *bodies) span(s *Shaft, ring int) (ri, ro float64) {
	if ring < b.nShaft {
		bore := s.Bore.metres() / 2
		face := func(i int) float64 {
			return b.a - (b.a-bore)*math.Pow(1-float64(i)/float64(b.nShaft), towardsFit)
		}
		return face(ring), face(ring + 1)
	}
	dr := (b.r - b.a) / float64(b.nHub)
	return b.a + float64(ring-b.nShaft)*dr, b.a + float64(ring-b.nShaft+1)*dr
}

// middle is the radius of a ring that has its mean temperature where that rises
// with the square of the radius, as in a shaft heated all round.
func middle(ri, ro float64) float64 { return math.Sqrt((ri*ri + ro*ro) / 2) }

// way is the resistance from one radius to another, for a flow that is known at a face
// between them: by their squares in the shaft, where what flows through grows with
// the square of the radius, by their logarithm in the hub, where much flows through
// to the shaft.
func way(r1, r2, face float64, shaft bool) float64 {
	if shaft {
		return (r2*r2 - r1*r1) / (2 * face * face)
	}
	return math.Log(r2 / r1)
}

// linksOf links each ring to the next outward and to the same one at the next
// station.
func (b *bodies) linksOf(s *Shaft) []link {
	var links []link
	for i, st := range b.stations {
		n := b.rings(i)
		for j := range n {
			ri, ro := b.span(s, j)
			if j+1 < n {
				l := link{a: st.cell + j, b: st.cell + j + 1}
				round := 2 * math.Pi * st.thick
				_, next := b.span(s, j+1)
				l.in = way(middle(ri, ro), ro, ro, j < b.nShaft) / round
				l.out = way(ro, middle(ro, next), ro, j+1 < b.nShaft) / round
				links = append(links, l)
			}
			if i+1 < len(b.stations) && j < b.rings(i+1) {
				area := math.Pi * (ro*ro - ri*ri)
				next := b.stations[i+1]
				links = append(links, link{a: st.cell + j, b: next.cell + j, in: st.thick / 2 / area, out: next.thick / 2 / area})
			}
		}
	}
	return links
}

// fillCells gives each cell its material, mass, temperature and loss to the air:
// of the skin, the faces of the hub, the shaft beyond them, and the bore of a hub
// that stands alone.
func (b *bodies) fillCells(h *Hub, s *Shaft, film float64) {
	under := b.to - b.from
	b.faceLoss, b.skinPut = make([]float64, under), make([]float64, under)
	b.skinLink, b.skinFilm, b.skinPower = make([]float64, under), make([]float64, under), make([]float64, under)
	for i, st := range b.stations {
		n := b.rings(i)
		for j := range n {
			c := st.cell + j
			ri, ro := b.span(s, j)
			area := math.Pi * (ro*ro - ri*ri)
			m, start := &h.Material, h.Start
			if j < b.nShaft {
				m, start = &s.Material, s.Start
			}
			b.of[c], b.rhoV[c] = m, float64(m.Density)*area*st.thick
			b.t[c], b.before[c] = float64(start), float64(start)
			if j >= b.nShaft {
				if i == b.from {
					b.air[c] += film * area
				}
				if i == b.to-1 {
					b.air[c] += film * area
				}
			} else if j == n-1 {
				b.air[c] += film * 2 * math.Pi * ro * st.thick
			}
		}
		if b.nShaft == 0 {
			b.air[st.cell] += film * 2 * math.Pi * b.a * st.thick // an open bore
		}
		if k := i - b.from; k >= 0 && k < under {
			b.faceLoss[k] = b.air[st.cell+n-1]
			b.skinFilm[k] = film * 2 * math.Pi * b.r * st.thick
		}
	}
}

// findJoints notes the link of the joint at each station under the hub.
func (b *bodies) findJoints() {
	if b.nShaft == 0 {
		return
	}
	for k, l := range b.links {
		for _, st := range b.stations[b.from:b.to] {
			if l.a == st.cell+b.nShaft-1 && l.b == l.a+1 {
				b.joints = append(b.joints, k)
			}
		}
	}
}

// drawOff takes the hub away: no heat crosses the joint any more.
func (b *bodies) drawOff() { b.apart = true }

// putPower sets the heat of a source, even along the hub; depth zero is all on the
// face.
func (b *bodies) putPower(watts float64, depth float64) {
	b.power, b.depth = watts, depth
	clear(b.put)
	clear(b.skinPut)
	within := depth > 0 && watts != 0
	dr := (b.r - b.a) / float64(b.nHub)
	weights, sum := make([]float64, b.nHub), 0.0
	for i := range b.nHub {
		ri, ro := b.a+float64(i)*dr, b.a+float64(i+1)*dr
		// Heat of a ring: its face area times the integral of exp(-2 x/depth).
		if within {
			weights[i] = (ri + ro) * (math.Exp(-2*(b.r-ro)/depth) - math.Exp(-2*(b.r-ri)/depth))
		}
		sum += weights[i]
	}
	for k, st := range b.stations[b.from:b.to] {
		here := watts * st.thick / b.length
		b.skinPower[k] = here
		if !within {
			continue
		}
		b.skinPower[k] = 0
		for i, w := range weights {
			b.put[st.cell+b.nShaft+i] = here * w / sum
		}
		b.skinPut[k] = b.put[st.cell+b.nShaft+b.nHub-1]
	}
}
