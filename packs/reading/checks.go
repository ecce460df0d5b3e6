package reading

import (
	"math/big"

	"matchmark/packs/units"
)

// CheckReuse sees that the limit for a worn part that goes back lies outside that
// for a new one, on its own side. The fault, nil if all is well, has its place in
// the line of the worn limit. Limits that hang on other readings are not compared.
func CheckReuse(left, reuse *Limit) *Fault { return checkOutside(left, reuse, "worn", "new") }

// CheckRepair sees the same of the limit for a part that is mended: it lies outside that for a
// new part and that for an old one that goes back; either is nil where it is not said. The fault
// names the one that it is held against, that for new parts where it is wrong beside both.
func CheckRepair(left, reuse, repair *Limit) *Fault {
	if left != nil {
		if f := checkOutside(left, repair, "repair", "new"); f != nil {
			return f
		}
	}
	if reuse == nil {
		return nil
	}
	return checkOutside(reuse, repair, "repair", "old")
}

// checkOutside holds a limit, called by its name, against the closer one of parts of some age.
func checkOutside(closer, wider *Limit, name, parts string) *Fault {
	for i := range wider.Tests {
		r := &wider.Tests[i]
		for k := range closer.Tests {
			l := &closer.Tests[k]
			if l.Group != r.Group {
				continue
			}
			if f := checkEnds(l, r, name, parts); f != nil {
				return f
			}
		}
	}
	return nil
}

func checkEnds(l, r *Test, name, parts string) *Fault {
	newLow, newHigh, okNew := l.Limits()
	low, high, okWorn := r.Limits()
	if !okNew || !okWorn {
		return nil
	}
	wrong := func(worn units.Quantity, message string) *Fault {
		return &Fault{
			Offset: r.place, Width: r.width, Code: "worn-limit",
			Message: name + " limit " + worn.Text() + " is " + message + " the limits for " + parts + " parts " + l.ruleText() + ": wrong side or a slipped decimal",
			Help:    []string{"a " + name + " limit lies outside: above what " + parts + " parts may be at most, or below what they must be at least"},
		}
	}
	// cmp sorts two ends; without an end there is nothing to compare.
	cmp := func(a, b *units.Quantity) int {
		if a == nil || b == nil {
			return 0
		}
		c, err := a.Cmp(*b)
		if err != nil {
			return 0
		}
		return c
	}
	switch {
	case l.Unit.Dimension() != r.Unit.Dimension():
		return &Fault{
			Offset: r.place, Width: r.width, Code: "worn-limit",
			Message: name + " limit in " + r.Unit.Text() + ", limits for " + parts + " parts in " + l.Unit.Text(), Help: []string{"write both in " + l.Unit.Text()},
		}
	case cmp(high, newLow) < 0:
		return wrong(*high, "below all of")
	case cmp(low, newHigh) > 0:
		return wrong(*low, "above all of")
	case cmp(high, newHigh) < 0:
		return wrong(*high, "inside")
	case cmp(low, newLow) > 0:
		return wrong(*low, "inside")
	}
	return nil
}

// CheckSame sees that "as found" alone is used for words and choices only: of a
// number it does not say how near. found is how the as-found box is written, nil
// if that is not said.
func CheckSame(left, found *Limit) *Fault {
	if left.Kind != SameAsFound || found != nil && found.form() != Digits {
		return nil
	}
	c := newCursor(left.Text())
	c.howNear(0, len(c.runes))
	return c.fault
}

// CheckBoxes sees that mean, spread and sum have more than one box to work on.
func CheckBoxes(l *Limit, boxes int) *Fault {
	for i := range l.Tests {
		t := &l.Tests[i]
		if t.Group != Each && boxes < 2 {
			name := groupText(t.Group)[:len(groupText(t.Group))-1]
			return &Fault{
				Offset: t.place, Width: t.width, Code: "one-box",
				Message: "\"" + name + "\" of a reading with one box", Help: []string{t.ruleText()},
			}
		}
	}
	return nil
}

// CheckRise sees that every number of a limit is a difference of temperatures, as
// over the shaft, and not a temperature.
func CheckRise(l *Limit) *Fault {
	for i := range l.Tests {
		t := &l.Tests[i]
		if t.Unit.Dimension() == units.Rise {
			continue
		}
		f := &Fault{Offset: t.place, Width: t.width, Code: "rise", Message: t.ruleText() + " is no rise of temperature", Help: []string{"60 to 80 C rise"}}
		if all := t.numbers(); t.Unit.Dimension() == units.Temperature && len(all) > 0 {
			n := all[0].Text()
			f.Message = n + " " + t.Unit.Text() + " is a temperature; over the other part it is " + n + " " + t.Unit.RiseUnit().Text()
			f.Help = []string{n + " " + t.Unit.RiseUnit().Text()}
		}
		return f
	}
	return nil
}

// CheckTable sees that one row of a table of limits has not slipped by a factor of
// ten: its end is more than five times, or less than a fifth of, both neighbours
// (common practice, no source), and a tenth or ten times of it would lie between
// them. rows stand in the order of the size that they belong to; row is the one
// at fault, and the fault has its place in that line.
func CheckTable(rows []*Limit) (row int, fault *Fault) {
	for i := 1; i+1 < len(rows); i++ {
		for k := range rows[i].Tests {
			if f := checkRow(rows[i-1], rows[i], rows[i+1], k); f != nil {
				return i, f
			}
		}
	}
	return 0, nil
}

func checkRow(before, row, after *Limit, k int) *Fault {
	if k >= len(before.Tests) || k >= len(after.Tests) {
		return nil
	}
	var lows, highs []*units.Quantity
	for _, l := range []*Limit{before, row, after} {
		low, high, ok := l.Tests[k].Limits()
		if !ok || l.Tests[k].Unit != row.Tests[k].Unit {
			return nil
		}
		lows, highs = append(lows, low), append(highs, high)
	}
	for _, ends := range [][]*units.Quantity{lows, highs} {
		right, ok := slippedBetween(ends)
		if !ok {
			continue
		}
		t := &row.Tests[k]
		return &Fault{
			Offset: t.place, Width: t.width, Code: "slipped-row",
			Message: ends[1].Text() + " stands between " + ends[0].Text() + " and " + ends[2].Text() + ": a factor of 10?",
			Help:    []string{right.Text(), "if the source prints it like this, use says: and write which one is used"},
		}
	}
	return nil
}

// slippedBetween reports whether the middle one of three fits between the others
// only ten times smaller or larger, and gives it put right.
func slippedBetween(ends []*units.Quantity) (right units.Quantity, ok bool) {
	for _, e := range ends {
		if e == nil || e.Number.Sign() <= 0 {
			return right, false
		}
	}
	small, mid, large := ends[0].Number, ends[1].Number, ends[2].Number
	if small.Cmp(large) > 0 {
		small, large = large, small
	}
	ten, five := units.Whole(10), units.Whole(5)
	switch {
	case mid.Cmp(large.Mul(five)) > 0:
		mid = mid.Quo(ten)
	case mid.Mul(five).Cmp(small) < 0:
		mid = mid.Mul(ten)
	default:
		return right, false
	}
	if mid.Cmp(small) < 0 || mid.Cmp(large) > 0 {
		return right, false
	}
	return quantity(units.Exact(new(big.Rat).Set(mid.Rat()), ends[0].Number.Decimals()), ends[1].Unit), true
}
