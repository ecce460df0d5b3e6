package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/jointsheet"
)

// sameJoints reports whether like steps tighten the same joints, each at its place, in the
// same way: then how they are tightened is told once above the rows.
func (t *together) sameJoints() bool {
	first := t.steps[0].Tighten
	blind := *t
	blind.Composer = t.Blind()
	for _, st := range t.steps {
		if len(st.Tighten) != len(first) {
			return false
		}
		for i, f := range st.Tighten {
			if f.Joint == nil || f.Final != nil || first[i].Joint == nil || !slices.Equal(blind.tightness(f), blind.tightness(first[i])) ||
				!t.SamePage("joint "+f.Joint.Mark, "joint "+first[i].Joint.Mark) {
				return false
			}
		}
	}
	return len(first) > 0
}

// tightness is what is said of how a joint is tightened, in the name of all its places.
func (t *together) tightness(f job.Fastening) []layout.Run {
	runs := fastenRuns(t.Composer, t.W.Step.Tighten, f, true)
	for i := range runs {
		if runs[i].Text == f.Joint.Mark {
			runs[i].Text = f.Joint.Base // its page is looked up by the mark of one place
		}
	}
	return runs
}

// jointOrders are the drawings of the joints that the steps tighten, and whether how they are
// tightened is told with them, once for all places.
func (t *together) jointOrders() (out []layout.Block, told bool) {
	var how func(layout.Mm) []layout.Block
	if told = t.sameJoints(); told {
		how = t.howTight
	}
	width := t.Span - block.NumberWidth
	out, all := jointsheet.Orders(t.Composer, t.steps[0], width, how, nil)
	if told && !all {
		out = append(out, how(width)...)
	}
	return out, told
}

// howTight are the lines above the rows: each joint with its torque, stages and source.
func (t *together) howTight(width layout.Mm) []layout.Block {
	var out []layout.Block
	said := map[string]bool{}
	for _, f := range t.steps[0].Tighten {
		if said[f.Joint.Base] {
			continue
		}
		said[f.Joint.Base] = true
		out = append(out, t.Para(width, t.tightness(f), layout.ParaOpts{Ref: f.At}))
		out = append(out, dimension.SourcesDiffer(t.Composer, &job.Dim{At: f.At, Says: f.Joint.Says}, width)...)
	}
	return out
}

// ticksOf are the joints of one place with their boxes to tick, in one row where they fit.
func (t *together) ticksOf(st *job.Step) run {
	return run{lines: func(width layout.Mm) []layout.Block {
		var row []layout.Block
		for _, f := range st.Tighten {
			if len(f.Joint.Rounds) < 2 {
				row = append(row, turned(placeTick(t.Composer, f, t.W.Step.IsTight), st, f))
				continue
			}
			one := []layout.Block{t.Line(0, []layout.Run{{Text: f.Joint.Mark, Style: layout.Strong, Deco: layout.Boxed}}, layout.ParaOpts{Ref: f.At})}
			one = append(one, jointsheet.Ticks(t.Composer, f.Joint, f.At)...)
			row = append(row, turned(layout.Middle(layout.GapX, one...), st, f))
		}
		return []layout.Block{block.FlowMiddle(row, width)}
	}}
}
