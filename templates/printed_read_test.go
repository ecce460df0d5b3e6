package templates_test

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// readPaper parts what is printed by steps, frames of boxes and rows of lists.
func readPaper(jb *job.Job, pack *templates.Pack) *paper {
	p := &paper{steps: map[string]*stepText{}}
	r := paperReader{p: p, sheets: writer{}, rows: writer{}, lists: marksInOrder(jb), rings: map[string]bool{}}
	for _, d := range jb.Dims {
		r.rings[d.Base], r.rings[d.Mark] = true, true
	}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			p.steps[st.No] = &stepText{}
		}
	}
	r.inOne, r.heads = p.inOne(jb), newHeads(jb)
	for _, f := range pack.Pages.BySheet() {
		r.cur, r.group, r.in = nil, nil, nil
		frames := framesOf(f.Items)
		for i, it := range f.Items {
			x, ok := it.Shape.(layout.Text)
			if !ok {
				continue
			}
			text := strings.TrimSpace(strings.ReplaceAll(x.S, "\u00a0", " "))
			other := around(it, frames)
			r.readList(f.Sheet, text, x.Face == layout.Bold)
			if x.Face == layout.Bold && x.Size >= layout.StepNo.Size {
				r.readHead(text, other)
			}
			r.readText(text)
			if r.in != nil && other == r.in.frame {
				r.in.items = append(r.in.items, printed{text, x.Face == layout.Bold})
				if len(r.in.items) == 1 {
					r.in.items = append(r.in.items, underPicture(f.Items, i, r.in.frame)...)
				}
			}
		}
	}
	p.sheets, p.rows = r.sheets.texts(), r.rows.texts()
	p.shareRows(jb)
	p.shareHeads(jb)
	p.readTags(pack)
	return p
}

// A paperReader goes through the texts of a pack in the order in which they are read.
type paperReader struct {
	p            *paper
	sheets, rows writer
	lists        map[string][]string // the marks that are still to come in the lists of each sheet
	rings        map[string]bool     // the marks of dimensions
	inOne        map[string][]*stepText
	heads        *heads
	above, row   string
	shared       string // of a row of places that share a line: the mark without them
	cur          *stepText
	group        []*stepText // like steps below one head
	in           *sub
}

// readList takes a text over into its sheet and into the row of its list.
func (r *paperReader) readList(sheet, text string, bold bool) {
	r.sheets.add(sheet, text)
	if r.readPlaces(sheet, text, bold) {
		return
	}
	if list := r.lists[sheet]; len(list) > 0 && list[0] == text && bold {
		r.row, r.lists[sheet] = sheet+" "+text, list[1:]
		if sheet == "critical" {
			r.rows.add(r.row, r.heads.at(text))
		}
	}
	if sheet == "critical" {
		r.heads.since += text + " "
	}
	if r.row != "" {
		r.rows.add(r.row, text)
	}
}

// readPlaces takes the places that share a line of the list of dimensions: D20 in bold, then DE,
// NDE, each a row with its mark alone; what stands behind them belongs to the last.
func (r *paperReader) readPlaces(sheet, text string, bold bool) bool {
	list := r.lists[sheet]
	if sheet != "dimensions" || len(list) == 0 {
		r.shared = ""
		return false
	}
	if base, _, placed := strings.Cut(list[0], "/"); placed && bold && text == base {
		r.shared = base
		return true
	}
	if r.shared == "" {
		return false
	}
	for _, place := range strings.FieldsFunc(text, func(x rune) bool { return x == ',' || x == ' ' }) {
		if len(list) == 0 || list[0] != r.shared+"/"+place {
			r.shared = ""
			return false
		}
		r.row, list = sheet+" "+list[0], list[1:]
		r.rows.add(r.row, r.row[len(sheet)+1:])
	}
	r.lists[sheet] = list
	return true
}

// readHead looks whether a large text begins a step, like steps, a hold or a frame of boxes.
func (r *paperReader) readHead(text string, frame *layout.Item) {
	switch st := r.p.steps[text]; {
	case st != nil:
		if !slices.Contains(r.group, st) {
			r.group = nil
			if st != r.cur && st.text == "" {
				st.above = r.above
			}
		}
		r.cur, r.in, r.above = st, nil, ""
	case span.MatchString(text):
		// The head of a table belongs to each of its rows.
		r.cur, r.in = nil, nil
		if st := r.p.steps[span.FindStringSubmatch(text)[1]]; st != nil {
			st.notes = r.above
		}
		for _, st := range r.inOne[text] {
			st.above += r.above // the cautions
		}
		r.above, r.group = "", r.inOne[text]
	case strings.HasPrefix(text, "▶"):
		r.cur, r.in, r.group = nil, nil, nil
		r.above = ""
	case (r.cur != nil || r.group != nil) && r.rings[text]:
		r.in = &sub{ring: text, frame: frame}
		if r.group != nil {
			r.cur = nil // the readings of all of them
		}
		for _, st := range append(slices.Clone(r.group), r.cur) {
			if st != nil {
				st.subs = append(st.subs, r.in)
			}
		}
	}
}

// readText takes a text over into the step that is read, or into all those of a group.
func (r *paperReader) readText(text string) {
	r.above += text + " "
	if r.cur != nil {
		r.cur.text += text + " "
		return
	}
	for _, st := range r.group {
		st.text += text + " "
	}
}
