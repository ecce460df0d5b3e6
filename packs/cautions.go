package packs

import (
	"matchmark/packs/job"
	"slices"
	"strings"

	"matchmark/packs/source"
)

// readCautions takes over the hazard notes of the definition. One with the key of
// a built-in note stands in its place; what it leaves out is taken from it.
func (b *builder) readCautions() {
	b.cautions = map[string]*job.Caution{}
	fill := strings.NewReplacer("{watch}", b.job.Site.FireWatch.Print(), "{heavy}", b.job.Site.Heavy.Print())
	for _, n := range builtins {
		c := n.Caution
		c.Builtin, c.Avoid, c.Short = true, fill.Replace(c.Avoid), fill.Replace(c.Short)
		b.cautions[c.Key] = &c
	}
	for _, dc := range b.def.Cautions {
		c := &job.Caution{
			At: dc.Key.At, Key: dc.Key.Value, Signal: dc.Signal.Value, Signs: texts(dc.Signs),
			Hazard: dc.Hazard.Value, Result: dc.Result.Value, Avoid: dc.Avoid.Value, Rule: dc.Rule.Value,
		}
		if old := b.cautions[c.Key]; old != nil {
			if len(c.Signs) == 0 {
				c.Signs = old.Signs
			}
			if c.Result == "" {
				c.Result = old.Result
			}
			if c.Rule == "" {
				c.Rule = old.Rule
			}
		}
		b.cautions[c.Key] = c
		b.job.Cautions = append(b.job.Cautions, c)
	}
}

// attachCautions puts before each step, besides the notes that it names, those
// that what it does calls for; then it sorts them, the worst first.
func (b *builder) attachCautions() {
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			spared := b.spared(st)
			for _, n := range builtins {
				c := b.cautions[n.Key]
				if n.meets(b, st) && !slices.Contains(st.Cautions, c) && !spared[n.Key] {
					c.Steps = append(c.Steps, st)
					st.Cautions = append(st.Cautions, c)
				}
			}
			slices.SortStableFunc(st.Cautions, func(x, y *job.Caution) int { return rank(x) - rank(y) })
		}
	}
	for _, n := range builtins {
		if c := b.cautions[n.Key]; c.Builtin && len(c.Steps) > 0 {
			b.job.Cautions = append(b.job.Cautions, c)
		}
	}
	slices.SortStableFunc(b.job.Cautions, func(x, y *job.Caution) int { return rank(x) - rank(y) })
	for _, c := range b.job.Cautions {
		slices.SortStableFunc(c.Steps, func(x, y *job.Step) int { return x.Index - y.Index })
	}
}

// rank orders signal words, the worst first.
func rank(c *job.Caution) int {
	return slices.Index([]string{"danger", "warning", "caution", "notice"}, c.Signal)
}

// meets reports whether a step does what a built-in note warns of.
func (n *builtin) meets(b *builder, st *job.Step) bool {
	if n.offOnly && st.Back {
		return false
	}
	return n.words != nil && n.words.MatchString(st.Do) || n.does != nil && n.does(b, st)
}

// kept are the notes that no author can leave out.
var kept = []string{"lockout", "confined-space", "lifting", job.HotWork, "heating"}

// spared reads which built-in notes the author leaves out of a step, and why.
func (b *builder) spared(st *job.Step) map[string]bool {
	from := st
	if st.Undoes != nil {
		from = st.Undoes
	}
	out := map[string]bool{}
	for _, t := range b.stepDefs[from].NoCaution {
		c, ok := b.cautions[t.Name.Value]
		switch {
		case !ok:
			b.unknown(t.Name, "caution", knownTo(b, b.cautions), "cautions")
		case slices.Contains(kept, c.Key):
			b.problems.Add(t.Name.At, "caution-kept", "the caution "+source.Quote(c.Key)+" cannot be left out",
				"word the step otherwise if it does nothing of the kind: it stands by what the step says or does")
		default:
			out[c.Key] = true
			if from == st {
				b.job.Spared = append(b.job.Spared, &job.Spared{At: t.Name.At, Note: c, Step: st, Reason: t.Value.Value})
			}
		}
	}
	return out
}

// onHook reports whether a step makes a lift with a crane, or moves a part that is
// too heavy to be lifted by hand without saying how many people it takes.
func (b *builder) onHook(st *job.Step) bool {
	hook := func(l *job.Lift) bool { return !l.ByHand }
	return slices.ContainsFunc(st.Lifts, hook) || st.OnHook != "" || st.People < 2 && len(st.Lifts) == 0 && b.movesHeavy(st)
}

// byHand reports whether a step has several people lift a heavy part.
func (b *builder) byHand(st *job.Step) bool {
	hand := func(l *job.Lift) bool { return l.ByHand }
	return slices.ContainsFunc(st.Lifts, hand) || st.OnHook == "" && st.People >= 2 && len(st.Lifts) == 0 && b.movesHeavy(st)
}

// movesHeavy reports whether a step takes off or puts back a part above the site's
// heavy mass.
func (b *builder) movesHeavy(st *job.Step) bool {
	return slices.ContainsFunc(append(slices.Clone(st.Remove), st.Fit...), func(m *job.Move) bool {
		mass := m.Part.Weighs(b.job.Parts)
		if mass == nil {
			return false
		}
		over, err := mass.Cmp(b.job.Site.Heavy)
		return err == nil && over > 0
	})
}

// frees reports whether a step takes off, slackens or puts back a part that holds
// back a spring, pressure or a weight. There is no pressure yet in putting back.
func (b *builder) frees(st *job.Step, what string) bool {
	moved := func(m *job.Move) bool { return m.Part.Holds == what }
	if slices.ContainsFunc(st.Remove, moved) || what != "pressure" && slices.ContainsFunc(st.Fit, moved) {
		return true
	}
	return slices.ContainsFunc(st.Loosen, func(f job.Fastening) bool {
		if f.Joint == nil {
			return f.Part.Holds == what
		}
		return slices.ContainsFunc(f.Joint.Parts, func(p *job.Part) bool { return p.Holds == what })
	})
}

// checkCautions sees that heating and lifting carry their signs, whatever the
// definition has put in place of the built-in notes, and that hot work and entry
// ask for a permit.
func (b *builder) checkCautions() {
	needs := []struct {
		keys  []string
		what  string
		signs []string
	}{
		{[]string{"heating", job.HotWork, "induction"}, "heats", []string{"W017", "W021"}},
		{[]string{"lifting", "rotor-lift"}, "lifts a load", []string{"W015"}},
	}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, n := range needs {
				if c := cautionOf(st, n.keys); c != nil {
					b.checkSigns(st, c, n.what, n.signs)
				}
			}
			if c := cautionOf(st, []string{job.HotWork, "confined-space"}); c != nil && len(st.Permits) == 0 {
				b.problems.Add(st.At, "no-permit", "step "+st.Name()+" carries the caution "+source.Quote(c.Key)+" and asks for no permit",
					"permit: ["+c.Key+"], and permits: {"+c.Key+": {what: …}}")
			}
		}
	}
}

// cautionOf is the note of a step that has one of the keys, nil if none has.
func cautionOf(st *job.Step, keys []string) *job.Caution {
	for _, c := range st.Cautions {
		if slices.Contains(keys, c.Key) {
			return c
		}
	}
	return nil
}

// checkSigns sees that the notes before a step show some signs between them.
func (b *builder) checkSigns(st *job.Step, c *job.Caution, what string, signs []string) {
	for _, sign := range signs {
		if slices.ContainsFunc(st.Cautions, func(c *job.Caution) bool { return slices.Contains(c.Signs, sign) }) {
			continue
		}
		b.problems = append(b.problems, source.Problem{
			Pos: c.At, Severity: source.Error, Code: "sign-missing",
			Message: "step " + st.Name() + " " + what + ", and its cautions do not show " + sign,
			Help:    []string{"signs: [" + strings.Join(append(slices.Clone(c.Signs), sign), ", ") + "]"},
			See:     []source.Also{{Pos: st.At, What: "the step"}},
		})
	}
}
