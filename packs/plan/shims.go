package plan

import (
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/shim"
	"matchmark/packs/units"
)

// roundShims makes the table of packs for every pack whose thickness is worked out,
// and sees that no pack of it is further off than the limit allows.
func (p *planner) roundShims() {
	for _, d := range p.job.Dims {
		if d.Shims == nil || d.LeftAt == nil {
			continue
		}
		for _, l := range d.LeftWork.Limits {
			if l.Limit == d.Left {
				p.shimRows(d, l)
			}
		}
	}
}

// shimRows makes the table for one limit.
func (p *planner) shimRows(d *job.Dim, l job.LimitLadder) {
	s, at := d.Shims.Stock, d.LimitPos()
	if l.At == nil || l.Test.Group != reading.Each {
		p.problems.Add(at, "shim-target", d.Mark+" works out two ends, and a pack is chosen for one size", "for example left: D1 - D2 + … mm +/- … mm")
		return
	}
	sum := l.At.Result()
	low, high := s.Low, s.High
	if low == nil && s.Stock.Pick {
		first, last := s.Stock.Leaves[0].Thickness, s.Stock.Leaves[len(s.Stock.Leaves)-1].Thickness
		low, high = &units.Quantity{Number: first, Unit: s.Stock.Unit}, &units.Quantity{Number: last, Unit: s.Stock.Unit}
	}
	if low == nil {
		p.problems.Add(s.At, "shim-range", "nothing says from where to where the pack of "+d.Mark+" can be, so there is no table to choose it by", "range: … to … mm, within shims:")
		return
	}
	if sum.Unit != s.Stock.Unit {
		p.problems.Add(at, "two-units", d.Mark+" works out in "+sum.Unit.Text()+", and its shims are in "+s.Stock.Unit.Text(), "write both in "+s.Stock.Unit.Text())
		return
	}
	thickest := s.Stock.Leaves[len(s.Stock.Leaves)-1].Thickness
	packs, err := s.Stock.Packs(units.Whole(0), high.Number.Add(thickest))
	if err == nil {
		d.Shims.Rows, err = shim.Rows(packs, low.Number, high.Number, sum.After, s.Round)
	}
	if err != nil {
		p.problems.Add(s.At, "shim-range", d.Mark+": "+err.Error(), "put range:, most: or round: of the shims right")
		return
	}
	if l.Test.Rule != reading.Nominal {
		return
	}
	off, may, way, round := furthest(d.Shims.Rows, l.Test)
	if off.Cmp(may) > 0 {
		unit := " " + s.Stock.Unit.Text() + " "
		limit, help := "at most "+strings.TrimPrefix(may.Text(), "+")+unit+way, []string{"name a thinner leaf, or write the tolerance that these shims can keep"}
		if may.Sign() == 0 {
			limit, help = "no "+way, append(help, "or round: "+round+" within shims:")
		}
		if most := enough(s.Stock, low.Number, high.Number, sum.After, s.Round, l.Test); most > 0 {
			help = append(help, "or most: "+strconv.Itoa(most)+" within shims:, for "+strconv.Itoa(s.Stock.Most)+" leaves do not make up all that lies between")
		}
		p.problems.Add(at, "shims-coarse", d.Mark+" may be "+limit+" than what is worked out, and the nearest pack can be "+off.Text()+unit+way, help...)
	}
}

// furthest is how far a pack of a table is off what is worked out, on the side on which that is
// more than the limit allows if there is one, with the limit, its word, and the other way to round.
func furthest(rows []shim.Row, t *reading.Test) (off, may units.Number, way, round string) {
	thinner, thicker := shim.Off(rows)
	if thicker.Cmp(t.Upper) > 0 {
		return thicker, t.Upper, "thicker", "down"
	}
	return thinner, t.Lower.Neg(), "thinner", "up"
}

// enough is how many leaves a pack must be allowed for the limit to be kept, if that is no more
// than packs have where nothing is said; 0 where leaves alone do not help.
func enough(s shim.Stock, low, high units.Number, after int, round shim.Rounding, t *reading.Test) int {
	for most := s.Most + 1; !s.Pick && most <= shim.MostLeaves; most++ {
		s.Most = most
		packs, err := s.Packs(units.Whole(0), high.Add(s.Leaves[len(s.Leaves)-1].Thickness))
		if err != nil {
			return 0
		}
		rows, err := shim.Rows(packs, low, high, after, round)
		if err != nil {
			return 0
		}
		if off, may, _, _ := furthest(rows, t); off.Cmp(may) <= 0 {
			return most
		}
	}
	return 0
}
