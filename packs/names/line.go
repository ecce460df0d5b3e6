package names

import (
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/fit"
	"matchmark/packs/phrase"
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// sized finds a limit that is written by letter and grade, as a drawing has it:
// Ø130 m6, 120 H7. A fit with its slash is caught too, to be refused in the words
// of fits.
var sized = phrase.Of(`^(?:[Øø⌀]|dia\.)? *\d+(?:[.,]\d+)? *(?:mm)? *[A-Za-z]{1,2} ?\d{1,2}(?: ?[/-] ?[A-Za-z]{1,2} ?\d{1,2})?$`)

// Line reads a line in the language of limits. A size by letter and grade becomes
// its two limits; zone is then how it stands on a drawing. What can't be read is nil
// and a problem.
func (b *Index) Line(t source.Text) (l *reading.Limit, zone string) {
	text := t.Value
	if sized.MatchString(strings.TrimSpace(text)) {
		z, err := fit.Parse(text)
		if err != nil {
			b.Problems.Add(t.At, "fit", err.Error(), "for example left: the diameter, the letter and the grade, or the limits in numbers: left: … to … mm")
			return nil, ""
		}
		text, zone = limitsOf(z), z.String()
	}
	l, fault := reading.Parse(text)
	if fault != nil {
		b.Fault(t, fault)
		return nil, ""
	}
	return l, zone
}

// limitsOf writes the two limits of a toleranced size as a line, with as many
// decimals as the finer of them needs.
func limitsOf(z fit.Zone) string {
	low, high := z.Min().Decimal(), z.Max().Decimal()
	for len(low)-strings.Index(low, ".") < len(high)-strings.Index(high, ".") {
		low += "0"
	}
	for len(high)-strings.Index(high, ".") < len(low)-strings.Index(low, ".") {
		high += "0"
	}
	return low + " to " + high + " mm"
}

// Named is the entry of a map for a name, else that for all others.
func Named(v def.Varying, name string) source.Text {
	for _, want := range []string{name, "others"} {
		for _, by := range v.By {
			if by.Name.Value == want {
				return by.Value
			}
		}
	}
	return source.Text{}
}
