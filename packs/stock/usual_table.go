package stock

// The usual sizes: a hang tag of 70 by 140 with a stub of 25, a box label of 100 by 70, a bag
// label of 60 by 40, as storerooms use them (common practice, no source). A hole of 6 has
// its middle 11 below the edge.
var usual = []Stock{
	{Name: "70x140", Use: Hang, W: 70, H: 140, Corner: 3, Hole: 6, HoleAt: 11},
	{Name: "100x70", Use: Box, W: 100, H: 70, Corner: 3},
	{Name: "60x40", Use: Bag, W: 60, H: 40, Corner: 2},
}

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
		out = append(out, Fit(u, w, h))
	}
	return out
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
