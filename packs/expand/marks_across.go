package expand

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

var (
	// within are things that sit in a part or hold it, and that no mark across a joint goes over to.
	within = phrase.Of(`(?i)\b(?:pin|dowel|key|plug|peg|shim|seal|ring|spring|liner|bush|bushing|wedge|clip)s?\b`)
	// marking are the words of a step that makes a mark, clauseEnd what ends its clause.
	marking   = phrase.Of(`(?i)\bmark(?:s|ed|ing)?\b`)
	clauseEnd = phrase.Of(`[.;,:]\s`)
)

// acrossInPairs finds the other side of the joint of parts whose author does not say it: of a
// matched set of two it is the other one, where the two meet by what is written besides. A set
// alone does not say so: a gear and its pinion lie side by side, two halves of a coupling may
// have a spacer between them. A part that is marked by itself, or holds the other together as
// a pin or a key, is none.
func (b *builder) acrossInPairs() {
	for _, p := range b.Job.Parts {
		if p.Marked == nil || p.Across != nil || p.Set == nil || len(p.Set.Members) != 2 {
			continue
		}
		q := p.Set.Members[0]
		if q == p {
			q = p.Set.Members[1]
		}
		if p.Count == 1 && q.Count == 1 && q.Marked == nil && !q.Fastens() && b.Job.HasEnglish(q.Name) && !within.MatchString(b.Job.InEnglish(q.Name)) && b.meets(p, q) {
			p.Across = q
		}
	}
}

// meets reports whether two parts lie against each other as far as it is written: one is behind
// the other, fasteners of a joint hold these two alone, or the step that marks one names both.
func (b *builder) meets(p, q *job.Part) bool {
	return slices.Contains(p.Behind, q) || slices.Contains(q.Behind, p) || b.heldTogether(p, q) || b.markNames(p, q)
}

// heldTogether reports whether some fasteners of a joint are before both parts, and before no
// third one that is no pin or seal: that may lie between them.
func (b *builder) heldTogether(p, q *job.Part) bool {
	return slices.ContainsFunc(p.Behind, func(f *job.Part) bool {
		return len(f.Joints) > 0 && slices.Contains(q.Behind, f) && !slices.ContainsFunc(b.Job.Parts, func(x *job.Part) bool {
			return x != p && x != q && slices.Contains(x.Behind, f) && !x.Fastens() && !within.MatchString(b.Job.InEnglish(x.Name))
		})
	})
}

// markNames reports whether a clause of the step that marks a part tells of marking, and calls
// the other part by its name.
func (b *builder) markNames(p, q *job.Part) bool {
	name, own := strings.ToLower(b.Job.InEnglish(q.Name)), strings.ToLower(b.Job.InEnglish(p.Name))
	if name == "" || name == own {
		return false
	}
	called := phrase.Words(phrase.Quoted(name))
	words := b.Job.InEnglish(p.Marked.Do)
	for words != "" {
		clause, rest := words, ""
		if at := clauseEnd.FindStringIndex(words); at != nil {
			clause, rest = words[:at[0]], words[at[1]:]
		}
		words = rest
		if marking.MatchString(clause) && called.MatchString(clause) {
			return true
		}
	}
	return false
}
