package proofread

import (
	"cmp"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// calledGuard are the names of parts that keep people from what moves: Coupling
// guard, Belt guard half.
var calledGuard = phrase.Of(`(?i)\bguards?( half| halves)?$`)

// checkGuardNames warns of a part that is called a guard and not said to be one,
// nor not to be one, where locks could come off without it.
func (b *proofreader) checkGuardNames() {
	if len(b.Def.Isolations) == 0 {
		return
	}
	for _, dp := range b.Def.Parts {
		if name := cmp.Or(dp.Name.One.Value, dp.Key.Value); !dp.Guard.Written() && calledGuard.MatchString(b.Job.InEnglish(name)) {
			b.Problems.Warn(dp.Key.At, "guard-not-said", "the part "+source.Quote(name)+" is called a guard, and a lock could come off without it", "guard: yes, or guard: no if it keeps nobody from anything")
		}
	}
}
