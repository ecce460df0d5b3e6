package step

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// A noteOf is a hazard note before a step.
type noteOf struct {
	step *job.Step
	note *job.Caution
}

// notesOf are the hazard notes of a step, or of like steps, each once.
func notesOf(steps ...*job.Step) []noteOf {
	var out []noteOf
	told := map[string]bool{}
	for _, st := range steps {
		for _, n := range st.Cautions {
			if !told[n.Key] {
				told[n.Key] = true
				out = append(out, noteOf{st, n})
			}
		}
	}
	return out
}

// notesAbove are the notes before a step, in one frame: shorter where they have stood in
// the section before.
func notesAbove(c *block.Composer, notes []noteOf) []layout.Piece {
	var out []layout.Piece
	for i, x := range notes {
		p := layout.Piece{KeepNext: true}
		if i == 0 {
			p.Gap = cautionGap
		}
		if stoodBefore(notes[0].step, x.note) {
			p.Block = c.CautionAgain(x.note)
		} else {
			p.Block = c.Caution(x.note)
		}
		p.Block = p.Block.Tagged(x.step.At)
		out = append(out, p)
	}
	return out
}

// NotesAgain are the hazard notes of a step, or of like steps, as they stand again on a page
// that it goes on to, and how many pieces they are above the head; nil where there are none.
func NotesAgain(c *block.Composer, steps ...*job.Step) (notes *layout.Block, above int) {
	var again []*job.Caution
	for _, x := range notesOf(steps...) {
		again = append(again, x.note)
	}
	if len(again) == 0 {
		return nil, 0
	}
	set := c.Once(againKey{steps[0], len(steps), c.Span}, func() []layout.Piece {
		return []layout.Piece{{Block: c.CautionsInRow(again).Tagged(steps[0].At).Pad(0, 0, 1.2, 0)}}
	})
	return &set[0].Block, len(again)
}

// An againKey tells the notes of a step, or of so many like ones, as they stand again.
type againKey struct {
	first *job.Step
	n     int
	span  layout.Mm
}
