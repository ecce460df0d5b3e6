package dimension

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/templates/block"
)

// lastChanceNote says which step takes readings of one block away for good.
func lastChanceNote(c *block.Composer, ds ...*job.Dim) string {
	switch d := ds[0]; {
	case d.LastChance == nil:
		return ""
	case d.LastChance == d.FoundAt:
		return c.W.Dimension.GoneAfterThisStep
	}
	return c.W.Dimension.GoneAfter.With(goneAt(ds...))
}

// goneTogether reports whether one note tells of both readings what takes them away.
func goneTogether(a, b *job.Dim) bool {
	return (a.LastChance == nil) == (b.LastChance == nil) && (a.LastChance == a.FoundAt) == (b.LastChance == b.FoundAt)
}

// goneAt are the numbers of the steps of which the first to be done takes a reading of one block
// away, three and more that follow each other from the first to the last.
func goneAt(ds ...*job.Dim) string {
	var all []*job.Step
	for _, d := range ds {
		for _, x := range append([]*job.Dim{d}, d.Merged...) {
			for _, st := range x.LastChances() {
				if !slices.Contains(all, st) {
					all = append(all, st)
				}
			}
		}
	}
	slices.SortFunc(all, func(a, b *job.Step) int { return a.Index - b.Index })
	var nos []string
	for i := 0; i < len(all); {
		n := i + 1
		for n < len(all) && all[n].Section == all[i].Section && all[n].Index == all[n-1].Index+1 {
			n++
		}
		if n-i > 2 {
			nos = append(nos, all[i].No+"–"+all[n-1].No)
		} else {
			for _, st := range all[i:n] {
				nos = append(nos, st.No)
			}
		}
		i = n
	}
	return strings.Join(nos, " / ")
}
