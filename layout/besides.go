package layout

import "slices"

// besides is what few blocks have: most have the nil one. It is not changed once it is made,
// so blocks share it.
type besides struct {
	anchors  []Anchor
	misfits  []Misfit
	partings []Parting
}

// Anchors are the named heights in the block.
func (b Block) Anchors() []Anchor {
	if b.besides == nil {
		return nil
	}
	return b.besides.anchors
}

// Misfits are what could not be set in the block as asked.
func (b Block) Misfits() []Misfit {
	if b.besides == nil {
		return nil
	}
	return b.besides.misfits
}

// Partings are ways to set the block on two pages, where that saves one; a block that is
// joined with others, padded or framed has none.
func (b Block) Partings() []Parting {
	if b.besides == nil {
		return nil
	}
	return b.besides.partings
}

// AddMisfits adds what could not be set in the block as asked; the caller does not change it any more.
func (b *Block) AddMisfits(more ...Misfit) {
	if len(more) > 0 {
		b.besides = b.besides.with(nil, more)
	}
}

// SetPartings gives the block these ways to be set on two pages, and no other.
func (b *Block) SetPartings(ways []Parting) {
	if len(ways) > 0 || len(b.Partings()) > 0 {
		b.besides = &besides{b.Anchors(), b.Misfits(), ways}
	}
}

// with is what was and more of it.
func (s *besides) with(anchors []Anchor, misfits []Misfit) *besides {
	var out besides
	if s != nil {
		out = *s
	}
	out.anchors = append(slices.Clip(out.anchors), anchors...)
	if len(out.misfits) == 0 {
		out.misfits = slices.Clip(misfits)
	} else {
		out.misfits = append(slices.Clip(out.misfits), misfits...)
	}
	return &out
}

// placed is what was, and below it what another block has besides; not its partings.
func (s *besides) placed(c *besides, y Mm) *besides {
	if c == nil || len(c.anchors) == 0 && len(c.misfits) == 0 {
		return s
	}
	if s == nil && len(c.partings) == 0 && (y == 0 || len(c.anchors) == 0) {
		return c
	}
	out := s.with(c.anchors, c.misfits)
	for i := len(out.anchors) - len(c.anchors); i < len(out.anchors); i++ {
		out.anchors[i].Y += y
	}
	return out
}
