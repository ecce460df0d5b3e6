package proofread

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
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
			b.checkTwoFaces(d, dd)
			b.checkPieces(d, dd)
		}
	}
}

// checkLeast sees that a run-out has a largest size: at least turned round from at most lets
// the worst shaft pass.
func (b *proofreader) checkLeast(d *job.Dim) {
	if d.Kind != "runout" || d.Left == nil {
		return
	}
	for i := range d.Left.Tests {
		if low, high, ok := d.Left.Tests[i].Limits(); ok && low != nil && high == nil && low.Number.Sign() > 0 {
			b.Problems.Add(d.LimitPos(), "limit-order", d.Mark+" is a run-out that must be at least "+units.Pointed(low.Print())+": a shaft that runs worse would pass, and one that runs true would not", "left: at most "+units.Pointed(low.Print()))
			return
		}
	}
}

// between are the kinds that lie between two parts: one of them alone has no backlash.
var between = map[string]bool{"backlash": true, "clearance": true, "clearance-below": true, "gap": true}

// checkTwoFaces sees that a distance lies between two faces, and what two parts have between
// them between two parts: a place that is written twice makes one of them of both. Of a
// part of which there are several, the same face of two pieces may be meant.
func (b *proofreader) checkTwoFaces(d *job.Dim, dd *def.Dimension) {
	if d.From.Part == nil || d.From.Part != d.To.Part || d.From.Part.Count != 1 {
		return
	}
	switch {
	case d.From.Name == d.To.Name:
		b.Problems.Add(dd.To.Part.At, "one-face", d.Mark+" lies between one face of "+d.From.Part.Called()+" and the same", "name the other face, or the other part")
	case between[d.Kind] && d.From.Part.Place.Label != "" && strings.Contains(dd.From.Part.Value, "/"):
		b.Problems.Warn(dd.To.Part.At, "one-face", d.Mark+" is a "+d.Kind+", and both its faces are of "+d.From.Part.Called(), "name the other part, or its other place")
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
	b.checkLeast(d)
	if d.Kind != "runout" || d.Positions.Boxes() > 1 || d.Left == nil {
		return
	}
	for i := range d.Left.Tests {
		if low, _, ok := d.Left.Tests[i].Limits(); ok && low != nil && low.Number.Sign() < 0 {
			b.Problems.Add(d.LimitPos(), "total-runout", d.Mark+" may be negative, but a run-out read at one place is the whole swing of the dial and never is", "at: clock for readings with their sign", "or left: at most … mm")
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
