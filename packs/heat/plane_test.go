package heat

import (
	"math"
	"testing"
)

// An independent solution of the same pull in radius and length together, by
// explicit steps on a square mesh: it knows nothing of the parabola under the
// hub, the rods, or the implicit rows. Constant properties, perfect contact.
type plane struct {
	t, next    [][]float64 // [along][radius]
	dr, dz     float64
	shaft, all int // rings of the shaft, rings of shaft and hub
	from, to   int // slices that the hub covers
	steps      int
}

const planeK, planeRho, planeC = 50.0, 7850.0, 480.0

func newPlane(a, r, length, behind, front float64) *plane {
	p := &plane{dr: 0.005, dz: 0.010}
	count := func(x, d float64) int { return int(math.Round(x / d)) }
	p.shaft, p.all = count(a, p.dr), count(r, p.dr)
	p.from = count(front, p.dz)
	p.to = p.from + count(length, p.dz)
	for range p.to + count(behind, p.dz) {
		p.t = append(p.t, make([]float64, p.all))
		p.next = append(p.next, make([]float64, p.all))
	}
	return p
}

func (p *plane) has(i, j int) bool {
	return i >= 0 && i < len(p.t) && j >= 0 && j < p.all && (j < p.shaft || (i >= p.from && i < p.to))
}

// step moves on by dt with power on the skin and a film of h, air at 0.
func (p *plane) step(dt, power, h float64) {
	for i := range p.t {
		for j := range p.t[i] {
			if !p.has(i, j) {
				continue
			}
			ri, ro := float64(j)*p.dr, float64(j+1)*p.dr
			face := math.Pi * (ro*ro - ri*ri)
			flow := 0.0
			radial := func(jj int, radius float64) {
				if p.has(i, jj) {
					flow += planeK * 2 * math.Pi * radius * p.dz / p.dr * (p.t[i][jj] - p.t[i][j])
				} else if radius > 0 {
					flow -= h * 2 * math.Pi * radius * p.dz * p.t[i][j]
				}
			}
			radial(j-1, ri)
			radial(j+1, ro)
			for _, ii := range []int{i - 1, i + 1} {
				if p.has(ii, j) {
					flow += planeK * face / p.dz * (p.t[ii][j] - p.t[i][j])
				} else if j >= p.shaft {
					flow -= h * face * p.t[i][j]
				}
			}
			if j == p.all-1 {
				flow += power / float64(p.to-p.from)
			}
			p.next[i][j] = p.t[i][j] + dt*flow/(planeRho*planeC*face*p.dz)
		}
	}
	p.t, p.next = p.next, p.t
	p.steps++
}

// mean is the mean temperature under the hub of rings from to before to.
func (p *plane) mean(from, to int) float64 {
	sum, area := 0.0, 0.0
	for i := p.from; i < p.to; i++ {
		for j := from; j < to; j++ {
			w := float64(2*j + 1)
			sum += w * p.t[i][j]
			area += w
		}
	}
	return sum / area
}

// along is the mean temperature of the shaft x behind the hub.
func (p *plane) along(x float64) float64 {
	at := x/p.dz - 0.5 + float64(p.to)
	i := int(at)
	sum, area := 0.0, 0.0
	for j := range p.shaft {
		w := float64(2*j + 1)
		sum += w * (p.t[i][j]*(1-at+float64(i)) + p.t[i+1][j]*(at-float64(i)))
		area += w
	}
	return sum / area
}

// follow brings rows and plane to the same time; the plane has dt of its own.
func follow(clock *stepper, ref *plane, power, until float64) {
	const dt = 0.5
	for clock.b.clock < until-clock.dt {
		clock.step()
	}
	clock.b.step(until-clock.b.clock, 0.5)
	for float64(ref.steps)*dt < until {
		ref.step(dt, power, 12)
	}
}

// What the rows leave out are temperatures that differ along the hub. The
// opening must come out right, and a neighbour not too cold.
func TestTheRowsAgreeWithASolutionInTwoDirections(t *testing.T) {
	t.Parallel()
	const power = 15e3
	for _, c := range []struct {
		name          string
		length, front float64
	}{{"hub at the shaft end", 0.15, 0}, {"shaft on both sides", 0.15, 0.1}, {"short hub", 0.10, 0}} {
		m := flat(planeK, planeRho, planeC, 11.5e-6)
		rows := func() *stepper {
			b := newBodies(&Hub{210, Mm(c.length * 1000), m, 0}, &Shaft{Behind: 600, Front: Mm(c.front * 1000), Material: m},
				Fit{120, 0.9, Measured, 0}, Contact{Perfect: true}, Surroundings{0, 12}, usualGrid)
			b.putPower(power, 0)
			return newStepper(b, usualGrid)
		}
		opening, warm := rows(), rows()
		warm.b.hubCarriesAlong()
		ref := newPlane(0.06, 0.105, c.length, 0.6, c.front)
		for _, until := range []float64{20, 40, 80, 160, 240} {
			follow(opening, ref, power, until)
			want := 0.12 * 11.5e-6 * (ref.mean(ref.shaft, ref.all) - ref.mean(0, ref.shaft))
			near(t, c.name+", opening", opening.b.opening(), want, 0.02*want)
		}
		follow(warm, ref, power, 240)
		warm.b.putPower(0, 0)
		warm.restart()
		got, want := 0.0, 0.0
		for until := 300.0; until <= 2400; until += 100 {
			follow(warm, ref, 0, until)
			got, want = math.Max(got, warm.b.along(0.085)), math.Max(want, ref.along(0.085))
		}
		if got < want || got > 1.08*want {
			t.Errorf("%s, neighbour: at its warmest %.1f K, in two directions %.1f K", c.name, got, want)
		}
	}
}
