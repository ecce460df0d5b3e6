package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

const (
	drained = `it|the|all|both|each|every|everything|its|casing|oil|water|gear ?case|gearbox|pump|housings?|sump|cylinders?|system|lines?|bearings?|receiver`
	emptied = `casings?|gear ?case|gearbox|pump|housings?|sump|cylinders?|system|lines?|receiver|vessel|volute|header|machine|compressor`
)

// What lets pressure or a liquid off by the words of a step: drain it, drain down the casing, empty
// it, vent it, blow it down, let the oil off, release the pressure, open the drain, as a sentence or
// a part of it begins.
var (
	drains = phrase.Of(`(?i)(?:^|[.;:!?,] |\b(?:and|then|now) )(?:slowly |carefully |gently )?(?:(?:drain|vent|bleed|depressuri[sz]e|blow) (?:off |out |down )?(?:` + drained + `)\b|` +
		`empty (?:the |both |all |each |its )?(?:[\w-]+ )?(?:` + emptied + `)\b|` +
		`(?:let (?:off|down)|release|relieve|take off) (?:the |all |any |its )?(?:[\w-]+ )?pressure\b|` +
		`let (?:the|all) [\w -]{2,30}?\b(?:off|out|run out|drain|run (?:dry|empty))\b|let it (?:drain|run (?:dry|empty))\b|crack (?:open )?(?:the |both )?(?:[\w-]+ )?(?:drain|vent)s?\b|open (?:the |both |all )?(?:[\w-]+ )?(?:drain|vent|bleed)(?:s|ing)?\b)`)
	// blows is said of what is blown down or blown clean, blowsDown of the first.
	blows     = phrase.Of(`(?i)^\W*(?:(?:and|then|now) )?blow\b`)
	blowsDown = phrase.Of(`(?i)^\W*(?:(?:and|then|now) )?blow (?:(?:down|off) (?:it|(?:the |all |both )?(?:[\w-]+ )?(?:` + emptied + `|pressure|air|steam))\b|[^.,;:]*\b(?:down|off)(?:$|[.,;:]| (?:at|through|to|by|until|with)\b))`)
	// drainedInService are words by which the plant does it, or by which it is no work at the machine.
	drainedInService = phrase.Of(`(?i)\b(?:operators?|operations|control room|from the desk|plant|process|in service|while (?:it|the \w+) (?:runs|is running)|shut ?down|stop(?:ped)?|pump(?:ed)? (?:it )?(?:out|down|empty)|lock(?:s|ed|out)?|isolat\w+|blind(?:s|ed)?|rack(?:s|ed)?)\b`)
	// drainedElse is what is drained or vented that is no machine behind a lock.
	drainedElse = phrase.Of(`(?i)^\W*(?:and |then |now )?\w+ (?:off |out |down )?(?:it\b|the|all|both|each|every|its)? ?(?:[\w-]+ ){0,2}?(?:` + elsewhere + `|rain ?water)\b|` +
		`^\W*[^.,;:]*\b(?:(?:of|off|from) (?:(?:the|a|its|each|both|every) )?(?:[\w-]+ )?(?:` + elsewhere + `)|(?:in|on|at) (?:(?:the|a|its) )?(?:[\w-]+ )?(?:hoses?|jacks?|tensioners?|torque (?:wrench|tool)|(?:hydraulic )?(?:spanner|wrench)|hand pump|lever|handle|pedal|spring))\b|` +
		`^\W*(?:and |then |now )?open (?:the |both |all )?(?:[\w-]+ )?(?:drain|vent|bleed)(?:ing)? (?:pan|tray|hose|tank|bucket|can|covers?|channel|grating|lid|box)\b|` +
		`^\W*(?:and |then |now )?let (?:the|all) (?:[\w-]+ )?(?:ropes?|chains?|cables?|hooks?|slings?|load|men|crew|people|\w*drivers?)\b|` +
		`^\W*[^.,;:]*\bpressure (?:gauge|plate|pad|hose|switch|pump|sensor|transmitter)s?\b`)
)

// elsewhere is what has a drain or a vent, or pressure, and stands beside the machine.
const elsewhere = `pit|gully|trench|bucket|tray|pan|bund|hoses?|jacks?|hand pump|tensioners?|torque (?:wrench|tool)|(?:hydraulic )?(?:spanner|wrench)|cranes?|hoists?|forklift|truck|room|hall|building|roof|foundation|pockets?|tent|floor`

// saysDrains reports whether words let pressure or a liquid off the machine, as work of this step.
func saysDrains(words string) bool {
	return slices.ContainsFunc(drains.FindAllStringIndex(words, -1), func(at []int) bool {
		return !notIn.MatchString(clause.FindString(words[:at[0]])) && !drainedElse.MatchString(words[at[0]:]) && !saysLater.MatchString(words[at[1]:]) &&
			(!blows.MatchString(words[at[0]:]) || blowsDown.MatchString(words[at[0]:]))
	}) && !drainedInService.MatchString(words)
}

// saysLater are words behind it by which it is not done now.
var saysLater = phrase.Of(`(?i)^[^.;:]*\b(?:later|afterwards|below|at step|(?:is|are|was|were) done (?:by|at))\b`)

// checkDrained warns of a step whose words drain or vent the machine above the first that locks
// it: hands are at a machine that can start, and what is let off can come again. Where the plant
// does it by its words, or the step stops the machine first, it is left alone.
func (r *report) checkDrained() {
	first := r.firstLock()
	if first == nil {
		return
	}
	for _, st := range r.walk.Steps[:first.Index] {
		if st.Bench || st.Locks() || !saysDrains(r.job.InEnglish(st.Do)) {
			continue
		}
		r.problems.WarnWith(st.At, "drained-unlocked", st.Name()+" drains or vents the machine by its words, and nothing is locked before "+first.Name(), first.At, "locked only here",
			"do it below the step that locks", "or say who does it, if the plant drains it in service: operators drain it")
	}
}

// firstLock is the first step that locks an isolation, nil if none does.
func (r *report) firstLock() *job.Step {
	if i := slices.IndexFunc(r.walk.Steps, func(st *job.Step) bool { return len(st.Lock) > 0 }); i >= 0 {
		return r.walk.Steps[i]
	}
	return nil
}
