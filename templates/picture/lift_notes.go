package picture

import (
	"math"
	"sort"
	"strconv"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/lift"
)

// A legNote is what stands beside one line of the side view: the legs that lie on
// it, and the height at which its leader meets it.
type legNote struct {
	from, to draw.XY
	legs     []int
	text     layout.Block
	y        float64 // middle of the note
}

// noteAlong is how far up a leg its leader meets it, noteLow how far up the foot of
// its note may be.
const (
	noteAlong = 0.6
	noteLow   = 0.35
)

// legNotes sets the note of each leg beside the view: number, name, length and angle from
// horizontal; what it pulls stands in the table. Legs that lie behind each other share one.
func (p *liftPicture) legNotes(s *draw.Scene, v *liftView, w layout.Mm) {
	var left, right []*legNote
	for i, x := range p.legs {
		from, to := v.at(x.From), v.at(x.To)
		n := noteOn(append(append([]*legNote{}, left...), right...), from, to, s.Units(0.3))
		if n == nil {
			n = &legNote{from: from, to: to}
			if (from.X+to.X)/2 < p.middle(v) {
				left = append(left, n)
			} else {
				right = append(right, n)
			}
		}
		n.legs = append(n.legs, i)
	}
	mid := (v.low.X + v.high.X) / 2
	half := s.Units(w) / 2
	p.setNotes(s, left, mid-half, mid-half+s.Units(noteW-2))
	p.setNotes(s, right, mid+half-s.Units(noteW-2), mid+half-s.Units(noteW-1))
}

// middle parts the legs that have their notes to the left from those that have them to the
// right: it is below the hook, or half way between two of them that hang over the ends.
func (p *liftPicture) middle(v *liftView) float64 {
	hook, low, high := v.across(p.scene.Hook), math.Inf(1), math.Inf(-1)
	for _, x := range p.legs {
		at := (v.across(x.From) + v.across(x.To)) / 2
		low, high = min(low, at), max(high, at)
	}
	if low < hook && hook < high {
		return hook
	}
	return (low + high) / 2
}

// noteEdge is the room that the notes need on each side of the view: a leg that
// leans leaves some of it above the load.
func (p *liftPicture) noteEdge(v *liftView) layout.Mm {
	if p.l.ByHand {
		return p.handEdge(v)
	}
	free := math.Inf(1)
	for _, x := range p.legs {
		from, to := v.at(x.From), v.at(x.To)
		at := to.X + (from.X-to.X)*noteLow
		if to.X < p.middle(v) {
			free = min(free, at-v.low.X)
		} else {
			free = min(free, v.high.X-at)
		}
	}
	return max(noteW-layout.Mm(free/p.scale), 4)
}

// noteOn finds the note of a line that is already noted.
func noteOn(notes []*legNote, from, to draw.XY, slack float64) *legNote {
	near := func(a, b draw.XY) bool { return math.Hypot(a.X-b.X, a.Y-b.Y) < slack }
	for _, n := range notes {
		if near(n.from, from) && near(n.to, to) {
			return n
		}
	}
	return nil
}

// setNotes sets the notes of one side below each other, from x on, with leaders
// from their inner edge.
func (p *liftPicture) setNotes(s *draw.Scene, notes []*legNote, x, inner float64) {
	for _, n := range notes {
		n.text = p.legText(n)
		n.y = n.to.Y + (n.from.Y-n.to.Y)*noteAlong
	}
	sort.SliceStable(notes, func(i, j int) bool { return notes[i].y > notes[j].y })
	for i := 1; i < len(notes); i++ {
		least := s.Units(notes[i-1].text.H/2 + notes[i].text.H/2 + 1.5)
		notes[i].y = min(notes[i].y, notes[i-1].y-least)
	}
	for _, n := range notes {
		s.Label(draw.XY{X: x, Y: n.y}, n.text, 0, 0.5)
		at := draw.XY{X: n.to.X + (n.from.X-n.to.X)*noteAlong, Y: n.to.Y + (n.from.Y-n.to.Y)*noteAlong}
		s.Lines(draw.Thin, draw.XY{X: inner, Y: n.y}, at)
	}
}

// legText is the note of the legs on one line.
func (p *liftPicture) legText(n *legNote) layout.Block {
	var lines []layout.Block
	line := func(st layout.Style, text string) {
		lines = append(lines, p.Para(noteW-3, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: p.l.At}))
	}
	for _, i := range n.legs {
		x := p.legs[i]
		line(layout.SubBold, strconv.Itoa(i+1)+"  "+x.Name)
		line(layout.Caption, p.l.Print(x.Length.Size())+", "+p.l.Print(x.Angle.Down()))
	}
	return layout.Above(0.2, lines...)
}

// handGap is between the two lines of a grip, and handNote what they take with the room above
// them.
const (
	handGap  layout.Mm = 0.2
	handNote layout.Mm = 8
)

// overHands is the room above the load for what the people on one side carry.
func (p *liftPicture) overHands(v *liftView) layout.Mm {
	var on [2]int
	for _, k := range p.scene.Picks {
		if v.across(k) > v.across(p.scene.CoG) {
			on[1]++
		} else {
			on[0]++
		}
	}
	return 2 + handNote*layout.Mm(max(on[0], on[1]))
}

// gripName is the most width of the name of a grip.
const gripName layout.Mm = 42

// handAside is between the arrow of a grip and what stands beside it.
const handAside layout.Mm = 1.5

// handEdge is the room on each side of the load for what stands beside the arrows: held
// within the drawing, a text that is wider came to lie over its arrow.
func (p *liftPicture) handEdge(v *liftView) layout.Mm {
	edge := handW
	for i, k := range p.scene.Picks {
		within := v.high.X - v.at(k).X
		if left, _ := p.handSide(v, k); left {
			within = v.at(k).X - v.low.X
		}
		edge = max(edge, p.handText(i).W+handAside-layout.Mm(within/p.scale))
	}
	return edge
}

// handSide tells to which side of its grip the text of one stands: outward from the middle.
func (p *liftPicture) handSide(v *liftView, k lift.Point) (left bool, side int) {
	if v.across(k) > v.across(p.scene.CoG) {
		return false, 1
	}
	return true, 0
}

// handText is the name of a grip and what is carried there.
func (p *liftPicture) handText(i int) layout.Block {
	r := p.l.HandResult
	return layout.Above(handGap, fitted(p.Setter, layout.SubBold, strconv.Itoa(i+1)+"  "+p.l.HandPlan.Grips[i].Name, gripName, layout.ParaOpts{Ref: p.l.At}),
		p.Words(layout.Caption, p.w.Lift.Carries+" "+p.l.Print(r.Shares[i].Up())+", "+p.w.Lift.MostCarries+" "+p.l.Print(r.Most[i].Up())))
}

// handNotes sets an arrow and the share of each person at its grip.
func (p *liftPicture) handNotes(s *draw.Scene, v *liftView) {
	var set [2]int // on the left and on the right
	for i, k := range p.scene.Picks {
		at := v.at(k)
		s.Arrow(draw.Thick, at, draw.XY{X: at.X, Y: at.Y + s.Units(9)})
		// Outward from the middle, clear of the load and of the arrow, each above the one before
		// it on its side.
		across, aside := 0.0, s.Units(handAside)
		left, side := p.handSide(v, k)
		if left {
			across, aside = 1, -aside
		}
		s.Label(draw.XY{X: at.X + aside, Y: v.high.Y + s.Units(1.2) + s.Units(handNote)*float64(set[side])}, p.handText(i), across, 1)
		set[side]++
	}
}
