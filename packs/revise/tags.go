package revise

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/keep"
)

// A Fate is what is done about a tag that hangs when a new revision comes.
type Fate int

// The fates of a tag.
const (
	// Stays: it says what is so, and keeps hanging.
	Stays Fate = iota
	// StepsMoved: it stays true but for the numbers of its steps.
	StepsMoved
	// Reissue: what it says has changed; a new one is printed with the same key.
	Reissue
	// OtherThing: its mark stands for something else now; it comes off at once.
	OtherThing
	// Withdraw: nothing has its mark any more.
	Withdraw
	// New: it has not hung before.
	New
)

// A Verdict is what becomes of one tag.
type Verdict struct {
	Mark string
	Fate Fate
	// Was and Is are what it says in the two revisions, a line each: what differs.
	Was, Is []string
}

// verdicts tells of every tag of the new revision, then of those that are gone.
func verdicts(old, now *job.Job) []Verdict {
	before := map[string]*job.Tag{}
	for _, t := range old.Tags {
		before[t.Mark] = t
	}
	var out []Verdict
	seen := map[string]bool{}
	for _, t := range now.Tags {
		seen[t.Mark] = true
		out = append(out, verdict(before[t.Mark], t))
	}
	for _, t := range old.Tags {
		if !seen[t.Mark] && !t.Spare {
			out = append(out, Verdict{Mark: t.Mark, Fate: Withdraw})
		}
	}
	return out
}

// verdict holds one tag against the one that hangs, nil if none does.
func verdict(was, is *job.Tag) Verdict {
	v := Verdict{Mark: is.Mark}
	if was == nil {
		v.Fate = New
		return v
	}
	a, b := keep.Says(was), keep.Says(is)
	v.Was, v.Is = without(a, b), without(b, a)
	if was.Kind != is.Kind {
		v.Was, v.Is = append(v.Was, hungAs(was)), append(v.Is, hungAs(is))
	}
	switch {
	case was.Key != is.Key:
		v.Fate = Withdraw // another machine or job: its key is none of this one
	case another(was, is):
		v.Fate = OtherThing
	case len(v.Was)+len(v.Is) > 0:
		v.Fate = Reissue
	case !slices.Equal(stepNos(was.In), stepNos(is.In)) || !slices.Equal(stepNos(was.Out), stepNos(is.Out)):
		v.Fate = StepsMoved
	}
	return v
}

// hungAs is what a tag is printed on.
func hungAs(t *job.Tag) string {
	return map[job.TagKind]string{job.HangTag: "a hang tag", job.BoxLabel: "a box label", job.BagLabel: "a bag label"}[t.Kind]
}

// another reports whether a mark has gone to another thing: another kind of tag, another
// big part, or a container that is called otherwise and shares no part with the old one.
func another(was, is *job.Tag) bool {
	if (was.Part == nil) != (is.Part == nil) || was.Scrap != is.Scrap || was.Spare != is.Spare {
		return true
	}
	if was.Part != nil {
		return was.Part.Place.Mark(was.Part.Key) != is.Part.Place.Mark(is.Part.Key)
	}
	if was.Name == is.Name {
		return false
	}
	for _, m := range was.In {
		for _, n := range is.In {
			if m.Part.Key == n.Part.Key {
				return false
			}
		}
	}
	return len(was.In) > 0 && len(is.In) > 0
}

// without is what of a is not in b.
func without(a, b []string) []string {
	var out []string
	for _, s := range a {
		if !slices.Contains(b, s) {
			out = append(out, s)
		}
	}
	return out
}

func stepNos(ms []*job.Move) []string {
	var out []string
	for _, m := range ms {
		if m.Step != nil && !slices.Contains(out, m.Step.No) {
			out = append(out, m.Step.No)
		}
	}
	return out
}
