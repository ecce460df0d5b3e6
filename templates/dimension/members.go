package dimension

import (
	"cmp"
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// A member is one dimension of a step, or one at like places; or the line of one that has no
// boxes there.
type member struct {
	content
	line *layout.Block
}

// membersOf are the members of a step in their order.
func membersOf(c *block.Composer, s setOf) []member {
	var out []member
	ds, kind := s.ds, s.kind
	for i := 0; i < len(ds); {
		d := ds[i]
		k := content{Composer: c, back: kind != Found}
		if onlyLine(d, kind) {
			line := lineOf(c, d, kind)
			k.entries = []entry{{d, nil}}
			out = append(out, member{k, &line})
			i++
			continue
		}
		n := i
		for n < len(ds) && (n == i || alike(c, d, ds[n], kind)) {
			k.entries = append(k.entries, entry{ds[n], sidesOf(c, ds[n], kind)})
			n++
		}
		inOrder(c, k.entries)
		if kind == Found {
			k.note = lastChanceNote(c, k.dims()...)
		}
		out = append(out, member{k, nil})
		i = n
	}
	return out
}

// inOrder sorts like places as the definition has them, whichever is put back first: who copies
// a column of boxes finds the same order on both pages.
func inOrder(c *block.Composer, es []entry) {
	if len(es) < 2 {
		return
	}
	at := map[*job.Dim]int{}
	for _, e := range es {
		at[e.d] = slices.Index(c.Job.Dims, e.d)
	}
	slices.SortStableFunc(es, func(a, b entry) int { return cmp.Compare(at[a.d], at[b.d]) })
}

// lastWritten is the index of the last member that has boxes, -1 if none has.
func lastWritten(all []member) int {
	for i := len(all) - 1; i >= 0; i-- {
		if all[i].line == nil {
			return i
		}
	}
	return -1
}

// framesOf are the frames of each member; the last that is written has the box for the reason, if
// there is one.
func framesOf(all []member, kind Kind, why reason) [][]frameOf {
	var out [][]frameOf
	last := lastWritten(all)
	for i, m := range all {
		if m.line != nil {
			out = append(out, []frameOf{{whole: []layout.Block{*m.line}, height: m.line.H + 1}})
			continue
		}
		if i == last {
			m.reason = why
		}
		out = append(out, m.frames(kind))
	}
	return out
}
