package packs

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"strings"

	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// readJoints repeats every joint over its places, ties it to its fasteners and
// reads how tight it becomes.
func (b *builder) readJoints() {
	b.joints = map[string][]*job.Joint{}
	for _, dj := range b.def.Joints {
		places := b.over(dj.Each)
		b.checkVarying(dj.What, "what is tightened", places)
		b.checkVarying(dj.Torque, "the torque", places)
		for _, pl := range places {
			j := &job.Joint{
				At: dj.Mark.At, Mark: pl.Mark(dj.Mark.Value), Base: dj.Mark.Value, Place: pl, What: valueAt(pl, dj.What),
				Torque: b.torque(textAt(pl, dj.Torque)), NoValue: dj.NoValue.Value, Class: dj.Class.Value, Lubricant: dj.Lubricant.Value, Pattern: dj.Pattern.Value, Source: dj.Source.Value,
			}
			for _, t := range dj.Parts {
				for _, p := range b.partsAt(t, pl) {
					j.Parts = append(j.Parts, p)
					p.Joints = append(p.Joints, j)
				}
			}
			b.joints[j.Base] = append(b.joints[j.Base], j)
			b.job.Joints = append(b.job.Joints, j)
			for _, t := range dj.Stages {
				if st, fault := reading.ParseStage(t.Value); fault == nil {
					j.Stages = append(j.Stages, st.Text())
				} else if j == b.joints[j.Base][0] {
					b.fault(t, fault)
				}
			}
		}
		if len(dj.Parts) == 0 {
			b.problems.Add(dj.Mark.At, "no-fasteners", dj.Mark.Value+" does not say which fasteners it has", "parts: [cap-bolt]")
		}
		if !dj.Torque.Written() && len(dj.Stages) == 0 && !dj.NoValue.Written() {
			b.problems.Warn(dj.Mark.At, "no-torque", dj.Mark.Value+" does not say how tight its fasteners become", "torque: 120 N·m", "or stages: [by hand, turn 60°]", "or no-value: spanner tight, if nobody gives one")
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
	q, ok := b.quantity(t, "120 N·m, or 110 to 130 N·m")
	switch {
	case !ok:
		return ""
	case q.Unit.Dimension() != units.Torque:
		b.problems.Add(t.At, "not-a-torque", source.Quote(t.Value)+" is not a torque", "write 120 N·m, or 88 lb-ft")
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
		b.fault(t, fault)
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
		key, label, named := cut(t.Value)
		if all, ok := b.joints[key]; ok {
			for _, j := range pick(b, t, "joint", all, func(j *job.Joint) job.Place { return j.Place }, st.Place, label, named) {
				out = append(out, job.Fastening{At: t.At, Joint: j})
			}
			continue
		}
		if _, ok := b.parts[key]; !ok {
			b.unknown(t, "joint or part", append(knownTo(b, b.joints), knownTo(b, b.parts)...), "joints or parts")
			continue
		}
		for _, p := range b.partsAt(t, st.Place) {
			out = append(out, job.Fastening{At: t.At, Part: p})
		}
	}
	return out
}
