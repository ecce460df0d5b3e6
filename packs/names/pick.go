package names

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// Quantity reads a number with its unit.
func (b *Index) Quantity(t source.Text, example string) (units.Quantity, bool) {
	q, err := units.ParseQuantity(t.Value)
	if err != nil {
		b.amountFault(t, err.(*units.Fault), example)
		return units.Quantity{}, false
	}
	return q, true
}

// PartsAt resolves the name of a part, with or without its place (lock-nut,
// lock-nut/DE), as seen from a place: the part of the same place, or all of them
// where no place is given.
func (b *Index) PartsAt(t source.Text, from job.Place) []*job.Part {
	key, label, named := Cut(t.Value)
	all, ok := b.Parts[key]
	if !ok {
		all, ok = b.called(t)
	}
	if !ok {
		all, ok = Meant(b, t, "part", b.Parts, "parts")
	}
	if !ok {
		return nil
	}
	return Pick(b, t, "part", all, func(p *job.Part) job.Place { return p.Place }, from, label, named)
}

// called finds parts by what they are called in full, where a step should name them by
// their key, or by key and place without the slash; that is told.
func (b *Index) called(t source.Text) ([]*job.Part, bool) {
	for _, p := range b.Job.Parts {
		if p != nil && strings.EqualFold(p.Name, t.Value) {
			b.Problems.Add(t.At, "unknown-name", source.Quote(t.Value)+" is what a part is called on paper; it is named by its key under parts", "write: "+p.Key)
			return b.Parts[p.Key], true
		}
	}
	for _, p := range b.Job.Parts { // hub DE
		if p != nil && p.Place.Label != "" && t.Value == p.Key+" "+p.Place.Label {
			b.Problems.Add(t.At, "unknown-name", source.Quote(t.Value)+" is a part and its place, with a slash between them", "write: "+p.Key+"/"+p.Place.Label)
			return []*job.Part{p}, true
		}
	}
	return nil, false
}

// Pick keeps those of a name's things that stand at the place named after the
// slash, or that agree with the place it is named from.
func Pick[T any](b *Index, t source.Text, what string, all []T, place func(T) job.Place, from job.Place, label string, named bool) []T {
	var out []T
	for _, x := range all {
		p := place(x)
		switch {
		case named && p.Label == label, !named && p.Agrees(from):
			out = append(out, x)
		}
	}
	if b.tally != nil && len(out) > 0 {
		b.tally.found[t.At] = true
	}
	if len(out) == 0 {
		m := missing{name: t, what: what, from: from}
		for _, x := range all {
			m.labels = append(m.labels, place(x).Label)
		}
		if b.tally != nil && !named && atOnePlace(what) {
			b.tally.missing = append(b.tally.missing, m)
		} else {
			b.noSuchPlace(m)
		}
	}
	return out
}
