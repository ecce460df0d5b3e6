package packs

import (
	"strconv"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// resolveMirror takes over what the put-back row of a step has of its own, and what
// it has not of the guards of the step.
func (b *builder) resolveMirror(st *job.Step, ds *def.Step) {
	m := &st.Mirror
	m.Missed = textAt(st.Place, ds.BackMissed)
	if m.Missed.Value == "none" {
		m.Missed.Value = ""
	}
	for _, t := range b.mirrored(m, job.GuardCaution, "back-caution", ds.BackCaution) {
		if c, ok := b.cautions[t.Value]; ok {
			m.Cautions = append(m.Cautions, c)
		} else {
			b.unknown(t, "caution", knownTo(b, b.cautions), "cautions")
		}
	}
	for _, t := range b.mirrored(m, job.GuardPermit, "back-permit", ds.BackPermit) {
		if p, ok := b.permits[t.Value]; ok {
			m.Permits = append(m.Permits, p)
		} else {
			b.unknown(t, "permit", knownTo(b, b.permits), "permits")
		}
	}
	for _, t := range b.mirrored(m, job.GuardHold, "back-hold", []source.Text{ds.BackHold}) {
		if h := b.holdAt(t); h != nil {
			h.Step = st // until its row is made
			m.Hold = h
		}
	}
	for _, t := range b.mirrored(m, job.GuardCheck, "back-check", []source.Text{ds.BackCheck}) {
		m.Check = t.Value
	}
}

// mirrored notes why a kind of guard is left out, and gives the names that are
// written instead.
func (b *builder) mirrored(m *job.Mirror, g job.Guard, key string, list []source.Text) []source.Text {
	var names []source.Text
	for _, t := range list {
		if !t.Written() {
			continue
		}
		if m.At.IsZero() {
			m.At = t.At
		}
		reason, none := noneBecause(t)
		switch {
		case !none:
			names = append(names, t)
		case reason == "":
			b.problems.Add(t.At, "no-reason", key+": none does not say why, and the paper prints the reason", key+": none, because the cover goes on without it")
		default:
			m.Without = append(m.Without, job.Without{At: t.At, Guard: g, Reason: reason})
		}
	}
	return names
}

// noneBecause reads "none, because ...": the reason, and whether it is that form.
func noneBecause(t source.Text) (reason string, none bool) {
	if t.Value == "none" {
		return "", true
	}
	rest, ok := strings.CutPrefix(t.Value, "none")
	if !ok || strings.TrimLeft(rest, ", ") == rest {
		return "", false
	}
	rest = strings.TrimLeft(rest, ", ")
	return strings.TrimSpace(strings.TrimPrefix(rest, "because")), true
}

// holdAt finds a hold that is written at a step, nil if there is none or it stands
// somewhere already.
func (b *builder) holdAt(t source.Text) *job.Hold {
	if !t.Written() {
		return nil
	}
	h, ok := b.holds[t.Value]
	switch {
	case !ok:
		b.unknown(t, "hold or witness point", knownTo(b, b.holds), "holds")
	case h.Step != nil:
		b.problems.AddWith(t.At, "twice", "hold "+h.Mark+" stands at two steps; it is released once", h.Step.At, "the first of them",
			"give the second one a mark of its own: "+b.freeHold())
	default:
		return h
	}
	return nil
}

// freeHold is a mark that no hold has.
func (b *builder) freeHold() string {
	for i := 1; ; i++ {
		if mark := "W" + strconv.Itoa(i); b.holds[mark] == nil {
			return mark
		}
	}
}
