package layout

import (
	"slices"
	"sync"
)

// A block is joined with others, padded and framed many times before it lies on a page, and
// most blocks never do: of the ways to set a thing all but one are thrown away. So a block
// does not move what is drawn in it. It holds the blocks that it is made of with their
// places, and their items are worked out once, when a page is made of them.

// ink is what is drawn in a block: items, and above them other ink. It is not changed once it
// lies in another; what is added to it goes to new room.
type ink struct {
	items []Item
	parts []part
}

// part is ink that lies in other ink, its corner at x, y.
type part struct {
	ink
	x, y   Mm
	change func([]Item) // what else is done to its items; nil for nothing
	text   *setLater    // nil for none
}

// setLater is a text whose lines are known, but its items are worked out when they are first
// asked for.
type setLater struct {
	set   func() []Item
	items []Item
}

func laterInk(set func() []Item) ink { return ink{parts: []part{{text: &setLater{set: set}}}} }

// get gives the items; none of no text.
func (t *setLater) get() []Item {
	if t != nil && t.set != nil {
		t.items, t.set = t.set(), nil
	}
	if t == nil {
		return nil
	}
	return t.items
}

// none tells that nothing is drawn.
func (k ink) none() bool { return len(k.items) == 0 && len(k.parts) == 0 }

// add lays other ink above all that there is.
func (k *ink) add(other ink, x, y Mm) {
	switch {
	case other.none():
	case x == 0 && y == 0 && k.none() && cap(k.parts) == 0:
		*k = ink{slices.Clip(other.items), slices.Clip(other.parts)}
	default:
		k.parts = append(k.parts, part{ink: other, x: x, y: y})
	}
}

// changed is the ink with its items changed.
func (k ink) changed(change func([]Item)) ink {
	if k.none() {
		return ink{}
	}
	return ink{parts: []part{{ink: k, change: change}}}
}

// count is the number of items.
func (k ink) count() int {
	n := len(k.items)
	for i := range k.parts {
		n += k.parts[i].count() + len(k.parts[i].text.get())
	}
	return n
}

// eachItem calls see with each item as it was made, but for text that is set later.
func (k *ink) eachItem(see func(*Item)) {
	for i := range k.items {
		see(&k.items[i])
	}
	for i := range k.parts {
		k.parts[i].eachItem(see)
	}
}

// appendTo appends all items, the lowest first.
func (k ink) appendTo(out []Item) []Item {
	out = append(out, k.items...)
	for i := range k.parts {
		p := &k.parts[i]
		from := len(out)
		out = append(p.appendTo(out), p.text.get()...)
		for j := from; j < len(out); j++ {
			out[j].X += p.x
			out[j].Y += p.y
		}
		if p.change != nil {
			p.change(out[from:])
		}
	}
	return out
}

// Settled is the block with its items worked out, and those of its partings. It holds nothing
// of the blocks that it was made of, and takes less memory where it is kept for long.
func (b Block) Settled() Block {
	b.ink = ink{items: b.Items()}
	b.Partings = slices.Clone(b.Partings)
	for i, x := range b.Partings {
		b.Partings[i] = Parting{x.Upper.Settled(), x.Lower.Settled(), x.Apart, x.Led}
	}
	return b
}

// Each calls see with each of Items, of which none is kept.
func (b Block) Each(see func(Item)) {
	if b.ink.none() {
		return
	}
	room := looked.Get().(*[]Item)
	*room = b.ink.appendTo((*room)[:0])
	for _, it := range *room {
		see(it)
	}
	clear(*room)
	looked.Put(room)
}

// looked is room for items that are only looked at.
var looked = sync.Pool{New: func() any { return new([]Item) }}

// Items are all items of the block, the lowest first, placed from its top left corner.
func (b Block) Items() []Item {
	if b.ink.none() {
		return nil
	}
	return b.ink.appendTo(make([]Item, 0, b.ink.count()))
}
