package heat

// A net of finite volumes.
//
//	T_i  temperature of a cell, °C;  V_i its volume, m³
//	H(T) heat in a volume since 0 °C, J/m³;  k(T) conductivity, W/m K
//	R_ij = in/k(T_i) + x + out/k(T_j)   resistance of the link of two cells, K/W
//	V_i dH/dt = sum over links (T_j - T_i)/R_ij + a_i (T_air - T_i) + P_i
//
// in and out are the lengths over area of the half cells (for rings ln(r2/r1)/(2
// pi L), exact for steady flow), x an extra resistance such as a joint, a_i the
// loss to the air, P_i the heat put in.
//
// In time: one step weighs old and new flows with theta (1 fully implicit, 1/2
// Crank-Nicolson) and is solved by Newton's method in H, so that the heat
// balance closes whatever the specific heat does. Conductivities, and the heat
// capacities in the matrix, are those of the first guess of the step, so that
// the matrix (matrix.go) is factored once in each step.
// Source: Patankar, Numerical Heat Transfer and Fluid Flow, ch. 4, from memory.
// Validity: any material curves that rise. Units: SI throughout.

type link struct {
	a, b    int     // cells, a before b
	in, out float64 // 1/m
	extra   float64 // K/W; infinite for parts that do not touch
}

type net struct {
	of       []*Material
	rhoV     []float64 // mass of a cell, kg
	air      []float64 // W/K
	put      []float64 // W
	links    []link
	airAt    float64
	t        []float64 // temperatures at the end of the last step
	guess    []float64 // temperatures that Newton's method is at
	before   []float64 // temperatures one step earlier, for the first guess
	lastStep float64

	// Of the step being solved.
	g       []float64 // of each link, W/K
	resists []float64 // of each cell, m K/W
	heatOld []float64
	flowOld []float64 // into each cell at the old temperatures, W
	flow    []float64 // into each cell at the guess, W

	*matrix
}

// newNet makes a net of cells and links, in that order; the caller fills in
// volumes and temperatures. The cell end is one at the end of the net.
func newNet(cells int, links []link, end int, airAt float64) *net {
	block := make([]float64, 10*cells)
	next := func() []float64 {
		s := block[:cells:cells]
		block = block[cells:]
		return s
	}
	n := &net{
		of: make([]*Material, cells), links: links, airAt: airAt,
		rhoV: next(), air: next(), put: next(), t: next(), guess: next(), before: next(),
		resists: next(), heatOld: next(), flowOld: next(), flow: next(),
		g: make([]float64, len(links)), matrix: newMatrix(cells, links, end),
	}
	return n
}

// begin starts a step: it keeps the old heat and guesses the new temperatures
// by going on as in the last step.
func (n *net) begin(dt float64) {
	ahead := 0.0
	if n.lastStep > 0 {
		ahead = dt / n.lastStep
	}
	for i, m := range n.of {
		t := n.t[i]
		n.heatOld[i] = n.rhoV[i] * m.Specific.integral(t)
		n.guess[i] = t + ahead*(t-n.before[i])
	}
}

// end takes the guess as the temperatures of the new time.
func (n *net) end(dt float64) {
	copy(n.before, n.t)
	copy(n.t, n.guess)
	n.lastStep = dt
}

// forget makes the next step start from a flat guess, after the heat was
// switched and the old slope means nothing.
func (n *net) forget() { n.lastStep = 0 }

// flows adds what flows into each cell at the temperatures t to into.
func (n *net) flows(t, into []float64) {
	for i := range t {
		into[i] = n.air[i]*(n.airAt-t[i]) + n.put[i]
	}
	for k := range n.links {
		l := &n.links[k]
		q := n.g[k] * (t[l.b] - t[l.a])
		into[l.a] += q
		into[l.b] -= q
	}
}

// assemble fills the matrix of a step and factors it.
func (n *net) assemble(dt, theta float64) {
	clear(n.m)
	for i, m := range n.of {
		n.m[n.diagonal[i]] = n.rhoV[i]*m.Specific.at(n.guess[i])/dt + theta*n.air[i]
		n.resists[i] = 1 / m.Conducts.at((n.t[i]+n.guess[i])/2)
	}
	for k := range n.links {
		l := &n.links[k]
		g := 1 / (l.in*n.resists[l.a] + l.extra + l.out*n.resists[l.b])
		n.g[k] = g
		n.m[n.diagonal[l.a]] += theta * g
		n.m[n.diagonal[l.b]] += theta * g
		n.m[n.beside[k]] -= theta * g
	}
	n.factor()
	n.flows(n.t, n.flowOld)
}

// turn does one turn of Newton's method and returns the largest change it made.
func (n *net) turn(dt, theta float64) float64 {
	n.flows(n.guess, n.flow)
	for i, m := range n.of {
		heat := n.rhoV[i] * m.Specific.integral(n.guess[i])
		n.x[n.rowOf[i]] = theta*n.flow[i] + (1-theta)*n.flowOld[i] - (heat-n.heatOld[i])/dt
	}
	n.solve()
	worst := 0.0
	for i, row := range n.rowOf {
		c := n.x[row]
		n.guess[i] += c
		worst = max(worst, c, -c)
	}
	return worst
}

// heat is the heat in the net since 0 °C, in joules.
func (n *net) heat() float64 {
	sum := 0.0
	for i, m := range n.of {
		sum += n.rhoV[i] * m.Specific.integral(n.t[i])
	}
	return sum
}

// gained is the heat put in and that lost to the air over the last step.
func (n *net) gained(dt, theta float64) (in, lost float64) {
	for i := range n.t {
		mean := theta*n.t[i] + (1-theta)*n.before[i]
		in += n.put[i] * dt
		lost += n.air[i] * (mean - n.airAt) * dt
	}
	return in, lost
}
