package jointsheet

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/picture"
)

// Sheet sets the tightening sheet. Joints of one mark that are alike at all their
// places are told once, each place with its own ticks.
func Sheet(c *block.Composer) []layout.Piece {
	var out []layout.Piece
	gs := groups(c.Job)
	for i, g := range gs {
		// Where the page of one joint moves the others are kept.
		ps := slices.Clone(c.Once(groupKey{g[0]}, func() []layout.Piece { return pieces(c, g) }))
		for k := range ps {
			ps[k].Group = i + 1
		}
		out = append(out, ps...)
	}
	if len(out) == 0 {
		return nil
	}
	first := []layout.Piece{c.RuleLine(c.W.Tightening.Rule)}
	for _, b := range []layout.Block{howDrawn(c, gs), countedWith(c, gs)} {
		if !b.Empty() {
			first = append(first, layout.Piece{Block: b, KeepNext: true})
		}
	}
	return slices.Concat(first, out, c.Once(groupKey{}, func() []layout.Piece { return workings(c, gs) }))
}

// A groupKey tells what is kept of a group of joints by its first one; of none the workings of all.
type groupKey struct{ first *job.Joint }

// howDrawn says how the numbers of the drawings are read; empty where there are none.
func howDrawn(c *block.Composer, gs [][]*job.Joint) layout.Block {
	if !slices.ContainsFunc(gs, func(g []*job.Joint) bool { return g[0].Order != nil }) {
		return layout.Block{}
	}
	return c.Para(c.Span, []layout.Run{layout.T(layout.SubBold, c.W.Tightening.OrderNumber)}, layout.ParaOpts{})
}

// groups are the joints that the job tightens, those of one mark together where they
// are alike, by their numbers.
func groups(jb *job.Job) [][]*job.Joint {
	tightened := map[*job.Joint]bool{}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			for _, f := range st.Tighten {
				if f.Joint != nil {
					tightened[f.Joint] = true
				}
			}
		}
	}
	var out [][]*job.Joint
next:
	for _, j := range jb.Joints {
		if !tightened[j] {
			continue
		}
		for i, g := range out {
			if k := g[0]; k.Base == j.Base && k.Torque == j.Torque && k.Wanted == j.Wanted && k.Count() == j.Count() && k.What == j.What {
				out[i] = append(out[i], j)
				continue next
			}
		}
		out = append(out, []*job.Joint{j})
	}
	slices.SortStableFunc(out, func(a, b []*job.Joint) int { return job.ByNumber(a[0].Base, b[0].Base) })
	return out
}

// pieces set one joint, at all its places.
func pieces(c *block.Composer, g []*job.Joint) []layout.Piece {
	j := g[0]
	first, head := heading(c, g)
	group := layout.Piece{Block: anchored(first.Heading(2), g), Gap: 2.2, KeepNext: true, Title: j.Base + "  " + j.What, Level: 1}
	out := []layout.Piece{group}
	add := func(gap layout.Mm, blocks ...layout.Block) {
		for _, b := range blocks {
			if !b.Empty() {
				out = append(out, layout.Piece{Block: b, Gap: gap, Under: []*layout.Block{&head}})
			}
		}
	}
	pic, scale := order(c, j, besideFacts(c))
	list := sayings(c, j)
	switch wide, wideScale := order(c, j, c.Span); {
	case pic.Empty() && wide.Empty():
		add(0.8, listed(c, j), said(c, j, list, c.Span))
	case pic.Empty():
		add(0.8, layout.Above(0.5, wide, c.Words(layout.Caption, wideScale)), said(c, j, append(captions(c, j, true, ""), list...), c.Span))
	default:
		add(0.8, scaleWhere(c, pic, scale, func(pic layout.Block, scale string) layout.Block {
			return besideOrder(c, j, pic, append(slices.Clone(list), captions(c, j, true, scale)...))
		}))
	}
	add(1, roundNotes(c, j))
	ticks := len(out)
	add(1.4, placeTicks(c, g)...)
	if len(g) == 1 {
		// Round after round goes over all fasteners: they stand on one page, unless two save one.
		for i := ticks; i < len(out)-1; i++ {
			out[i].KeepNext, out[i].MayPart = true, true
		}
	}
	return out
}

// orderHeights are the heights of a drawing: the least at which the numbers go into it is
// taken.
var orderHeights = []layout.Mm{30, 36, 41, 46, 54, 62, 74}

// besideFacts is the width of a drawing that has what is known of its joint beside it.
func besideFacts(c *block.Composer) layout.Mm {
	const facts, gap layout.Mm = 94, 5
	return c.Span - facts - gap
}

// order draws the order of a joint no larger than its numbers need. On the sheet and in its step
// it is the same where it goes beside what is known of it, for a joint at two scales looks like
// two; one that does not takes the whole width of the sheet, and 120 mm of its step at most.
func order(c *block.Composer, j *job.Joint, width layout.Mm) (pic layout.Block, scale string) {
	for _, high := range orderHeights {
		if pic, scale = picture.Order(c.Setter, c.W, j, width, high); !pic.Empty() {
			break
		}
	}
	return pic, scale
}

// anchored is a heading by which every joint of a group is found.
func anchored(b layout.Block, g []*job.Joint) layout.Block {
	for _, j := range g {
		b = b.Anchored("joint " + j.Mark)
	}
	return b
}

// heading names a joint and the steps that turn it, and as it is drawn again on each page.
func heading(c *block.Composer, g []*job.Joint) (first, again layout.Block) {
	tight, loose := turnedAt(c.Job, g)
	var at []string
	if len(tight) > 0 {
		at = append(at, c.W.Tightening.TightenedAt.With(turnedRefs(c, g, tight)))
	}
	if len(loose) > 0 {
		at = append(at, c.W.Tightening.LoosenedAt.With(turnedRefs(c, g, loose)))
	}
	if again := againAt(c, g); again != "" {
		at = append(at, again)
	}
	name := "▶ " + g[0].Base + "  " + g[0].What
	if len(g) == 1 && g[0].Place.Label != "" {
		name = "▶ " + g[0].Mark + "  " + g[0].What
	}
	runs := []layout.Run{layout.T(layout.Section, name), layout.T(layout.Body, "  ("+c.W.Pieces(g[0].Count())+")"), layout.T(layout.Sub, "   "+strings.Join(at, " · "))}
	return c.Headed(runs, g[0].At)
}

// turns reports whether a list of fastenings has one of some joints in it.
func turns(fs []job.Fastening, g []*job.Joint) bool {
	return slices.ContainsFunc(fs, func(f job.Fastening) bool { return f.Joint != nil && slices.Contains(g, f.Joint) })
}

// captions say from where the drawing is seen and at which scale it is, and on the sheet, where it is said once for
// all drawings how they are read, how it is loosened.
func captions(c *block.Composer, j *job.Joint, sheet bool, scale string) []saying {
	if j.Order == nil {
		return nil
	}
	w := c.W
	var out []saying
	if !sheet {
		out = append(out, saying{runs: []layout.Run{layout.T(layout.SubBold, w.Tightening.OrderNumber)}})
	}
	var more []string
	if j.SeenFrom != "" {
		more = append(more, w.Tightening.SeenFrom.With(j.SeenFrom))
	}
	if j.Clock != "" {
		more = append(more, w.Tightening.ClockIs.With(j.Clock))
	}
	if scale != "" {
		more = append(more, scale)
	}
	if sheet && backward(j) {
		more = append(more, w.Tightening.Backward.With(lastNumber(j)))
	}
	if len(more) > 0 {
		out = append(out, saying{runs: []layout.Run{layout.T(layout.Sub, strings.Join(more, " "))}})
	}
	return out
}
