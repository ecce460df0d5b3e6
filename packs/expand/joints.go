package expand

import (
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// readJoints repeats every joint over its places, ties it to its fasteners and
// reads how tight it becomes.
func (b *builder) readJoints() {
	b.Joints = map[string][]*job.Joint{}
	for _, dj := range b.Def.Joints {
		places := b.Over(dj.Each)
		b.CheckVarying(dj.What, "what is tightened", places)
		b.CheckVarying(dj.Torque, "the torque", places)
		b.CheckVarying(dj.Preload, "", places)
		for _, pl := range places {
			j := &job.Joint{
				At: dj.Mark.At, Mark: pl.Mark(dj.Mark.Value), Base: dj.Mark.Value, Place: pl, What: names.ValueAt(pl, dj.What),
				NoValue: dj.NoValue.Value, Lubricant: dj.Lubricant.Value, Pattern: dj.Pattern.Value, Source: dj.Source.Value,
			}
			r := &jointReader{b: b, d: dj, j: j}
			for _, t := range dj.Parts {
				for _, p := range b.PartsAt(t, pl) {
					j.Parts = append(j.Parts, p)
					p.Joints = append(p.Joints, j)
				}
			}
			b.Joints[j.Base] = append(b.Joints[j.Base], j)
			b.Job.Joints = append(b.Job.Joints, j)
			for _, t := range dj.Stages {
				if st, fault := reading.ParseStage(t.Value); fault == nil {
					j.Stages = append(j.Stages, st.Text())
					r.stage(t, st)
				} else if j == b.Joints[j.Base][0] {
					b.Fault(t, fault)
				}
			}
			r.read()
		}
		if len(dj.Parts) == 0 {
			b.Problems.Add(dj.Mark.At, "no-fasteners", dj.Mark.Value+" does not say which fasteners it has", "for example parts: [cap-bolt]")
		}
		if dj.NoValue.Written() && (dj.Torque.Written() || dj.Preload.Written()) {
			b.Problems.Add(dj.NoValue.At, "value-twice", dj.Mark.Value+" has a torque, and says that there is none", "take one of the two out")
		}
		if !dj.Torque.Written() && !dj.Preload.Written() && len(dj.Stages) == 0 && !dj.NoValue.Written() {
			b.Problems.Warn(dj.Mark.At, "no-torque", dj.Mark.Value+" does not say how tight its fasteners become", "for example torque: … N·m", "or for example stages: [by hand, turn 60°]", "or for example no-value: spanner tight, if nobody gives one")
		}
	}
}

// fastenings resolves what a step loosens or tightens: joints by their mark,
// parts by their name.
func (b *builder) fastenings(list []source.Text, st *job.Step) []job.Fastening {
	var out []job.Fastening
	for _, t := range list {
		key, label, named := names.Cut(t.Value)
		if all, ok := b.Joints[key]; ok {
			for _, j := range names.Pick(b.Index, t, "joint", all, func(j *job.Joint) job.Place { return j.Place }, st.Place, label, named) {
				out = append(out, job.Fastening{At: t.At, Joint: j})
			}
			continue
		}
		if _, ok := b.Parts[key]; !ok {
			b.Unknown(t, "joint or part", append(names.KnownTo(b.Index, b.Joints), names.KnownTo(b.Index, b.Parts)...), "joints or parts")
			continue
		}
		for _, p := range b.PartsAt(t, st.Place) {
			out = append(out, job.Fastening{At: t.At, Part: p})
		}
	}
	return out
}
