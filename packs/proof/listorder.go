package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// holdsAPart are names of what keeps another part in its place.
var holdsAPart = phrase.Of(`(?i)\b(?:dowels?|pins?|cotters?|keys?|washers?|circlips?|(?:snap|retaining|lock|locking) rings?|lock(?:ing)? (?:wires?|plates?|tabs?)|clips?|wedges?)\b`)

// listKeys are the keys behind which the lists of parts stand.
var listKeys = map[job.Verb]string{job.DoRemove: "remove", job.DoFit: "fit", job.DoFitForNow: "fit-for-now", job.DoTakeOut: "take-out-again"}

// checkListOrder sees that what one step takes off stands in its list from the outside in, and
// what it puts back from the inside out: the list is printed and worked off as it is written. What
// holds a part is named beside it in any order: nobody takes a cover off before its screws. A
// generated row has the list of its step turned round.
func (r *report) checkListOrder() {
	for _, st := range r.walk.Steps {
		if st.Undoes != nil {
			continue
		}
		lists := map[job.Verb][]*walk.Event{}
		told := map[source.Pos]bool{} // once for a part, however many it is moved past
		for _, e := range r.walk.Events[r.walk.Start(st):r.walk.End(st)] {
			if e.Step != st || e.Move == nil {
				continue
			}
			for _, before := range lists[e.Verb] {
				if !told[before.At] && r.turned(before, e) {
					told[before.At] = true
					break
				}
			}
			lists[e.Verb] = append(lists[e.Verb], e)
		}
	}
}

// turned tells of two parts of one list, the first of which is moved past the second, and
// reports whether it did.
func (r *report) turned(first, second *walk.Event) bool {
	p, q := first.Move.Part, second.Move.Part
	off := first.Verb == job.DoRemove || first.Verb == job.DoTakeOut
	inner, front := p, q
	if !off {
		inner, front = q, p
	}
	if !r.job.HasEnglish(front.Name) || !r.job.HasEnglish(inner.Name) {
		return false // what holds a part is known by its name alone
	}
	if front.Fastens() || holdsAPart.MatchString(r.job.InEnglish(front.Name)) || holdsAPart.MatchString(r.job.InEnglish(inner.Name)) || !slices.Contains(inner.Behind, front) || slices.Contains(front.Behind, inner) {
		return false
	}
	does := " comes off"
	if !off {
		does = " goes back"
	}
	r.problems.WarnWith(first.At, "list-order", p.Called()+does+" before "+q.Called()+" in the list of "+first.Step.Name()+", and "+front.Called()+" is in front of "+inner.Called(), front.At, "in front of it",
		"write "+q.Key+" before "+p.Key+" in "+listKeys[first.Verb]+":", "or take "+source.Quote(front.Key)+" out of behind: at "+inner.Key)
	return true
}
