package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/shim"
	"matchmark/packs/source"
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
		b.Problems.Add(ds.At, "leaves-or-pick", "shims are leaves, several in one pack, or a graded set of which one is picked: one of the two",
			"for example shims: {leaves: … and … and … mm}", "shims: {pick: … or … or … mm}")
		return
	}
	most := shim.MostLeaves
	if ds.Most.Written() {
		if n, ok := names.WholeNumber(ds.Most); ok && n > 0 && n <= maxLeaves {
			most = n
		} else {
			b.Problems.Add(ds.Most.At, "leaves", "a pack has 1 to 20 leaves, not "+ds.Most.Value, "for example most: 4")
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
		b.Fault(t, err)
		return
	}
	if ds.Range.Written() {
		low, high, err := units.ParseRange(ds.Range.Value)
		switch {
		case err != nil:
			b.Fault(ds.Range, err, "range: … to … mm")
		case low.Unit != s.Stock.Unit:
			b.Problems.Add(ds.Range.At, "two-units", "the range is in "+low.Unit.Text()+" and the shims are in "+s.Stock.Unit.Text(), "write the range in "+s.Stock.Unit.Text())
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
	found := b.PartsAt(t, d.Place)
	switch {
	case len(found) != 1:
		if len(found) > 1 {
			b.Problems.Add(t.At, "which-place", source.Quote(t.Value)+" stands at several places", "name the place: "+found[0].Place.Mark(found[0].Key))
		}
		return
	case found[0].Shims == nil:
		if b.partDef(found[0]).Shims == nil {
			b.Problems.Add(t.At, "no-shims", source.Quote(t.Value)+" does not say what shims there are", "for example shims: {leaves: … and … and … mm}, at the part")
		}
		return
	case dd.Formula.Written():
		b.Problems.Add(t.At, "one-pack", d.Mark+" is a pack of shims, made up from leaves and measured; formula: would give it no boxes for them", "left: "+names.TextAt(d.Place, dd.Formula).Value+" +/- … "+found[0].Shims.Stock.Unit.Text()+", in place of formula:")
		return
	case d.Positions.Boxes() > 1:
		b.Problems.Add(t.At, "one-pack", d.Mark+" is one pack of shims, so it is one reading, the sum of its leaves", "take at: away; for several packs a dimension for each")
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
	for _, dp := range b.Def.Parts {
		if dp.Key.Value == p.Key {
			return dp
		}
	}
	return nil
}
