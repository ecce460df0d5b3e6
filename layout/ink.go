package layout

import (
	"slices"
	"sync"
)

// A block is joined with others, padded and framed many times before it lies on a page, and
// most blocks never do: of the ways to set a thing all but one are thrown away. So a block
// does not move what is drawn in it. It holds the blocks that it is made of with their
// places, and their items are worked out once, when a page is made of them.

// ink is what is drawn in a block: items of its own, and above them other ink. It is not changed
// once it lies in another; what is added to it goes to new room.
type ink struct {
	own   *own // nil for none
	parts []part
}

// part is ink that lies in other ink, its corner at x, y.
type part struct {
	ink
	x, y Mm
}

// own are the items of an ink itself, and what is done to those and to its parts. Most ink has
// neither.
type own struct {
	items  []Item
	set    func() []Item // a text whose lines are known: its items, worked out when first asked for
	of     *own          // below these, with its own change; nil for none
	change func([]Item)  // what else is done to all items of the ink; nil for nothing
}

func drawnInk(items []Item) ink {
	if len(items) == 0 {
		return ink{}
	}
	return ink{own: &own{items: items}}
}

func laterInk(set func() []Item) ink { return ink{own: &own{set: set}} }

// all gives the items, those of a text as well; none of nil.
func (o *own) all() []Item {
	if o == nil {
		return nil
	}
	if o.set != nil {
		o.items, o.set = o.set(), nil
	}
	return o.items
}

// appendTo appends the items, the lowest first.
func (o *own) appendTo(out []Item) []Item {
	if o == nil {
		return out
	}
	return append(o.of.appendTo(out), o.all()...)
}

// done makes all changes, the innermost first.
func (o *own) done(items []Item) {
	if o == nil {
		return
	}
	o.of.done(items)
	if o.change != nil {
		o.change(items)
	}
}

// none tells that nothing is drawn.
func (k ink) none() bool { return k.own.none() && len(k.parts) == 0 }

func (o *own) none() bool {
	return o == nil || o.set == nil && o.of == nil && len(o.items) == 0
}

// add lays other ink above all that there is.
func (k *ink) add(other ink, x, y Mm) {
	switch {
	case other.none():
		return
	case x == 0 && y == 0 && k.none() && cap(k.parts) == 0:
		*k = ink{other.own, slices.Clip(other.parts)}
		return
	case k.own != nil && (k.own.change != nil || k.own.of != nil): // not of what comes above
		*k = ink{parts: []part{{ink: *k}}}
	}
	k.parts = append(k.parts, part{other, x, y})
}

// changed is the ink with its items changed.
func (k ink) changed(change func([]Item)) ink {
	if k.none() {
		return ink{}
	}
	return ink{&own{of: k.own, change: change}, slices.Clip(k.parts)}
}

// count is the number of items.
func (k ink) count() int {
	n := 0
	for o := k.own; o != nil; o = o.of {
		n += len(o.all())
	}
	for i := range k.parts {
		n += k.parts[i].count()
	}
	return n
}

// eachItem calls see with each item as it was made, and where the corner of its ink lies; text that
// is set later is none.
func (k *ink) eachItem(x, y Mm, see func(it *Item, x, y Mm)) {
	for o := k.own; o != nil; o = o.of {
		for i := range o.items {
			see(&o.items[i], x, y)
		}
	}
	for i := range k.parts {
		p := &k.parts[i]
		p.eachItem(x+p.x, y+p.y, see)
	}
}

// appendTo appends all items, the lowest first.
func (k ink) appendTo(out []Item) []Item {
	from := len(out)
	out = k.own.appendTo(out)
	for i := range k.parts {
		p := &k.parts[i]
		at := len(out)
		out = p.appendTo(out)
		for j := at; j < len(out); j++ {
			out[j].X += p.x
			out[j].Y += p.y
		}
	}
	k.own.done(out[from:])
	return out
}

// Settled is the block with its items worked out, and those of its partings. It holds nothing
// of the blocks that it was made of, and takes less memory where it is kept for long.
func (b Block) Settled() Block {
	b.ink = drawnInk(b.Items())
	ways := slices.Clone(b.Partings())
	for i, x := range ways {
		ways[i] = Parting{x.Upper.Settled(), x.Lower.Settled(), x.Apart, x.Led}
	}
	b.SetPartings(ways)
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
