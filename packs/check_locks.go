package packs

import (
	"math/big"

	"matchmark/packs/source"
	"matchmark/packs/units"
)

// checkLocked warns of parts that are moved while a lock is not on yet, or off
// again.
func (b *builder) checkLocked() {
	for _, x := range b.job.Isolations {
		if x.LockedAt == nil || x.UnlockedAt == nil {
			continue
		}
		for _, s := range b.job.Sections {
			for _, st := range s.Steps {
				if st.idle() || st.Index >= x.LockedAt.Index && st.Index <= x.UnlockedAt.Index {
					continue
				}
				lock, does := x.LockedAt, "is not locked before "
				if st.Index > x.UnlockedAt.Index {
					lock, does = x.UnlockedAt, "is unlocked at "
				}
				b.problems = append(b.problems, source.Problem{
					Pos: st.At, Severity: source.Warning, Code: "not-locked",
					Message: st.name() + " works on parts, but the isolation " + quote(x.Key) + " " + does + lock.name(),
					Help:    []string{"move one of the two steps, or the reverse: line"}, See: []source.Also{{Pos: lock.At, What: "the lock"}},
				})
				return
			}
		}
	}
}

// idle reports whether a step moves, loosens and tightens nothing.
func (s *Step) idle() bool {
	return len(s.Remove)+len(s.Fit)+len(s.ForNow)+len(s.TakeOut)+len(s.Loosen)+len(s.Tighten) == 0
}

// weighs is the mass of one piece of a part. Of an assembly that does not say its
// own it is that of all its parts that say theirs, so at least so much.
func (p *Part) weighs(all []*Part) *units.Quantity {
	if p.Mass != nil {
		return p.Mass
	}
	sum := units.Quantity{Number: units.Whole(0), Unit: units.Kilogram}
	for _, q := range all {
		if q.Of != p {
			continue
		}
		m := q.weighs(all)
		if m == nil {
			continue
		}
		kg, err := m.Convert(units.Kilogram)
		if err != nil {
			continue
		}
		kg.Number = kg.Number.Mul(units.Exact(big.NewRat(int64(q.Count), 1), 0))
		if s, err := sum.Add(kg); err == nil {
			sum = s
		}
	}
	if sum.Number.Sign() == 0 {
		return nil
	}
	return &sum
}
