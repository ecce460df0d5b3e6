package layout

// Ref is the caller's own note of where something came from. layout carries it
// and never looks inside; it must be comparable. Nil says nothing.
type Ref = any

// Frame is one page. Sheet is the name of the sheet that it belongs to, Number
// the page number printed on it, 0 when it has none.
type Frame struct {
	Sheet  string
	Number int
	W, H   Mm
	Items  []Item
	// Used of Room, both heights between head and foot, is filled by the flow;
	// Parted tells a page that begins within a Group.
	Used, Room Mm
	Parted     bool
	// Parts are the sheets that the page carries, from the top; Sheet is the first.
	// Empty for a page that the flow did not make.
	Parts []Part
	Links []Link
}

// Link is a rectangle of a page that leads to another one, by its number. Sheet is the
// sheet that it stands on, empty for one of the whole page.
type Link struct {
	Left, Top, Right, Bottom Mm
	Page                     int
	Sheet                    string
}

// Part is what a page carries of one sheet: its items [From, To) and the height they
// use; those before Fresh stand again from the page before. What stands before the first
// and after the last belongs to the page.
type Part struct {
	Sheet           string
	From, Fresh, To int
	Used            Mm
}

// Of gives the page with what it carries of the chosen sheets, and reports whether it
// carries any of them: what the other sheets have on it is left out.
func (f Frame) Of(keep func(sheet string) bool) (Frame, bool) {
	if len(f.Parts) == 0 {
		return f, keep(f.Sheet)
	}
	out := f
	out.Items, out.Parts, out.Links, out.Used = nil, nil, nil, 0
	for _, l := range f.Links {
		if l.Sheet == "" || keep(l.Sheet) {
			out.Links = append(out.Links, l)
		}
	}
	at := 0
	for _, p := range f.Parts {
		out.Items = append(out.Items, f.Items[at:p.From]...)
		at = p.To
		if !keep(p.Sheet) {
			continue
		}
		kept := Part{Sheet: p.Sheet, From: len(out.Items), Used: p.Used}
		kept.Fresh = kept.From + p.Fresh - p.From
		out.Items = append(out.Items, f.Items[p.From:p.To]...)
		kept.To = len(out.Items)
		out.Parts = append(out.Parts, kept)
		out.Used += p.Used
	}
	out.Items = append(out.Items, f.Items[at:]...)
	if len(out.Parts) > 0 {
		out.Sheet = out.Parts[0].Sheet
	}
	return out, len(out.Parts) > 0
}

// Doc is a whole file to be painted. Date is the date printed and stored in the
// file, as YYYY-MM-DD; empty stores none. Lang is a language tag such as "en".
