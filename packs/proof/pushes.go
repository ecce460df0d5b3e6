package proof

import (
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// Wedges, jacks and presses hold, prop and chock as often as they press a joint apart: they push
// where the words of their step say so.
var (
	pressers = phrase.Of(`(?i)\b(?:wedges?|(?:flange )?spreaders?|(?:bottle|screw|toe|hydraulic|flange)?[ -]?jacks?|press(?:es)?|rams?|hydraulic cylinders?|(?:crow|pry|prise)[ -]?bars?)\b`)
	apart    = phrase.Of(`(?i)\b(?:wedge|press|push|jack|pri[sz]e|pry|drive|force|spread)(?:s|ing)?\b[^.;]*\b(?:apart|off|loose|free|from each other|until (?:it|they|the [\w ]+) (?:parts?|opens?|comes? (?:off|away|free|loose)))\b|\b(?:part|spread|break|open)(?:s|ing)? the (?:[\w-]+ )?(?:joint|flanges?|faces|halves)\b|\buntil the (?:[\w-]+ )?(?:joint|flanges?|faces|halves) (?:parts?|opens?|comes? (?:away|apart|free))\b`)
	// pressedNot are words of a step in which something else comes off, or nothing does.
	pressedNot = phrase.Of(`(?i)\b(?:not|never|do not|don't|without)\b[^.;]*\b(?:apart|off|loose|free)\b`)
	// otherOff are other things that come off, out or loose: a weight, slings, nuts, the dowels.
	otherOff = phrase.Of(`(?i)\b(?:take|keep|get)s? (?:the |its )?(?:weight|load) off\b|\b(?:weight|load) (?:is|comes) off\b|\b(?:take|unscrew|run)s? (?:the |all )?(?:[\w-]+ )?(?:nuts?|bolts?|screws?|studs?|slings?|chains?) off\b|` +
		`\b(?:slings?|chains?|ropes?|straps?) (?:comes? |go(?:es)? |hangs? |is |are )?(?:loose|slack|free|off)\b|` +
		`\b(?:push|press|drive|jack|tap|knock)(?:es|s)? (?:the |both |all )?(?:[\w-]+ )?(?:dowels?|pins?|keys?|studs?|bolts?) (?:apart|off|loose|free|out)\b`)
)

// pushes reports whether what is fitted for now pushes a part off its joint: screws by their
// name, other aids by their name and the words of the step.
func (r *report) pushes(e *walk.Event) bool {
	name, words := r.job.InEnglish(e.Move.Part.Name), otherOff.ReplaceAllString(r.job.InEnglish(e.Step.Do), " ")
	return jacks.MatchString(name) || e.Move.Part.Aid && pressers.MatchString(name) && apart.MatchString(words) && !pressedNot.MatchString(words)
}
