package proofread

import (
	"slices"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// checkFaces sees that a dimension is described so that two people would measure
// the same: between two faces, from a named side, with a sign only where one can
// be read, and by an adjuster whose travel is known.
func (b *proofreader) checkFaces() {
	for _, dd := range b.Def.Dimensions {
		if dd.From.Part.Written() != dd.To.Part.Written() {
			has, lacks := "from", "to"
			if dd.To.Part.Written() {
				has, lacks = lacks, has
			}
			b.Problems.Add(dd.Mark.At, "one-face", dd.Mark.Value+" says "+has+": and not "+lacks+":; a distance lies between two faces", "for example "+lacks+": {shaft: end face}", "or of: when it is a size of one part alone")
		}
		for _, d := range b.Dims[dd.Mark.Value] {
			b.checkSeen(d, dd)
			b.checkAdjuster(d, dd)
			b.checkFlats(d)
			b.checkPieces(d, dd)
		}
	}
}

// checkSeen looks at where one stands and what can have a sign.
func (b *proofreader) checkSeen(d *job.Dim, dd *def.Dimension) {
	if d.Positions.Kind == job.Clock && d.ViewedFrom == "" {
		pr := source.Problem{
			Pos: dd.At.At, Severity: source.Error, Code: "seen-from", Help: []string{"for example viewed-from: the motor"},
			Message: d.Mark + " is read round a clock face and does not say from where it is seen; left and right change over",
		}
		for _, g := range b.Def.Places {
			for _, p := range g.Places {
				if slices.Contains(d.Place.Keys, p.Key.Value) {
					pr.See = append(pr.See, source.Also{Pos: p.Key.At, What: "or say it of the place"})
				}
			}
		}
		b.Problems = append(b.Problems, pr)
	}
	// A sense of rotation and the sign of a reading turn round with where one stands.
	turns := d.Box.Form != reading.Digits && d.Box.Form != reading.Fraction || d.Box.Signed || d.Kind == "angle"
	if d.Positions.Kind == job.Single && dd.ViewedFrom.Written() && !turns {
		b.Problems.Warn(dd.ViewedFrom.At, "no-positions", d.Mark+" says from where it is seen, but is read at one place only", "at: clock, or take viewed-from: out")
	}
	if d.Kind != "runout" || d.Positions.Boxes() > 1 || d.Left == nil {
		return
	}
	for i := range d.Left.Tests {
		if low, _, ok := d.Left.Tests[i].Limits(); ok && low != nil && low.Number.Sign() < 0 {
			b.Problems.Add(d.LimitPos(), "total-runout", d.Mark+" may be negative, but a run-out read at one place is the whole swing of the dial and never is", "at: clock for readings with their sign", "or left: at most … mm")
		}
	}
}

func (b *proofreader) checkAdjuster(d *job.Dim, dd *def.Dimension) {
	if d.Adjuster == nil || d.Adjuster.Thread != nil {
		return
	}
	for _, dp := range b.Def.Parts {
		if dp.Key.Value == d.Adjuster.Key && !dp.Moves.Written() {
			b.Problems.AddWith(dd.Adjust.At, "no-travel", d.Adjuster.Called()+" sets "+d.Mark+", but how far it moves is not said", d.Adjuster.At, "the adjuster", "for example thread: at the part, or moves: 1 turn gives … mm")
		}
	}
}

// checkPieces sees that a size of a part of which there are several is read on
// each of them.
func (b *proofreader) checkPieces(d *job.Dim, dd *def.Dimension) {
	p := d.Of.Part
	if d.Kind == "count" && d.Positions.Boxes() == 1 {
		return // how many there are is one number
	}
	if p == nil || p.Count < 2 || d.Positions.Boxes()%p.Count == 0 || d.Box.Form != reading.Digits && d.Box.Form != reading.Fraction {
		return
	}
	at := dd.Mark.At
	if dd.At.At.Line > 0 {
		at = dd.At.At
	}
	boxes := strconv.Itoa(d.Positions.Boxes()) + " boxes"
	if d.Positions.Boxes() == 1 {
		boxes = "1 box"
	}
	b.Problems = append(b.Problems, source.Problem{
		Pos: at, Severity: source.Warning, Code: "boxes-and-pieces",
		Message: d.Mark + " has " + boxes + " for " + strconv.Itoa(p.Count) + " pieces of " + p.Called(),
		Help:    []string{"at: {piece: 1 to " + strconv.Itoa(p.Count) + "}"},
		See:     []source.Also{{Pos: p.At, What: "the part"}},
	})
}
