package proofread

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

func (b *proofreader) oddOthers() {
	set := func(s *def.Set) (source.Pos, string) { return s.Mark.At, s.Mark.Value }
	b.odd(ask(b.Def.Sets, nil, set, func(s *def.Set) bool { return s.Why.Written() }), "why its parts belong together", "why: …")
	joint := func(j *def.Joint) (source.Pos, string) { return j.Mark.At, j.Mark.Value }
	b.odd(ask(b.Def.Joints, func(j *def.Joint) bool { return !j.NoValue.Written() }, joint, func(j *def.Joint) bool { return j.Source.Written() }), "where its torque comes from", "source: …, the document and its page")
	b.odd(most(ask(b.Def.Joints, b.comesOut, joint, b.loosened)), "where it is loosened; what comes out has no line to count and tick then", "loosen: [its mark] at the step that takes its fasteners out")
	b.odd(ask(b.Def.Joints, func(j *def.Joint) bool { return !j.NoValue.Written() }, joint, func(j *def.Joint) bool { return j.Lubricant.Written() }), "what is on its threads; the torque hangs on it", "lubricant: …, or dry")
	tool := func(i *def.Instrument) (source.Pos, string) { return i.Key.At, source.Quote(i.Key.Value) }
	b.odd(ask(b.Def.Instruments, nil, tool, func(i *def.Instrument) bool { return i.Range.Written() }), "from where to where it reads", "range: … to …, with the unit")
	b.odd(ask(b.Def.Instruments, nil, tool, func(i *def.Instrument) bool { return i.Reads.Written() }), "its smallest step", "reads: …, with the unit")
	for _, g := range b.Def.Places {
		place := func(p *def.Place) (source.Pos, string) { return p.Key.At, p.Key.Value }
		pairs := len(g.Places) == 2
		name := ask(g.Places, nil, place, func(p *def.Place) bool { return p.Name.Written() })
		view := ask(g.Places, nil, place, func(p *def.Place) bool { return p.ViewedFrom.Written() })
		b.oddOfTwo(name, pairs, "what it is called", "name: …")
		b.oddOfTwo(view, pairs, "where one stands to look at it", "viewed-from: …")
	}
}

// comesOff reports whether a part comes off and is kept.
func (b *proofreader) comesOff(p *def.Part) bool {
	return slices.ContainsFunc(b.Parts[p.Key.Value], func(x *job.Part) bool {
		return slices.ContainsFunc(x.Off, func(m *job.Move) bool { return !m.To.Scrap })
	})
}

// tagged reports whether a part that comes off always goes where there is a tag: laid on
// the bench it is one of many things there.
func (b *proofreader) tagged(p *def.Part) bool {
	return !slices.ContainsFunc(b.Parts[p.Key.Value], func(x *job.Part) bool {
		return slices.ContainsFunc(x.Off, func(m *job.Move) bool { return m.To.Bench })
	})
}

// comesOut reports whether a joint with a torque has fasteners that a step takes out.
func (b *proofreader) comesOut(j *def.Joint) bool {
	return !j.NoValue.Written() && slices.ContainsFunc(b.Joints[j.Mark.Value], func(x *job.Joint) bool {
		return slices.ContainsFunc(x.Parts, func(p *job.Part) bool { return len(p.Off) > 0 })
	})
}

// loosened reports whether a step loosens a joint, or another one of the same fasteners.
func (b *proofreader) loosened(j *def.Joint) bool {
	own := func(p *job.Part) bool {
		return slices.ContainsFunc(b.Joints[j.Mark.Value], func(x *job.Joint) bool { return slices.Contains(x.Parts, p) })
	}
	return slices.ContainsFunc(b.Job.Steps(), func(st *job.Step) bool {
		return slices.ContainsFunc(st.Loosen, func(f job.Fastening) bool { return slices.ContainsFunc(f.Parts(), own) })
	})
}

// oddOfTwo is odd for a list that may have two things only: of two ends one says
// it and the other does not.
func (b *proofreader) oddOfTwo(list []saying, two bool, what, write string) {
	if !two {
		b.odd(list, what, write)
		return
	}
	for i, s := range list {
		if !s.says && list[1-i].says {
			b.Problems.Warn(s.at, "odd-one-out", s.name+" does not say "+what+"; "+list[1-i].name+" does", "write: "+write)
		}
	}
}
