package layout

import (
	number "math/bits"
	"sync"
)

// The modules of a QR symbol (ISO/IEC 18004, 7.7 to 7.9). A row of at most 41 modules is one
// number, module x its bit x, so that the marks of all eight masks are counted by whole
// rows: that is where the time of a symbol goes.

const qrMost = 17 + 4*6

// A qrGrid is a square of modules, by rows and by columns.
type qrGrid struct{ rows, cols [qrMost]uint64 }

func (g *qrGrid) set(x, y int) {
	g.rows[y] |= 1 << x
	g.cols[x] |= 1 << y
}

func (g *qrGrid) has(x, y int) bool { return g.rows[y]>>x&1 != 0 }

// A qrFrame is what all symbols of one version have in common: what stands where no data
// is, where data lies in its order, and the masks of the data.
type qrFrame struct {
	n          int // modules along a side
	fixed, own qrGrid
	order      [][2]uint8
	masks      [8]qrGrid
}

// qrFrames are by the version, the first for version 1.
var qrFrames = func() (f [6]func() *qrFrame) {
	for i := range f {
		f[i] = sync.OnceValue(func() *qrFrame { return newQRFrame(i + 1) })
	}
	return f
}()

func newQRFrame(version int) *qrFrame {
	f := &qrFrame{n: 17 + 4*version}
	put := func(x, y int, dark bool) {
		if x < 0 || y < 0 || x >= f.n || y >= f.n {
			return
		}
		f.own.set(x, y)
		if dark {
			f.fixed.set(x, y)
		}
	}
	rings := func(cx, cy, out int, light func(ring int) bool) {
		for dy := -out; dy <= out; dy++ {
			for dx := -out; dx <= out; dx++ {
				put(cx+dx, cy+dy, !light(max(dx, -dx, dy, -dy)))
			}
		}
	}
	for _, c := range [][2]int{{3, 3}, {f.n - 4, 3}, {3, f.n - 4}} {
		rings(c[0], c[1], 4, func(ring int) bool { return ring == 2 || ring == 4 })
	}
	if version > 1 {
		rings(f.n-7, f.n-7, 2, func(ring int) bool { return ring == 1 })
	}
	for i := 8; i < f.n-8; i++ {
		put(i, 6, i%2 == 0)
		put(6, i, i%2 == 0)
	}
	for i := range 15 { // room for the format
		for _, at := range f.formatAt(i) {
			put(at[0], at[1], false)
		}
	}
	put(8, f.n-8, true)
	f.lay()
	return f
}

// formatAt is where bit i of the format stands, the lowest first, twice (figure 25).
func (f *qrFrame) formatAt(i int) [2][2]int {
	switch {
	case i < 6:
		return [2][2]int{{8, i}, {f.n - 1 - i, 8}}
	case i < 8:
		return [2][2]int{{8, i + 1}, {f.n - 1 - i, 8}}
	case i == 8:
		return [2][2]int{{7, 8}, {8, f.n - 7}}
	}
	return [2][2]int{{14 - i, 8}, {8, f.n - 15 + i}}
}

// lay finds the order of the data, two columns at a time from the right, up and down in turn,
// and its masks (table 10).
func (f *qrFrame) lay() {
	up := true
	for right := f.n - 1; right > 0; right -= 2 {
		if right == 6 { // the column of the timing pattern
			right--
		}
		for i := range f.n {
			y := i
			if up {
				y = f.n - 1 - i
			}
			for _, x := range [2]int{right, right - 1} {
				if f.own.has(x, y) {
					continue
				}
				f.order = append(f.order, [2]uint8{uint8(x), uint8(y)})
				for m, dark := range [8]bool{(x+y)%2 == 0, y%2 == 0, x%3 == 0, (x+y)%3 == 0, (y/2+x/3)%2 == 0,
					x*y%2+x*y%3 == 0, (x*y%2+x*y%3)%2 == 0, ((x+y)%2+x*y%3)%2 == 0} {
					if dark {
						f.masks[m].set(x, y)
					}
				}
			}
		}
		up = !up
	}
}

// qrFormat is the level and the mask with their check bits (annex C).
func qrFormat(level qrLevel, mask int) int {
	v := [2]int{qrQ: 3, qrH: 2}[level]<<3 | mask
	rest := v
	for range 10 {
		rest = rest<<1 ^ rest>>9*0x537
	}
	return (v<<10 | rest) ^ 0x5412
}

// symbol lays data, under the mask that gives it the fewest marks, the first of several.
func (f *qrFrame) symbol(level qrLevel, data []byte) qrGrid {
	laid := f.fixed
	for i, at := range f.order {
		if i/8 < len(data) && data[i/8]>>(7-i%8)&1 != 0 {
			laid.set(int(at[0]), int(at[1]))
		}
	}
	var best qrGrid
	fewest := -1
	for m := range f.masks {
		g := laid
		for i := range f.n {
			g.rows[i] ^= f.masks[m].rows[i]
			g.cols[i] ^= f.masks[m].cols[i]
		}
		format := qrFormat(level, m)
		for i := range 15 {
			if format>>i&1 != 0 {
				for _, at := range f.formatAt(i) {
					g.set(at[0], at[1])
				}
			}
		}
		if marks := g.marks(f.n); fewest < 0 || marks < fewest {
			best, fewest = g, marks
		}
	}
	return best
}

// marks are what tells against a mask (table 11): runs, squares of four alike, what looks like
// a finder, and how far dark and light are from even. As in the library, a run counts from
// six modules on, where the standard counts from five: symbols stay as they were printed.
func (g *qrGrid) marks(n int) int {
	sum, dark := 0, 0
	pairs := uint64(1)<<(n-1) - 1
	for _, lines := range [2]*[qrMost]uint64{&g.rows, &g.cols} {
		for _, r := range lines[:n] {
			same := ^(r ^ r>>1) & pairs
			long := same & (same >> 1) & (same >> 2) & (same >> 3) & (same >> 4)
			sum += number.OnesCount64(long) + 3*number.OnesCount64(long&^(long<<1))
			sum += 40 * finders(r, n)
		}
	}
	for y := range n {
		a := g.rows[y]
		dark += number.OnesCount64(a)
		if y > 0 {
			b := g.rows[y-1]
			sum += 3 * number.OnesCount64(^(a^a>>1)&^(b^b>>1)&^(a^b)&pairs)
		}
	}
	off := n*n/2 - dark
	return sum + 10*(max(off, -off)/(n*n/20))
}

// finders counts what looks like a finder in a row: dark, light, three dark, light, dark, with
// four light before or behind it, or at the end. What was counted is not looked at again.
func finders(r uint64, n int) (count int) {
	if r&^(r>>1)&(r>>2)&(r>>3)&(r>>4)&^(r>>5)&(r>>6) == 0 {
		return 0
	}
	last := 0
	for x := range n {
		last = (last<<1 | int(r>>x&1)) & 0x7ff
		if last == 0x05d || last == 0x5d0 || x == n-1 && last&0x7f == 0x5d {
			count++
			last = 0xff
		}
	}
	return count
}

// squares is a grid with its quiet zone, for each module whether it is dark.
func (g *qrGrid) squares(n int) [][]bool {
	side := n + 2*QuietModules
	all := make([]bool, side*side)
	out := make([][]bool, side)
	for y := range out {
		out[y] = all[y*side : (y+1)*side : (y+1)*side]
	}
	for y := range n {
		for x := range n {
			out[y+QuietModules][x+QuietModules] = g.has(x, y)
		}
	}
	return out
}
