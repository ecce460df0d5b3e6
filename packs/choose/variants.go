package choose

import (
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// A Chosen is what one machine has of its definition.
type Chosen struct {
	Choices    []*job.Choice             // what it has of each option
	LeftOut    map[string]string         // why something is not meant for it, by its key
	marks      map[string]bool           // those keys of it that are marks on paper, as D7
	Conditions map[*def.Step]source.Text // if: lines that are decided at the machine
	ReadsWith  map[string]bool           // instruments of dimensions, of those left out too
	lifts      int                       // those left out counted in
	left       int
}

// EveryLift reports whether no lift of the definition was left out.
func (c *Chosen) EveryLift() bool { return c.lifts == c.left }

// A chooser holds what is known while a machine is chosen.
type chooser struct {
	def      *def.Definition
	problems *source.Problems
	chosen   *Chosen
}

// Machine leaves out of the definition what this machine does not have, so that
// all that follows sees one machine only, and tells what was chosen. Problems are
// added to those that the reader has told.
func Machine(d *def.Definition, problems *source.Problems) *Chosen {
	b := &chooser{def: d, problems: problems, chosen: &Chosen{}}
	b.chooseVariants()
	b.chosen.left = len(d.Lifts)
	return b.chosen
}

// chooseVariants leaves out of the definition what this machine does not have,
// so that all that follows sees one machine only. Things that only steps left
// out name go with them; what else names a thing left out loses the name.
func (b *chooser) chooseVariants() {
	b.takeConditions()
	c := b.readChoices()
	b.chosen.lifts = len(b.def.Lifts)
	b.chosen.LeftOut, b.chosen.marks = map[string]string{}, map[string]bool{}
	if len(b.def.Options) > 0 {
		b.def.Varyings(func(field string, v *def.Varying) { b.settle(c, field, v) })
	}
	d := b.def
	b.chosen.ReadsWith = map[string]bool{}
	for _, x := range d.Dimensions {
		key, _, _ := strings.Cut(x.By.Value, "/") // one of several
		b.chosen.ReadsWith[strings.TrimSpace(key)] = true
	}
	parts := d.Parts
	d.Parts = keep(b, c, d.Parts, func(p *def.Part) (source.Text, *def.Applies) { return p.Key, &p.Applies })
	b.dropSets(parts)
	d.Dimensions = keep(b, c, d.Dimensions, func(x *def.Dimension) (source.Text, *def.Applies) { return x.Mark, &x.Applies })
	for _, x := range d.Dimensions {
		for i := range x.Says {
			// What a source says of another build is printed all the same, and not used.
			if ok, _ := b.applies(c, x.Says[i].Applies); !ok {
				x.Says[i].Used = source.Text{}
			}
		}
	}
	d.Containers = keep(b, c, d.Containers, func(x *def.Container) (source.Text, *def.Applies) { return x.Mark, &x.Applies })
	d.BigParts = keep(b, c, d.BigParts, func(x *def.BigPart) (source.Text, *def.Applies) { return x.Mark, &x.Applies })
	d.Joints = keep(b, c, d.Joints, func(x *def.Joint) (source.Text, *def.Applies) { return x.Mark, &x.Applies })
	d.Alignments = keep(b, c, d.Alignments, func(x *def.Alignment) (source.Text, *def.Applies) { return x.Mark, &x.Applies })
	d.Heats = keep(b, c, d.Heats, func(x *def.Heat) (source.Text, *def.Applies) { return x.Mark, &x.Applies })
	d.Lifts = keep(b, c, d.Lifts, func(x *def.Lift) (source.Text, *def.Applies) { return x.Mark, &x.Applies })
	d.Isolations = keep(b, c, d.Isolations, func(x *def.Isolation) (source.Text, *def.Applies) { return x.Key, &x.Applies })
	d.Permits = keep(b, c, d.Permits, func(x *def.Permit) (source.Text, *def.Applies) { return x.Key, &x.Applies })
	d.Openings = keep(b, c, d.Openings, func(x *def.Opening) (source.Text, *def.Applies) { return x.Key, &x.Applies })
	supply := func(x *def.Supply) (source.Text, *def.Applies) { return source.Text{}, &x.Applies }
	d.Tools, d.Spares, d.Consumables = keep(b, c, d.Tools, supply), keep(b, c, d.Spares, supply), keep(b, c, d.Consumables, supply)
	b.keepWork(c)
	b.scrub()
}

// asked tells a condition that is decided at the machine from the name of a build.
var asked = phrase.Of(`\?\s*$|^D\d+(/\S+)? `)

// takeConditions sets apart the if: lines of steps that are decided at the machine,
// so that those of builds are left.
func (b *chooser) takeConditions() {
	b.chosen.Conditions = map[*def.Step]source.Text{}
	for _, s := range b.def.Sections {
		for _, st := range s.Steps {
			if asked.MatchString(st.If.Value) {
				b.chosen.Conditions[st], st.If = st.If, source.Text{}
			}
			if st.Otherwise.Written() && !st.If.Written() && !st.Fitted.Written() && b.chosen.Conditions[st].Value == "" {
				b.problems.Add(st.Otherwise.At, "otherwise-alone", "otherwise: stands without an if: or fitted:, so it is never done", "for example if: D3 is over … mm")
			}
		}
	}
}

// keep is the list without the things that this machine does not have. What is
// left out is remembered by its key, with the reason.
func keep[T any](b *chooser, c choices, list []*T, of func(*T) (source.Text, *def.Applies)) []*T {
	var out []*T
	for _, x := range list {
		key, a := of(x)
		ok, why := b.applies(c, *a)
		if ok {
			out = append(out, x)
		} else if key.Written() {
			b.leaveOut(x, key.Value, why)
		}
	}
	return out
}

// keepWork leaves out sections and steps. A step left out hands on what it comes
// after to those that come after it; one with an otherwise: line stays with that
// text and does nothing else.
func (b *chooser) keepWork(c choices) {
	d := b.def
	gone := map[string]*def.After{}
	var lost, kept []*def.Step
	var out []*def.Section
	above := "" // the step written above, where a step has no after: line
	for _, s := range d.Sections {
		ok, _ := b.applies(c, s.Applies)
		var steps []*def.Step
		for _, st := range s.Steps {
			meant, _ := b.applies(c, st.Applies)
			switch {
			case ok && meant:
				steps = append(steps, st)
				kept = append(kept, st)
			case ok && st.Otherwise.Written():
				lost = append(lost, st)
				other := &def.Step{At: st.At, Key: st.Key, After: st.After, Do: st.Otherwise, Where: st.Where, Each: st.Each, Check: st.Check}
				steps = append(steps, other)
				kept = append(kept, other)
			default:
				lost = append(lost, st)
				gone[st.Key.Value] = handOn(st, above)
				continue
			}
			above = st.Key.Value
		}
		s.Steps = steps
		if len(steps) > 0 || len(s.Reverse) > 0 {
			out = append(out, s)
		} else if s.Name.One.Written() {
			b.chosen.LeftOut["section "+s.Name.One.Value] = "none of its steps is meant for this machine"
		}
	}
	d.Sections = out
	if len(lost) == 0 {
		return
	}
	rewire(out, gone)
	b.dropNamed(lost, kept)
}

// handOn is what a step that is left out comes after.
func handOn(st *def.Step, above string) *def.After {
	if !st.After.At.IsZero() || above == "" {
		return &st.After
	}
	return &def.After{At: st.At, Steps: []def.Named{{Name: source.Text{Value: above, At: st.Key.At}}}}
}

// rewire puts what a left-out step comes after in the place of its name.
func rewire(sections []*def.Section, gone map[string]*def.After) {
	var follow func(n def.Named, depth int) []def.Named
	follow = func(n def.Named, depth int) []def.Named {
		key, _, _ := strings.Cut(n.Name.Value, "/")
		after, left := gone[key]
		if !left {
			return []def.Named{n}
		}
		var out []def.Named
		for _, up := range after.Steps {
			if depth < len(gone) {
				up.Name.At = n.Name.At
				out = append(out, follow(up, depth+1)...)
			}
		}
		return out
	}
	for _, s := range sections {
		for _, st := range s.Steps {
			var steps []def.Named
			for _, n := range st.After.Steps {
				for _, up := range follow(n, 0) {
					if !slices.ContainsFunc(steps, func(k def.Named) bool { return k.Name.Value == up.Name.Value }) {
						steps = append(steps, up)
					}
				}
			}
			st.After.Steps = steps
		}
	}
}

// namedBy lists all that a step names, each as its key without a place.
func namedBy(st *def.Step) []string {
	var out []string
	add := func(list []source.Text) {
		for _, t := range list {
			key, _, _ := strings.Cut(t.Value, "/")
			out = append(out, key)
		}
	}
	for _, list := range [][]source.Text{st.Measure, st.Set, st.From, st.Loosen, st.Tighten, st.Open, st.Close, st.Empty, st.Heat, st.Caution, st.BackCaution, st.Lock, st.Unlock, st.UnlockForNow, st.LockAgain, st.Permit, st.BackPermit, st.HandBack, st.Lift, st.SetDown, st.Stacks, st.EachTry, {st.Hold, st.BackHold, st.Into.To}} {
		add(list)
	}
	for _, n := range st.Into.For {
		add([]source.Text{n.Value})
	}
	return out
}

// dropNamed leaves out what only steps left out name: readings, containers, holds,
// lifts, heats, cautions, openings, locks and permits.
func (b *chooser) dropNamed(lost, kept []*def.Step) {
	still := map[string]bool{}
	for _, st := range kept {
		for _, n := range namedBy(st) {
			still[n] = true
		}
	}
	drop := map[string]bool{}
	for _, st := range lost {
		for _, n := range namedBy(st) {
			drop[n] = n != "" && !still[n]
		}
	}
	d := b.def
	d.Dimensions = without(b, drop, d.Dimensions, func(x *def.Dimension) string { return x.Mark.Value })
	d.Containers = without(b, drop, d.Containers, func(x *def.Container) string { return x.Mark.Value })
	d.Stacks = without(b, drop, d.Stacks, func(x *def.Stack) string { return x.Mark.Value })
	d.Lifts = without(b, drop, d.Lifts, func(x *def.Lift) string { return x.Mark.Value })
	d.Holds = without(b, drop, d.Holds, func(x *def.Hold) string { return x.Mark.Value })
	d.Heats = without(b, drop, d.Heats, func(x *def.Heat) string { return x.Mark.Value })
	d.Cautions = without(b, drop, d.Cautions, func(x *def.Caution) string { return x.Key.Value })
	d.Openings = without(b, drop, d.Openings, func(x *def.Opening) string { return x.Key.Value })
	d.Isolations = without(b, drop, d.Isolations, func(x *def.Isolation) string { return x.Key.Value })
	d.Permits = without(b, drop, d.Permits, func(x *def.Permit) string { return x.Key.Value })
}

func without[T any](b *chooser, drop map[string]bool, list []*T, key func(*T) string) []*T {
	var out []*T
	for _, x := range list {
		if drop[key(x)] {
			b.leaveOut(x, key(x), "only steps left out name it")
			continue
		}
		out = append(out, x)
	}
	return out
}

// dropSets leaves out the matched sets of which no part is left.
func (b *chooser) dropSets(all []*def.Part) {
	named := func(parts []*def.Part) map[string]bool {
		out := map[string]bool{}
		for _, p := range parts {
			key, _, _ := strings.Cut(p.Set.Value, "/")
			out[key] = true
		}
		return out
	}
	before, after := named(all), named(b.def.Parts)
	drop := map[string]bool{}
	for key := range before {
		drop[key] = !after[key]
	}
	b.def.Sets = without(b, drop, b.def.Sets, func(s *def.Set) string { return s.Mark.Value })
}
