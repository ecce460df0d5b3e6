package layout

import "strings"

// RoleTyped is the role of a box that is filled when it is printed.
const RoleTyped = "box:typed"

// Named gives the first write-in box of a block a key.
func (b Block) Named(key string) Block {
	b.ink = b.ink.changed(func(items []Item) {
		for i, it := range items {
			if strings.HasPrefix(it.Role, boxRoles) && it.Role != RoleSign {
				items[i].Key = key
				return
			}
		}
	})
	return b
}

// typed is a box that is filled when it is printed: its outline and the text in one
// piece, without cells, for nobody writes in it. dash is that of the outline. A text
// that is wider than the box is a misfit.
func (s *Setter) typed(text string, w, h, dash Mm, ref Ref) Block {
	out := Drawn(w, h, Item{Role: RoleTyped, Ref: ref, Shape: Rect{W: w, H: h, Weight: Outline, Dash: dash}})
	line := s.Line(0, []Run{T(Typed, text)}, ParaOpts{Ref: ref})
	room := w - 1.6
	if !line.W.Fits(room) {
		out.AddMisfits(Misfit{Ref: ref, Kind: TooWide, Text: text, Over: line.W - room, Detail: "a typed value"})
	}
	return Overlay(out, line.Fill(w, h, 0.5, 0.5))
}

// TypedFraction makes the boxes for an inch fraction filled: one box of their width.
func (s *Setter) TypedFraction(caption, unit, text string, copied bool, ref Ref) Block {
	blank := s.Fraction("", "", copied, ref)
	_, h := s.boxSize(RoleFraction)
	u := s.Line(0, []Run{T(Body, unit)}, ParaOpts{Ref: ref})
	return s.captioned(caption, Middle(1.5, s.typed(text, blank.W, h, dashOf(copied), ref), u), ref)
}

// widestTyped is wider than any letter that is typed in SubBold.
const widestTyped Mm = 3.2

// TypedWords makes a box for words filled: as wide as given, and as high as its text
// takes.
func (s *Setter) TypedWords(w Mm, caption, text string, copied bool, ref Ref) Block {
	inner := Above(0.2, s.Line(w-1.2, []Run{T(Caption, caption)}, ParaOpts{Ref: ref}), s.Para(w-2, []Run{T(SubBold, Loose(text, int((w-2)/widestTyped)))}, ParaOpts{Ref: ref}))
	_, h := s.boxSize(RoleWords)
	h = max(h, inner.H+1)
	out := Drawn(w, h, Item{Role: RoleTyped, Ref: ref, Shape: Rect{W: w, H: h, Weight: Outline, Dash: dashOf(copied)}})
	return Overlay(out, inner.Pad(0.2, 0, 0, 0.8))
}

// Ticked makes a box that is ticked when it is printed, with its label to the right.
func (s *Setter) Ticked(st Style, label string, copied bool, ref Ref) Block {
	box := Drawn(tickSide, tickSide, Item{Role: RoleTyped, Ref: ref, Shape: Rect{W: tickSide, H: tickSide, Weight: Outline, Dash: dashOf(copied)}})
	box = Overlay(box, s.Line(0, []Run{T(StepNo, "✓")}, ParaOpts{Ref: ref}).Fill(tickSide, tickSide, 0.5, 0.5))
	if label == "" {
		return box
	}
	return Middle(1.2, box, s.Line(0, []Run{T(st, label)}, ParaOpts{Ref: ref}))
}

// dashOf is the dash of the outline of a box: that of a copied one is broken.
func dashOf(copied bool) Mm {
	if copied {
		return 1
	}
	return 0
}
