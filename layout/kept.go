package layout

import (
	"slices"
	"strings"
)

// The same few hundred words are set thousands of times in a pack: captions, marks and
// sentences at every place, in every way that is tried, in each pass over the pages. So
// a setter keeps what it has made of one run, without its note of where it came from.

// setKey is all that the setting of one run hangs on.
type setKey struct {
	text           string
	style          Style
	deco           Deco
	align          Align
	line           bool
	width, hang    Mm
	notchW, notchH Mm
	role           string
}

// A cutRun is a run that was cut into fragments by itself: lead are the signs it begins with
// that only part, for what they do hangs on the run before. Its misfits have no ref.
type cutRun struct {
	lead, text string
	frags      []fragment
	misfits    []Misfit
}

// cutKey is all that the cutting of a run hangs on.
type cutKey struct {
	text  string
	style Style
	deco  Deco
}

// cutOf cuts a run, or gives it as it was cut before: a paragraph is set in many widths.
func (s *Setter) cutOf(r Run) cutRun {
	return keep(s.cuts, cutKey{r.Text, r.Style, r.Deco}, func() cutRun { return s.cutNow(r) })
}

func (s *Setter) cutNow(r Run) (k cutRun) {
	r.Text = s.Decimals(r.Text)
	k.text, k.misfits = s.clean(r)
	if r.Deco == Plain {
		body := strings.TrimLeftFunc(k.text, onlyParts)
		k.lead, k.text = k.text[:len(k.text)-len(body)], body
	}
	c := cutter{s: s}
	c.cut(r, k.text)
	k.text, k.frags = c.text, slices.Clip(c.frags)
	return k
}

// mostKept bounds what a setter keeps: a job with more different texts is so large that
// memory is dearer than time.
const mostKept = 1 << 12

// keep gives what is kept under a key, made now if it is not.
func keep[K comparable, V any](kept map[K]V, key K, make func() V) V {
	v, known := kept[key]
	if !known {
		v = make()
		if len(kept) < mostKept {
			kept[key] = v
		}
	}
	return v
}

// once sets a single run, or gives it as it was set before; runs of several are always
// set.
func (s *Setter) once(line bool, width Mm, runs []Run, o ParaOpts, set func([]Run, ParaOpts) Block) Block {
	if len(runs) != 1 {
		return set(runs, o)
	}
	r := runs[0]
	ref, role := refOr(r.Ref, o.Ref), r.Role
	if role == "" {
		role = o.Role
	}
	key := setKey{r.Text, r.Style, r.Deco, o.Align, line, width, o.Hang, o.NotchW, o.NotchH, role}
	return keep(s.kept, key, func() Block {
		r.Ref, r.Role, o.Ref = nil, role, nil
		return set([]Run{r}, o)
	}).Tagged(ref)
}
