package proofread

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// saysRenew is what a limit says is renewed: renew the sleeve, renew both shells. What it says
// not to renew is in the first group.
var saysRenew = phrase.Of(`(?i)\b(not )?renew (?:the |both |all |a |an )?([\pL -]+)`)

// beyond is where it goes on about where that sits: renew the bush of the shaft.
var beyond = phrase.Of(`(?i) (?:of|on|in|with) .*`)

// checkSpares warns of a reading that tells to renew what it is taken of, where the list of
// spares has none: the shaft sleeve was to be renewed below a size, and nobody had ordered
// one. Only who lists spares at all is told, and only of the parts that the reading names.
func (b *proofreader) checkSpares() {
	if len(b.Def.Spares) == 0 {
		return
	}
	told := map[string]bool{} // once for all places
	for _, d := range b.Job.Dims {
		for _, cure := range []string{d.Over, d.Under, d.Out, d.FoundOut} {
			p := b.renewed(d, cure)
			if p == nil || told[d.Base] || p.Renew == "always" || p.Added() || b.spared(p) {
				continue
			}
			told[d.Base] = true
			b.Problems.WarnWith(d.At, "no-spare", d.Base+" says "+source.Quote(cure)+", and "+p.Called()+" is not among the spares", p.At, "the part",
				"spares: {"+p.Key+": {part: "+p.Key+", note: take it back unused}}")
		}
	}
}

// renewed is the part of a reading that a text tells to renew, by the last word of its name;
// nil if it tells of none.
func (b *proofreader) renewed(d *job.Dim, cure string) *job.Part {
	if !b.Job.HasEnglish(cure) {
		return nil
	}
	var words []string
	for _, m := range saysRenew.FindAllStringSubmatch(b.Job.InEnglish(cure), -1) {
		if m[1] == "" {
			words = append(words, strings.Fields(strings.ToLower(beyond.ReplaceAllString(m[2], "")))...)
		}
	}
	for _, f := range []job.Face{d.Of, d.From, d.To} {
		if f.Part == nil {
			continue
		}
		name := strings.Fields(strings.ToLower(b.Job.InEnglish(f.Part.Name)))
		if len(name) == 0 {
			continue
		}
		if last := name[len(name)-1]; slices.Contains(words, last) || slices.Contains(words, last+"s") {
			return f.Part
		}
	}
	return nil
}

// spared reports whether the list of spares has a part, at any of its places.
func (b *proofreader) spared(p *job.Part) bool {
	return slices.ContainsFunc(b.Job.Supplies.Spares, func(s *job.Supply) bool {
		return slices.ContainsFunc(s.Parts, func(q *job.Part) bool { return q.Key == p.Key || q.At == p.At })
	})
}
