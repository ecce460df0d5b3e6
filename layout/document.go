package layout

type Doc struct {
	Title, Subject, Author string
	Lang                   string
	Date                   string
	Pages                  []Frame
	Outline                []Entry
	// Attached are files that are kept inside the document.
	Attached []Attachment
	// BothSides asks for printing on both sides, turned over the long edge; else one is
	// asked for.
	BothSides bool
	// Faces are what its text was measured in, and is painted in; nil for the usual type.
	Faces Measurer
}

// An Attachment is a file inside a document: its plain name, what it is in a few words,
// its media type such as text/plain, and its bytes. Origin says that the document was
// made from it.
type Attachment struct {
	Name, What, Type string
	Origin           bool
	Data             []byte
}

// Entry is one line of the outline: it leads to a height on a page, counted from
// 0. Level 0 is outermost; an entry belongs under the last one of a lower level.
// Closed folds what is under it. Sheet is the sheet that it stands on.
type Entry struct {
	Title  string
	Sheet  string
	Level  int
	Page   int
	Y      Mm
	Closed bool
}

// Only gives the document with the pages that keep chooses, in their order and
// unchanged: page numbers printed on them stay those of the whole document.
func (d *Doc) Only(keep func(Frame) bool) *Doc {
	return d.only(func(f Frame) (Frame, bool) { return f, keep(f) }, func(Entry) bool { return true })
}

// OnlySheets gives the document with the sheets that keep chooses, each page with what
// it carries of them; page numbers stay.
func (d *Doc) OnlySheets(keep func(sheet string) bool) *Doc {
	return d.only(func(f Frame) (Frame, bool) { return f.Of(keep) }, func(e Entry) bool { return e.Sheet == "" || keep(e.Sheet) })
}

func (d *Doc) only(page func(Frame) (Frame, bool), line func(Entry) bool) *Doc {
	out := *d
	out.Pages, out.Outline = nil, nil
	now := make([]int, len(d.Pages))
	for i, f := range d.Pages {
		now[i] = -1
		if kept, ok := page(f); ok {
			now[i] = len(out.Pages)
			out.Pages = append(out.Pages, kept)
		}
	}
	for _, e := range d.Outline {
		if e.Page >= 0 && e.Page < len(now) && now[e.Page] >= 0 && line(e) {
			e.Page = now[e.Page]
			out.Outline = append(out.Outline, e)
		}
	}
	return &out
}

// BySheet gives each page once for every sheet that it carries, with what it carries
// of that one.
func (d *Doc) BySheet() []Frame {
	var out []Frame
	for _, f := range d.Pages {
		if len(f.Parts) == 0 {
			out = append(out, f)
		}
		for _, p := range f.Parts {
			one, _ := f.Of(func(sheet string) bool { return sheet == p.Sheet })
			out = append(out, one)
		}
	}
	return out
}
