package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/source"
)

// checkLastChance finds for each dimension the step that destroys it, and sees
// that it is measured before that and set after all it depends on is back.
func (b *builder) checkLastChance() {
	defs := map[string]*def.Dimension{}
	for _, dd := range b.def.Dimensions {
		defs[dd.Mark.Value] = dd
	}
	for _, d := range b.job.Dims {
		dd := defs[d.Base]
		loses := b.losers(d, dd)
		for _, st := range loses {
			if d.LastChance == nil || st.Index < d.LastChance.Index {
				d.LastChance = st
			}
		}
		if d.LastChance != nil && d.FoundAt != nil && d.LastChance.Index < d.FoundAt.Index {
			b.problems = append(b.problems, source.Problem{
				Pos: b.measuredPos(d), Severity: source.Error, Code: "too-late",
				Message: d.Mark + " is measured at " + d.FoundAt.name() + ", after " + d.LastChance.name() + " has parted its faces",
				Help:    []string{"measure it at or before " + d.LastChance.No},
				See:     []source.Also{{Pos: d.LastChance.At, What: "parts its faces"}},
			})
		}
		if d.LeftAt == nil {
			continue
		}
		for _, p := range b.dependsOn(d, dd) {
			if p.Off != nil && p.Back != nil && p.Back.Step.Index > d.LeftAt.Index {
				b.problems = append(b.problems, source.Problem{
					Pos: b.setPos(d), Severity: source.Error, Code: "too-early",
					Message: d.Mark + " is set at " + d.LeftAt.name() + ", before " + p.Name + " is back at " + p.Back.Step.name(),
					Help:    []string{"set it at or after " + p.Back.Step.No},
					See:     []source.Also{{Pos: p.Back.At, What: "put back here"}},
				})
			}
		}
	}
}

// dependsOn lists the parts whose faces a dimension lies between, with the
// assemblies they belong to.
func (b *builder) dependsOn(d *Dim, dd *def.Dimension) []*Part {
	var out []*Part
	for _, f := range []Face{d.From, d.To, d.Of} {
		for p := f.Part; p != nil; p = p.Of {
			out = append(out, p)
		}
	}
	for _, t := range dd.LostBy {
		key, label, named := cut(t.Value)
		if all, ok := b.parts[key]; ok {
			out = append(out, pick(b, t, "part", all, func(p *Part) Place { return p.Place }, d.Place, label, named)...)
		}
	}
	return out
}

// losers lists the steps that destroy a dimension: those that take off one of the
// parts that it depends on, and those that lost-by: names.
func (b *builder) losers(d *Dim, dd *def.Dimension) []*Step {
	var out []*Step
	for _, p := range b.dependsOn(d, dd) {
		if p.Off != nil {
			out = append(out, p.Off.Step)
		}
	}
	for _, t := range dd.LostBy {
		key, label, named := cut(t.Value)
		steps, isStep := b.steps[key]
		if isStep {
			out = append(out, pick(b, t, "step", steps, func(s *Step) Place { return s.Place }, d.Place, label, named)...)
		} else if _, ok := b.parts[key]; !ok {
			b.unknown(t, "step or part", append(mapKeys(b.steps), mapKeys(b.parts)...), "steps or parts")
		}
	}
	return out
}

// measuredPos and setPos are where a step names the dimension.
func (b *builder) measuredPos(d *Dim) source.Pos {
	return b.listedAt(d, d.FoundAt, func(ds *def.Step) []def.Text { return ds.Measure })
}

func (b *builder) setPos(d *Dim) source.Pos {
	return b.listedAt(d, d.LeftAt, func(ds *def.Step) []def.Text { return ds.Set })
}

func (b *builder) listedAt(d *Dim, st *Step, list func(*def.Step) []def.Text) source.Pos {
	if ds := b.stepDefs[st]; ds != nil {
		for _, t := range list(ds) {
			if key, _, _ := cut(t.Value); key == d.Base {
				return t.At
			}
		}
	}
	return st.At
}
