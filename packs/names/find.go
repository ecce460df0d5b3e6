package names

import (
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// FaceAt resolves a face at a place. A part that stands at several places needs
// one named.
func (b *Index) FaceAt(f def.Face, pl job.Place) job.Face {
	if !f.Part.Written() {
		return job.Face{}
	}
	if part, face, ok := strings.Cut(f.Part.Value, " "); ok && !f.Face.Written() && b.Parts[part] != nil && b.Parts[f.Part.Value] == nil {
		b.Problems.Add(f.Part.At, "unknown-name", source.Quote(f.Part.Value)+" is a part and one of its faces, with a colon between them", "write: {"+part+": "+face+"}")
		return job.Face{}
	}
	found := b.PartsAt(f.Part, pl)
	if len(found) > 1 {
		b.Problems.Add(f.Part.At, "which-place", source.Quote(f.Part.Value)+" stands at several places", "name the place: "+found[0].Place.Mark(found[0].Key))
	}
	if len(found) != 1 {
		return job.Face{}
	}
	return job.Face{Part: found[0], Name: ValueAt(pl, f.Face)}
}

// DimsAt resolves the mark of a dimension in a step's list: D7, D7/DE.
func (b *Index) DimsAt(t source.Text, from job.Place) []*job.Dim {
	_, label, named := Cut(t.Value)
	all, ok := Meant(b, t, "dimension", b.Dims, "dimensions")
	if !ok {
		return nil
	}
	return Pick(b, t, "dimension", all, func(d *job.Dim) job.Place { return d.Place }, from, label, named)
}

func (b *Index) IsolationAt(t source.Text) *job.Isolation {
	x, _ := Meant(b, t, "isolation", b.Isolations, "isolations")
	return x
}

func (b *Index) OpeningsAt(t source.Text, from job.Place) []*job.Opening {
	_, label, named := Cut(t.Value)
	all, ok := Meant(b, t, "opening", b.Openings, "openings")
	if !ok {
		return nil
	}
	return Pick(b, t, "opening", all, func(o *job.Opening) job.Place { return o.Place }, from, label, named)
}

// HeatsAt resolves the mark of a heat in a step's list: H1, H1/DE.
func (b *Index) HeatsAt(t source.Text, from job.Place) []*job.Heat {
	_, label, named := Cut(t.Value)
	all, ok := Meant(b, t, "heat", b.Heats, "heats")
	if !ok {
		return nil
	}
	return Pick(b, t, "heat", all, func(h *job.Heat) job.Place { return h.Place }, from, label, named)
}

// SetAt finds the matched set that a part names.
func (b *Index) SetAt(t source.Text, from job.Place) *job.Set {
	_, label, named := Cut(t.Value)
	all, ok := Meant(b, t, "matched set", b.Sets, "sets")
	if !ok {
		return nil
	}
	found := Pick(b, t, "set", all, func(s *job.Set) job.Place { return s.Place }, from, label, named)
	if len(found) != 1 {
		if len(found) > 1 {
			b.Problems.Add(t.At, "which-place", "the set "+t.Value+" stands at several places", "name the place: "+found[0].Mark)
		}
		return nil
	}
	return found[0]
}
