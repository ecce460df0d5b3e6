package proofread

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// checkInputs sees that the lines of each dimension ask for no more than its
// instrument reads, and that the readings they are worked out from are there.
func (b *proofreader) checkInputs() {
	for _, dd := range b.Def.Dimensions {
		for _, d := range b.Dims[dd.Mark.Value] {
			for _, l := range linesOf(d, dd) {
				b.checkMarks(d, l.limit.Marks(), l.limit.Unit(), l.text)
				b.checkDecimals(d, l.limit, l.text)
			}
			if d.Formula != nil {
				b.checkMarks(d, d.Formula.Marks(), units.None, names.TextAt(d.Place, dd.Formula))
			}
			b.checkLoose(d, dd)
		}
		b.checkFoundOut(dd)
	}
}

// checkMarks sees that the readings a line needs exist, and are of the same sort
// of unit as the line, if that has one.
func (b *proofreader) checkMarks(d *job.Dim, marks []reading.Mark, u units.Unit, t source.Text) {
	for _, m := range marks {
		at := t.PlaceOf(string(m))
		key, label, named := names.Cut(string(m))
		all, ok := b.Dims[key]
		if !ok {
			b.Problems.Add(at, "no-reading", string(m)+" is not a reading", "the readings are "+strings.Join(names.Keys(b.Dims), ", "))
			continue
		}
		for _, e := range names.Pick(b.Index, source.Text{Value: string(m), At: at}, "dimension", all, func(e *job.Dim) job.Place { return e.Place }, d.Place, label, named) {
			if d == e {
				b.Problems.Add(at, "of-itself", d.Mark+" is worked out from itself", "as found, if the value found is meant")
			}
			if u != units.None && e.Box.Unit != units.None && !alike(u, e.Box.Unit) {
				b.Problems.AddWith(at, "other-unit", d.Mark+" is in "+u.Text()+" and "+e.Mark+" in "+e.Box.Unit.Text()+"; they do not add up", e.At, e.Mark, "write both in units of the same sort")
			}
		}
	}
}

// alike reports whether two units measure the same sort of thing. A percentage or
// a rate of a reading may have any unit.
func alike(a, b units.Unit) bool { return a.Dimension() == b.Dimension() }

// checkDecimals sees that a line does not ask for more than the instrument reads.
func (b *proofreader) checkDecimals(d *job.Dim, l *reading.Limit, t source.Text) {
	if l.Kind != reading.Record || l.Step == nil || d.By == nil || d.By.Reads == nil {
		return
	}
	if c, err := l.Step.Cmp(*d.By.Reads); err == nil && c < 0 {
		b.Problems.Add(t.At, "too-fine", d.Mark+" is recorded to "+l.Step.Text()+", but "+d.By.Name+" reads to "+d.By.Reads.Text(),
			"record to "+d.By.Reads.Text(), "or name a finer instrument")
	}
}

// checkLoose sees that nothing is said about a limit that is not there.
func (b *proofreader) checkLoose(d *job.Dim, dd *def.Dimension) {
	if d.Left != nil || names.TextAt(d.Place, dd.Left).Written() {
		return
	}
	if d.Found == nil && names.TextAt(d.Place, dd.Found).Written() {
		return // its limit could not be read, which is told already
	}
	for _, v := range []struct {
		key  string
		v    def.Varying
		what string
	}{
		{"reuse", dd.Reuse, "how far an old part may go back"}, {"repair", dd.Repair, "how far it may be mended"}, {"over", dd.Over, "what to do above the limit"},
		{"under", dd.Under, "what to do below the limit"}, {"out", dd.Out, "what to do when it is not in"},
		{"found-out", dd.FoundOut, "what to do when it is not in as found"},
	} {
		// What is watched while the work goes on has a limit in found:.
		worn := v.key == "reuse" || v.key == "repair"
		if t := names.TextAt(d.Place, v.v); t.Written() && (worn || !d.WatchedOnly()) {
			help := []string{"left: … to … " + cmp.Or(d.Box.Unit.Text(), "mm") + ", or take " + v.key + ": out"}
			if a := d.Answers(); len(a) > 1 {
				help = []string{"take " + v.key + ": out, and write a step with if: " + d.Base + " is " + a[len(a)-1]}
			}
			b.Problems.Add(t.At, "no-left", d.Mark+" says "+v.what+", but has no limit for closing", help...)
		}
	}
}

// checkFoundOut sees that what is done as found is not said of a dimension that is not taken as
// found: it would be printed nowhere.
func (b *proofreader) checkFoundOut(dd *def.Dimension) {
	told := map[source.Pos]bool{} // once for all places
	for _, d := range b.Dims[dd.Mark.Value] {
		t := names.TextAt(d.Place, dd.FoundOut)
		if !d.OneSided || d.Left == nil || !t.Written() || told[t.At] {
			continue
		}
		told[t.At] = true
		b.Problems.Add(t.At, "found-out-alone", d.Mark+" says what to do when it is out as found, and its found: is not taken: it is printed nowhere",
			"take found-out: out; over:, under: and out: say what is done when it is set", "or measure it as found, and take found: not taken out")
	}
}

// A written limit is one with the line it was read from.
type written struct {
	limit *reading.Limit
	text  source.Text
}

// linesOf lists the limits of a dimension with the lines they were read from, one of
// each position where they differ by those.
func linesOf(d *job.Dim, dd *def.Dimension) []written {
	var out []written
	add := func(l *reading.Limit, by []*reading.Limit, v def.Varying) {
		if len(by) == 0 {
			out = append(out, written{l, names.TextAt(d.Place, v)})
			return
		}
		for i, n := range d.Positions.Names() {
			out = append(out, written{by[i], names.Named(v, n)})
		}
	}
	add(d.Found, d.FoundBy, dd.Found)
	add(d.Left, d.LeftBy, dd.Left)
	add(d.Worn, nil, dd.Reuse)
	add(d.Mended, nil, dd.Repair)
	return slices.DeleteFunc(out, func(w written) bool { return w.limit == nil })
}
