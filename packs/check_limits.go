package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// checkLimits sees that the lines of one dimension go together: the limit for old
// parts lies outside that for new ones, a size is not left "as found" without
// saying how near, and mean, spread and sum have more than one box.
func (b *builder) checkLimits(d *job.Dim, dd *def.Dimension) {
	left, reuse, repair := textAt(d.Place, dd.Left), textAt(d.Place, dd.Reuse), textAt(d.Place, dd.Repair)
	tell := func(t source.Text, f *reading.Fault) {
		if f != nil {
			b.fault(t, f)
		}
	}
	if d.Left != nil && left.Written() {
		tell(left, reading.CheckSame(d.Left, d.Found))
	}
	// Where left: differs along the boxes, one limit for old parts stands beside
	// several and is compared with none of them.
	if d.Left != nil && d.Reuse != nil && len(d.LeftBy) == 0 {
		tell(reuse, reading.CheckReuse(d.Left, d.Reuse))
	}
	for _, closer := range []*reading.Limit{d.Left, d.Reuse} {
		if closer != nil && d.Repair != nil && len(d.LeftBy) == 0 {
			tell(repair, reading.CheckReuse(closer, d.Repair))
		}
	}
	for _, x := range linesOf(d, dd) {
		tell(x.text, reading.CheckBoxes(x.limit, d.Positions.Boxes()))
	}
}

// fault reports what is wrong with a text, which is a *reading.Fault, at its place
// within it, with the help that it brings along, or else this one.
func (b *builder) fault(t source.Text, err error, help ...string) {
	f := err.(*reading.Fault)
	if len(f.Help) > 0 {
		help = f.Help
	}
	b.problems.Add(t.Part(f.Offset, max(f.Width, 1)), f.Code, f.Message, help...)
}
