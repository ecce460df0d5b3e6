package main

import (
	"fmt"
	"slices"

	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// facesFor are the faces that the paper of a job is set in: the usual ones, or a site's
// own. A font that cannot be used is told where it is named, and the usual face stands in.
func facesFor(jb *job.Job, problems *source.Problems) *pdf.Faces {
	plain, strong := jb.Site.Plain, jb.Site.Strong
	for _, f := range []*job.FontFile{&plain, &strong} {
		if f.Data == nil {
			continue
		}
		if _, err := pdf.FontsOf(f.Data, nil); err != nil {
			problems.Add(f.At, "font", f.File+" "+err.Error(), "a TrueType file (.ttf) that its maker lets you embed")
			f.Data = nil
		}
	}
	faces, err := pdf.FontsOf(plain.Data, strong.Data)
	if err != nil {
		return pdf.NewFaces() // both were looked at
	}
	return faces
}

// compose composes a pack. What has no room in a site's own type, and has in the usual
// one, is the fault of the font and is told once, where the font is named.
func compose(jb *job.Job, o templates.Options, faces *pdf.Faces, problems source.Problems) (*templates.Pack, source.Problems) {
	pack, misfits := templates.Compose(jb, o, faces, problems)
	tight := func(p source.Problem) bool { return p.Code == "too-wide" || p.Code == "too-high" }
	if faces == pdf.NewFaces() || !slices.ContainsFunc(misfits, tight) {
		return pack, misfits
	}
	_, usual := templates.Compose(jb, o, pdf.NewFaces(), problems)
	kept, n, first := source.Problems{}, 0, ""
	for _, p := range misfits {
		if !tight(p) || slices.ContainsFunc(usual, func(q source.Problem) bool { return q.Pos == p.Pos && q.Code == p.Code }) {
			kept = append(kept, p)
			continue
		}
		if n++; n == 1 {
			first = p.Message
		}
	}
	if n > 0 {
		at := jb.Site.Plain.At
		if at.IsZero() {
			at = jb.Site.Strong.At
		}
		kept.Add(at, "font", fmt.Sprintf("in the fonts of the site %s; the same in all at %d places, which have room in the usual type", first, n), "take a narrower cut of the typeface, or take fonts: out")
	}
	return pack, kept
}
