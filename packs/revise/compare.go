package revise

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// A Kind says what became of a thing between two revisions.
type Kind int

// The kinds of changes.
const (
	Added Kind = iota
	Removed
	Changed
	Moved // it has another number, and is as it was
)

// A Change is one thing that is not as it was.
type Change struct {
	Kind Kind
	Name string   // a step with its number, a mark
	What []string // for one that is changed: what was, and what is, in pairs
}

// Changes are all differences of two revisions.
type Changes struct {
	Steps, Readings []Change
	Others          []Change // what stands on sheets of its own, as lifts and hazard notes
	Tags            []Verdict
}

// A line is one thing that is said of a step or a reading.
type line struct{ what, says string }

// A thing is a step or a reading with all that is said of it.
type thing struct {
	id, name, no string
	lines        []line
	step         *job.Step // nil of what is none
	dim          *job.Dim  // nil of what is none
	at           source.Pos
}

// Compare holds the new revision of a job against the old one.
func Compare(old, now *job.Job) Changes {
	return Changes{
		Steps:    differences(steps(old), steps(now)),
		Readings: differences(readings(old), readings(now)),
		Others:   differences(others(old), others(now)),
		Tags:     verdicts(old, now),
	}
}

// Since lists the steps, readings, tags and other things of the new revision that are not as
// they were: new, or saying another thing; and what is gone. What has only another number is
// as it was.
func Since(old, now *job.Job) *job.Since {
	out := &job.Since{Was: old.Order.Revision, Steps: map[*job.Step]bool{}, Dims: map[*job.Dim]bool{}, Tags: map[*job.Tag]bool{}}
	for _, t := range changed(steps(old), steps(now)) {
		out.Steps[t.step] = true
	}
	for _, t := range changed(readings(old), readings(now)) {
		out.Dims[t.dim] = true
	}
	for _, t := range changed(others(old), others(now)) {
		out.Others = append(out.Others, job.Changed{At: t.at, Name: t.name, Anchor: t.id})
	}
	out.Gone = slices.Concat(gone(steps(old), steps(now)), gone(readings(old), readings(now)), gone(others(old), others(now)))
	fates := map[string]Fate{}
	for _, v := range verdicts(old, now) {
		fates[v.Mark] = v.Fate
	}
	for _, t := range now.Tags {
		if f := fates[t.Mark]; f != Stays && f != StepsMoved {
			out.Tags[t] = true
		}
	}
	return out
}

// changed are the things that are new or say another thing.
func changed(old, now []thing) []thing {
	before := map[string]thing{}
	for _, t := range old {
		before[t.id] = t
	}
	var out []thing
	for _, t := range now {
		if was, known := before[t.id]; !known || !slices.Equal(was.lines, t.lines) {
			out = append(out, t)
		}
	}
	return out
}

// differences are what was added, taken out, changed or moved, in the order of the new
// revision, and then what is gone.
func differences(old, now []thing) []Change {
	before := map[string]thing{}
	for _, t := range old {
		before[t.id] = t
	}
	var out []Change
	seen := map[string]bool{}
	for _, t := range now {
		seen[t.id] = true
		was, known := before[t.id]
		switch {
		case !known:
			out = append(out, Change{Kind: Added, Name: t.name})
		case !slices.Equal(was.lines, t.lines):
			out = append(out, Change{Kind: Changed, Name: t.name, What: pairs(was.lines, t.lines)})
		case was.no != t.no:
			out = append(out, Change{Kind: Moved, Name: t.name, What: []string{was.no, t.no}})
		}
	}
	for _, t := range old {
		if !seen[t.id] {
			out = append(out, Change{Kind: Removed, Name: t.name})
		}
	}
	return out
}

// pairs lists what was and what is, for each line that differs.
func pairs(was, now []line) []string {
	says := func(ls []line, what string) string {
		for _, l := range ls {
			if l.what == what {
				return l.says
			}
		}
		return ""
	}
	var out []string
	done := map[string]bool{}
	for _, l := range slices.Concat(was, now) {
		a, b := says(was, l.what), says(now, l.what)
		if a == b || done[l.what] {
			continue
		}
		done[l.what] = true
		out = append(out, l.what+": "+orNothing(a), l.what+": "+orNothing(b))
	}
	return out
}

// orNothing says so where there is nothing.
func orNothing(s string) string {
	if s == "" {
		return "nothing"
	}
	return s
}

// lines collects what is said of a thing, leaving out what is not.
type lines []line

func (l *lines) add(what string, says ...string) {
	if s := strings.Join(says, ", "); s != "" {
		*l = append(*l, line{what, s})
	}
}
