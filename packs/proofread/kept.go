package proofread

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkWeighed warns of big parts of unknown mass.
func (b *proofreader) checkWeighed() {
	for _, db := range b.Def.BigParts {
		for _, p := range b.Parts[db.Part.Value] {
			if p.Weighs(b.Job.Parts) == nil {
				b.Problems.Warn(p.At, "no-mass", p.Called()+" has a tag of its own and does not say what it weighs: nobody can tell whether one may lift it alone", "mass: as weighed, or by the drawing")
				break
			}
		}
	}
}

// checkNamed warns of what is defined and named by nothing: it is most likely left
// out where it should be named. A definition for several builds has things that
// this machine does not use.
func (b *proofreader) checkNamed() {
	if len(b.Def.Options) > 0 {
		return
	}
	unused := func(at source.Pos, what, help string) {
		b.Problems.Warn(at, "never-used", what+" is named by nothing", help)
	}
	named := b.namedParts()
	for _, dp := range b.Def.Parts {
		used := len(b.Parts[dp.Key.Value]) == 0
		for _, p := range b.Parts[dp.Key.Value] {
			used = used || named[p]
		}
		if !used {
			unused(dp.Key.At, "the part "+source.Quote(dp.Key.Value), "remove: ["+dp.Key.Value+"] at a step, a face of a dimension, or take it out")
		}
	}
	by := map[string]bool{}
	for _, d := range b.Def.Dimensions {
		key, _, _ := strings.Cut(d.By.Value, "/")
		by[key] = true
	}
	for _, in := range b.Def.Instruments {
		if !by[in.Key.Value] {
			unused(in.Key.At, "the instrument "+source.Quote(in.Key.Value), "by: "+in.Key.Value+" at a dimension, or take it out")
		}
	}
	for _, dp := range b.Def.Parts {
		if dp.Flats.Written() && !b.adjusts(dp.Key.Value) {
			b.Problems.Warn(dp.Flats.At, "never-used", "flats: says what one flat of "+source.Quote(dp.Key.Value)+" moves, but it adjusts no dimension", "adjust: "+dp.Key.Value+" at the dimension that it sets, or take it out")
		}
	}
	spots := map[*job.Spot]bool{}
	pockets := map[job.Where]bool{}
	for _, p := range b.Job.Parts {
		for _, m := range p.Off {
			spots[m.To.Spot] = true
			pockets[m.To] = true
		}
	}
	for _, s := range b.Job.Spots {
		if !spots[s] {
			unused(s.At, "the lay-down spot "+s.Mark, "into: "+s.Mark+" at a step, or take it out")
		}
	}
	for _, c := range b.Job.Containers {
		var empty []string
		for _, p := range c.Pockets {
			if !pockets[job.Where{Container: c, Pocket: p}] && len(c.In) > 0 {
				empty = append(empty, c.Mark+"/"+p)
			}
		}
		switch len(empty) {
		case 0:
		case 1:
			unused(c.At, "the pocket "+empty[0], "into: "+empty[0]+" at a step, or take it out")
		default:
			unused(c.At, "each of the pockets "+strings.Join(empty, ", "), "into: "+empty[0]+" at a step, or take it out")
		}
	}
	b.checkJointsUsed(unused)
}

// adjusts reports whether a part sets a dimension.
func (b *proofreader) adjusts(key string) bool {
	for _, d := range b.Job.Dims {
		if d.Adjuster != nil && d.Adjuster.Key == key {
			return true
		}
	}
	return false
}

// checkJointsUsed warns of joints that no step loosens, tightens or opens by
// taking their fasteners out.
func (b *proofreader) checkJointsUsed(unused func(source.Pos, string, string)) {
	told := map[*job.Joint]bool{}
	for _, s := range b.Job.Sections {
		for _, st := range s.Steps {
			for _, f := range append(append([]job.Fastening{}, st.Loosen...), st.Tighten...) {
				told[f.Joint] = true
			}
		}
	}
	for _, j := range b.Job.Joints {
		if !told[j] && len(j.Parts) > 0 {
			unused(j.At, "the joint "+j.Mark, "loosen: ["+j.Base+"] at a step, or take it out")
		}
	}
}

// namedParts collects the parts that something names: a step, a dimension, a part
// of theirs, a joint, a set of which another part is named.
func (b *proofreader) namedParts() map[*job.Part]bool {
	named := map[*job.Part]bool{}
	for _, p := range b.Job.Parts {
		if len(p.Off)+len(p.Back)+len(p.Joints) > 0 || p.Set != nil {
			named[p] = true
		}
		if p.Of != nil {
			named[p.Of] = true
		}
		if p.Across != nil { // behind a match mark that stands on both
			named[p.Across] = true
		}
	}
	for _, d := range b.Job.Dims {
		for _, p := range []*job.Part{d.From.Part, d.To.Part, d.Of.Part, d.Adjuster} {
			named[p] = true
		}
	}
	for _, h := range b.Job.Heats {
		named[h.Hub], named[h.Shaft] = true, true
	}
	for _, l := range b.Job.Lifts {
		for _, p := range l.Parts {
			named[p] = true
		}
	}
	for _, s := range b.Job.Sections {
		for _, st := range s.Steps {
			for _, m := range append(append([]*job.Move{}, st.ForNow...), st.TakeOut...) {
				named[m.Part] = true
			}
			for _, p := range st.LeftOut {
				named[p.Part] = true
			}
			for _, f := range append(append([]job.Fastening{}, st.Loosen...), st.Tighten...) {
				named[f.Part] = true
			}
		}
	}
	return named
}
