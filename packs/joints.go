package packs

import (
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Joint is a group of fasteners that are loosened and tightened together, at
// one place.
type Joint struct {
	At                         source.Pos
	Mark                       string // J1/DE
	Base                       string
	Place                      Place
	What                       string
	Parts                      []*Part // its fasteners
	Torque                     string  // as written, "120 N·m"; empty if not said
	Stages                     []string
	Lubricant, Pattern, Source string
	Says                       []Saying // what sources that differ say of the torque
}

// A Fastening is what a step loosens or tightens: a joint, or one part.
type Fastening struct {
	At    source.Pos
	Joint *Joint
	Part  *Part
	Final *Joint // tightened only while its fasteners are on for now: the joint that stays
	On    int    // then the number of fasteners that are on
}

// Mark is the printed key of what is loosened or tightened.
func (f Fastening) Mark() string {
	if f.Joint != nil {
		return f.Joint.Mark
	}
	return f.Part.Place.mark(f.Part.Key)
}

// Name is what the mechanic calls it.
func (f Fastening) Name() string {
	if f.Joint != nil {
		return f.Joint.What
	}
	return f.Part.Name
}

// parts lists the fasteners.
func (f Fastening) parts() []*Part {
	if f.Joint != nil {
		return f.Joint.Parts
	}
	return []*Part{f.Part}
}

// same reports whether both are one thing.
func (f Fastening) same(g Fastening) bool { return f.Joint == g.Joint && f.Part == g.Part }

// readJoints repeats every joint over its places, ties it to its fasteners and
// reads how tight it becomes.
func (b *builder) readJoints() {
	b.joints = map[string][]*Joint{}
	for _, dj := range b.def.Joints {
		places := b.over(dj.Each)
		b.checkVarying(dj.What, "what is tightened", places)
		b.checkVarying(dj.Torque, "the torque", places)
		for _, pl := range places {
			j := &Joint{
				At: dj.Mark.At, Mark: pl.mark(dj.Mark.Value), Base: dj.Mark.Value, Place: pl, What: pl.value(dj.What),
				Torque: b.torque(pl.at(dj.Torque)), Lubricant: dj.Lubricant.Value, Pattern: dj.Pattern.Value, Source: dj.Source.Value,
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
		if !dj.Torque.Written() && len(dj.Stages) == 0 {
			b.problems.Warn(dj.Mark.At, "no-torque", dj.Mark.Value+" does not say how tight its fasteners become", "torque: 120 N·m", "or stages: [by hand, turn 60°]")
		}
	}
}

// torque reads a torque, or one from a least to a greatest, with the same in another
// unit behind it in a bracket.
func (b *builder) torque(t def.Text) string {
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
		b.problems.Add(t.At, "not-a-torque", quote(t.Value)+" is not a torque", "write 120 N·m, or 88 lb-ft")
		return ""
	}
	return q.Print()
}

// torqueTwice reads a torque told in two units, which must be the same.
func (b *builder) torqueTwice(t def.Text, bare, other string) string {
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
	one := b.torque(def.Text{Value: bare, At: t.Part(0, len([]rune(bare)))})
	two := b.torque(def.Text{Value: other, At: t.Part(at, len([]rune(other)))})
	if one == "" || two == "" {
		return ""
	}
	return one + " (" + two + ")"
}

// fastenings resolves what a step loosens or tightens: joints by their mark,
// parts by their name.
func (b *builder) fastenings(list []def.Text, st *Step) []Fastening {
	var out []Fastening
	for _, t := range list {
		key, label, named := cut(t.Value)
		if all, ok := b.joints[key]; ok {
			for _, j := range pick(b, t, "joint", all, func(j *Joint) Place { return j.Place }, st.Place, label, named) {
				out = append(out, Fastening{At: t.At, Joint: j})
			}
			continue
		}
		if _, ok := b.parts[key]; !ok {
			b.unknown(t, "joint or part", append(knownTo(b, b.joints), knownTo(b, b.parts)...), "joints or parts")
			continue
		}
		for _, p := range b.partsAt(t, st.Place) {
			out = append(out, Fastening{At: t.At, Part: p})
		}
	}
	return out
}
