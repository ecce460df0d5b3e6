package shim

import (
	"strings"

	"matchmark/packs/units"
)

// A Leaf is one thickness in hand.
type Leaf struct {
	Thickness units.Number
	Count     int // how many there are, 0 for as many as are needed
}

// A Stock is what a pack is made from. With Pick one leaf is the whole pack.
type Stock struct {
	Unit   units.Unit
	Leaves []Leaf // thinnest first, each thickness once
	Pick   bool
	Most   int // leaves in one pack
}

// MostLeaves is how many leaves a pack may have where the definition does not say:
// thicker packs of thin leaves spring (common practice, no source).
const MostLeaves = 6

// ParseLeaves reads the thicknesses in hand: 0.05 and 0.10 and 4 x 0.50 mm. The
// unit stands once, at the end. The error is a *units.Fault.
func ParseLeaves(text string, most int) (Stock, error) {
	s, err := parse(text, "and", true)
	s.Most = most
	return s, err
}

// ParsePick reads a graded set of which one is picked: 2.00 or 2.05 or 2.10 mm.
// The error is a *units.Fault.
func ParsePick(text string) (Stock, error) {
	s, err := parse(text, "or", false)
	s.Pick, s.Most = true, 1
	return s, err
}

// parse reads thicknesses with a word between them.
func parse(text, between string, counted bool) (Stock, error) {
	var s Stock
	example := "0.05 " + between + " 0.10 " + between + " 0.50 mm"
	fault := func(at, width int, message string, help ...string) (Stock, error) {
		return Stock{}, &units.Fault{Offset: at, Width: width, Code: "leaves", Message: message, Help: append(help, example)}
	}
	at := 0
	for _, field := range strings.Split(text, " "+between+" ") {
		width := len([]rune(field))
		l, unit, message := leaf(field, counted)
		switch {
		case message != "":
			return fault(at, width, message)
		case unit != units.None && s.Unit != units.None:
			return fault(at, width, "the unit stands once, behind the last thickness: "+text)
		case unit != units.None && unit.Dimension() != units.Length:
			return fault(at, width, unit.Text()+" is no unit of thickness")
		}
		for _, have := range s.Leaves {
			switch l.Thickness.Cmp(have.Thickness) {
			case 0:
				return fault(at, width, l.Thickness.Text()+" is named twice")
			case -1:
				return fault(at, width, "the thinner comes first: "+l.Thickness.Text()+" stands behind "+have.Thickness.Text())
			}
		}
		s.Unit = max(s.Unit, unit)
		s.Leaves = append(s.Leaves, l)
		at += width + len(between) + 2
	}
	if s.Unit == units.None {
		return fault(0, len([]rune(text)), "no unit: "+text+" what?", text+" mm")
	}
	return s, nil
}

// leaf reads one thickness, with how many there are in front of it and its unit
// behind, as far as they are written. message says what is wrong.
func leaf(field string, counted bool) (l Leaf, unit units.Unit, message string) {
	rest := strings.TrimSpace(field)
	if count, behind, ok := strings.Cut(rest, " x "); ok {
		if !counted {
			return l, unit, "one is picked, so no count stands here: " + field
		}
		n, width, fault := units.LeadingNumber(count)
		if fault != nil || width != len(count) || !n.Rat().IsInt() || n.Sign() <= 0 || n.Cmp(units.Whole(99)) > 0 {
			return l, unit, count + " is no number of leaves"
		}
		l.Count = int(n.Rat().Num().Int64())
		rest = behind
	}
	n, width, fault := units.LeadingNumber(rest)
	if fault != nil {
		return l, unit, quote(rest) + " is no thickness"
	}
	if n.Sign() <= 0 {
		return l, unit, "a leaf is thicker than nothing: " + rest
	}
	if n.Denominator() > 0 {
		return l, unit, "a fraction of an inch: write the thickness in decimals of an inch"
	}
	l.Thickness = n
	behind := strings.TrimSpace(string([]rune(rest)[width:]))
	if behind == "" {
		return l, unit, ""
	}
	unit, width = units.LeadingUnit(behind)
	if unit == units.None || width != len([]rune(behind)) {
		return l, unit, quote(behind) + " is no unit of thickness"
	}
	return l, unit, ""
}

func quote(s string) string { return `"` + s + `"` }
