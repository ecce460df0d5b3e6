package packs

import (
	"matchmark/packs/job"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// checkInputs sees that the lines of each dimension ask for no more than its
// instrument reads, and that the readings they are worked out from are there.
func (b *builder) checkInputs() {
	for _, dd := range b.def.Dimensions {
		for _, d := range b.dims[dd.Mark.Value] {
			for _, l := range linesOf(d, dd) {
				b.checkMarks(d, l.limit.Marks(), l.limit.Unit(), l.text)
				b.checkDecimals(d, l.limit, l.text)
			}
			if d.Formula != nil {
				b.checkMarks(d, d.Formula.Marks(), units.None, textAt(d.Place, dd.Formula))
			}
			b.checkLoose(d, dd)
		}
	}
}

// checkMarks sees that the readings a line needs exist, and are of the same sort
// of unit as the line, if that has one.
func (b *builder) checkMarks(d *job.Dim, marks []reading.Mark, u units.Unit, t source.Text) {
	for _, m := range marks {
		at := markPos(t, string(m))
		key, label, named := cut(string(m))
		all, ok := b.dims[key]
		if !ok {
			b.problems.Add(at, "no-reading", string(m)+" is not a reading", "the readings are "+strings.Join(mapKeys(b.dims), ", "))
			continue
		}
		for _, e := range pick(b, source.Text{Value: string(m), At: at}, "dimension", all, func(e *job.Dim) job.Place { return e.Place }, d.Place, label, named) {
			if d == e {
				b.problems.Add(at, "of-itself", d.Mark+" is worked out from itself", "as found, if the value found is meant")
			}
			if u != units.None && e.Box.Unit != units.None && !alike(u, e.Box.Unit) {
				b.problems.AddWith(at, "other-unit", d.Mark+" is in "+u.Text()+" and "+e.Mark+" in "+e.Box.Unit.Text()+"; they do not add up", e.At, e.Mark, "write both in units of the same sort")
			}
		}
	}
}

// alike reports whether two units measure the same sort of thing. A percentage or
// a rate of a reading may have any unit.
func alike(a, b units.Unit) bool { return a.Dimension() == b.Dimension() }

// markPos is where a mark stands within a line.
func markPos(t source.Text, mark string) source.Pos {
	i := strings.Index(t.Value, mark)
	if i < 0 {
		return t.At
	}
	return t.Part(len([]rune(t.Value[:i])), len([]rune(mark)))
}

// checkDecimals sees that a line does not ask for more than the instrument reads.
func (b *builder) checkDecimals(d *job.Dim, l *reading.Limit, t source.Text) {
	if l.Kind != reading.Record || l.Step == nil || d.By == nil || d.By.Reads == nil {
		return
	}
	if c, err := l.Step.Cmp(*d.By.Reads); err == nil && c < 0 {
		b.problems.Add(t.At, "too-fine", d.Mark+" is recorded to "+l.Step.Text()+", but "+d.By.Name+" reads to "+d.By.Reads.Text(),
			"record to "+d.By.Reads.Text(), "or name a finer instrument")
	}
}

// checkLoose sees that nothing is said about a limit that is not there.
func (b *builder) checkLoose(d *job.Dim, dd *def.Dimension) {
	if d.Left != nil || textAt(d.Place, dd.Left).Written() {
		return
	}
	if d.Found == nil && textAt(d.Place, dd.Found).Written() {
		return // its limit could not be read, which is told already
	}
	for _, v := range []struct {
		key  string
		v    def.Varying
		what string
	}{
		{"reuse", dd.Reuse, "how far an old part may go back"}, {"repair", dd.Repair, "how far it may be mended"}, {"over", dd.Over, "what to do above the limit"},
		{"under", dd.Under, "what to do below the limit"}, {"out", dd.Out, "what to do when it is not in"},
	} {
		// What is watched while the work goes on has a limit in found:.
		worn := v.key == "reuse" || v.key == "repair"
		if t := textAt(d.Place, v.v); t.Written() && (worn || !d.WatchedOnly()) {
			b.problems.Add(t.At, "no-left", d.Mark+" says "+v.what+", but has no limit for closing", "left: 0.05 to 0.12 mm, or take "+v.key+": out")
		}
	}
}
