package layout

import "strings"

// pieceAt tells what item i says and gives the index of the next item to read: a
// box takes in what is drawn and printed inside it.
func pieceAt(items []Item, i int) (piece, int) {
	it := items[i]
	p := piece{turn: it.Turn, kind: saidMark}
	p.left, p.top, p.right, p.bottom = alongText(it)
	switch s := it.Shape.(type) {
	case Text:
		// A diff would show no difference between a space and a no-break space.
		p.kind, p.em, p.say = saidText, s.Size.Mm(), strings.ReplaceAll(s.S, "\u00a0", " ")
	case Rect:
		if strings.HasPrefix(it.Role, boxRoles) {
			caption, next := captionOf(items, i)
			p.kind, p.say = saidBox, boxWord(it.Role, s, caption)
			return p, next
		}
		p.say = roleWord(it.Role)
	case Path:
		if s.Alt != "" {
			p.kind, p.em, p.say = saidText, s.AltSize.Mm(), s.Alt
		} else {
			p.say = roleWord(it.Role)
		}
	case Line:
		p.say = roleWord(it.Role)
	case Modules:
		p.say = "(QR " + s.Content() + ")"
	case Image:
		p.say = "(picture " + s.Kind + ")"
	}
	return p, i + 1
}

// alongText is the room of an item as it lies when the page is turned so that the
// item stands upright; of a text the height of its capitals.
func alongText(it Item) (left, top, right, bottom Mm) {
	b := it.Shape.extent()
	switch s := it.Shape.(type) {
	case Rect:
		b = box{0, 0, s.W, s.H} // boxes of a strip share their outline
	case Text:
		b.y0, b.y1 = -Style{Size: s.Size}.CapHeight(), 0
	case Path:
		if s.Alt != "" {
			b = box{0, -Style{Size: s.AltSize}.CapHeight(), s.AltWidth, 0}
		}
	}
	sin, cos := turnOf(it.Turn)
	x := it.X*Mm(cos) - it.Y*Mm(sin)
	y := it.X*Mm(sin) + it.Y*Mm(cos)
	return x + b.x0, y + b.y0, x + b.x1, y + b.y1
}

// captionOf is the text printed inside box i, and the index of the first item after
// what belongs to the box.
func captionOf(items []Item, i int) (string, int) {
	left, top, right, bottom := alongText(items[i])
	var r reader
	next := i + 1
	for ; next < len(items) && items[next].Turn == items[i].Turn; next++ {
		l, t, rt, b := alongText(items[next])
		if l < left || t < top || rt > right || b > bottom || strings.HasPrefix(items[next].Role, boxRoles) {
			break
		}
		if p, _ := pieceAt(items, next); p.say != "" {
			r.add(p)
		}
	}
	return strings.ReplaceAll(r.b.String(), "\n", " "), next
}

// boxRoles begins the role of each write-in box.
const boxRoles = "box:"

// boxWord shows a write-in box.
func boxWord(role string, r Rect, caption string) string {
	room := "____"
	switch {
	case role == RoleTyped:
		room = ""
	case r.Cells > 0:
		room = strings.Repeat("_", r.Cells)
		if r.Point > 0 && r.Point <= r.Cells {
			point := "."
			if r.Comma {
				point = ","
			}
			room = room[:r.Point-1] + point + room[r.Point:]
		}
	case role == RoleTick:
		room = " "
	case role == RoleSign:
		room = ""
	case role != RoleWords && caption == "":
		room = "__" + strings.TrimPrefix(role, boxRoles) + "__"
	}
	if caption != "" && room != "" {
		caption += " "
	}
	dashed := ""
	if r.Dash > 0 {
		dashed = "="
	}
	return "[" + dashed + caption + room + "]"
}

// roleWord names a drawing by its role, nothing if it has none.
func roleWord(role string) string {
	if role == "" {
		return ""
	}
	return "(" + role + ")"
}
