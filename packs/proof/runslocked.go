package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// What is done to a machine that runs, by words: it is started or switched on, as a sentence or a
// part of it begins; it is run for some time (run one hour empty, run the pump 30 min at 60 bar); it
// is read while it runs. A nut is started and run up by hand, oil runs, a bearing runs in an oven, the
// start is tried behind the locks, a rotor runs on the balancing machine, a pump is run
// empty by hand, a test load is lifted off its truck by something else, and what is read after a run may be read behind them.
var (
	saysStart   = phrase.Of(`(?i)(?:^|[.;:!?,] |\b(?:and|then|now) )(?:start(?: up)?|switch on) (?:it|(?:the )?(?:` + machineWords + `))\b|(?:^|[.;:!?,] |\b(?:and|then|now) )switch (?:it|(?:the )?(?:` + machineWords + `)) on\b`)
	saysRun     = phrase.Of(`(?i)(?:(?:^|[.;:!?,] |\b(?:and|then|now) )run (?:it )?|\brun (?:the )?(?:` + machineWords + `) |\blet (?:it|the (?:` + machineWords + `)) run )(?:(?:up )?(?:to|at) (?:(?:full|half|low|rated|running|working) )?speed |empty |unloaded |uncoupled |idle |warm )?(?:for )?(?:` + numberWords + `) (?:hours?|hrs?|h|minutes?|mins?)\b`)
	saysEmpty   = phrase.Of(`(?i)(?:^|[.;:!?,] |\b(?:and|then|now) )run (?:it|(?:the )?(?:` + machineWords + `)) (?:empty|unloaded|uncoupled|idle|at (?:full|half|low|rated|running) speed|up to (?:full |rated |running )?speed)\b`)
	saysLoad    = phrase.Of(`(?i)(?:^|[.;:!?,] |\b(?:and|then|now) )(?:lift|raise|hoist|lower|hold) (?:a |the )?(?:full |rated )?(?:test|proof) (?:load|weight)\b`)
	otherLifts  = phrase.Of(`(?i)^[^.;:]*\b(?:onto|on to|off|from the (?:truck|lorry|pallet|rack)|(?:with|by) (?:the |a |its )?(?:[\w-]+ )?(?:crane|forklift|fork-lift|truck|telehandler|hand pump|jacks?|hand|slings?))\b`)
	offFloor    = phrase.Of(`(?i)\b(?:just )?off (?:the )?(?:floor|ground|deck)\b`)
	atSpeed     = phrase.Of(`(?i)^(?:vibration|noise|current|sound|draught|draft)\b[^.;:]*\bat (?:full|running|rated|operating|working) speed\b`)
	afterHours  = phrase.Of(`(?i)^(?:(?:\w+ ){0,3}bearing |oil |winding |casing )temperature\b[^.;:]*\b(?:after|at the end of) (?:` + numberWords + `) (?:hours?|hrs?|h|minutes?|mins?)(?: of running| at speed)?$`)
	runsThen    = phrase.Of(`(?i)\b(?:run|runs|running|speed|loads?|loaded)\b`)
	warmedThen  = phrase.Of(`(?i)\b(?:heat|heats|heated|heaters?|dry|dries|dried|drying|flush|flushes|flushed|flushing|bake|bakes|baked|baking)\b`)
	saysRunning = phrase.Of(`(?i)\bwhile (?:it is |it's )?running\b|\bwhile it runs\b`)
	otherRuns   = phrase.Of(`(?i)^ (?:of|(?:space )?heaters?|hubs?|lamps?|lights?|lighting|keys?|pins?|nuts?|bolts?|screws?|buttons?|in (?:the|an|its) (?:oven|furnace|bath|washer)|on (?:its|the) (?:jacks?|shaft|studs?|spigot|dowels?|bench)|(?:wheels?|rollers?|drums?|shafts?) by)\b|^-\w|^[^.;:]*\b(?:on (?:the |a )?(?:balancing|test|milling|turning) (?:machine|bench|stand|rig)|on (?:the |a )?(?:lathe|balancer)|(?:with|by) (?:the |a |its )?(?:hand(?: pump| crank)?|barring gear|crank|lever|drill)|of (?:water|oil|air|product|liquid|slurry|grease)|(?:through|by) (?:the |its )?(?:drains?|vents?|plug)|into (?:the |a )?(?:drum|tank|tray|bucket|sump|drain))\b`)
	triedStart  = phrase.Of(`(?i)\bmust not (?:turn|start|run|move)\b|\bdoes(?: not|n't) (?:turn|start|run|move)\b|\bno answer\b|\bnothing (?:turns|starts|runs|moves|happens)\b`)
)

const (
	machineWords = "pump|fan|motor|gearbox|machine|compressor|turbine|blower|mill|belt|mixer|agitator|drive|engine|set|unit|exciter|generator"
	numberWords  = `an?|one|two|three|four|five|six|ten|fifteen|twenty|thirty|half an|several|some|a few|\d+(?:[.,]\d+)?(?: (?:to|or) \d+)?`
)

// checkRunsLocked warns of a step whose words start a machine, run it, or read it while it
// runs, with all its locks on from the beginning to the end of the step: the one that takes
// them off was forgotten, or stands below.
func (r *report) checkRunsLocked() {
	for _, st := range r.walk.Steps {
		does := r.runs(st)
		if st.Locks() || !r.allLocked(r.walk.End(st)) {
			does = ""
		}
		if does == "" {
			does = r.readsLocked(st)
		}
		if does == "" || len(r.job.Isolations) == 0 || st.Bench {
			continue
		}
		x := r.job.Isolations[0]
		at, what, help := x.At, "locked then", "unlock: or unlock-for-now: at a step above, or at this one"
		if x.UnlockedAt != nil && x.UnlockedAt.Index > st.Index {
			at, what, help = x.UnlockedAt.At, "taken off only here", "do it below the step that takes the locks off"
		}
		if len(st.UnlockForNow)+len(st.Unlock) > 0 { // the step does so itself, and reads before or after
			at, what, help = st.At, "unlocked here", "write it below unlock-for-now: and above lock-again:, for the verbs of a step are done in the order in which they stand"
		}
		r.problems.WarnWith(st.At, "runs-locked", st.Name()+" "+does+", and every isolation is locked then", at, what, help, "or say it in other words, if nothing runs")
	}
}

// allLocked reports whether every isolation is locked before an event.
func (r *report) allLocked(at int) bool {
	for _, x := range r.job.Isolations {
		if !r.walk.LockedAt(x, at) {
			return false
		}
	}
	return true
}

// runs says what a step does to a machine that runs, empty for nothing.
func (r *report) runs(st *job.Step) string {
	words := r.job.InEnglish(st.Do)
	switch {
	case saysOfMachine(saysStart, words) && !triedStart.MatchString(words):
		return "starts the machine by its words"
	case saysOfMachine(saysRun, words), saysOfMachine(saysEmpty, words), liftsLoad(words):
		return "runs the machine by its words"
	}
	return ""
}

// readsLocked says what a step reads of a machine that runs, where it stands in the step above
// the line that takes the locks off or below the one that puts them on again; empty for nothing.
func (r *report) readsLocked(st *job.Step) string {
	for _, e := range r.walk.At(st) {
		if e.Verb != job.DoMeasure && e.Verb != job.DoSet || !r.allLocked(e.Index) {
			continue
		}
		d := e.Dim
		if atSpeed.MatchString(r.job.InEnglish(d.What)) || r.afterRun(st, d) || slices.ContainsFunc([]string{d.State.With, d.Of.Name, d.From.Name, d.To.Name}, func(words string) bool {
			return saysRunning.MatchString(r.job.InEnglish(words))
		}) {
			return "reads " + d.Mark + " while it runs"
		}
	}
	return ""
}

// afterRun reports whether a dimension is read some time after the machine was set running: the
// reading or its step says that it runs, and the step neither heats, dries, flushes nor bakes.
func (r *report) afterRun(st *job.Step, d *job.Dim) bool {
	does, what := r.job.InEnglish(st.Do), r.job.InEnglish(d.What)
	return d.Found == nil && afterHours.MatchString(what) && runsThen.MatchString(does+" "+what) && !warmedThen.MatchString(does)
}

// saysOfMachine reports whether words say something of the machine, and not of what is named behind
// it: the pump of a tensioner.
func saysOfMachine(what *phrase.Pattern, words string) bool {
	return slices.ContainsFunc(what.FindAllStringIndex(words, -1), func(at []int) bool { return !otherRuns.MatchString(words[at[1]:]) })
}

// liftsLoad reports whether words lift a test load by the machine, and not by what brings it there.
func liftsLoad(words string) bool {
	words = offFloor.ReplaceAllString(words, "up")
	return slices.ContainsFunc(saysLoad.FindAllStringIndex(words, -1), func(at []int) bool { return !otherLifts.MatchString(words[at[1]:]) })
}
