package names

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// A step that repeats over the two ends may name a thing that stands at one end
// only, as the thrust bearing: it is done there, and left out at the other end.
// Only a name that finds nothing at any of the step's places is a mistake.

// A missing is a name in a step that found nothing at one of the step's places.
type missing struct {
	name   source.Text
	what   string
	from   job.Place // where it was looked for
	labels []string  // the places that the thing has
}

// A tally keeps, while steps are resolved, which names were found at some place
// and which were not.
type tally struct {
	found   map[source.Pos]bool
	missing []missing
}

// atOnePlace reports whether things of a kind may be left out where a step has
// none of them. What parts go into must be there at every place.
func atOnePlace(what string) bool { return what != "container" && what != "set" }

// StartTally begins to resolve steps: a name that finds nothing at one of the
// step's places is not told before TellMissing.
func (b *Index) StartTally() { b.tally = &tally{found: map[source.Pos]bool{}} }

// TellMissing reports the names that were found at no place of their step.
func (b *Index) TellMissing() {
	t := b.tally
	b.tally = nil
	for _, m := range t.missing {
		if !t.found[m.name.At] {
			b.noSuchPlace(m)
		}
	}
}

// noSuchPlace reports a thing that has not the place behind the slash, or stands
// nowhere near the place that it is named from.
func (b *Index) noSuchPlace(m missing) {
	_, label, named := Cut(m.name.Value)
	if named {
		b.Unknown(source.Text{Value: label, At: m.name.At}, "place of this "+m.what, m.labels, "it")
		return
	}
	b.Problems.Add(m.name.At, "not-here", "the "+m.what+" "+source.Quote(m.name.Value)+" does not stand at "+m.from.Label,
		"it stands at "+strings.Join(m.labels, ", ")+"; name its place: "+m.name.Value+"/"+m.labels[0])
}
