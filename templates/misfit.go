package templates

import (
	"fmt"
	"math"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A misfit is one of a page, or of a tag or label.
type misfit struct {
	layout.Misfit
	onTag bool
}

// problems turns what did not fit on the pages and on the tags into problems at the
// lines that it came from. The Ref of a block is the place in the file. A draft of a
// job with holes has boxes without digits and pictures without figures: the problem
// that made the hole has been told.
func problems(j *job.Job, holes bool, pages, tags []layout.Misfit) source.Problems {
	var all []misfit
	for _, m := range pages {
		all = append(all, misfit{m, false})
	}
	for _, m := range tags {
		all = append(all, misfit{m, true})
	}
	var out source.Problems
	all = worst(all)
	squeezed := crowded(j, all, &out)
	for i, m := range all {
		at, _ := m.Ref.(source.Pos)
		switch {
		case squeezed[i]:
		case holes && (m.Kind == layout.NoDigits || m.Kind == layout.Undrawn || at.IsZero()): // of no place: our own words at a box without digits
		case m.onTag && m.Kind == layout.TooHigh:
			out.Add(at, "too-high", fmt.Sprintf("the tag of %s has no room for all that is printed on it, by %.1f mm", cutText(m.Text), tenths(m.Over)),
				"write shorter what stands on it: the names of it, of its place and of its parts, keep:, way-round: and missed:", "or put some of its parts into another container; a box, tray or crate has a larger label than a bag")
		default:
			tell(j, m, at, &out)
		}
	}
	out.Sort()
	return out
}

// tell words one misfit of a text that its author can write shorter, or of a sign.
func tell(j *job.Job, m misfit, at source.Pos, out *source.Problems) {
	switch m.Kind {
	case layout.TooWide:
		out.Add(at, "too-wide", fmt.Sprintf("%s is %.1f mm wider than its place on paper", cutText(m.Text), tenths(m.Over)),
			append([]string{"write it shorter; nothing is printed smaller to make it fit"}, untabled(j, at)...)...)
	case layout.TooHigh:
		out.Add(at, "too-high", fmt.Sprintf("%s needs %.1f mm more height than its place on paper has", cutText(m.Text), tenths(m.Over)),
			append([]string{"write it shorter, or in two entries; nothing is printed smaller to make it fit"}, untabled(j, at)...)...)
	case layout.NoGlyph:
		out.Add(at, "no-sign", fmt.Sprintf("the typeface has no sign for %q (%U) in %s", m.Rune, m.Rune, cutText(m.Text)),
			"write it with other letters")
	case layout.RightToLeft:
		out.Add(at, "right-to-left", cutText(m.Text)+" runs from right to left, which cannot be set",
			"write it in letters that run from left to right")
	case layout.CodeTooLong:
		out.Add(at, "code-too-long", cutText(m.Text)+" is too long for the QR code of a tag",
			"shorten the name of the place or pocket")
	case layout.NoDigits:
		out.Add(at, "no-digits", "a box to write in under "+cutText(m.Text)+" has no digit before its point: nothing says how many it needs",
			"name a reading that is measured as a size, not one that is answered, ticked or drawn")
	default:
		out.Add(at, "picture", cutText(m.Text)+": "+m.Detail)
	}
}

// worst leaves of misfits that say the same of one text, as of the head of every
// page, the one that is over by most.
func worst(misfits []misfit) []misfit {
	type same struct {
		ref  layout.Ref
		kind layout.Kind
		text string
		sign rune
	}
	at := map[same]int{}
	var out []misfit
	for _, m := range misfits {
		key := same{m.Ref, m.Kind, m.Text, m.Rune}
		i, known := at[key]
		switch {
		case !known:
			at[key] = len(out)
			out = append(out, m)
		case m.Over > out[i].Over:
			out[i] = m
		}
	}
	return out
}

// tenths is a length in tenths of a millimetre, rounded up: what is over is never over by
// 0.0 mm.
func tenths(l layout.Mm) float64 { return math.Ceil(float64(l)*10-1e-6) / 10 }

// cutText quotes a text for a message, a long one only in its beginning.
func cutText(s string) string {
	r := []rune(units.Pointed(s))
	if len(r) > 40 {
		return quote(string(r[:40]) + "…")
	}
	return quote(string(r))
}

func quote(s string) string { return `"` + s + `"` }
