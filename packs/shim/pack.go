package shim

// Which packs can be made, and which is the nearest
//
// All thicknesses are whole numbers of the finest step that any of them has. The
// fewest leaves for every sum are found leaf by leaf, thickest first: with the
// leaves so far, a sum s takes k of the next leaf t when (best of s − k·t) + k is
// fewer than before; k runs to what is in hand and to what a pack may have. This
// is exact: every choice of leaves is looked at through its sums (the bounded
// change-making problem, solved by the usual table of sums).
//
// Symbols: t thickness of a leaf, s sum, k pieces of one leaf. Unit: that of the
// stock. Validity: ranges up to mostSteps steps. Refused: see doc.go.

import (
	"errors"
	"math/big"
	"strconv"

	"matchmark/packs/units"
)

// mostSteps is the largest range in steps of the finest leaf: 200 mm in
// hundredths.
const mostSteps = 20000

// A Pack is one thickness that can be made.
type Pack struct {
	Thickness units.Number
	Leaves    []Leaf // thickest first, each with how many
}

// Pieces is how many leaves the pack has.
func (p Pack) Pieces() int {
	n := 0
	for _, l := range p.Leaves {
		n += l.Count
	}
	return n
}

// Packs lists all thicknesses from low to high that can be made, thinnest first,
// each by the fewest leaves, and among those by the thickest. The empty pack
// counts where low is 0. The error says why there is no such list.
func (s Stock) Packs(low, high units.Number) ([]Pack, error) {
	if s.Pick {
		return s.picks(low, high)
	}
	scale, decimals := s.scale()
	whole := func(n units.Number) int {
		r := new(big.Rat).Mul(n.Rat(), scale)
		return int(new(big.Int).Quo(r.Num(), r.Denom()).Int64())
	}
	if new(big.Rat).Mul(high.Rat(), scale).Cmp(big.NewRat(mostSteps, 1)) > 0 {
		return nil, errors.New("up to " + high.Text() + " in steps of " + s.Leaves[0].Thickness.Step().Text() + " is more than a table can hold")
	}
	top := whole(high)
	best := make([][]int, top+1) // pieces of each leaf, nil where the sum cannot be made
	best[0] = make([]int, len(s.Leaves))
	for i := len(s.Leaves) - 1; i >= 0; i-- {
		best = s.with(best, i, whole(s.Leaves[i].Thickness))
	}
	var out []Pack
	for sum, pieces := range best {
		at := new(big.Rat).Quo(new(big.Rat).SetInt64(int64(sum)), scale)
		if pieces == nil || at.Cmp(low.Rat()) < 0 {
			continue
		}
		p := Pack{Thickness: units.Exact(at, decimals)}
		for i := len(pieces) - 1; i >= 0; i-- {
			if pieces[i] > 0 {
				p.Leaves = append(p.Leaves, Leaf{s.Leaves[i].Thickness, pieces[i]})
			}
		}
		out = append(out, p)
	}
	if len(out) == 0 {
		return nil, errors.New("no pack from " + low.Text() + " to " + high.Text() + " can be made of these leaves")
	}
	return out, nil
}

// with adds pieces of one more leaf to every sum.
func (s Stock) with(best [][]int, leaf, t int) [][]int {
	most := s.Most
	if have := s.Leaves[leaf].Count; have > 0 && have < most {
		most = have
	}
	out := make([][]int, len(best))
	for sum := range best {
		fewest := s.Most + 1
		for k := 0; k <= min(most, sum/t); k++ { // few of the thin ones first: where the count is the same they win
			before := best[sum-k*t]
			if before == nil {
				continue
			}
			if n := total(before) + k; n < fewest {
				fewest = n
				out[sum] = append([]int{}, before...)
				out[sum][leaf] = k
			}
		}
	}
	return out
}

func total(pieces []int) int {
	n := 0
	for _, k := range pieces {
		n += k
	}
	return n
}

// scale is how many steps one unit has when every leaf is a whole number of steps,
// with the decimals that sums are written with.
func (s Stock) scale() (scale *big.Rat, decimals int) {
	steps := big.NewInt(1)
	for _, l := range s.Leaves {
		d := l.Thickness.Rat().Denom()
		gcd := new(big.Int).GCD(nil, nil, steps, d)
		steps.Mul(steps, new(big.Int).Quo(d, gcd))
		decimals = max(decimals, l.Thickness.Decimals())
	}
	return new(big.Rat).SetInt(steps), decimals
}

// picks lists the thicknesses of a graded set within a range.
func (s Stock) picks(low, high units.Number) ([]Pack, error) {
	var out []Pack
	for _, l := range s.Leaves {
		if l.Thickness.Cmp(low) >= 0 && l.Thickness.Cmp(high) <= 0 {
			out = append(out, Pack{l.Thickness, []Leaf{{l.Thickness, 1}}})
		}
	}
	if len(out) == 0 {
		return nil, errors.New("none of the set lies from " + low.Text() + " to " + high.Text())
	}
	return out, nil
}

// A Row is one line of the table: whatever is worked out from From to To takes the
// pack. Both ends belong to it.
type Row struct {
	From, To units.Number
	Pack     Pack
}

// A Rounding says which way a thickness goes that lies between two packs.
type Rounding uint8

const (
	// Nearest goes to the nearer one, from the middle to the thinner.
	Nearest Rounding = iota
	// Up goes to the thicker one.
	Up
	// Down goes to the thinner one.
	Down
)

// MostRows is how many lines a table of packs may have on paper.
const MostRows = 60

// Rows gives the table for what is worked out from low to high in steps of so many
// decimals, of packs as Packs gives them. A pack that no value takes has no row.
// The error tells that there are too many rows, or values that no pack is for:
// those above the thickest pack when rounding up, below the thinnest when rounding
// down.
func Rows(packs []Pack, low, high units.Number, decimals int, how Rounding) ([]Row, error) {
	step := units.Exact(big.NewRat(1, 1), decimals).Step()
	var rows []Row
	from := low.Round(decimals, units.Up)
	for i, p := range packs {
		to := high.Round(decimals, units.Down)
		switch {
		case how == Up:
			to = p.Thickness.Round(decimals, units.Down)
		case i+1 < len(packs) && how == Down:
			if to = packs[i+1].Thickness.Round(decimals, units.Down); to.Cmp(packs[i+1].Thickness) == 0 {
				to = to.Sub(step)
			}
		case i+1 < len(packs):
			middle := p.Thickness.Add(packs[i+1].Thickness).Quo(units.Whole(2))
			to = middle.Round(decimals, units.Down)
		}
		if how == Down && i == 0 && p.Thickness.Cmp(from) > 0 {
			return nil, errors.New("the thinnest pack is " + p.Thickness.Text() + ", and " + from.Text() + " goes down from there")
		}
		if to.Cmp(high) > 0 {
			to = high.Round(decimals, units.Down)
		}
		if to.Cmp(from) < 0 {
			continue
		}
		rows = append(rows, Row{from, to, p})
		from = to.Add(step)
	}
	switch {
	case len(rows) > MostRows:
		return nil, errors.New("the table of packs has " + strconv.Itoa(len(rows)) + " lines; paper takes " + strconv.Itoa(MostRows))
	case from.Cmp(high) <= 0:
		return nil, errors.New("the thickest pack is " + packs[len(packs)-1].Thickness.Text() + ", and " + high.Text() + " goes up from there")
	}
	return rows, nil
}

// Off is the most that a pack of the table is thinner than what was worked out, and
// the most that one is thicker; neither is negative.
func Off(rows []Row) (thinner, thicker units.Number) {
	for _, r := range rows {
		if off := r.To.Sub(r.Pack.Thickness); off.Cmp(thinner) > 0 {
			thinner = off
		}
		if off := r.Pack.Thickness.Sub(r.From); off.Cmp(thicker) > 0 {
			thicker = off
		}
	}
	return thinner, thicker
}
