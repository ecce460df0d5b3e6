package proofread

import (
	"math/big"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// checkScale sees that a reading is written in the unit that its instrument shows: a
// limit in inches read with a feeler in millimetres is converted in somebody's head.
func (b *proofreader) checkScale(d *job.Dim, dd *def.Dimension) bool {
	shows := d.By.Reads
	if shows == nil {
		shows = d.By.High
	}
	if shows == nil || d.Box.Unit == units.None || d.Box.Unit.RiseUnit().SameScale(shows.Unit.RiseUnit()) {
		return true
	}
	if d.Box.Unit.Dimension() != shows.Unit.Dimension() {
		b.Problems.AddWith(dd.By.At, "other-unit", d.Mark+" is in "+d.Box.Unit.Text()+", but "+d.By.Name+" reads in "+shows.Unit.Text(), d.By.At, "the instrument", "name an instrument for "+d.Box.Unit.Text())
		return false
	}
	b.Problems.AddWith(dd.By.At, "other-scale", d.Mark+" is written in "+scale(d.Box.Unit)+", but "+d.By.Name+" reads in "+scale(shows.Unit)+": whoever reads it has to convert", d.By.At, "the instrument",
		"name an instrument that reads in "+scale(d.Box.Unit), "or write the lines of "+d.Base+" in "+scale(shows.Unit)+", the other unit behind in a bracket")
	return false
}

// scale is a unit within a sentence.
func scale(u units.Unit) string {
	if u == units.Inch {
		return "inches"
	}
	return u.Text()
}

// checkRange sees that every size which a reading can be expected to have lies within
// the range of its instrument: the ends of its limits, and its nominal size.
func (b *proofreader) checkRange(d *job.Dim, dd *def.Dimension) {
	far := func(q *units.Quantity, t source.Text, what string) bool {
		if q == nil || !outside(*q, d.By.Low, d.By.High) {
			return false
		}
		help := []string{"name an instrument that reaches it, or put the range right"}
		if below, _ := q.Cmp(*d.By.Low); below < 0 && d.Gap() {
			zero := units.Quantity{Number: units.Exact(new(big.Rat), q.Number.Decimals()), Unit: q.Unit}
			help = append(help, "where its thinnest leaf must not go in: "+reading.MustBeTight(d.By.Low.Text()), "or at most "+zero.Text()+", with 0 in the box when no leaf goes in")
		}
		b.Problems.Add(t.At, "out-of-range", d.Mark+": "+what+q.Text()+" is outside the range of "+d.By.Name+", "+d.By.Low.Text()+" to "+d.By.High.Text(), help...)
		return true
	}
	for _, l := range linesOf(d, dd) {
		for i := range l.limit.Tests {
			t := &l.limit.Tests[i]
			if t.Group == reading.Spread || t.Group == reading.Sum {
				continue
			}
			low, high, _ := t.Limits()
			for _, q := range []*units.Quantity{low, high, t.About()} {
				if far(q, l.text, "") {
					return
				}
			}
		}
	}
	if nominal := names.TextAt(d.Place, dd.Nominal); nominal.Written() {
		if q, err := units.ParseQuantity(nominal.Value); err == nil { // else told where its box is sized
			far(&q, nominal, "the nominal size ")
		}
	}
}

// outside reports whether a size lies outside a range; one in another sort of
// unit does not compare.
func outside(q units.Quantity, low, high *units.Quantity) bool {
	if low == nil || high == nil {
		return false
	}
	// A dial or feeler reads differences, signs left out.
	q.Number = q.Number.Abs()
	below, err := q.Cmp(*low)
	if err != nil {
		return false
	}
	above, _ := q.Cmp(*high)
	return below < 0 && low.Number.Sign() > 0 && q.Number.Sign() != 0 || above > 0
}
