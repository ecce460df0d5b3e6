package expand

import (
	"fmt"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// A jointReader turns one joint as written into the inputs of its calculation.
type jointReader struct {
	b *builder
	d *def.Joint
	j *job.Joint
}

// at notes where an input stands. What is not written stands nowhere.
func (r *jointReader) at(field string, at source.Pos) {
	if r.j.Wrote == nil {
		r.j.Wrote = job.Wrote{}
	}
	r.j.Wrote[field] = at
}

// hole tells that an input cannot be read.
func (r *jointReader) hole(at source.Pos, code, message string, help ...string) {
	r.j.Hole = true
	r.b.Problems.Add(at, code, message, help...)
}

// stage takes over one stage.
func (r *jointReader) stage(t source.Text, st *reading.Stage) {
	r.at(fmt.Sprintf("stages[%d]", len(r.j.Spec.Stages)), t.At)
	r.j.Spec.Stages = append(r.j.Spec.Stages, stageOf(st))
	if _, ok := r.j.Wrote["stages"]; !ok {
		r.at("stages", t.At)
	}
}

// read takes over everything but the stages; the fasteners are known.
func (r *jointReader) read() {
	d, j := r.d, r.j
	j.Asked = d.Class.Written() || !d.Proof.At.IsZero() || !d.Friction.At.IsZero() || !d.Tensioner.At.IsZero() || !d.Scatter.At.IsZero() || d.Preload.Written()
	if len(d.Stages) != len(j.Spec.Stages) {
		j.Hole = true
	}
	j.Spec.Count = j.Count()
	r.tight()
	r.bolt()
	r.friction()
	r.tensioner()
	r.plan()
	r.layout()
}

// tight reads how tight the joint becomes, at last and for a while.
func (r *jointReader) tight() {
	b, d, j := r.b, r.d, r.j
	torque := names.TextAt(j.Place, d.Torque)
	r.at("torque", torque.At)
	j.Torque, j.Spec.Torque = b.tightness(torque, "… N·m, or … to … N·m")
	j.Hole = j.Hole || torque.Written() && j.Torque == ""
	if s := j.Spec.Torque; s != nil && s.Low.Unit.Dimension() != units.Torque && d.Tensioner.At.IsZero() {
		// A unit that lost its metre reads as a force.
		r.hole(torque.At, "not-a-torque", source.Quote(torque.Value)+" is not a torque", "write … N·m, or … lb-ft", "of a tensioner say so: tensioner: {area: … mm2, retained: … %, source: sheet of the tensioner}")
		j.Torque, j.Spec.Torque = "", nil
	}
	r.preload(names.TextAt(j.Place, d.Preload))
	r.at("breaksloose", d.BreaksLoose.At)
	if d.BreaksLoose.Written() {
		j.Spec.BreaksLoose = r.quantity(d.BreaksLoose, "… N·m")
	}
	r.at("fornow", d.ForNow.At)
	if d.ForNow.Written() {
		_, j.Spec.ForNow = b.tightness(d.ForNow, "… N·m")
		j.Hole = j.Hole || j.Spec.ForNow == nil
	}
}

// ofProof ends a preload that is told as a share of the proof load.
const ofProof = " of proof"

// preload reads what one fastener is to press with.
func (r *jointReader) preload(t source.Text) {
	r.at("preload", t.At)
	if !t.Written() {
		return
	}
	r.j.Wanted = t.Value
	bare, share := strings.CutSuffix(t.Value, ofProof)
	q := r.quantity(source.Text{Value: bare, At: t.At}, "… % of proof, … kN or … MPa")
	if q == nil {
		return
	}
	want := &joint.Target{}
	switch dim := q.Unit.Dimension(); {
	case share && dim == units.Ratio:
		want.Percent = &q.Number
	case !share && dim == units.Force:
		want.Force = q
	case !share && dim == units.Pressure:
		want.Stress = q
	default:
		r.hole(t.At, "not-a-preload", source.Quote(t.Value)+" is no preload", "write … % of proof, … kN, or … MPa")
		return
	}
	r.j.Spec.Preload = want
}

// quantity reads a number with its unit, nil when it cannot be read.
func (r *jointReader) quantity(t source.Text, example string) *units.Quantity {
	q, ok := r.b.Quantity(t, example)
	if !ok {
		r.j.Hole = true
		return nil
	}
	return &q
}

// number reads a number without a unit, nil where none is written.
func (r *jointReader) number(field string, t source.Text) *units.Number {
	r.at(field, t.At)
	if !t.Written() {
		return nil
	}
	n, err := units.ParseNumber(t.Value)
	if err != nil {
		r.j.Hole = true
		r.b.Fault(t, err, "write it like 0.16")
		return nil
	}
	return &n
}

// size reads a quantity that need not be there.
func (r *jointReader) size(field string, t source.Text, example string) *units.Quantity {
	r.at(field, t.At)
	if !t.Written() {
		return nil
	}
	return r.quantity(t, example)
}

// percent reads a share, as a bare number.
func (r *jointReader) percent(field string, t source.Text) *units.Number {
	q := r.size(field, t, "… %")
	switch {
	case q == nil:
		return nil
	case q.Unit != units.Percent:
		r.hole(t.At, "not-a-share", source.Quote(t.Value)+" is no share", "write it like … %")
		return nil
	}
	return &q.Number
}

// bolt reads thread and strength.
func (r *jointReader) bolt() {
	d, j := r.d, r.j
	r.at("thread", d.Thread.At)
	if t := d.Thread; t.Written() {
		th, err := thread.Parse(t.Value)
		if err != nil {
			r.hole(t.At, "thread", err.Error(), "write it as M24, or 3/4-10 UNC")
		} else {
			j.Spec.Thread = &th
		}
	}
	for _, p := range j.Parts {
		switch {
		case p.Thread == nil:
		case j.Spec.Thread == nil && !j.Hole:
			j.Spec.Thread = p.Thread
		case j.Spec.Thread != nil && p.Thread.String() != j.Spec.Thread.String():
			r.hole(j.At, "thread-differs", j.Base+" has "+j.Spec.Thread.String()+", and "+p.Called()+" has "+p.Thread.String(),
				"fasteners of two threads are two joints", "or put right the thread of one of them")
		}
	}
	r.at("class", d.Class.At)
	j.Spec.Class = d.Class.Value
	if p := d.Proof; !p.At.IsZero() {
		r.at("proof", p.At)
		r.at("proof.source", p.Source.At)
		if q := r.size("proof.stress", p.Stress, "… MPa"); q != nil {
			j.Spec.Proof = &joint.Proof{Stress: *q, Source: p.Source.Value}
		} else {
			j.Hole = true
		}
	}
}

// friction reads friction and scatter.
func (r *jointReader) friction() {
	d, j := r.d, r.j
	if f := d.Friction; !f.At.IsZero() {
		r.at("friction", f.At)
		r.at("friction.source", f.Source.At)
		j.Spec.Friction = &joint.Friction{
			NutFactor: r.number("friction.nutfactor", f.NutFactor), Thread: r.number("friction.thread", f.Thread), Bearing: r.number("friction.bearing", f.Bearing),
			Face: r.size("friction.face", f.Face, "… mm"), Hole: r.size("friction.hole", f.Hole, "… mm"), Source: f.Source.Value,
		}
	}
	s := d.Scatter
	if s.At.IsZero() {
		return
	}
	r.at("scatter", s.At)
	r.at("scatter.source", s.Source.At)
	if known, ok := joint.ScatterOf(s.Word.Value); ok {
		j.Spec.Scatter = &known
	} else if n := r.percent("scatter.percent", s.Percent); n != nil {
		j.Spec.Scatter = &joint.Scatter{Percent: *n, Source: s.Source.Value}
	} else {
		j.Hole = true // the reader of the file has told of it
	}
}

// tensioner reads what pulls the bolts.
func (r *jointReader) tensioner() {
	t := r.d.Tensioner
	if t.At.IsZero() {
		return
	}
	r.at("tensioner", t.At)
	r.at("tensioner.source", t.Source.At)
	out := &joint.Tensioner{Retained: r.percent("tensioner.retained", t.Retained), Source: t.Source.Value}
	if q := r.size("tensioner.area", t.Area, "… mm2"); q != nil {
		out.Area = *q
	}
	r.j.Spec.Tensioner = out
}

// plan takes over a published plan in place of stages.
func (r *jointReader) plan() {
	t, j := r.d.Plan, r.j
	if !t.Written() {
		return
	}
	r.at("plan", t.At)
	p, ok := joint.PlanNamed(t.Value)
	switch {
	case !ok:
		j.Hole = true // the reader of the file has told of it
	case len(r.d.Stages) > 0:
		r.hole(t.At, "said-twice", j.Base+" has stages and a plan", "keep one of them")
	default:
		j.Plan, j.Spec.Stages = &p, p.Stages
		r.at("stages", t.At)
	}
}
