package expand

import (
	"fmt"
	"strings"

	"matchmark/packs/align"
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// usualTries is for how many sets of readings an alignment has boxes: as it stands when
// no foot is soft, after the first move, after a second one. Common practice, no source.
const usualTries = 3

// readAlignments reads every alignment; the dimensions are known.
func (b *builder) readAlignments() {
	b.Alignments = map[string]*job.Alignment{}
	for _, da := range b.Def.Alignments {
		a := &job.Alignment{
			At: da.Mark.At, Mark: da.Mark.Value, What: da.What.Value, Movable: b.machineNamed(da.Movable), Stationary: b.machineNamed(da.Stationary),
			Note: da.Note.Value, Tries: usualTries, Wrote: job.Wrote{}, Read: map[align.Dial]*job.Dim{},
		}
		if n, ok := names.WholeNumber(da.Tries); ok {
			a.Tries = n
		}
		r := &alignReader{b: b, d: da, a: a}
		r.setup()
		r.feet()
		r.target()
		r.growth()
		r.limits()
		r.softFoot()
		r.dials()
		r.machines()
		b.Alignments[a.Mark] = a
		b.Job.Alignments = append(b.Job.Alignments, a)
	}
}

// An alignReader turns one alignment as written into the inputs of its calculation.
type alignReader struct {
	b *builder
	d *def.Alignment
	a *job.Alignment
}

func (r *alignReader) hole(at source.Pos, code, message string, help ...string) {
	r.a.Hole = true
	r.b.Problems.Add(at, code, message, help...)
}

// size reads a length, nil where none is written or it cannot be read.
func (r *alignReader) size(field string, t source.Text, example string) *units.Quantity {
	r.a.Wrote[field] = t.At
	if !t.Written() {
		return nil
	}
	q, ok := r.b.Quantity(t, example)
	if !ok {
		r.a.Hole = true
		return nil
	}
	return &q
}

// sizes reads a list of lengths.
func (r *alignReader) sizes(field string, list []source.Text, example string) []units.Quantity {
	var out []units.Quantity
	for i, t := range list {
		r.a.Wrote[field] = list[0].At
		if q := r.size(fmt.Sprintf("%s[%d]", field, i), t, example); q != nil {
			out = append(out, *q)
		}
	}
	return out
}

// setup reads how the dials are set up.
func (r *alignReader) setup() {
	d, s := r.d, &r.a.Setup
	s.Method = map[string]align.Method{"rim and face": align.RimFace, "reverse dials": align.ReverseDials}[d.Method.Value]
	r.a.Wrote["method"] = d.Method.At
	if s.Reads = r.size("reads", d.Reads, "… mm"); s.Reads != nil {
		s.Unit = s.Reads.Unit
		r.a.Wrote["unit"] = d.Reads.At
	}
	s.DialsOn = map[string]align.Hub{"stationary": align.Stationary, "movable": align.Movable}[d.DialsOn.Value]
	r.a.Wrote["dialson"] = d.DialsOn.At
	s.FaceBack, s.TwoFaceDials = d.FaceBack.Value == "yes", d.TwoFace.Value == "yes"
	s.FaceDiameter = r.size("facediameter", d.FaceDiameter, "… mm")
	s.Span = r.size("span", d.Span, "… mm")
	s.Sag, s.SagOther = r.size("sag", d.Sag, "… mm"), r.size("sagother", d.SagOther, "… mm")
	other := map[align.Method][]source.Text{
		align.RimFace:      {d.Span, d.SagOther},
		align.ReverseDials: {d.DialsOn, d.FaceDiameter, d.FaceBack, d.TwoFace},
	}[s.Method]
	for _, t := range other {
		if t.Written() {
			r.hole(t.At, "align-key", r.a.Mark+": "+source.Quote(t.Value)+" says nothing of "+d.Method.Value, "take the key out, or change the method")
		}
	}
}

// feet reads the planes of feet.
func (r *alignReader) feet() {
	for i, f := range r.d.Feet {
		field := fmt.Sprintf("feet[%d]", i)
		r.a.Wrote["feet"] = r.d.Feet[0].At
		r.a.Wrote[field] = f.At
		r.a.Setup.Feet = append(r.a.Setup.Feet, align.Foot{Name: f.Name.Value, At: r.size(field+".at", f.Is, "… mm")})
	}
}

// target reads where the cold shaft is meant to stand.
func (r *alignReader) target() {
	t := r.d.Target
	if t.At.IsZero() {
		return
	}
	r.a.Wrote["target"] = t.At
	r.a.Wrote["target.source"] = t.Source.At
	r.a.Setup.Target = &align.Target{
		Up: r.sizes("target.up", t.Up, "… mm"), Right: r.sizes("target.right", t.Right, "… mm"), Source: t.Source.Value,
	}
}

// growth reads what the shafts rise.
func (r *alignReader) growth() {
	g := r.d.Growth
	if g.At.IsZero() {
		return
	}
	if !r.d.Target.At.IsZero() {
		r.hole(g.At, "said-twice", r.a.Mark+" has a target and a growth that it would follow from", "keep one of them")
	}
	r.a.Wrote["growth"] = g.At
	r.a.Wrote["growth.source"] = g.Source.At
	out := &align.Growth{Movable: r.sizes("growth.movable", g.Movable, "… mm"), Source: g.Source.Value}
	for i, s := range g.Stationary {
		field := fmt.Sprintf("growth.stationary[%d]", i)
		r.a.Wrote[field] = s.At
		at, rise := r.size(field+".at", s.Is, "… mm"), r.size(field+".rise", s.Rise, "… mm")
		if at == nil || rise == nil {
			r.a.Hole = true
			continue
		}
		out.Stationary = append(out.Stationary, align.Support{At: *at, Rise: *rise})
	}
	r.a.Growth = out
}

// limits reads how near is near enough.
func (r *alignReader) limits() {
	l := r.d.Limits
	if l.At.IsZero() {
		return
	}
	r.a.Wrote["limits"] = l.At
	r.a.Wrote["limits.source"], r.a.Wrote["limits.speed"] = l.Source.At, l.Speed.At
	out := &align.Limits{Source: l.Source.Value, At: r.size("limits.at", l.Where, "0 mm"), Over: r.size("limits.over", l.Over, "200 mm")}
	out.Speed, _ = names.WholeNumber(l.Speed)
	for i, row := range l.Rows {
		field := fmt.Sprintf("limits.rows[%d]", i)
		r.a.Wrote["limits.rows"] = l.Rows[0].At
		r.a.Wrote[field] = row.At
		r.a.Wrote[field+".upto"] = row.UpTo.At
		n, _ := names.WholeNumber(row.UpTo)
		offset, angle := r.size(field+".offset", row.Offset, "… mm"), r.size(field+".angle", row.Angle, "… mm")
		if offset == nil || angle == nil {
			r.a.Hole = true
			continue
		}
		out.Rows = append(out.Rows, align.LimitRow{UpTo: n, Offset: *offset, Angle: *angle})
	}
	r.a.Limits = out
}

// softFoot reads how far a foot may spring up.
func (r *alignReader) softFoot() {
	s := r.d.SoftFoot
	if s.At.IsZero() {
		return
	}
	r.a.Wrote["limit"], r.a.Wrote["limit.source"] = s.Limit.At, s.Source.At
	if s.Source.At.IsZero() {
		r.a.Wrote["limit.source"] = s.At
	}
	r.a.SoftFoot, r.a.SoftFootSource = r.size("limit", s.Limit, "… mm"), s.Source.Value
}

// dials finds the dimensions that the dials are written down in.
func (r *alignReader) dials() {
	d := r.d.Read
	if d.At.IsZero() {
		return
	}
	r.a.Wrote["read"] = d.At
	set := map[align.Dial]source.Text{align.Rim: d.Rim, align.Face: d.Face, align.OnStationary: d.Stationary, align.OnMovable: d.Movable}
	own := map[align.Dial]bool{}
	for _, dial := range r.a.Setup.Dials() {
		own[dial] = true
	}
	for _, dial := range []align.Dial{align.Rim, align.Face, align.OnStationary, align.OnMovable} {
		t := set[dial]
		switch {
		case !t.Written() && !own[dial]:
		case !own[dial] && !r.d.Method.Written(): // told where it is missing
		case !own[dial]:
			r.hole(t.At, "align-key", r.a.Mark+": "+t.Value+" is read by a dial that "+r.d.Method.Value+" has not", "take the key out, or change the method")
		case !t.Written():
			r.hole(d.At, "align-reading", r.a.Mark+" does not say where each of its dials is written down", "read: {rim: D1, face: D2}, or stationary: and movable: of reverse dials")
		default:
			r.dial(dial, t)
		}
	}
}

// dial finds one of them, and sees that it is read as the ladder takes it: at four
// places a quarter turn apart, with its sign, in the unit of the dials, seen from the
// movable machine.
func (r *alignReader) dial(dial align.Dial, t source.Text) {
	found := r.b.DimsAt(t, job.Place{})
	if len(found) != 1 {
		if len(found) > 1 {
			r.hole(t.At, "which-place", t.Value+" stands at several places", "name the place: "+found[0].Mark)
		}
		return
	}
	x := found[0]
	clock := strings.Join(x.Positions.Names(), " ") == "0° 90° 180° 270°" && x.Positions.Boxes() == 4
	switch {
	case !clock:
		r.hole(t.At, "align-reading", x.Mark+" is not read at four places a quarter turn apart, and "+r.a.Mark+" needs them", "at: clock, at "+x.Base)
	case !x.Hint.Signed:
		r.hole(t.At, "align-reading", x.Mark+" has no box for its sign, and a dial goes both ways", "sign: yes, at "+x.Base)
	case r.a.Setup.Reads != nil && x.By != nil && x.By.Reads != nil && x.By.Reads.Unit != r.a.Setup.Unit:
		r.hole(t.At, "align-reading", x.Mark+" is read in "+x.By.Reads.Unit.Text()+", and "+r.a.Mark+" in "+r.a.Setup.Unit.Text(), "let both be one unit")
	case !r.seenFromMovable(x):
		r.hole(t.At, "align-reading", x.Mark+" is not seen from the "+r.a.Movable+", and right and left of "+r.a.Mark+" are", "viewed-from: the "+r.a.Movable+", at "+x.Base)
	default:
		r.a.Read[dial] = x
	}
}

// resolveAlign ties a step to the alignments that it makes or reads.
func (b *builder) resolveAlign(st *job.Step, ds *def.Step) {
	for _, t := range ds.Align {
		a, ok := b.Alignments[t.Value]
		if !ok {
			b.Unknown(t, "alignment", names.KnownTo(b.Index, b.Alignments), "alignments")
			continue
		}
		st.Align = append(st.Align, a)
		a.Steps = append(a.Steps, st)
	}
}
