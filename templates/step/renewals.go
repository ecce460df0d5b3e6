package step

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/templates/block"
)

// renewals words when the parts of some moves are renewed, each time once: by the names of
// the parts, if there are several.
func renewals(c *block.Composer, ms []*job.Move) []string {
	var times []string
	of := map[string][]string{} // the names, by the time
	add := func(name, when string) {
		if !slices.Contains(times, when) {
			times = append(times, when)
		}
		if !slices.Contains(of[when], name) {
			of[when] = append(of[when], name)
		}
	}
	for _, m := range ms {
		when := renewedWhen(c, m)
		switch {
		case when == "":
		case oneKind(ms):
			add("", when)
		default:
			add(m.Part.Name, when)
		}
	}
	// A part that goes with its assembly has no line of its own.
	for _, p := range c.Job.Parts {
		within := func(m *job.Move) bool { return p != m.Part && p.Within(m.Part) }
		if strings.HasPrefix(p.Renew, "if ") && len(p.Off) == 0 && slices.ContainsFunc(ms, within) {
			add(p.Name, c.W.Step.RenewIf.With(p.Renew))
		}
	}
	var out []string
	for _, when := range times {
		names := of[when]
		if names[0] == "" {
			out = append(out, when)
			names = names[1:]
		}
		if len(names) > 0 {
			out = append(out, c.W.Step.RenewLine.With(strings.Join(names, ", "), when))
		}
	}
	return out
}

// renewedWhen words when the part of a move is renewed; empty where it is always or never, or
// comes new.
func renewedWhen(c *block.Composer, m *job.Move) string {
	switch r := m.Part.Renew; {
	case m.New, r == "", r == "always", r == "never":
		return ""
	case r == "added":
		return c.W.Step.RenewAdded
	case r == "as set" && m.Part.Set != nil && m.Part.Set.JudgedAt != nil:
		return judgedWords(c, m.Part.Set)
	case r == "as set":
		return c.W.Step.RenewAsSet
	default:
		return c.W.Step.RenewIf.With(r)
	}
}
