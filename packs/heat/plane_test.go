package heat

import "math"

// A second solution of the same heating, which shares nothing with the solver but
// the curves of the materials: explicit steps of plain differences on a fine mesh in
// radius and length, with conductivity times the radius of a face over the distance
// of two middles, and no matrix.
type plane struct {
	p               *Pull
	t, next         [][]float64 // [along, from the front end][ring]
	ro              []float64   // outer radius of each ring
	dz              float64
	shaft, from, to int // rings of the shaft; slices that the hub covers
	clock, dt       float64
	power           float64
	joint           float64 // W/m²K, infinite for a perfect one
}

// newPlane cuts hub, and shaft on both sides, into squares of about so many metres.
func newPlane(p *Pull, size float64) *plane { return planeOf(p, size, size) }

// planeFor has a mesh for a heating of so many seconds: the rings of the shaft are no
// thicker than a third of the way that heat goes in its metal by then. With thicker ones the
// mesh itself was 5 % off under a hub that conducts twenty times as well.
func planeFor(p *Pull, size, seconds float64) *plane {
	return planeOf(p, size, math.Min(size, math.Sqrt(diffuses(&p.Shaft.Material)*seconds)/3))
}

// planeOf cuts the hub into squares of about so many metres, the shaft into rings of another
// thickness.
func planeOf(p *Pull, size, shaft float64) *plane {
	s := &plane{p: p, joint: math.Inf(1)}
	if !p.Contact.Perfect {
		s.joint = float64(p.Contact.Touching)
	}
	bore, a, r := p.Shaft.Bore.metres()/2, p.Fit.Diameter.metres()/2, p.Hub.Outside.metres()/2
	rings := func(from, to, size float64) {
		n := int(math.Max(4, math.Round((to-from)/size)))
		for i := range n {
			s.ro = append(s.ro, from+(to-from)*float64(i+1)/float64(n))
		}
	}
	rings(bore, a, shaft)
	s.shaft = len(s.ro)
	rings(a, r, size)
	under := int(math.Max(8, math.Round(p.Hub.Length.metres()/size)))
	s.dz = p.Hub.Length.metres() / float64(under)
	s.from = int(math.Round(p.Shaft.Front.metres() / s.dz))
	s.to = s.from + under
	for range s.to + int(math.Round(p.Shaft.Behind.metres()/s.dz)) {
		row := make([]float64, len(s.ro))
		for j := range row {
			row[j] = float64(p.Shaft.Start)
			if j >= s.shaft {
				row[j] = float64(p.Hub.Start)
			}
		}
		s.t, s.next = append(s.t, row), append(s.next, make([]float64, len(s.ro)))
	}
	// Stable as long as a cell gives away less in a step than it has: the bound of a
	// square mesh, with the most that a metal of the table conducts for its heat.
	least := math.Min(s.dz, math.Min(s.width(0), s.width(s.shaft)))
	s.dt = 0.2 * least * least / (1.1 * math.Max(diffuses(&p.Hub.Material), diffuses(&p.Shaft.Material)))
	return s
}

func diffuses(m *Material) float64 {
	return m.Conducts.at(20) / (float64(m.Density) * m.Specific.at(20))
}

func (s *plane) inner(j int) float64 {
	if j == 0 {
		return s.p.Shaft.Bore.metres() / 2
	}
	return s.ro[j-1]
}

func (s *plane) width(j int) float64 { return s.ro[j] - s.inner(j) }
func (s *plane) face(j int) float64  { return math.Pi * (s.ro[j]*s.ro[j] - s.inner(j)*s.inner(j)) }

func (s *plane) has(i, j int) bool {
	return i >= 0 && i < len(s.t) && j >= 0 && j < len(s.ro) && (j < s.shaft || i >= s.from && i < s.to)
}

func (s *plane) metal(j int) *Material {
	if j < s.shaft {
		return &s.p.Shaft.Material
	}
	return &s.p.Hub.Material
}

// outward is what flows from ring j to the next one outward.
func (s *plane) outward(i, j int) float64 {
	k1, k2 := s.metal(j).Conducts.at(s.t[i][j]), s.metal(j+1).Conducts.at(s.t[i][j+1])
	per := s.width(j)/2/k1 + s.width(j+1)/2/k2
	if j == s.shaft-1 {
		per += 1 / s.joint
	}
	return (s.t[i][j] - s.t[i][j+1]) / per * 2 * math.Pi * s.ro[j] * s.dz
}

// lost is what the free faces of a cell give to the air.
func (s *plane) lost(i, j int) float64 {
	h, over := float64(s.p.Air.Film), s.t[i][j]-float64(s.p.Air.Air)
	q := 0.0
	if !s.has(i, j+1) {
		q += h * over * 2 * math.Pi * s.ro[j] * s.dz
	}
	for _, ii := range []int{i - 1, i + 1} {
		if j >= s.shaft && !s.has(ii, j) {
			q += h * over * s.face(j)
		}
	}
	return q
}

func (s *plane) step(dt float64) {
	for i := range s.t {
		for j := range s.ro {
			if !s.has(i, j) {
				continue
			}
			flow := -s.lost(i, j)
			if s.has(i, j+1) {
				flow -= s.outward(i, j)
			}
			if s.has(i, j-1) {
				flow += s.outward(i, j-1)
			}
			m := s.metal(j)
			for _, ii := range []int{i - 1, i + 1} {
				if s.has(ii, j) {
					k := m.Conducts.at((s.t[i][j] + s.t[ii][j]) / 2)
					flow += k * s.face(j) / s.dz * (s.t[ii][j] - s.t[i][j])
				}
			}
			if j == len(s.ro)-1 {
				flow += s.power / float64(s.to-s.from)
			}
			heats := float64(m.Density) * m.Specific.at(s.t[i][j]) * s.face(j) * s.dz
			s.next[i][j] = s.t[i][j] + dt*flow/heats
		}
	}
	s.t, s.next = s.next, s.t
	s.clock += dt
}

// run steps to a time.
func (s *plane) run(until float64) {
	n := math.Ceil((until - s.clock) / s.dt)
	dt := (until - s.clock) / n
	for range int(n) {
		s.step(dt)
	}
}

// mean is the mean over the rings from to before to of one slice, of f of the
// temperature.
func (s *plane) mean(i, from, to int, f func(float64) float64) float64 {
	sum, area := 0.0, 0.0
	for j := from; j < to; j++ {
		sum += s.face(j) * f(s.t[i][j])
		area += s.face(j)
	}
	return sum / area
}

// openings are the least opening along the fit, in metres, and the mean.
func (s *plane) openings() (lags, mean float64) {
	lags = math.Inf(1)
	for i := s.from; i < s.to; i++ {
		o := s.mean(i, s.shaft, len(s.ro), s.p.Hub.Material.strain) - s.mean(i, 0, s.shaft, s.p.Shaft.Material.strain)
		o *= s.p.Fit.Diameter.metres()
		lags, mean = math.Min(lags, o), mean+o/float64(s.to-s.from)
	}
	return lags, mean
}

// skin is the hottest place of the outer face.
func (s *plane) skin() float64 {
	hottest, last := math.Inf(-1), len(s.ro)-1
	round := 2 * math.Pi * s.ro[last] * s.p.Hub.Length.metres()
	for i := s.from; i < s.to; i++ {
		into := s.power/round - float64(s.p.Air.Film)*(s.t[i][last]-float64(s.p.Air.Air))
		hottest = math.Max(hottest, s.t[i][last]+into*s.width(last)/2/s.p.Hub.Material.Conducts.at(s.t[i][last]))
	}
	return hottest
}

// along is the mean temperature of the shaft's section x metres behind the hub.
func (s *plane) along(x float64) float64 {
	at := x/s.dz - 0.5 + float64(s.to)
	i := int(at)
	same := func(t float64) float64 { return t }
	near, next := s.mean(i, 0, s.shaft, same), s.mean(i+1, 0, s.shaft, same)
	return near + (next-near)*(at-float64(i))
}
