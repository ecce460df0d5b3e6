package packs

import (
	"matchmark/packs/job"
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// keepsSize are the kinds of dimension that are a size of one part alone: taking
// the part off does not change them, only scrapping it does. What is read of one
// part in its place, as run-out or float, is lost when the part comes off.
var keepsSize = map[string]bool{"diameter": true, "bore": true, "depth": true, "length": true, "thickness": true, "condition": true, "count": true}

// checkLastChance finds for each dimension the step that destroys it, and sees
// that it is measured before that and set after all it depends on is back.
func (b *builder) checkLastChance() {
	for _, dd := range b.def.Dimensions {
		for _, d := range b.dims[dd.Mark.Value] {
			f := b.readFaces(d, dd)
			d.HangsOn = f.parts
			for _, l := range f.lost {
				d.LostAt = append(d.LostAt, l.step)
				if d.LastChance == nil || l.step.Index < d.LastChance.Index {
					d.LastChance = l.step
				}
			}
			b.checkMeasured(d, f)
			b.checkSet(d, f)
		}
	}
}

// A faces is what the two faces of a dimension, or its one part, hang on.
type faces struct {
	parts []*job.Part // between which it lies, with the assemblies that part them
	lost  []loss      // the steps that destroy it
}

// A loss is a step that destroys a dimension, and the place that says so.
type loss struct {
	step *job.Step
	at   source.Pos
	how  string
}

// readFaces finds the parts that a dimension hangs on and the steps that move
// them. An assembly that both faces belong to takes them along together and
// parts nothing; two faces of one part are read in its place.
func (b *builder) readFaces(d *job.Dim, dd *def.Dimension) faces {
	var f faces
	from, to := d.From.Part.Upward(), d.To.Part.Upward()
	if d.From.Part == d.To.Part && d.From.Part != nil && !keepsSize[d.Kind] {
		// Two faces of one part, read in its place; or of the loose part, when no step
		// of the job destroys them.
		if !lostByNothing(dd) {
			f.parts = append(f.parts, d.ReadOn(from)...)
		}
		from, to = nil, nil
	}
	for _, p := range from {
		if !contains(to, p) {
			f.parts = append(f.parts, p)
		}
	}
	for _, p := range to {
		if !contains(from, p) {
			f.parts = append(f.parts, p)
		}
	}
	if d.Of.Part != nil && !keepsSize[d.Kind] && !lostByNothing(dd) {
		f.parts = append(f.parts, d.ReadOn(d.Of.Part.Upward())...)
	}
	named := b.lostBy(d, dd, &f)
	f.parts = append(f.parts, named...)
	for _, p := range f.parts {
		for _, m := range p.Off {
			f.lost = append(f.lost, loss{m.Step, m.At, "parts its faces"})
		}
	}
	if p := d.Of.Part; p != nil && keepsSize[d.Kind] {
		for _, m := range p.Off {
			if m.To.Scrap {
				f.lost = append(f.lost, loss{m.Step, m.At, "scraps the part"})
			}
		}
	}
	b.loosened(&f)
	return f
}

func contains(list []*job.Part, p *job.Part) bool {
	for _, q := range list {
		if q == p {
			return true
		}
	}
	return false
}

// loosened adds the steps that loosen, heat or lift one of the parts. A lift that
// puts it back is no loss.
func (b *builder) loosened(f *faces) {
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, h := range st.Heats {
				if h.Hub != nil && contains(f.parts, h.Hub) && h.PulledAt == st {
					f.lost = append(f.lost, loss{st, st.At, "heats it"})
				}
			}
			for _, l := range st.Lifts {
				for _, p := range l.Parts {
					if contains(f.parts, p) && !slices.ContainsFunc(st.Fit, func(m *job.Move) bool { return m.Part == p || within(m.Part, p) || within(p, m.Part) }) {
						f.lost = append(f.lost, loss{st, st.At, "lifts it"})
					}
				}
			}
			for _, l := range st.Loosen {
				for _, p := range l.Parts() {
					if contains(f.parts, p) {
						f.lost = append(f.lost, loss{st, l.At, "loosens it"})
					}
				}
			}
		}
	}
}

// lostByNothing reports whether the author says that no step destroys a reading.
func lostByNothing(dd *def.Dimension) bool {
	return len(dd.LostBy) == 1 && dd.LostBy[0].Value == nothing
}

// nothing is what lost-by: says when no step of the job destroys a reading.
const nothing = "nothing"

// lostBy resolves what lost-by: names: steps are added to the losses, parts are
// returned.
func (b *builder) lostBy(d *job.Dim, dd *def.Dimension, f *faces) []*job.Part {
	var parts []*job.Part
	for _, t := range dd.LostBy {
		key, label, named := cut(t.Value)
		steps, isStep := b.steps[key]
		all, isPart := b.parts[key]
		switch {
		case isStep:
			for _, st := range pick(b, t, "step", steps, func(s *job.Step) job.Place { return s.Place }, d.Place, label, named) {
				f.lost = append(f.lost, loss{st, st.At, "destroys it"})
			}
		case isPart:
			parts = append(parts, pick(b, t, "part", all, func(p *job.Part) job.Place { return p.Place }, d.Place, label, named)...)
		case key != nothing:
			b.unknown(t, "step or part", append(knownTo(b, b.steps), append(knownTo(b, b.parts), nothing)...), "steps or parts")
		}
	}
	return parts
}

// checkMeasured sees that a dimension is measured before it is destroyed.
func (b *builder) checkMeasured(d *job.Dim, f faces) {
	if d.FoundAt == nil {
		return
	}
	if d.LastChance == nil {
		return
	}
	if d.LastChance.Index >= d.FoundAt.Index {
		return
	}
	help := []string{"measure it at or before " + d.LastChance.No}
	if d.Of.Part != nil && contains(f.parts, d.Of.Part) {
		help = append(help, "or, if it is read with the part off: lost-by: nothing")
	}
	for _, l := range f.lost {
		if l.step == d.LastChance {
			b.problems.AddWith(b.measuredPos(d), "too-late", d.Mark+" is measured at "+d.FoundAt.Name()+", after "+d.LastChance.Name()+" has parted its faces", l.at, l.how,
				help...)
			return
		}
	}
}

// checkSet sees that a dimension is set when all pieces that it lies between are
// back and tight. What comes off later still is in its place then, as a casing
// that is jacked up level before it is lifted; so is what is on for now, as a hub
// that is tried cold before it is heated.
func (b *builder) checkSet(d *job.Dim, f faces) {
	if d.LeftAt == nil {
		return
	}
	for _, p := range f.parts {
		for _, m := range p.Back {
			off := m.Undo == nil || m.Undo.Step.Index <= d.LeftAt.Index
			if off && m.Step.Index > d.LeftAt.Index && !b.onForNow(p, d.LeftAt) {
				b.problems.AddWith(b.setPos(d), "too-early", d.Mark+" is set at "+d.LeftAt.Name()+", before "+p.Name+" is back at "+m.Step.Name(), m.At, "put back here",
					"set it at or after "+m.Step.No)
			}
		}
	}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, t := range st.Tighten {
				if st.Index > d.LeftAt.Index && overlaps(t.Parts(), f.parts) {
					b.problems.AddWith(b.setPos(d), "too-early", d.Mark+" is set at "+d.LeftAt.Name()+", before "+t.Mark()+" is tight at "+st.Name(), t.At, "tightened here",
						"set it at or after "+st.No)
				}
			}
		}
	}
}

// onForNow reports whether a part is on for a while at a step.
func (b *builder) onForNow(p *job.Part, at *job.Step) bool {
	on := false
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, m := range st.TakeOut {
				on = on && (m.Part != p || st.Index >= at.Index)
			}
			for _, m := range st.ForNow {
				on = on || m.Part == p && st.Index <= at.Index
			}
		}
	}
	return on
}

func overlaps(a, b []*job.Part) bool {
	for _, p := range a {
		if contains(b, p) {
			return true
		}
	}
	return false
}

// measuredPos and setPos are where a step names the dimension.
func (b *builder) measuredPos(d *job.Dim) source.Pos {
	return b.listedAt(d, d.FoundAt, func(ds *def.Step) []source.Text { return ds.Measure })
}

func (b *builder) setPos(d *job.Dim) source.Pos {
	return b.listedAt(d, d.LeftAt, func(ds *def.Step) []source.Text { return ds.Set })
}

func (b *builder) listedAt(d *job.Dim, st *job.Step, list func(*def.Step) []source.Text) source.Pos {
	if ds := b.stepDefs[st]; ds != nil {
		for _, t := range list(ds) {
			if key, _, _ := cut(t.Value); key == d.Base {
				return t.At
			}
		}
	}
	return st.At
}
