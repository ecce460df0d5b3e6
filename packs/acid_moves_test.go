package packs_test

import (
	"slices"

	"gopkg.in/yaml.v3"
)

// More mutants of the order of work: two verbs of one step changed over, two containers
// of one step changed over, a whole step moved to the section above or below, and a whole
// section turned round.

func (m *orderMutator) moves() {
	var lists []*yaml.Node // the steps of the sections
	for _, s := range m.sections.Content {
		if list := entryOf(s, "steps"); list != nil {
			lists = append(lists, list)
		}
	}
	for i, list := range lists {
		m.turnRound(list)
		for k, st := range list.Content {
			m.swapVerbs(st)
			m.swapInto(st)
			if k == 0 && i > 0 && len(list.Content) > 1 {
				m.moveStep(list, k, lists[i-1])
			}
			if k == len(list.Content)-1 && i+1 < len(lists) && k > 0 {
				m.moveStep(list, k, lists[i+1])
			}
		}
	}
}

// turnRound writes the steps of a section the last first.
func (m *orderMutator) turnRound(list *yaml.Node) {
	if len(list.Content) < 2 {
		return
	}
	slices.Reverse(list.Content)
	m.add("turn section round", stepName(list.Content[len(list.Content)-1])+" to "+stepName(list.Content[0]), false)
	slices.Reverse(list.Content)
}

// moveStep moves a step over the end of its section, to a place of another.
func (m *orderMutator) moveStep(from *yaml.Node, k int, to *yaml.Node) {
	wasFrom, wasTo := from.Content, to.Content
	st := wasFrom[k]
	from.Content = slices.Delete(slices.Clone(wasFrom), k, k+1)
	// Not beside the end itself, where the order of work would stay as it is.
	at := 1
	if len(wasTo) > 1 && k == 0 {
		at = len(wasTo) - 1
	}
	to.Content = slices.Insert(slices.Clone(wasTo), min(at, len(wasTo)), st)
	kind := "move step to the section below"
	if k == 0 {
		kind = "move step to the section above"
	}
	m.add(kind, stepName(st), false)
	from.Content, to.Content = wasFrom, wasTo
}

// orderedVerbs are those whose order within a step is that in which they are written.
var orderedVerbs = []string{
	"measure", "set", "remove", "fit", "fit-for-now", "take-out-again", "loosen", "tighten", "open", "close", "lock", "unlock",
	"unlock-for-now", "lock-again", "hand-back", "judge", "stacks", "match-marks", "tool-count", "count-all",
}

// swapVerbs changes two verbs of a step over that stand one below the other. A step with
// one of them alone does the same in any order.
func (m *orderMutator) swapVerbs(st *yaml.Node) {
	var at []int // of the keys that are verbs
	for i := 0; i+1 < len(st.Content); i += 2 {
		if slices.Contains(orderedVerbs, st.Content[i].Value) {
			at = append(at, i)
		}
	}
	c := st.Content
	for n := 1; n < len(at); n++ {
		a, b := at[n-1], at[n]
		c[a], c[a+1], c[b], c[b+1] = c[b], c[b+1], c[a], c[a+1]
		m.add("swap verbs", stepName(st)+": "+c[a].Value+" before "+c[b].Value, false)
		c[a], c[a+1], c[b], c[b+1] = c[b], c[b+1], c[a], c[a+1]
	}
}

// swapInto changes the containers of two parts of a step over, which stand one below the
// other and differ.
func (m *orderMutator) swapInto(st *yaml.Node) {
	into := entryOf(st, "into")
	if into == nil || into.Kind != yaml.MappingNode {
		return
	}
	c := into.Content
	for i := 3; i < len(c); i += 2 {
		if c[i].Value == c[i-2].Value || c[i].Kind != yaml.ScalarNode || c[i-2].Kind != yaml.ScalarNode {
			continue
		}
		c[i], c[i-2] = c[i-2], c[i]
		m.add("swap into", stepName(st)+": "+c[i-3].Value+" and "+c[i-1].Value, false)
		c[i], c[i-2] = c[i-2], c[i]
	}
}
