package heat

import "math"

// A stepper moves bodies on in steps that grow with time, as heating slows down
// with time. After the heat is switched it begins anew with small steps, four
// of them implicit: Crank-Nicolson would ring after a jump.
type stepper struct {
	b        *bodies
	first    float64 // s
	dt       float64
	cap      float64 // longest step while the clock matters
	growth   float64
	smooth   int
	switched float64 // clock when the heat was last switched
}

// finest is the longest step as a share of the time since the heat was switched, where
// the cap is shorter: a small hub is followed for hours in no more steps than a large
// one.
const finest = 0.02

func newStepper(b *bodies, g grid) *stepper {
	m := b.of[b.stations[b.from].cell+b.nShaft]
	t := float64(sizedAt)
	diffusivity := m.Conducts.at(t) / (float64(m.Density) * m.Specific.at(t))
	first := g.step * b.r * b.r / diffusivity
	s := &stepper{b: b, first: first, cap: 10 * first, growth: g.growth}
	s.restart()
	return s
}

// restart is to be called when the heat is switched.
func (s *stepper) restart() {
	s.dt, s.smooth, s.switched = s.first, 4, s.b.clock
	s.b.forget()
}

// step does one step and reports whether it settled.
func (s *stepper) step() bool {
	theta := 0.5
	if s.smooth > 0 {
		theta = 1
		s.smooth--
	}
	ok := s.b.step(s.dt, theta)
	s.dt = math.Min(s.dt*s.growth, math.Max(s.cap, finest*(s.b.clock-s.switched)))
	return ok
}
