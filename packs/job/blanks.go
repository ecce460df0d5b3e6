package job

import "matchmark/packs/reading"

// Blanks lists the boxes that are filled by hand for the dimensions, in the order of
// work: those of a dimension as found at the step that measures it, those as left at
// the one that sets it. It is the one list for paper and for files: a sheet draws a
// box of it under its Key.
func (j *Job) Blanks() []Blank {
	var out []Blank
	extra := map[*Dim]bool{} // a block with both times has its extra boxes once
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			for _, d := range st.Measure {
				out = append(out, d.blanks(AsFound, st, extra)...)
			}
			for _, d := range st.Set {
				out = append(out, d.blanks(AsLeft, st, extra)...)
			}
		}
	}
	return out
}

// blanks are the boxes of one dimension, or of a merged one, at one time.
func (d *Dim) blanks(when When, st *Step, extra map[*Dim]bool) []Blank {
	var out []Blank
	add := func(x *Dim, kind BlankKind, n int, box reading.Box) {
		out = append(out, Blank{Dim: x, When: when, Kind: kind, N: n, Box: box, Step: st})
	}
	singles := d.Merged
	if len(singles) == 0 {
		singles = []*Dim{d}
	}
	for _, x := range singles {
		for i := range x.Leaves() {
			add(x, LeafBlank, i, x.Box)
		}
		if x.OneIs != nil {
			add(x, NumberBlank, 0, reading.Box{Before: x.Number.Before, Signed: true})
		}
		for i := range x.Positions.Boxes() {
			add(x, x.ReadingKind(), i, x.Box)
		}
	}
	if st.Table {
		return out
	}
	first, _ := d.Single(0)
	for _, g := range d.Wholes(when) {
		add(first, GroupBlank, int(g), d.GroupBox(g))
	}
	if d.Sheet && extra[d] {
		return out
	}
	extra[d] = true
	if d.PartWarm() {
		add(first, PartBlank, 0, reading.Box{Before: 3, Signed: d.Warm != nil || !d.State.Hot, Unit: d.PartUnit()})
	}
	for i := range d.Spare {
		add(first, SpareBlank, i, d.Box)
	}
	return out
}
