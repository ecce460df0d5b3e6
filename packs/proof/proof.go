// Package proof holds the laws of an order of work: what must be so on the walk
// through a job, in taking apart and in putting back alike. Each law stands in a
// file of its own, looks at the walk alone and knows no other law.
package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// A Law is one thing that must be so.
type Law struct {
	Name  string
	Says  string // what must be so, in one sentence
	check func(*report)
}

// A report is what one law finds on a walk.
type report struct {
	walk     *walk.Walk
	job      *job.Job
	problems source.Problems
	lasts    map[*job.Part]string // see calledLast
}

// Laws are all laws, in the order in which they are looked at.
var Laws = []Law{
	{"pieces", "a piece that is taken off is on, one that goes back is off, and all is back at the end", (*report).pieces},
	{"fastened", "what is loosened, or has a fastener put back, is tight at the end", (*report).fastened},
	{"wrenches", "each torque lies within the range of a wrench that is fetched for its step", (*report).checkWrenches},
	{"joints", "a joint is tightened with all its fasteners in, and to a value or by words that say how tight", (*report).checkJoints},
	{"heldnow", "a torque for now is one that something is held with", (*report).checkHeldNow},
	{"for-now", "what is fitted for now comes out again", (*report).forNow},
	{"order", "a step stands below the steps that it comes after, and no steps wait for each other", (*report).checkOrder},
	{"behind", "no part is moved, loosened or tightened while one that it is behind is in the machine", (*report).checkBehind},
	{"list-order", "what one step takes off stands in its list from the outside in, and what it puts back from the inside out", (*report).checkListOrder},
	{"back-order", "what was taken off to reach something stays off until that is back, set and tight", (*report).checkBackOrder},
	{"marked", "marks and orders are written down before what they tell of comes apart", (*report).checkMarked},
	{"seen", "marks and orders are taken from what is as it ran", (*report).checkTooLateToSee},
	{"pack-seen", "a pack of shims is measured as found when it is out", (*report).checkPackSeen},
	{"inputs", "what is decided or worked out by a reading comes after that reading", (*report).checkBranches},
	{"worked", "what is judged at closing is worked out from what is in the machine then", (*report).checkWorked},
	{"shares", "what is set to shares of one whole comes to no more than the whole", (*report).checkShares},
	{"chosen", "a limit or torque that is chosen at a hold is used below it", (*report).checkChosen},
	{"hold-early", "a hold stands below the readings that it is for", (*report).checkHoldEarly},
	{"hold-late", "what is decided at a hold is not back, and the machine cannot run, before it is released", (*report).checkHoldLate},
	{"hold-past", "a reading as left sends to no hold that was released above it", (*report).checkHoldPast},
	{"left-alone", "nobody turns an adjuster that stays as it is", (*report).checkLeftAlone},
	{"packs", "a pack of shims is measured leaf by leaf before it goes back", (*report).checkPacks},
	{"read-in-time", "a reading is taken before the act that ends it, and set when all that it hangs on is back and tight", (*report).readings},
	{"turned-again", "what a reading hangs on is not turned again to set another, once it is written down as left", (*report).checkTurnedAgain},
	{"held-reading", "a reading is taken while its parts are held as they run", (*report).checkHeldReading},
	{"held-as-found", "a reading that was taken with its parts held by their fasteners is set when those are back", (*report).checkHeldAsFound},
	{"bench-read", "what is read on the bench is off the machine", (*report).checkBenchRead},
	{"filled", "a bore is read while its shaft is out of it, and the shaft while it is out of the bore", (*report).checkFilled},
	{"tries", "a further try can be done with the machine as the step leaves it, and leaves it so", (*report).checkTries},
	{"covered", "a reading that was taken with what covers it off is set before that is back", (*report).checkCovered},
	{"turnable", "the nut that sets a reading can be got at when that is set", (*report).checkTurnable},
	{"aligned", "a coupling is read while both machines stand, and as left where it is aligned last", (*report).checkAligned},
	{"out-of-line", "a coupling is read as left when the feet and the large pipes are tight", (*report).checkOutOfLine},
	{"set-loose", "what a step loosens and tightens is tight before it sets a reading", (*report).checkSetLoose},
	{"renewed-set", "what is only set of a part that is renewed is set of the new one", (*report).checkRenewedSet},
	{"seen-shut", "what is looked at inside, by a tick or for a hold, is seen before the last cover is back", (*report).checkSeenShut},
	{"unopened", "what is looked at inside, by a tick or for a hold, is seen when something is open", (*report).checkUnopened},
	{"seen-clean", "a face is seen clean before the part that lies on it is back", (*report).checkSeenClean},
	{"seen-back", "what is taken out for a while is ticked when it is on again, both ways", (*report).checkSeenBack},
	{"state", "what a reading is to be taken with is in the machine then, and what must be off is off", (*report).checkState},
	{"aid-state", "an aid that a reading is to be taken with is in then", (*report).checkAidState},
	{"left-before", "what is only set of a part that comes off is not set above the locks", (*report).checkLeftBefore},
	{"apart", "what lies between two parts is set while both are on", (*report).checkReadApart},
	{"other-tight", "the part across is on and tight when a reading wants it so", (*report).checkOtherTight},
	{"free-tight", "a reading that is taken with a joint loose stands above the line that tightens it", (*report).checkFreeTight},
	{"jacked", "nothing is pushed off its joint while a nut or a dowel still holds it", (*report).checkJacked},
	{"pressed-after", "no part is pressed on by the words of a step when a reading of it is set", (*report).checkPressedAfter},
	{"read-shut", "what is set with the machine open is not read before it is open", (*report).checkReadShut},
	{"behind-guard", "no gauge is laid on a face behind a guard that is on", (*report).checkBehindGuard},
	{"said-out", "what the words of a step say to be still out is out", (*report).checkSaidOut},
	{"after", "what an author says of the order is all that binds a step", (*report).checkAfter},
	{"emptied", "every container is filled by a step and emptied by one, and is empty where it must be", (*report).containers},
	{"kept", "what is taken off can be told apart where it lies", (*report).checkKept},
	{"parts", "the parts of each place lie in its own containers, old ones are counted, and what is told twice is told the same", (*report).checkThings},
	{"unjudged", "what is renewed only if something is found on it does not go to scrap as it comes off", (*report).checkUnjudged},
	{"used-seal", "a gasket, an O-ring, a split pin or a tab washer goes back new", (*report).checkUsedSeal},
	{"renewed-singly", "of halves and pairs that belong together none is renewed alone", (*report).checkRenewedSingly},
	{"sets", "a matched set stays whole", (*report).checkSets},
	{"judged", "a set is judged after its last reading and before its first piece goes back", (*report).checkJudged},
	{"locked", "parts are moved only while every isolation is locked", (*report).checkLocked},
	{"hands-in", "nobody opens, marks or gauges a machine that is not locked", (*report).checkHandsIn},
	{"runs-locked", "no machine is started, run or read while it runs, with every lock on", (*report).checkRunsLocked},
	{"loose-run", "no lock comes off while a joint is loose that is tightened only later", (*report).checkLooseRun},
	{"loose-load", "no load is raised while fasteners within it are loose", (*report).checkLooseLoad},
	{"lift-aid", "what a load hangs by is on it, with its bolts tight, before it is raised", (*report).checkLiftAid},
	{"drained", "nothing is drained or vented by hand before the machine is locked", (*report).checkDrained},
	{"proved-late", "what proves an isolation is seen before anything is opened", (*report).checkProvedLate},
	{"proved-hands", "an isolation is proved and released before the first part is worked on", (*report).checkProvedHands},
	{"guard-on", "nothing of a coupling, a belt or a chain is worked on with the guard over it on", (*report).checkGuardOn},
	{"permit-locks", "a permit is asked for when its locks are on, and no lock comes off while it is out", (*report).checkPermitLocks},
	{"lift-permit", "where some lifts are made on a permit, all are", (*report).checkLiftPermit},
	{"locks", "a lock that comes off is on, and one that comes off for a test goes on again", (*report).checkLocks},
	{"closed-up", "no lock comes off and no permit ends while an opening is open, a guard is off or tools are uncounted", (*report).checkClosedUp},
	{"covers", "an opening is open from the step that takes its cover off until that is back", (*report).checkCovers},
	{"closed-count", "nothing that a person can be in is closed over uncounted tools", (*report).checkClosedCount},
	{"fill-open", "nothing is filled while what lets it out again is open", (*report).checkFillOpen},
	{"no-oil-yet", "oil is looked for when it has been filled", (*report).checkNoOil},
	{"runs-dry", "no machine runs between the draining and the filling of its oil", (*report).checkRunsDry},
	{"counted", "what is counted is counted after something came off, before the locks come off, and once more when all is back", (*report).checkCounted},
	{"decided", "it is decided what goes back before the first part does", (*report).checkReused},
	{"decided-blind", "a part whose renewal is decided has been measured by then", (*report).checkDecidedBlind},
	{"permit-said", "of a permit on which a person goes in it is known that it is for that", (*report).checkPermitUnsaid},
	{"entry-shut", "whoever goes in on a permit goes in while something stands open", (*report).checkEntryShut},
	{"gas-late", "the air within is read before anybody works inside", (*report).checkGasLate},
	{"permits-end", "no step asks for a permit that has ended", (*report).checkPermitsEnd},
	{"permits-back", "where one permit is handed back, all are, each once", (*report).checkPermitsBack},
	{"hanging", "no hand goes in under a load that hangs before something is put under it", (*report).checkHanging},
	{"overhung", "an opening is seen clean, and a load counted out, before the load hangs over it", (*report).checkOverhung},
	{"mirrored", "what is written for a put-back row has a row to stand at", (*report).checkMirrored},
	{"words", "the words of a step say what its keys say", (*report).checkWords},
	{"tries boxed", "what a further try reads has its box each time", (*report).checkTryBoxes},
	{"spoken", "the step that moves a part speaks of it, if any does", (*report).checkSpoken},
	{"backwards", "the words of a step tell first what is done first", (*report).checkBackwards},
	{"misplaced", "a verb stands at the step that tells of it", (*report).checkMisplaced},
	{"readfirst", "what words put on before they measure is on when it is read", (*report).checkReadFirst},
	{"unmarked", "what goes back by a mark has been given one", (*report).checkUnmarked},
	{"chalked", "a mark in chalk or pencil is read before heat, oil or washing takes it off", (*report).checkChalked},
	{"said", "what a step tells of counting and locking it has keys for", (*report).checkSaidNotDone},
	{"which-instrument", "of instruments alike at one step it is said which takes which reading", (*report).checkWhichInstrument},
	{"used", "what is defined is used, and what is measured is set", (*report).checkPairs},
	{"back-words", "a put-back row has something to put back", (*report).checkBackWords},
	{"pairs", "what is locked is unlocked, what is opened is closed, and every permit is asked for", (*report).checkGuards},
	{"cautions", "heating and lifting carry their signs, hot work and entry a permit", (*report).checkCautions},
	{"heats", "every heat is done, what came off hot goes back hot, and its seat is read while it is apart", (*report).checkHeats},
	{"lifts", "every lift is made by a step that moves what hangs on it", (*report).checkLifts},
	{"idle-lift", "a load that is raised goes somewhere", (*report).checkIdleLift},
	{"heavy", "nobody lifts more by hand than the site allows", (*report).checkHeavy},
	{"said-people", "a step takes as many people as its words want", (*report).checkSaidPeople},
	{"hot-gear", "slings and gear are good for the heat of what hangs on them", (*report).checkHotGear},
	{"hot-hands", "what a flame draws off has people enough at the torches, the puller, the watch and the crane", (*report).checkHotHands},
	{"stamped", "a number is read off the part that stays", (*report).checkStamped},
}

// All looks at every law.
func All(w *walk.Walk) source.Problems {
	var out source.Problems
	for _, l := range Laws {
		out = append(out, l.Check(w)...)
	}
	return out
}

// Check lists what breaks one law.
func (l Law) Check(w *walk.Walk) source.Problems {
	r := &report{walk: w, job: w.Job}
	l.check(r)
	return r.problems
}
