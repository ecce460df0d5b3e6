package names

import (
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// The fire watch where no site file says otherwise: 60 min of NFPA 51B since 2019
// (from memory), and 30 min, the least of 29 CFR 1910.252(a)(2)(iii)(B).
var (
	UsualFireWatch = units.Quantity{Number: units.Whole(60), Unit: units.Minute}
	leastFireWatch = units.Quantity{Number: units.Whole(30), Unit: units.Minute}
)

// FireWatch reads how long a fire watch stays, and refuses one under the least that
// the rule asks for.
func (b *Index) FireWatch(t source.Text, into *units.Quantity) {
	q, ok := b.Quantity(t, "60 min")
	if !ok {
		return
	}
	over, err := q.Cmp(leastFireWatch)
	switch {
	case err != nil:
		b.Problems.Add(t.At, "not-a-time", source.Quote(t.Value)+" is not a time", "for example fire-watch: 60 min")
	case over < 0:
		b.Problems.Add(t.At, "short-watch", "a fire watch of "+t.Value+" is shorter than the 30 min that 29 CFR 1910.252(a)(2)(iii) asks for", "for example fire-watch: 60 min")
	default:
		*into = q
	}
}
