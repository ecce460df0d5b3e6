package jointsheet

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/templates/block"
)

// stepWide is the most that a drawing in a step takes across: it stands there to be looked
// at from the machine, and in full on the sheet.
const stepWide layout.Mm = 120

// leastDrawn is from how many fasteners on the order is drawn in a step: the order of fewer
// is told in a word, and drawn on the sheet.
const leastDrawn = 6

// backward reports whether it matters in which order a joint is loosened: all but what
// goes in turn, and what has too few to have an order.
func backward(j *job.Joint) bool {
	return j.Order != nil && j.Layout != nil && j.Layout.Method != joint.InTurn && len(j.Order.Order) > 2
}

// lastNumber is the number of the fastener that is tightened last.
func lastNumber(j *job.Joint) string { return strconv.Itoa(len(j.Order.Order)) }

// Loosening is what a step that loosens a joint says of the order, empty where none
// matters.
func Loosening(c *block.Composer, j *job.Joint) string {
	if !backward(j) {
		return ""
	}
	page := c.Page("joint " + j.Mark)
	if isListed(c, j) {
		last, first := listEnds(j)
		return c.W.Tightening.LooseListed.With(last, first, page)
	}
	return c.W.Tightening.LooseOnSheet.With(lastNumber(j), page)
}

// LastTurn is the angle by which a joint is turned on after its torque, in words; empty
// where the torque is the last of it.
func LastTurn(c *block.Composer, j *job.Joint) string {
	if len(j.Rounds) == 0 || j.Torque == "" {
		return ""
	}
	if last := j.Rounds[len(j.Rounds)-1]; last.Kind == joint.Turn {
		return StageWords(c, last)
	}
	return ""
}

// TicksAt is the page of the ticks of a joint, and of its order where that is told on its
// sheet, in a few words.
func TicksAt(c *block.Composer, j *job.Joint) string {
	ticks, order := ticksAnchor(j), "joint "+j.Mark
	switch {
	case j.Order == nil || len(j.Order.Order) < 2:
		return c.W.Tightening.TicksAt.With(c.Page(ticks))
	case c.SamePage(ticks, order):
		return c.W.Tightening.OnSheet.With(c.Page(ticks))
	}
	return c.W.Tightening.OnTwo.With(c.Page(order), c.Page(ticks))
}

// SamePages reports whether all that a step points to of one joint at two places stands on the
// same pages.
func SamePages(c *block.Composer, a, b *job.Joint) bool {
	return c.SamePage(ticksAnchor(a), ticksAnchor(b)) && c.SamePage(heldAnchor(a), heldAnchor(b)) && c.SamePage("joint "+a.Mark, "joint "+b.Mark)
}

// ticksAnchor is the name by which the page of the ticks of a joint is found.
func ticksAnchor(j *job.Joint) string { return "ticks " + j.Mark }

// Orders are the drawings of the joints that a step tightens, those of one mark once,
// as rows of a width. One in which the order does not matter has none. Beside one drawing
// that leaves room stand the lines of the step, if there are any; all says whether they do.
// Boxes to tick that may stand apart from those lines stand below both where that is lower.
func Orders(c *block.Composer, st *job.Step, width layout.Mm, lines func(layout.Mm) []layout.Block, apart *Apart) (rows []layout.Block, all bool) {
	const gap, aside, least layout.Mm = 6, 38, 75
	joints, pics, scales := drawings(c, st, width)
	if len(pics) == 1 && lines != nil && width-pics[0].W-gap >= least {
		side := width - pics[0].W - gap
		with := func(pic layout.Block, scale string, lines []layout.Block) layout.Block {
			text := layout.Above(1.5, aboutOrder(c, joints[0], side, false, scale), layout.Above(1, lines...))
			return layout.Middle(gap, pic, text)
		}
		low := func(lines []layout.Block) layout.Block {
			return scaleWhere(c, pics[0], scales[0], func(pic layout.Block, scale string) layout.Block { return with(pic, scale, lines) })
		}
		one := low(lines(side))
		if apart != nil {
			if two := layout.Above(1, low(apart.Words(side)), apart.Ticks(width)); two.H < one.H-tickSaves {
				one = two
			}
		}
		return []layout.Block{one}, true
	}
	var row []layout.Block
	used := layout.Mm(0)
	if len(pics) > 1 { // how they are read is said once for all
		rows = append(rows, c.Para(width, []layout.Run{layout.T(layout.SubBold, c.W.Tightening.OrderNumber)}, layout.ParaOpts{Ref: st.At}))
	}
	for i, pic := range pics {
		side := aside
		if len(pics) == 1 {
			side = width - pic.W - 4
		}
		one := scaleWhere(c, pic, scales[i], func(pic layout.Block, scale string) layout.Block {
			return layout.Middle(4, pic, aboutOrder(c, joints[i], side, len(pics) > 1, scale))
		})
		if len(row) > 0 && used+one.W > width {
			rows = append(rows, layout.Beside(gap, row...))
			row, used = nil, 0
		}
		row, used = append(row, one), used+one.W+gap
	}
	if len(row) > 0 {
		rows = append(rows, layout.Beside(gap, row...))
	}
	if len(pics) > 1 { // it stands with the first of them, not at the foot of the page before
		rows[1] = layout.Above(1, rows[0], rows[1])
		rows = rows[1:]
	}
	return rows, false
}

// scaleWhere sets a drawing with its scale below it, or told by the words beside it where that
// is lower.
func scaleWhere(c *block.Composer, pic layout.Block, scale string, set func(pic layout.Block, scale string) layout.Block) layout.Block {
	below := set(layout.Above(0.5, pic, c.Words(layout.Caption, scale)), "")
	if beside := set(pic, scale); beside.H < below.H-0.5 {
		return beside
	}
	return below
}

// Apart are the lines of a step that tightens one joint in stages: its words, and the boxes to
// tick, in a width each.
type Apart struct {
	Words func(width layout.Mm) []layout.Block
	Ticks func(width layout.Mm) layout.Block
}

// tickSaves is how much height boxes must save to stand apart from the words they belong to.
const tickSaves layout.Mm = 2

// drawings are the joints whose order is drawn in a step, with their drawings and their scales.
func drawings(c *block.Composer, st *job.Step, width layout.Mm) (joints []*job.Joint, pics []layout.Block, scales []string) {
	drawn := map[string]bool{}
	for _, f := range st.Tighten {
		if f.Joint == nil || drawn[f.Joint.Base] || !backward(f.Joint) || len(f.Joint.Order.Order) < leastDrawn {
			continue
		}
		drawn[f.Joint.Base] = true
		for _, most := range []layout.Mm{besideFacts(c), stepWide} {
			if pic, scale := order(c, f.Joint, min(width, most)); !pic.Empty() {
				joints, pics, scales = append(joints, f.Joint), append(pics, pic), append(scales, scale)
				break
			}
		}
	}
	return joints, pics, scales
}

// aboutOrder names the joint of a drawing and says how it is read, if that is not said already,
// and from where it is seen.
func aboutOrder(c *block.Composer, j *job.Joint, width layout.Mm, read bool, scale string) layout.Block {
	name := c.Para(width, []layout.Run{{Text: j.Base, Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Strong, "  "+j.What)}, layout.ParaOpts{Ref: j.At})
	list := captions(c, j, false, scale)
	if read {
		list = list[1:]
	}
	return layout.Above(0.8, name, said(c, j, list, width))
}

// Tightness says how tight a joint becomes, and the page where all of it stands; empty
// where that is not written, which check has told.
func Tightness(c *block.Composer, j *job.Joint) string {
	out := finalTorque(c, j)
	if j.Torque == "" && j.NoValue == "" {
		stages := slices.DeleteFunc(slices.Clone(j.Stages), func(s string) bool { return strings.HasPrefix(s, "again after ") })
		out = append([]string{block.Capital(c.W.Step.Stages + " " + strings.Join(stages, ", "))}, out...)
	}
	return strings.Join(append(out, c.W.Tightening.TicksAt.With(c.Page(ticksAnchor(j)))), " · ")
}

// Ticks are the boxes of the rounds of a joint in a step, in a row.
func Ticks(c *block.Composer, j *job.Joint, ref layout.Ref) []layout.Block {
	var out []layout.Block
	for _, r := range j.Rounds {
		out = append(out, c.Tick(layout.Strong, roundWords(c, j, r), ref))
	}
	return out
}

// Setting is the mark of a joint that is tightened, with how tight it becomes; empty for
// what is no joint.
func Setting(f job.Fastening) string {
	switch {
	case f.Joint == nil:
		return ""
	case f.Held == nil && f.Final != nil || TorqueOf(f) == "":
		return f.Joint.Mark
	}
	return f.Joint.Mark + " " + TorqueOf(f)
}

// TorqueOf is how tight a joint becomes at a step: as at last, or what its screws are held
// with while they are on for now.
func TorqueOf(f job.Fastening) string {
	if f.Held != nil {
		return inBoth(settingPrint(f.Held), f.Held)
	}
	return f.Joint.Torque
}
