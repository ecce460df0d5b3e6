package templates

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/jointsheet"
	"matchmark/templates/step"
)

// A toldStep is one or some steps of which the same is said, with its runs.
type toldStep struct {
	at      layout.Ref
	runs    []layout.Run
	changed bool // against an earlier revision
}

// says is what is told of a step, its place left out where it only stands behind a mark.
// What is easily missed at a place is told with the place.
func (c *composer) says(st *job.Step) string {
	says := step.Text(c.Composer, st) + "|" + withoutPlace(c.looks(st), st.Place.Label)
	if st.Place.Label == "" {
		says += "|" + st.Missed
	}
	return says
}

// withoutPlace takes the label of a place from the marks in a text: J1 of J1/DE.
func withoutPlace(text, label string) string {
	if label == "" {
		return text
	}
	out := ""
	for {
		before, after, found := strings.Cut(text, "/"+label)
		out += before
		if !found {
			return out
		}
		if next, _ := utf8.DecodeRuneInString(after); unicode.IsLetter(next) || unicode.IsDigit(next) || next == '-' || next == '/' {
			out += "/" + label // the beginning of another one
		}
		text = after
	}
}

// likeSections are the sections with steps; neighbours of which the same is told, as those
// of one piece of work at several places, together.
func (c *composer) likeSections() [][]*job.Section {
	var out [][]*job.Section
	said := ""
	for _, s := range c.Job.Sections {
		if len(s.Steps) == 0 {
			continue
		}
		all := []string{s.Name}
		for _, st := range s.Steps {
			all = append(all, c.says(st))
		}
		says := strings.Join(all, "\n")
		if n := len(out); n > 0 && says == said && len(out[n-1]) < mostTogether/2 {
			out[n-1] = append(out[n-1], s)
			continue
		}
		out, said = append(out, []*job.Section{s}), says
	}
	return out
}

// toldSteps are the steps of like sections as they are told: those at the same place in
// the sections together, and neighbours that say the same, as those of a table over several
// places.
func (c *composer) toldSteps(like []*job.Section, back map[*job.Step]*job.Step) []toldStep {
	var all [][]*job.Step
	said := ""
	for i, st := range like[0].Steps {
		var same []*job.Step
		for _, s := range like {
			same = append(same, s.Steps[i])
		}
		says := c.says(st)
		if n := len(all); n > 0 && says == said && len(all[n-1])+len(same) <= mostTogether {
			all[n-1] = append(all[n-1], same...)
			continue
		}
		all, said = append(all, same), says
	}
	var out []toldStep
	for _, sts := range all {
		out = append(out, c.toldStep(sts, back))
	}
	return out
}

// mostTogether is how many steps are told together at the most, and half as many sections:
// the numbers of very many alike ones would be higher than a page.
const mostTogether = 24

// toldStep tells steps of which the same is said.
func (c *composer) toldStep(sts []*job.Step, back map[*job.Step]*job.Step) toldStep {
	out := toldStep{at: sts[0].At, changed: c.tabledChanged(sts)}
	var backs []*job.Step
	look := c.looks(sts[0])
	for _, st := range sts {
		if b := back[st]; b != nil {
			backs = append(backs, b)
		}
		if c.looks(st) != look {
			look = withoutPlace(look, sts[0].Place.Label)
		}
	}
	for _, m := range missedAt(sts, c.W.Common.Colon) {
		look = joinFacts(look, c.W.AllSteps.Missed.With(m))
	}
	if len(backs) > 0 {
		look = joinFacts(look, c.W.AllSteps.BackAt.With(c.StepRefs(backs)))
	}
	text := strings.Join(strings.Fields(step.Text(c.Composer, sts[0])), " ")
	plain, bold := layout.Sub, layout.SubBold
	plain.Lead, bold.Lead = toldLead, toldLead
	out.runs = []layout.Run{layout.T(bold, c.StepRefs(sts)+"  "), layout.T(plain, text)}
	if look != "" {
		out.runs = append(out.runs, layout.T(bold, "  "+look))
	}
	return out
}

// looks is what a reader looks for at a step: its hold, lifts, heats, alignments, joints
// with how tight, what is set.
func (c *composer) looks(st *job.Step) string {
	var out []string
	add := func(mark string) {
		if mark != "" {
			out = append(out, mark)
		}
	}
	if st.Hold != nil {
		add(st.Hold.Mark)
	}
	for _, l := range st.Lifts {
		add(l.Mark)
	}
	for _, h := range st.Heats {
		add(h.Mark)
	}
	for _, a := range st.Align {
		add(a.Mark)
	}
	for _, f := range st.Tighten {
		add(jointsheet.Setting(f))
	}
	var set, read []*job.Dim // what a part or shims set is set, the rest is read
	for _, d := range st.Set {
		if d.Adjusted() {
			set = append(set, d)
		} else {
			read = append(read, d)
		}
	}
	if len(set) > 0 {
		add(c.W.AllSteps.Set.With(strings.Join(baseMarks(set), ", ")))
	}
	if len(read) > 0 {
		add(c.W.AllSteps.Read.With(strings.Join(baseMarks(read), ", ")))
	}
	return strings.Join(out, " · ")
}

// missedAt is what is easily missed at steps that are told together, once each; before it
// stand its places, if it is not so at all of them: NDE: lock nut LEFT-HAND.
func missedAt(sts []*job.Step, colon string) []string {
	places := map[string][]string{}
	var texts []string
	for _, st := range sts {
		if st.Missed == "" {
			continue
		}
		if places[st.Missed] == nil {
			texts = append(texts, st.Missed)
		}
		places[st.Missed] = append(places[st.Missed], st.Place.Label)
	}
	for i, text := range texts {
		if at := places[text]; len(at) < len(sts) {
			texts[i] = strings.Join(slices.Compact(at), ", ") + colon + text
		}
	}
	return texts
}
