package heat

// One row of finite volumes.
//
//	T_i  temperature of a cell, °C;  V_i its volume, m³
//	H(T) heat in a volume since 0 °C, J/m³;  k(T) conductivity, W/m K
//	R_i = in_i/k(T_i) + x_i + out_i/k(T_i+1)   resistance from cell i to i+1, K/W
//	V_i dH/dt = (T_i-1 - T_i)/R_i-1 + (T_i+1 - T_i)/R_i + a_i (T_air - T_i) + P_i - w_i Q
//
// in_i and out_i are the lengths over area of the half cells (for a ring
// ln(r2/r1)/(2 pi L), exact for steady flow), x_i an extra resistance such as a
// joint, a_i the loss to the air, P_i the heat put in, Q a flow drawn from the
// row in the shares w_i.
//
// In time: one step weighs old and new flows with theta (1 fully implicit, 1/2
// Crank-Nicolson) and is solved by Newton's method in H, so that the heat
// balance closes whatever the specific heat does. Conductivities are those of
// the middle of the step.
// Source: Patankar, Numerical Heat Transfer and Fluid Flow, ch. 4, from memory.
// Validity: any material curves that rise. Units: SI throughout.

type chain struct {
	of       []*Material
	rhoV     []float64 // mass of a cell, kg
	in, out  []float64 // of the link from a cell to the next, 1/m
	extra    []float64 // of the same link, K/W
	air      []float64 // W/K
	put      []float64 // W
	share    []float64 // of the flow drawn
	airAt    float64
	t        []float64 // temperatures at the end of the last step
	guess    []float64 // temperatures that Newton's method is at
	before   []float64 // temperatures one step earlier, for the first guess
	lastStep float64

	// Of the step being solved.
	g, d, p, q []float64
	heatOld    []float64
}

// newChain makes a row of n cells at one temperature; the caller fills in
// volumes and links.
func newChain(n int, airAt float64) *chain {
	// All columns share one block: a plan makes a hundred rows.
	block := make([]float64, 15*n)
	next := func() []float64 {
		s := block[:n:n]
		block = block[n:]
		return s
	}
	return &chain{
		of: make([]*Material, n), airAt: airAt,
		rhoV: next(), in: next(), out: next(), extra: next(), air: next(), put: next(), share: next(),
		t: next(), guess: next(), before: next(),
		g: next(), d: next(), p: next(), q: next(), heatOld: next(),
	}
}

// begin starts a step: it keeps the old heat and guesses the new temperatures
// by going on as in the last step.
func (ch *chain) begin(dt float64) {
	ahead := 0.0
	if ch.lastStep > 0 {
		ahead = dt / ch.lastStep
	}
	for i, m := range ch.of {
		t := ch.t[i]
		ch.heatOld[i] = ch.rhoV[i] * m.Specific.integral(t)
		ch.guess[i] = t + ahead*(t-ch.before[i])
	}
}

// end takes the guess as the temperatures of the new time.
func (ch *chain) end(dt float64) {
	copy(ch.before, ch.t)
	copy(ch.t, ch.guess)
	ch.lastStep = dt
}

// forget makes the next step start from a flat guess, after the heat was
// switched and the old slope means nothing.
func (ch *chain) forget() { ch.lastStep = 0 }

// assemble fills the equations of one Newton turn: the links g, the diagonal d
// and the right side p. What is drawn from the row is not in them.
func (ch *chain) assemble(dt, theta float64) {
	n := len(ch.t)
	for i := range n - 1 {
		k1 := ch.of[i].Conducts.at((ch.t[i] + ch.guess[i]) / 2)
		k2 := ch.of[i+1].Conducts.at((ch.t[i+1] + ch.guess[i+1]) / 2)
		ch.g[i] = 1 / (ch.in[i]/k1 + ch.extra[i] + ch.out[i]/k2)
	}
	for i, m := range ch.of {
		gu := ch.guess[i]
		c := ch.rhoV[i] * m.Specific.at(gu) / dt
		heat := ch.rhoV[i] * m.Specific.integral(gu)
		sum := ch.air[i]
		old := ch.air[i]*(ch.airAt-ch.t[i]) + ch.put[i]
		if i > 0 {
			sum += ch.g[i-1]
			old += ch.g[i-1] * (ch.t[i-1] - ch.t[i])
		}
		if i < n-1 {
			sum += ch.g[i]
			old += ch.g[i] * (ch.t[i+1] - ch.t[i])
		}
		ch.d[i] = c + theta*sum
		ch.p[i] = c*gu - (heat-ch.heatOld[i])/dt + (1-theta)*old + theta*(ch.put[i]+ch.air[i]*ch.airAt)
		ch.q[i] = ch.share[i]
	}
}

// solve turns p and q into the answers to both right sides: the temperatures
// without a flow drawn, and what one watt drawn in the shares takes off them.
func (ch *chain) solve(theta float64) {
	n := len(ch.d)
	for i := 1; i < n; i++ {
		a := -theta * ch.g[i-1]
		f := a / ch.d[i-1]
		ch.d[i] -= f * a
		ch.p[i] -= f * ch.p[i-1]
		ch.q[i] -= f * ch.q[i-1]
	}
	ch.p[n-1] /= ch.d[n-1]
	ch.q[n-1] /= ch.d[n-1]
	for i := n - 2; i >= 0; i-- {
		a := theta * ch.g[i]
		ch.p[i] = (ch.p[i] + a*ch.p[i+1]) / ch.d[i]
		ch.q[i] = (ch.q[i] + a*ch.q[i+1]) / ch.d[i]
	}
}

// accept sets the guess to the answer with the flow drawn (theta-weighted part
// of the new time plus what of the old time stays) and returns the largest
// change it made.
func (ch *chain) accept(drawn float64) float64 {
	worst := 0.0
	for i := range ch.guess {
		t := ch.p[i] - drawn*ch.q[i]
		worst = max(worst, t-ch.guess[i], ch.guess[i]-t)
		ch.guess[i] = t
	}
	return worst
}

// heat is the heat in the row since 0 °C, in joules.
func (ch *chain) heat() float64 {
	sum := 0.0
	for i, m := range ch.of {
		sum += ch.rhoV[i] * m.Specific.integral(ch.t[i])
	}
	return sum
}

// gained is the heat put in less that lost to the air over the last step.
func (ch *chain) gained(dt, theta float64) (in, lost float64) {
	for i := range ch.t {
		mean := theta*ch.t[i] + (1-theta)*ch.before[i]
		in += ch.put[i] * dt
		lost += ch.air[i] * (mean - ch.airAt) * dt
	}
	return in, lost
}
