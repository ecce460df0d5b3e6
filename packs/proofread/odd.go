package proofread

import (
	"fmt"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A definition need not say everything of everything. But what it says of nearly
// all things of a kind and not of one was most likely forgotten there: this check
// names the odd one out.

// nearlyAll reports whether n of some things are nearly all of them: all but one of
// three or more, or else three of four. Common practice of proof-readers, no
// source.
func nearlyAll(n, of int) bool {
	return n >= 2 && n == of-1 || 4*n >= 3*of && n < of
}

// most drops lists too short to tell what the author's habit is.
func most(list []saying) []saying {
	if len(list) < 4 {
		return nil
	}
	return list
}

// A saying is whether one thing says something.
type saying struct {
	at   source.Pos
	name string // as messages speak of it
	says bool
}

// odd warns of the few in a list that do not say what nearly all others say.
// what is the thing wanted, as "how it is kept"; write is the key that says it. The words
// behind it are the author's: an example of some other thing would be copied.
func (b *proofreader) odd(list []saying, what, write string) {
	b.oddWords(list, " does not say "+what+"; %d of %d like it do", "write: "+write)
}

// oddWords is odd in words of its own, with the number that say it and of how many.
func (b *proofreader) oddWords(list []saying, words string, help ...string) {
	n := 0
	for _, s := range list {
		if s.says {
			n++
		}
	}
	if !nearlyAll(n, len(list)) {
		return
	}
	for _, s := range list {
		if !s.says {
			b.Problems.Warn(s.at, "odd-one-out", s.name+fmt.Sprintf(words, n, len(list)), help...)
		}
	}
}

// checkOdd looks for the odd one out among the things of each kind.
func (b *proofreader) checkOdd() {
	b.oddDims()
	b.oddKept()
	b.oddParts()
	b.oddSteps()
	b.oddOthers()
}

// ask lists what each of some things says; those that only is false for are left
// out.
func ask[T any](all []T, only func(T) bool, at func(T) (source.Pos, string), says func(T) bool) []saying {
	var out []saying
	for _, x := range all {
		if only == nil || only(x) {
			pos, name := at(x)
			out = append(out, saying{pos, name, says(x)})
		}
	}
	return out
}

// fromOthers finds another reading named in the words of how one is taken.
var fromOthers = phrase.Of(`\bD[0-9]+\b`)

func (b *proofreader) oddDims() {
	at := func(d *def.Dimension) (source.Pos, string) { return d.Mark.At, d.Mark.Value }
	any := func(d *def.Dimension, is func(*job.Dim) bool) bool {
		for _, x := range b.Dims[d.Mark.Value] {
			if is(x) {
				return true
			}
		}
		return false
	}
	all := func(d *def.Dimension, is func(*job.Dim) bool) bool {
		return !any(d, func(x *job.Dim) bool { return !is(x) })
	}
	// Pieces are counted, shares are judged and what comes from other readings is
	// worked out without an instrument.
	numbers := func(d *def.Dimension) bool {
		return !d.Formula.Written() && !d.StampedOn.Part.Written() && !fromOthers.MatchString(d.With.One.Value) && any(d, func(x *job.Dim) bool {
			return (x.Box.Form == reading.Digits || x.Box.Form == reading.Fraction) && x.Box.Unit != units.Percent && x.Box.Unit != units.Pieces
		})
	}
	judged := func(d *def.Dimension) bool { return any(d, (*job.Dim).Judged) }
	between := func(d *def.Dimension) bool {
		return any(d, func(x *job.Dim) bool {
			return x.FoundAt != nil && x.From.Part != nil && x.To.Part != nil && x.From.Part != x.To.Part
		})
	}
	list := b.Def.Dimensions
	read := func(d *def.Dimension) bool { return !d.Formula.Written() && !d.StampedOn.Part.Written() }
	// No kind is meant for a pressure, a speed or a time: none has two faces to draw.
	drawn := func(d *def.Dimension) bool {
		return read(d) && any(d, func(x *job.Dim) bool { return hasKind(x.Box.Unit.Dimension()) })
	}
	b.odd(ask(list, drawn, at, func(d *def.Dimension) bool { return d.Kind.Written() }), "what kind it is; there is no picture without it", "kind: …, as gap, bore or runout")
	b.odd(ask(list, nil, at, func(d *def.Dimension) bool {
		return d.With.Written() || d.Pushed.Written() || d.Load.Written() || d.Plane.Written() || d.State.Written() || d.Formula.Written()
	}), "in which state it is measured", "with: …, the state in words, or pushed:, load:, plane:, state:")
	b.odd(ask(list, numbers, at, func(d *def.Dimension) bool { return d.By.Written() }), "what it is measured with", "by: "+orNothing(b.Def.Instruments))
	b.odd(ask(list, read, at, func(d *def.Dimension) bool {
		return d.From.Part.Written() && d.To.Part.Written() || d.Of.Part.Written() || d.Shims.Written()
	}),
		"between which faces it lies", "from: {…: …}, to: {…: …}, each a part and its face, or of: {…: …}")
	b.odd(ask(list, judged, at, func(d *def.Dimension) bool { return all(d, func(x *job.Dim) bool { return !x.NotSourced() }) }), "where its limit comes from", "source: …, the document and its page")
	decides := func(d *def.Dimension) bool {
		return !b.aligns(d.Mark.Value) && any(d, func(x *job.Dim) bool { return x.Judged() || x.JudgedFound() })
	}
	b.odd(ask(list, decides, at, func(d *def.Dimension) bool { return d.Over.Written() || d.Under.Written() || d.Out.Written() }),
		"what to do when it is not in", "out: …, or over: and under:")
	b.odd(ask(list, between, at, func(d *def.Dimension) bool {
		return len(d.LostBy) > 0 || all(d, func(x *job.Dim) bool { return x.LastChance != nil || x.FoundAt == nil })
	}), "which step ends it: none takes either of its parts off", "lost-by: […], the step or part that ends it, or lost-by: nothing")
}

// aligns reports whether a reading is one of the dials of an alignment, whose sheet says how
// far the feet are moved where it is out.
func (b *proofreader) aligns(mark string) bool {
	return slices.ContainsFunc(b.Def.Alignments, func(a *def.Alignment) bool {
		for _, d := range []source.Text{a.Read.Rim, a.Read.Face, a.Read.Stationary, a.Read.Movable} {
			if d.Value == mark {
				return true
			}
		}
		return false
	})
}

// oddKept asks of containers, big parts and spots how they are kept.
func (b *proofreader) oddKept() {
	b.odd(ask(b.Def.Containers, nil, func(c *def.Container) (source.Pos, string) { return c.Mark.At, c.Mark.Value },
		func(c *def.Container) bool { return c.Keep.Written() }), "how it is kept", "keep: …")
	at := func(p *def.BigPart) (source.Pos, string) { return p.Mark.At, p.Mark.Value }
	b.odd(ask(b.Def.BigParts, nil, at, func(p *def.BigPart) bool { return p.Keep.Written() }), "how it is kept", "keep: …")
	b.odd(ask(b.Def.BigParts, nil, at, func(p *def.BigPart) bool { return p.Support.Written() }), "what it lies on", "support: …")
	b.oddWords(most(ask(b.Def.Parts, b.comesOff, func(p *def.Part) (source.Pos, string) { return p.Key.At, source.Quote(p.Key.Value) }, b.tagged)),
		" is laid on the bench and has no tag there; %d of %d parts that come off have one",
		"write: into: one of containers:, which has a tag", "or, of a large part, into: a spot of lay-down:, with the part under big:, which has a tag of its own")
	spot := func(s *def.Spot) (source.Pos, string) { return s.Mark.At, s.Mark.Value }
	b.odd(ask(b.Def.LayDown, nil, spot, func(s *def.Spot) bool { return s.Floor.Written() }), "what the floor carries", "floor: by the plate of the floor, or its drawing")
}

// oddParts asks how many there are of the parts that are counted: those that go
// into bags, trays and pockets, fasteners, and what must be out again at the end.
func (b *proofreader) oddParts() {
	at := func(p *def.Part) (source.Pos, string) { return p.Key.At, source.Quote(p.Key.Value) }
	goes := func(p *def.Part, is func(job.Where) bool) bool {
		for _, x := range b.Parts[p.Key.Value] {
			for _, m := range x.Off {
				if is(m.To) {
					return true
				}
			}
		}
		return false
	}
	small := func(p *def.Part) bool {
		for _, x := range b.Parts[p.Key.Value] {
			if len(x.Joints) > 0 || x.Aid {
				return true
			}
		}
		return goes(p, func(w job.Where) bool {
			return w.Container != nil && (w.Pocket != "" || w.Container.Kind == "bag" || w.Container.Kind == "tray")
		})
	}
	b.odd(ask(b.Def.Parts, small, at, func(p *def.Part) bool { return p.Count.Written() }), "how many there are, and it is counted on the job", "count: …")
	fastener := func(p *def.Part) bool {
		for _, x := range b.Parts[p.Key.Value] {
			if !x.Aid && !x.Abroad && x.Fastens() && !b.adjusts(x.Key) { // abroad it is known by its joint
				return true
			}
		}
		return false
	}
	b.odd(ask(b.Def.Parts, fastener, at, func(p *def.Part) bool {
		for _, x := range b.Parts[p.Key.Value] {
			if len(x.Joints) > 0 {
				return true
			}
		}
		return false
	}), "in which joint it is tightened", "its name under parts: of a joint")
}

// oddSteps asks the written steps of taking apart what they come after, and those
// that are put back by a generated row what that row says.
func (b *proofreader) oddSteps() {
	var order, words []saying
	for _, s := range b.Job.Sections {
		for _, st := range s.Steps {
			switch {
			case st.Undoes != nil && len(st.Fit)+len(st.Set)+len(st.Tighten)+len(st.Close) == 0:
				// A row to look up what was recorded needs no words.
			case st.Undoes != nil:
				words = append(words, saying{st.Undoes.At, source.Quote(st.Key), st.Do != ""})
			case !s.Back && st.Hold == nil: // a hold binds by itself
				order = append(order, saying{st.At, source.Quote(st.Key), !st.AfterAt.IsZero()})
			}
		}
	}
	b.odd(most(onePerPlace(order)), "what it comes after", "after: {…: the reason}, or after: {} if nothing has to come before it")
	b.odd(most(onePerPlace(words)), "how it is put back", "back: …")
}

// orNothing lists the instruments that could stand behind by:.
func orNothing(all []*def.Instrument) string {
	var names []string
	for _, in := range all {
		names = append(names, in.Key.Value)
	}
	if len(names) == 0 {
		return "…, one of instruments:"
	}
	return strings.Join(names, " or ")
}

// onePerPlace keeps one of the sayings that come from the same line, as those of a
// repeated step do.
func onePerPlace(list []saying) []saying {
	seen := map[source.Pos]bool{}
	var out []saying
	for _, s := range list {
		if !seen[s.at] {
			seen[s.at] = true
			out = append(out, s)
		}
	}
	return out
}

// hasKind says whether one of the kinds of a dimension is meant for readings in
// units of d; what has none is judged in words.
func hasKind(d units.Dimension) bool {
	switch d {
	case units.NoDimension, units.Length, units.Force, units.Temperature, units.Rise, units.Angle, units.Count:
		return true
	}
	return false
}
