package packs

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/shim"
	"matchmark/packs/units"
)

// readShims reads the leaves or the graded set of a part.
func (b *builder) readShims(p *job.Part, dp *def.Part) {
	ds := dp.Shims
	if ds == nil {
		return
	}
	s := &job.ShimStock{At: ds.At, Round: map[string]shim.Rounding{"up": shim.Up, "down": shim.Down}[ds.Round.Value]}
	if ds.Leaves.Written() == ds.Pick.Written() {
		b.problems.Add(ds.At, "leaves-or-pick", "shims are leaves, several in one pack, or a graded set of which one is picked: one of the two",
			"shims: {leaves: 0.05 and 0.10 and 0.50 mm}", "shims: {pick: 2.00 or 2.05 or 2.10 mm}")
		return
	}
	most := shim.MostLeaves
	if ds.Most.Written() {
		if n, ok := wholeNumber(ds.Most); ok && n > 0 && n <= maxLeaves {
			most = n
		} else {
			b.problems.Add(ds.Most.At, "leaves", "a pack has 1 to 20 leaves, not "+ds.Most.Value, "most: 4")
		}
	}
	var err error
	t := ds.Leaves
	if ds.Pick.Written() {
		t = ds.Pick
		s.Stock, err = shim.ParsePick(t.Value)
	} else {
		s.Stock, err = shim.ParseLeaves(t.Value, most)
	}
	if err != nil {
		b.fault(t, err)
		return
	}
	if ds.Range.Written() {
		low, high, err := units.ParseRange(ds.Range.Value)
		switch {
		case err != nil:
			b.fault(ds.Range, err, "range: 0.20 to 0.80 mm")
		case low.Unit != s.Stock.Unit:
			b.problems.Add(ds.Range.At, "two-units", "the range is in "+low.Unit.Text()+" and the shims are in "+s.Stock.Unit.Text(), "write the range in "+s.Stock.Unit.Text())
		default:
			s.Low, s.High = &low, &high
		}
	}
	p.Shims = s
}

// maxLeaves is the most leaves that one pack may have on paper.
const maxLeaves = 20

// readShimPart ties a reading to the shims that it is the thickness of.
func (b *builder) readShimPart(d *job.Dim, dd *def.Dimension) {
	t := dd.Shims
	if !t.Written() {
		return
	}
	found := b.partsAt(t, d.Place)
	switch {
	case len(found) != 1:
		if len(found) > 1 {
			b.problems.Add(t.At, "which-place", source.Quote(t.Value)+" stands at several places", "name the place: "+found[0].Place.Mark(found[0].Key))
		}
		return
	case found[0].Shims == nil:
		if b.partDef(found[0]).Shims == nil {
			b.problems.Add(t.At, "no-shims", source.Quote(t.Value)+" does not say what shims there are", "shims: {leaves: 0.05 and 0.10 and 0.50 mm}, at the part")
		}
		return
	case dd.Formula.Written() || d.Positions.Boxes() > 1:
		b.problems.Add(t.At, "one-pack", d.Mark+" is one pack of shims, so it is one reading, the sum of its leaves", "left: D1 - D2 +/- 0.03 mm, and a dimension for each pack")
		return
	}
	s := found[0].Shims
	step, thickest := units.Number{}, units.Number{}
	for _, l := range s.Stock.Leaves {
		if step.Sign() == 0 || l.Thickness.Step().Cmp(step) < 0 {
			step = l.Thickness.Step()
		}
		thickest = l.Thickness
	}
	if s.High != nil {
		thickest = s.High.Number
	}
	d.Shims = &job.Shimmed{
		Part: found[0], Stock: s, Step: units.Quantity{Number: step, Unit: s.Stock.Unit},
		Thickest: units.Quantity{Number: thickest, Unit: s.Stock.Unit},
	}
}

func (b *builder) partDef(p *job.Part) *def.Part {
	for _, dp := range b.def.Parts {
		if dp.Key.Value == p.Key {
			return dp
		}
	}
	return nil
}

// roundShims makes the table of packs for every pack whose thickness is worked out,
// and sees that no pack of it is further off than the limit allows.
func (b *builder) roundShims() {
	for _, d := range b.job.Dims {
		if d.Shims == nil || d.LeftAt == nil {
			continue
		}
		for _, l := range d.LeftWork.Limits {
			if l.Limit == d.Left {
				b.shimRows(d, l)
			}
		}
	}
}

// shimRows makes the table for one limit.
func (b *builder) shimRows(d *job.Dim, l job.LimitLadder) {
	s, at := d.Shims.Stock, limitPos(b.dimDef(d), d.Place)
	if l.At == nil || l.Test.Group != reading.Each {
		b.problems.Add(at, "shim-target", d.Mark+" works out two ends, and a pack is chosen for one size", "left: D1 - D2 + 0.08 mm +/- 0.03 mm")
		return
	}
	sum := l.At.Result()
	low, high := s.Low, s.High
	if low == nil && s.Stock.Pick {
		first, last := s.Stock.Leaves[0].Thickness, s.Stock.Leaves[len(s.Stock.Leaves)-1].Thickness
		low, high = &units.Quantity{Number: first, Unit: s.Stock.Unit}, &units.Quantity{Number: last, Unit: s.Stock.Unit}
	}
	if low == nil {
		b.problems.Add(s.At, "shim-range", "nothing says from where to where the pack of "+d.Mark+" can be, so there is no table to choose it by", "range: 0.20 to 0.80 mm, within shims:")
		return
	}
	if sum.Unit != s.Stock.Unit {
		b.problems.Add(at, "two-units", d.Mark+" works out in "+sum.Unit.Text()+", and its shims are in "+s.Stock.Unit.Text(), "write both in "+s.Stock.Unit.Text())
		return
	}
	thickest := s.Stock.Leaves[len(s.Stock.Leaves)-1].Thickness
	packs, err := s.Stock.Packs(units.Whole(0), high.Number.Add(thickest))
	if err == nil {
		d.Shims.Rows, err = shim.Rows(packs, low.Number, high.Number, sum.After, s.Round)
	}
	if err != nil {
		b.problems.Add(s.At, "shim-range", d.Mark+": "+err.Error(), "put range:, most: or round: of the shims right")
		return
	}
	if l.Test.Rule != reading.Nominal {
		return
	}
	thinner, thicker := shim.Off(d.Shims.Rows)
	off, may, way, round := thicker, l.Test.Upper, "thicker", "down"
	if thicker.Cmp(l.Test.Upper) <= 0 {
		off, may, way, round = thinner, l.Test.Lower.Neg(), "thinner", "up"
	}
	if off.Cmp(may) > 0 {
		unit := " " + s.Stock.Unit.Text() + " "
		limit, help := "at most "+strings.TrimPrefix(may.Text(), "+")+unit+way, []string{"name a thinner leaf, or write the tolerance that these shims can keep"}
		if may.Sign() == 0 {
			limit, help = "no "+way, append(help, "or round: "+round+" within shims:")
		}
		b.problems.Add(at, "shims-coarse", d.Mark+" may be "+limit+" than what is worked out, and the nearest pack can be "+off.Text()+unit+way, help...)
	}
}
