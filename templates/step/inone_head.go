package step

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// noteParts are the parts of the small line of a step, and from where its place is seen
// and counted if its section does not tell.
func noteParts(c *block.Composer, st *job.Step) []string {
	var out []string
	if st.Place.CountedFrom != st.Section.Place.CountedFrom {
		out = append(out, c.W.Common.CountedFrom.With(st.Place.CountedFrom))
	}
	if st.Place.ViewedFrom != st.Section.Place.ViewedFrom {
		out = append(out, c.W.Common.SeenFrom.With(st.Place.ViewedFrom))
	}
	if text := note(c, st); text != "" {
		out = append(out, strings.Split(text, " · ")...)
	}
	return out
}

// head is what stands above the rows: cautions, the numbers, what is done.
func (t *together) head() []layout.Piece {
	out := notesAbove(t.Composer, notesOf(t.steps...))
	first := t.steps[0]
	runs := []layout.Run{layout.T(layout.StepNo, NumberOfAll(t.steps)), layout.T(layout.Body, "   ")}
	runs = append(runs, common(t.Composer, first)...)
	if t.sameText() {
		runs = append(runs, layout.T(layout.Body, Text(t.Composer, first)))
		runs = append(runs, second(t.Composer, first)...)
	} else {
		runs = append(runs, layout.T(layout.Strong, t.names(t.steps)))
	}
	if first.Missed != "" && alike(t.steps, func(st *job.Step) string { return st.Missed }) {
		runs = append(runs, layout.T(layout.Body, "  "), missed(t.Composer, first))
	}
	if len(t.common) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+strings.Join(t.eachTold(), " · ")))
	}
	opts := layout.ParaOpts{Ref: first.At}
	if !t.reason {
		return append(out, wordsOf(first, layout.Piece{Block: t.Para(t.Span, runs, opts).Heading(3).Pad(0, 0, 0.5, 0), Gap: headGap}))
	}
	box := t.WideBox(layout.RoleWords, extraWidth(t.Composer, extra{caption: t.W.Step.NotTaken}), 1, t.W.Step.NotTaken, first.At)
	opts.NotchW, opts.NotchH = box.W+textGap, box.H
	para := t.Para(t.Span, runs, opts).Heading(3)
	row := layout.Overlay(para, box.At(t.Span-box.W, 0))
	row.W, row.H, row.Base = t.Span, max(para.H, box.H), para.Base
	return append(out, wordsOf(first, layout.Piece{Block: row.Pad(0, 0, 0.5, 0), Gap: headGap}))
}

// wordsOf is a piece with the words of like steps: who looks for the first one finds it here,
// and not in the row of its place, which a later page may begin with.
func wordsOf(first *job.Step, p layout.Piece) layout.Piece {
	p.Block = p.Block.Anchored("step " + first.No)
	return p
}

// eachTold is what is true at all places; that the hours planned are for each of them is said.
func (t *together) eachTold() []string {
	out := slices.Clone(t.common)
	hours := t.steps[0].Hours
	if hours == nil || len(t.steps) < 2 {
		return out
	}
	if i := slices.Index(out, t.W.Step.HoursPlanned.With(hours.Print())); i >= 0 {
		out[i] = t.W.Step.HoursEach.With(hours.Print())
	}
	return out
}

// reasonHasRoom reports whether the head has room for the box for readings not taken: of few
// readings.
func (t *together) reasonHasRoom() bool {
	n := 0
	for _, v := range t.steps[0].VerbOrder() {
		kind, dims := t.readings(v)
		n += taken(dimension.Written(dims, kind))
	}
	return n <= fewReadings
}

// asksReason reports whether readings have no room for it beside them.
func (t *together) asksReason() bool {
	return slices.ContainsFunc(t.steps[0].VerbOrder(), func(v job.Verb) bool {
		kind, dims := t.readings(v)
		return dimension.AsksReason(t.Composer, dims, kind, t.steps[0].At)
	})
}

// missed is what is easily missed at a step.
func missed(c *block.Composer, st *job.Step) layout.Run {
	return layout.Run{Text: c.W.Step.EasilyMissed.With(block.Together(st.Missed)), Style: layout.Strong, Deco: layout.Inverse}
}

func (t *together) sameText() bool {
	return alike(t.steps, func(st *job.Step) string { return Text(t.Composer, st) })
}

// names are the places of steps, in one line.
func (t *together) names(steps []*job.Step) string {
	var out []string
	for _, st := range steps {
		out = append(out, placeOf(st))
	}
	return strings.Join(out, " · ")
}

// placeOf names the place of a step as its row does.
func placeOf(st *job.Step) string {
	return cmp.Or(ownPlace(st), st.Place.Label)
}
