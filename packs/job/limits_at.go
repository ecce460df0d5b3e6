package job

import "matchmark/packs/reading"

// A LimitAt is one limit with the positions that it holds at.
type LimitAt struct {
	Limit *reading.Limit
	Names []string
	Boxes int // how many readings it holds for
}

// ByLimit parts the positions of a dimension by their limits, by being one a name of
// Positions.Names: those that are alike together.
func (d *Dim) ByLimit(by []*reading.Limit) []LimitAt {
	names := d.Positions.Names()
	each := 1
	if len(names) > 0 {
		each = max(d.Positions.Boxes()/len(names), 1)
	}
	var out []LimitAt
next:
	for i, l := range by {
		for k := range out {
			if out[k].Limit.Text() == l.Text() && d.Zone(out[k].Limit) == d.Zone(l) {
				out[k].Names = append(out[k].Names, names[i])
				out[k].Boxes += each
				continue next
			}
		}
		out = append(out, LimitAt{l, []string{names[i]}, each})
	}
	return out
}

// FoundIsRecorded reports whether a dimension is only written down as found, though
// there is a limit for how it is left.
func (d *Dim) FoundIsRecorded() bool {
	return d.Left != nil && (d.Left.NeedsFound() || d.Found != nil && d.Found.Kind == reading.Record)
}
