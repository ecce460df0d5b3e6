package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// readOrder takes over the machine and the job.
func (b *builder) readOrder() {
	e, o := b.Def.Equipment, b.Def.Job
	b.Job.At = b.Def.At
	b.Job.Equipment = job.Equipment{At: e.Tag.At, Tag: e.Tag.Value, Name: e.Name.Value, Serial: e.Serial.Value, Maker: e.Maker.Value, Type: e.Type.Value, Location: e.Location.Value}
	b.Job.Order = job.Order{At: o.Number.At, Number: o.Number.Value, Title: o.Title.Value, Revision: o.Revision.Value, Issued: o.Issued.Value, Scope: o.Scope.Value, Planner: o.Planner.Value, Starts: o.Starts.Value}
	if n, ok := names.WholeNumber(o.HoursADay); ok {
		b.Job.Order.HoursADay = n
		if n > 24 {
			b.Problems.Add(o.HoursADay.At, "not-a-time", source.Quote(o.HoursADay.Value)+" hours are more than a day has", "for example hours-a-day: 10, or 24 where the work goes round the clock")
		}
	}
	need := func(t source.Text, at source.Pos, what, example string) {
		if t.Value == "" {
			if at.IsZero() {
				at = b.Def.At
			}
			b.Problems.Add(at, "missing", what+" is not given, and every page and tag carries it", example)
		}
	}
	need(e.Tag, e.At, "the tag of the machine", "for example equipment: {tag: FN-11, name: Kiln exhaust fan}")
	need(e.Name, e.At, "the name of the machine", "for example equipment: {tag: FN-11, name: Kiln exhaust fan}")
	need(o.Number, o.At, "the number of the job", "for example job: {number: WO-5512, title: Bearing change, revision: A, issued: 2026-03-02}")
	need(o.Title, o.At, "the title of the job", "for example title: Bearing change")
	need(o.Revision, o.At, "the revision of the job", "for example revision: A")
	need(o.Issued, o.At, "the date of issue", "for example issued: 2026-03-02")
}

// readSections repeats the sections and their steps over their places. Parts,
// dimensions and other steps that they name are resolved afterwards, when all
// steps are known.
func (b *builder) readSections() {
	b.Steps = map[string][]*job.Step{}
	b.StepDefs = map[*job.Step]*def.Step{}
	b.SectionDefs = map[*job.Section]*def.Section{}
	b.Sections = map[string][]*job.Section{}
	first := map[string]source.Pos{}
	for _, ds := range b.Def.Sections {
		for _, st := range ds.Steps {
			if st.Key.Value == "" {
				continue
			}
			if at, ok := first[st.Key.Value]; ok {
				b.Problems = append(b.Problems, source.Problem{
					Pos: st.Key.At, Severity: source.Error, Code: "step-twice",
					Message: "two steps are called " + source.Quote(st.Key.Value),
					Help:    []string{"give this one another name; after: lines go by it"},
					See:     []source.Also{{Pos: at, What: "the first one"}},
				})
				continue
			}
			first[st.Key.Value] = st.Key.At
		}
		if len(ds.Reverse) > 0 {
			s := &job.Section{At: ds.At, Back: true}
			b.Job.Sections = append(b.Job.Sections, s)
			b.SectionDefs[s] = ds
			continue
		}
		places := b.Over(ds.Each)
		b.CheckVarying(ds.Name, "the heading", places)
		b.checkStepTexts(ds, places)
		for _, pl := range places {
			s := &job.Section{At: ds.At, Title: ds.Name.One.Value, Name: names.ValueAt(pl, ds.Name), Place: pl}
			for _, st := range ds.Steps {
				b.readStep(s, st)
			}
			name := ds.Name.One.Value
			b.Sections[name] = append(b.Sections[name], s)
			b.SectionDefs[s] = ds
			b.Job.Sections = append(b.Job.Sections, s)
		}
	}
}

// checkStepTexts sees that what a step says by place names places that it has.
func (b *builder) checkStepTexts(ds *def.Section, places []job.Place) {
	for _, st := range ds.Steps {
		all := places
		if len(st.Each) > 0 {
			all = nil
			own := b.Over(st.Each)
			for _, p := range places {
				for _, q := range own {
					all = append(all, p.Cross(q))
				}
			}
		}
		b.CheckVarying(st.Do, "what to do", all)
		for _, v := range []def.Varying{st.Missed, st.Note, st.Back, st.BackMissed} {
			b.CheckVarying(v, "", all)
		}
	}
}

// readStep repeats one step over its own places within a section.
func (b *builder) readStep(s *job.Section, ds *def.Step) {
	places := b.Over(ds.Each)
	all := make([]job.Place, 0, len(places))
	for _, pl := range places {
		all = append(all, s.Place.Cross(pl))
	}
	for _, pl := range all {
		st := &job.Step{
			At: ds.At, Key: ds.Key.Value, Place: pl, Section: s, Do: names.ValueAt(pl, ds.Do), Missed: names.ValueAt(pl, ds.Missed), Note: names.ValueAt(pl, ds.Note),
			Check: ds.Check.Value, Photo: ds.Photo.Value == "yes", Bench: ds.Where.Value == "bench", OnHook: ds.OnHook.Value,
			AfterAt: ds.After.At, AfterNothing: !ds.After.At.IsZero() && len(ds.After.Steps) == 0, PutBack: names.TextAt(pl, ds.Back), Verbs: verbsOf(ds),
		}
		b.readHours(st, ds)
		if st.Do == "" {
			b.Problems.Add(ds.At, "nothing-to-do", "this step does not say what to do", "for example do: Take the lock nut off.")
		}
		s.Steps = append(s.Steps, st)
		b.Steps[st.Key] = append(b.Steps[st.Key], st)
		b.StepDefs[st] = ds
	}
}

// resolveSteps ties each step to the parts, dimensions, containers, holds,
// cautions and other steps that it names.
func (b *builder) resolveSteps() {
	b.StartTally()
	defer b.TellMissing()
	for _, s := range b.Job.Sections {
		for _, t := range b.SectionDefs[s].Reverse {
			sections, _ := names.Meant(b.Index, t, "section", b.Sections, "steps")
			s.Reverse = append(s.Reverse, job.Reversal{At: t.At, Name: t.Value, Sections: sections})
		}
		for _, st := range s.Steps {
			ds := b.StepDefs[st]
			for _, t := range ds.Measure {
				for _, d := range b.DimsAt(t, st.Place) {
					b.claimDim(t, d, &d.FoundAt, &d.FoundNamed, st, "measured as found")
					st.Measure = append(st.Measure, d)
				}
			}
			for _, t := range ds.Set {
				for _, d := range b.DimsAt(t, st.Place) {
					b.claimDim(t, d, &d.LeftAt, &d.LeftNamed, st, "set")
					st.Set = append(st.Set, d)
				}
			}
			b.resolveRemoved(st, ds)
			b.resolveFitted(st, ds)
			st.Loosen, st.Tighten = b.fastenings(ds.Loosen, st), b.fastenings(ds.Tighten, st)
			b.resolveNotes(st, ds)
			b.resolveGuards(st, ds)
			b.resolveMirror(st, ds)
			b.resolveHeats(st, ds)
			b.resolveLifts(st, ds)
			b.resolveAlign(st, ds)
			b.resolveAfter(st, ds)
		}
	}
}

// claimDim sees that a dimension is measured, or set, by one step only.
func (b *builder) claimDim(t source.Text, d *job.Dim, by **job.Step, named *source.Pos, st *job.Step, what string) {
	if *by != nil {
		b.Problems = append(b.Problems, source.Problem{
			Pos: t.At, Severity: source.Error, Code: "twice",
			Message: d.Mark + " is " + what + " by two steps; it has one box on paper",
			Help:    []string{"take it out of one of them, or give it a second dimension of its own"},
			See:     []source.Also{{Pos: (*by).At, What: "the first of them"}},
		})
		return
	}
	*by, *named = st, t.At
}

func (b *builder) resolveNotes(st *job.Step, ds *def.Step) {
	for _, t := range ds.NoCaution {
		if c, ok := b.Cautions[t.Name.Value]; ok {
			st.NoCaution = append(st.NoCaution, job.NoCaution{At: t.Name.At, Caution: c, Reason: t.Value.Value})
		} else {
			b.Unknown(t.Name, "caution", names.KnownTo(b.Index, b.Cautions), "cautions")
		}
	}
	for _, t := range ds.Caution {
		c, ok := names.Meant(b.Index, t, "caution", b.Cautions, "cautions")
		if !ok {
			continue
		}
		c.Steps = append(c.Steps, st)
		st.Cautions = append(st.Cautions, c)
		st.Said = append(st.Said, c)
	}
	if h := b.holdAt(ds.Hold, st); h != nil {
		h.Step = st
		st.Hold = h
	}
	for _, t := range ds.Empty {
		if w, ok := b.WhereAt(t, st.Place); ok && w.Container != nil {
			st.Empty = append(st.Empty, job.Emptied{At: t.At, In: w.Container})
		}
	}
}

func (b *builder) resolveAfter(st *job.Step, ds *def.Step) {
	for _, n := range ds.After.Steps {
		_, label, named := names.Cut(n.Name.Value)
		all, ok := names.Meant(b.Index, n.Name, "step", b.Steps, "steps")
		if !ok {
			continue
		}
		for _, on := range names.Pick(b.Index, n.Name, "step", all, func(s *job.Step) job.Place { return s.Place }, st.Place, label, named) {
			switch {
			case on != st:
				st.After = append(st.After, job.Dep{At: n.Name.At, Step: on, Reason: n.Value.Value})
			case named && len(all) > 1: // the place that goes first: all others come after it
			default:
				b.Problems.Add(n.Name.At, "after-itself", "a step cannot come after itself", "name the step that comes before it")
			}
		}
	}
}
