package expand

import (
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
	"strings"
)

// readJoints repeats every joint over its places, ties it to its fasteners and
// reads how tight it becomes.
func (b *builder) readJoints() {
	b.Joints = map[string][]*job.Joint{}
	for _, dj := range b.Def.Joints {
		places := b.Over(dj.Each)
		b.CheckVarying(dj.What, "what is tightened", places)
		b.CheckVarying(dj.Torque, "the torque", places)
		for _, pl := range places {
			j := &job.Joint{
				At: dj.Mark.At, Mark: pl.Mark(dj.Mark.Value), Base: dj.Mark.Value, Place: pl, What: names.ValueAt(pl, dj.What),
				Torque: b.torque(names.TextAt(pl, dj.Torque)), NoValue: dj.NoValue.Value, Class: dj.Class.Value, Lubricant: dj.Lubricant.Value, Pattern: dj.Pattern.Value, Source: dj.Source.Value,
			}
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
				} else if j == b.Joints[j.Base][0] {
					b.Fault(t, fault)
				}
			}
		}
		if len(dj.Parts) == 0 {
			b.Problems.Add(dj.Mark.At, "no-fasteners", dj.Mark.Value+" does not say which fasteners it has", "parts: [cap-bolt]")
		}
		if !dj.Torque.Written() && len(dj.Stages) == 0 && !dj.NoValue.Written() {
			b.Problems.Warn(dj.Mark.At, "no-torque", dj.Mark.Value+" does not say how tight its fasteners become", "torque: 120 N·m", "or stages: [by hand, turn 60°]", "or no-value: spanner tight, if nobody gives one")
		}
	}
}

// torque reads a torque, or one from a least to a greatest, with the same in another
// unit behind it in a bracket.
func (b *builder) torque(t source.Text) string {
	if !t.Written() {
		return ""
	}
	if bare, other, ok := strings.Cut(strings.TrimSuffix(t.Value, ")"), " ("); ok {
		return b.torqueTwice(t, bare, other)
	}
	low, high, err := units.ParseRange(t.Value)
	if err == nil && low.Unit.Dimension() == units.Torque {
		return low.Number.Text() + "–" + high.Print()
	}
	q, ok := b.Quantity(t, "120 N·m, or 110 to 130 N·m")
	switch {
	case !ok:
		return ""
	case q.Unit.Dimension() != units.Torque:
		b.Problems.Add(t.At, "not-a-torque", source.Quote(t.Value)+" is not a torque", "write 120 N·m, or 88 lb-ft")
		return ""
	}
	return q.Print()
}

// torqueTwice reads a torque told in two units, which must be the same.
func (b *builder) torqueTwice(t source.Text, bare, other string) string {
	line, before := t.Value, ""
	if !strings.Contains(bare, " to ") {
		before = "about " // makes a limit of one number
		line = before + line
	}
	if _, fault := reading.Parse(line); fault != nil {
		fault.Offset = max(fault.Offset-len(before), 0)
		for i := range fault.Help {
			fault.Help[i] = strings.TrimPrefix(fault.Help[i], before)
		}
		b.Fault(t, fault)
		return ""
	}
	at := len([]rune(bare)) + len(" (")
	one := b.torque(source.Text{Value: bare, At: t.Part(0, len([]rune(bare)))})
	two := b.torque(source.Text{Value: other, At: t.Part(at, len([]rune(other)))})
	if one == "" || two == "" {
		return ""
	}
	return one + " (" + two + ")"
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
