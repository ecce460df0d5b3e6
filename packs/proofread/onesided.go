package proofread

import (
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/phrase"
	"matchmark/packs/reading"
)

// Which way a size goes as parts wear: who says what to do then need not say it of the other
// side, which no used part comes to. Common practice, no source.
var wears = map[string]string{
	"clearance": "over", "bore": "over", "float": "over", "backlash": "over", "runout": "over", "gap": "over",
	"diameter": "under", "thickness": "under", "length": "under", "force": "under", "depth": "", "condition": "", "contact": "", "": "",
}

// setsIt finds words of setting: what can be set too low can be set too high.
var setsIt = phrase.Of(`(?i)^(?:(?:then|and) )?(?:(?:move|lay|put|add|drain|fill|let|top up|turn|screw|raise|lower|shift|shim|slacken|bleed)\b|take\b[^,;.]*\bout\b)`)

// checkOneSided warns of a limit with two sides that says what to do on one of them alone,
// where the other can come about: the adjuster or the shims set it, the words say how, or the
// side that is not told is the one that wear leads to. Of a size that wears neither way, as a
// temperature, both are wanted.
func (b *proofreader) checkOneSided(d *job.Dim, dd *def.Dimension) {
	over, under, out := names.TextAt(d.Place, dd.Over), names.TextAt(d.Place, dd.Under), names.TextAt(d.Place, dd.Out)
	if out.Written() || over.Written() == under.Written() || !twoSided(d) {
		return
	}
	told, lacks := over, "under"
	if under.Written() {
		told, lacks = under, "over"
	}
	wear, known := wears[b.sortOf(d)]
	if d.Adjuster == nil && d.Shims == nil && !setsIt.MatchString(b.Job.InEnglish(told.Value)) && known && wear != lacks {
		return
	}
	where := map[string]string{"over": "above", "under": "below"}[lacks]
	b.Problems.Warn(told.At, "one-side-told", d.Mark+" has a limit on both sides, and nothing is said of what is done "+where+" it",
		lacks+": what is done then", "or out: in place of both, where it is the same")
}

// sortOf is the kind of a dimension, or what its name says that it is, as of a clearance that is
// worked out and has no kind.
func (b *proofreader) sortOf(d *job.Dim) string {
	if d.Kind == "" {
		return strings.ToLower(sorts.FindString(b.Job.InEnglish(d.What)))
	}
	return d.Kind
}

var sorts = phrase.Of(`(?i)\b(?:clearance|bore|float|backlash|gap|diameter|thickness|length)\b`)

// twoSided reports whether a reading can lie above its limits and below them.
func twoSided(d *job.Dim) bool {
	limits := d.LeftLimits()
	if d.JudgedFound() {
		limits = append(limits, d.Found)
	}
	low, high := false, false
	for _, l := range limits {
		for _, t := range l.Tests {
			from, to, ok := t.Limits()
			switch {
			case t.Rule == reading.About, t.Group == reading.Spread:
			case !ok:
				low, high = low || t.Rule != reading.AtMost, high || t.Rule != reading.AtLeast
			default:
				low = low || from != nil && (from.Number.Sign() > 0 || d.Box.Signed)
				high = high || to != nil
			}
		}
	}
	return low && high
}
