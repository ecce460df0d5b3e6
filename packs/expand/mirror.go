package expand

import (
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// resolveMirror takes over what the put-back row of a step has of its own, and what
// it has not of the guards of the step.
func (b *builder) resolveMirror(st *job.Step, ds *def.Step) {
	m := &st.Mirror
	m.Missed = names.TextAt(st.Place, ds.BackMissed)
	if m.Missed.Value == "none" {
		m.Missed.Value = ""
	}
	for _, t := range ds.BackSeen {
		if m.At.IsZero() {
			m.At = t.At
		}
		m.Seen = append(m.Seen, job.Seen{At: t.At, What: t.Value})
	}
	// written above the words of the row they come before all that these tell; below them, or
	// where there are no words, they come when all is done
	m.First = len(m.Seen) > 0 && st.PutBack.Written() && m.Seen[0].At.Before(st.PutBack.At)
	for _, t := range b.mirrored(m, job.GuardCaution, "back-caution", ds.BackCaution) {
		if c, ok := b.Cautions[t.Value]; ok {
			m.Cautions = append(m.Cautions, c)
		} else {
			b.Unknown(t, "caution", names.KnownTo(b.Index, b.Cautions), "cautions")
		}
	}
	for _, t := range b.mirrored(m, job.GuardPermit, "back-permit", ds.BackPermit) {
		if p, ok := b.Permits[t.Value]; ok {
			m.Permits = append(m.Permits, p)
		} else {
			b.Unknown(t, "permit", names.KnownTo(b.Index, b.Permits), "permits")
		}
	}
	for _, t := range b.mirrored(m, job.GuardHold, "back-hold", []source.Text{ds.BackHold}) {
		if h := b.holdAt(t, st); h != nil {
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
	var out []source.Text
	for _, t := range list {
		if !t.Written() {
			continue
		}
		if m.At.IsZero() {
			m.At = t.At
		}
		reason, none := names.NoneBecause(t)
		switch {
		case !none:
			out = append(out, t)
		case reason == "":
			b.Problems.Add(t.At, "no-reason", key+": none does not say why, and the paper prints the reason", "for example "+key+": none, because the cover goes on without it")
		default:
			m.Without = append(m.Without, job.Without{At: t.At, Guard: g, Reason: reason})
		}
	}
	return out
}

// holdAt finds a hold that is written at a step, nil if there is none or it stands
// somewhere already.
func (b *builder) holdAt(t source.Text, st *job.Step) *job.Hold {
	if !t.Written() {
		return nil
	}
	h, ok := names.Meant(b.Index, t, "hold or witness point", b.Holds, "holds")
	switch {
	case !ok:
	case h.Step != nil:
		help := "give the second one a mark of its own: " + b.freeHold()
		if h.Step.At == st.At {
			help = "the step is done at several places: write hold: at a step of its own below it"
		}
		b.Problems.AddWith(t.At, "twice", "hold "+h.Mark+" stands at two steps; it is released once", h.Step.At, "the first of them", help)
	default:
		return h
	}
	return nil
}

// freeHold is a mark that no hold has.
func (b *builder) freeHold() string {
	for i := 1; ; i++ {
		if mark := "W" + strconv.Itoa(i); b.Holds[mark] == nil {
			return mark
		}
	}
}
