package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"slices"
)

// checkLocked warns of parts that are moved while a lock is not on yet, or off
// again.
func (r *report) checkLocked() {
	for _, x := range r.job.Isolations {
		if x.LockedAt == nil || x.UnlockedAt == nil {
			continue
		}
		for _, s := range r.job.Sections {
			for _, st := range s.Steps {
				if st.Idle() || st.Index >= x.LockedAt.Index && st.Index <= x.UnlockedAt.Index {
					continue
				}
				lock, does := x.LockedAt, "is not locked before "
				if st.Index > x.UnlockedAt.Index {
					lock, does = x.UnlockedAt, "is unlocked at "
				}
				r.problems = append(r.problems, source.Problem{
					Pos: st.At, Severity: source.Warning, Code: "not-locked",
					Message: st.Name() + " works on parts, but the isolation " + source.Quote(x.Key) + " " + does + lock.Name(),
					Help:    []string{"move one of the two steps, or the reverse: line"}, See: []source.Also{{Pos: lock.At, What: "the lock"}},
				})
				return
			}
		}
	}
}

// locks is what all steps share: none may pass the locking of an isolation.
type locks struct{}

// locked binds all steps to the locks between which they stand.
func (b *binder) locked() {
	for _, st := range b.walk.Steps {
		if all := slices.Concat(st.Lock, st.Unlock); len(all) > 0 {
			b.changes(locks{}, st, job.Bind{Kind: job.BoundLock, Lock: all[0]})
		} else {
			b.looks(locks{}, st)
		}
	}
}
