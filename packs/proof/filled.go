package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// A seated is a bore and the shaft that runs or sits in it, each as the dimension that
// reads it. That they belong together is told by a formula that takes one from the other, as
// a clearance or an interference, by what lies between the same two faces, or by a heat that
// reads them.
type seated struct {
	bore, shaft *job.Dim
	hot         bool // told by a heat alone: the law of heats sees that it is read as found while it is apart
}

// checkFilled sees that a bore is read while no shaft is in it, and the shaft while it is
// in no bore: neither face can be reached as long as the two are together.
func (r *report) checkFilled() {
	told := map[spoilt]bool{} // once for all places
	for _, s := range seatedPairs(r.job) {
		for _, d := range []*job.Dim{s.bore, s.shaft} {
			other := s.shaft
			if d == s.shaft {
				other = s.bore
			}
			for _, e := range []*walk.Event{r.walk.Measured(d), r.walk.Set(d)} {
				if e == nil || s.hot && e.Verb == job.DoMeasure || told[spoilt{e.At, d.Base}] || d.LostByNothing || !r.together(d.Of.Part, other.Of.Part, e) {
					continue
				}
				told[spoilt{e.At, d.Base}] = true
				does := "fills"
				if d == s.shaft {
					does = "sits round"
				}
				off := other.Of.Part
				if len(off.Off) == 0 && len(d.Of.Part.Off) > 0 {
					off = d.Of.Part // a hub comes off its shaft
				}
				r.problems.WarnWith(e.At, "filled", d.Mark+" is read at "+e.Step.Name()+", while "+other.Of.Part.Called()+" "+does+" it ("+other.Mark+")", other.Of.Part.At, "the part",
					"read it while "+off.Key+" is off: as found below remove:, as left above fit:", "or, if it is read in its place: lost-by: nothing")
			}
		}
	}
}

// together reports whether two parts are in each other just before an event: both in the
// machine, or both on the bench with the same assembly.
func (r *report) together(p, q *job.Part, e *walk.Event) bool {
	return p != q && r.walk.On(p, e) > 0 && r.walk.On(q, e) > 0 && r.walk.Away(p, e) == r.walk.Away(q, e)
}

// seatedPairs lists what bores and shafts of a job belong together.
func seatedPairs(j *job.Job) []seated {
	var bores, shafts []*job.Dim
	for _, d := range j.Dims {
		switch {
		case d.Of.Part == nil:
		case d.Kind == "bore":
			bores = append(bores, d)
		case d.Kind == "diameter":
			shafts = append(shafts, d)
		}
	}
	var out []seated
	for _, d := range j.Dims {
		for _, b := range bores {
			for _, s := range shafts {
				byFaces := b.Of == d.From && s.Of == d.To || b.Of == d.To && s.Of == d.From
				byFormula := d.TakesApart(b, s) && b.Place.Agrees(s.Place)
				if p := (seated{bore: b, shaft: s}); (byFaces || byFormula) && !slices.Contains(out, p) {
					out = append(out, p)
				}
			}
		}
	}
	for _, h := range j.Heats {
		if b, s := h.Fit.Bore, h.Fit.Seat; b != nil && s != nil && b.Of.Part != nil && s.Of.Part != nil && !slices.Contains(out, seated{bore: b, shaft: s}) {
			out = append(out, seated{bore: b, shaft: s, hot: true})
		}
	}
	return out
}

// filled binds a step that reads a bore or its shaft to those that move the other.
func (b *binder) filled() {
	for _, s := range seatedPairs(b.job) {
		b.readsBeside(s.bore, s.shaft.Of.Part)
		b.readsBeside(s.shaft, s.bore.Of.Part)
	}
}

func (b *binder) readsBeside(d *job.Dim, p *job.Part) {
	for _, st := range []*job.Step{d.FoundAt, d.LeftAt} {
		for up := p; up != nil && st != nil; up = up.Of {
			b.looks(up, st)
		}
	}
}
