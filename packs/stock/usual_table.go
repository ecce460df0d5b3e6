package stock

// The usual sizes: a hang tag of 70 by 140 with a stub of 25, a box label of 100 by 70, a bag
// label of 60 by 40, as storerooms use them (common practice, no source). A hole of 6 has
// its middle 11 below the edge.
var usual = []Stock{
	{Name: "70x140", Use: Hang, W: 70, H: 140, Stub: StubH, Corner: 3, Hole: 6, HoleAt: 11},
	{Name: "100x70", Use: Box, W: 100, H: 70, Corner: 3},
	{Name: "60x40", Use: Bag, W: 60, H: 40, Corner: 2},
}

// StubH is the height of a stub: a code with its white margin goes into it.
const StubH Mm = 25

// rollDots is the usual resolution of printers of labels on rolls: 8 dots to the
// millimetre.
const rollDots = 203

// cutGap parts labels that are cut from a page.
const cutGap Mm = 5

// On lists the usual stocks cut from pages of a size, one for each use: "70x140-a4".
func On(paper string, w, h Mm) []Stock {
	var out []Stock
	for _, u := range usual {
		u.Name += "-" + paper
		s := Fit(u, w, h)
		if stubbed := withStub(u, w, h); stubbed.PerPage() >= leastStubbed {
			s = stubbed
		}
		out = append(out, s)
	}
	return out
}

// leastStubbed is how many labels with stubs a page must hold, that paper is not wasted.
const leastStubbed = 4

// RoomForStub is the stub that goes on a label of a use and height: every hang tag has one,
// a box or bag label where it is that much higher than the usual one.
func RoomForStub(u Use, h Mm) Mm {
	if u == Hang || h >= usual[u].H+StubH-slack {
		return StubH
	}
	return 0
}

// withStub is a box label with a stub below it on a page. A hang tag has one in its
// measures; one at a bag label would be half as large as the label.
func withStub(u Stock, w, h Mm) Stock {
	if u.Use != Box {
		return Stock{}
	}
	u.H, u.Stub = u.H+StubH, StubH
	return Fit(u, w, h)
}

// Rolls lists the usual stocks on rolls, one for each use: "70x140-roll".
func Rolls() []Stock {
	var out []Stock
	for _, u := range usual {
		u.Name += "-roll"
		u.Roll, u.PageW, u.PageH, u.Across, u.Down, u.Gap, u.Resolution = true, u.W, u.H, 1, 1, 3, rollDots
		u.PitchX, u.PitchY = u.W, u.H+u.Gap
		out = append(out, u)
	}
	return out
}

// Fit lays the labels of a stock on a page, upright or on their side, whichever gives more,
// in the middle of the page, to be cut. Upright wins a tie.
func Fit(s Stock, w, h Mm) Stock {
	s.PageW, s.PageH, s.Cut = w, h, true
	up, side := grid(s, s.W, s.H), grid(s, s.H, s.W)
	side.Turned = true
	if side.PerPage() > up.PerPage() {
		return side
	}
	return up
}

// grid lays places of w by h on the page of a stock, inside of what a printer reaches
// with room for the marks.
func grid(s Stock, w, h Mm) Stock {
	along := func(room, size Mm) (n int, start Mm) {
		for size*Mm(n+1)+cutGap*Mm(n) <= room-2*(Reach+1)+slack {
			n++
		}
		return n, (room - size*Mm(n) - cutGap*Mm(max(n-1, 0))) / 2
	}
	s.PitchX, s.PitchY = w+cutGap, h+cutGap
	s.Across, s.Left = along(s.PageW, w)
	s.Down, s.Top = along(s.PageH, h)
	return s
}
