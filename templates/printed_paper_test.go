package templates_test

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
	"matchmark/templates"
)

// Paper is a pack as it is read: the text of each sheet, and on the sheets of work the
// text of each step and of each block of boxes in it.
type paper struct {
	sheets map[string]string
	steps  map[string]*stepText // by number
	rows   map[string]string    // of a list, by sheet and mark: register C1/DE
	tags   map[string]string    // by code
}

// A writer gathers texts by a name.
type writer map[string]*strings.Builder

func (w writer) add(name, text string) {
	if w[name] == nil {
		w[name] = &strings.Builder{}
	}
	w[name].WriteString(text + " ")
}

func (w writer) texts() map[string]string {
	out := map[string]string{}
	for name, b := range w {
		out[name] = b.String()
	}
	return out
}

// A stepText is what is read at one step.
type stepText struct {
	text  string // without what a table says above its rows
	above string // what stands above the step: cautions of its own, the head of its table
	notes string // what stands before the head of its table: the cautions of its rows
	subs  []*sub
}

// A sub is one frame of boxes: the mark in its ring, and its texts. The ring of a frame
// that like places share has the letters alone.
type sub struct {
	ring  string
	items []printed
	frame *layout.Item // nil for one that goes on without a frame
}

// A printed is one text as it is read, bold if it may be the mark before a row.
type printed struct {
	text string
	bold bool
}

// squeeze takes out of a text what the setting of lines changes: blanks, hyphens, and the
// mark of the decimal sign.
func squeeze(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsSpace(r) || strings.ContainsRune("-\u00ad\u200b", r) {
			return -1
		}
		return r
	}, units.Pointed(s))
}

// paperOf composes a job and reads it back, block by block.
func paperOf(jb *job.Job) *paper {
	size := layout.A4
	if jb.Site.Paper == "letter" {
		size = layout.Letter
	}
	pack, _ := templates.Compose(jb, templates.Options{Paper: size}, pdf.NewFaces(), nil)
	return readPaper(jb, pack)
}

var span = regexp.MustCompile(`^(R?\d+\.\d+)–(R?\d+\.\d+)$`)

// inOne are the steps that stand below one head, by the numbers in it.
func (p *paper) inOne(jb *job.Job) map[string][]*stepText {
	out := map[string][]*stepText{}
	for _, s := range jb.Sections {
		for i, st := range s.Steps {
			var all []*stepText
			for _, x := range s.Steps[i:] {
				if !x.Alike || x.At != st.At {
					break
				}
				all = append(all, p.steps[x.No])
				out[st.No+"–"+x.No] = all
			}
		}
	}
	return out
}

// Heads are the lines of the critical sheet above the rows of a dimension: what is measured
// and its limit stand there, once for places of which the same is said.
type heads struct {
	what        map[string]string // what is measured, by mark
	last, since string            // the last head, and what was read since the last mark
}

func newHeads(jb *job.Job) *heads {
	h := &heads{what: map[string]string{}}
	for _, d := range jb.Dims {
		h.what[d.Mark] = d.What
	}
	return h
}

// at is the head of the row that begins with a mark: a new one above it, or the last.
func (h *heads) at(mark string) string {
	if strings.Contains(squeeze(h.since), squeeze(h.what[mark])) {
		h.last = h.since
	}
	h.since = ""
	return h.last
}

// framesOf are the frames on a page that stand about blocks of boxes.
func framesOf(items []layout.Item) []layout.Item {
	return slices.DeleteFunc(slices.Clone(items), func(it layout.Item) bool {
		r, ok := it.Shape.(layout.Rect)
		return !ok || it.Role != "" || r.Weight != layout.Rule || r.W < 50
	})
}

// around is the frame in which an item stands, nil if in none: two frames stand beside
// each other, and texts of the right one come before its ring.
func around(it layout.Item, frames []layout.Item) *layout.Item {
	l, t, r, b := it.Bounds()
	x, y := (l+r)/2, (t+b)/2
	for i := range frames {
		if left, top, right, bottom := frames[i].Bounds(); left < x && x < right && top < y && y < bottom {
			return &frames[i]
		}
	}
	return nil
}

// underPicture are the texts of a frame that are set before its ring: those in and under
// its picture.
func underPicture(items []layout.Item, ring int, frame *layout.Item) []printed {
	var out []printed
	if frame == nil {
		return out
	}
	for _, it := range items[:ring] {
		if x, ok := it.Shape.(layout.Text); ok && around(it, []layout.Item{*frame}) != nil {
			out = append(out, printed{strings.TrimSpace(strings.ReplaceAll(x.S, "\u00a0", " ")), false})
		}
	}
	return out
}

// shareRows gives the text of a row of the list of dimensions, which stands behind the
// last mark of the row, to the other places in it.
func (p *paper) shareRows(jb *job.Job) {
	for i := len(jb.Dims) - 2; i >= 0; i-- {
		d, next := jb.Dims[i], jb.Dims[i+1]
		name := "dimensions " + d.Mark
		if d.In != nil || d.Base != next.Base || !onlyPlaces(p.rows[name], d.Mark) {
			continue
		}
		p.rows[name] += p.rows["dimensions "+next.Mark]
	}
}

// onlyPlaces reports whether a row has its mark and steps with pages alone.
func onlyPlaces(row, mark string) bool {
	for _, x := range strings.Fields(strings.TrimPrefix(row, mark+" ")) {
		if _, err := strconv.ParseFloat(strings.TrimLeft(x, "RKp."), 64); err != nil && x != "p." && x != "p" {
			return false
		}
	}
	return true
}

// shareHeads gives the head of a table, which stands above its first row, to the others.
func (p *paper) shareHeads(jb *job.Job) {
	for _, s := range jb.Sections {
		for i, st := range s.Steps {
			if i > 0 && st.Table && s.Steps[i-1].Table && st.At == s.Steps[i-1].At {
				p.steps[st.No].above, p.steps[st.No].notes = p.steps[s.Steps[i-1].No].above, p.steps[s.Steps[i-1].No].notes
			}
		}
	}
}

// marksInOrder are the marks of the rows of lists, in their order.
func marksInOrder(jb *job.Job) map[string][]string {
	out := map[string][]string{}
	add := func(sheet, mark string) {
		if !slices.Contains(out[sheet], mark) {
			out[sheet] = append(out[sheet], mark)
		}
	}
	dims := slices.Clone(jb.Dims) // the lists go by number, whatever the order in the definition
	slices.SortStableFunc(dims, func(a, b *job.Dim) int { return job.ByNumber(a.Base, b.Base) })
	deciding := jb.Deciding()
	for _, d := range dims {
		critical := d.Critical || deciding[d.Base]
		if d.In != nil {
			d = d.In
		}
		add("dimensions", d.Mark)
		if critical && d.Box.Form != reading.Grid {
			add("critical", d.Mark)
		}
	}
	for _, t := range jb.Tags {
		add("register", t.Mark)
	}
	for _, h := range jb.Holds {
		add("holds", h.Mark)
	}
	return out
}

// readTags takes the text of each label by its code: what stands within its frame.
func (p *paper) readTags(pack *templates.Pack) {
	p.tags = map[string]string{}
	for _, f := range pack.Tags.Pages {
		for _, frame := range f.Items {
			r, ok := frame.Shape.(layout.Rect)
			if !ok || r.Radius < 2 || min(r.W, r.H) < 40 {
				continue
			}
			left, top, right, bottom := frame.Bounds()
			code, text := "", ""
			for _, it := range f.Items {
				l, t, r, b := it.Bounds()
				if x, y := (l+r)/2, (t+b)/2; x < left || x > right || y < top || y > bottom {
					continue
				}
				switch s := it.Shape.(type) {
				case layout.Modules:
					code = s.Content()
				case layout.Text:
					text += s.S + " "
				}
			}
			p.tags[code] = text
		}
	}
}

// frames are the frames of boxes of one dimension at a step: those with its mark in the
// ring, and of a frame that it shares with like places the head and its own row.
func (s *stepText) frames(d *job.Dim, rivals []*job.Dim) string {
	var rows []string
	for _, x := range rivals {
		if x.Base == d.Base {
			rows = append(rows, x.Mark)
		}
	}
	var out []string
	for _, x := range s.subs {
		switch x.ring {
		case d.Mark:
			out = append(out, x.of("", nil))
		case d.Base:
			out = append(out, x.of(d.Mark, rows))
		}
	}
	return strings.Join(out, " ")
}

// of is the text of a frame above its first row and in the row of a mark, empty where the
// frame has no such row; the rows begin with their marks.
func (s *sub) of(mark string, rows []string) string {
	var out []string
	row, found := "", mark == ""
	for i, x := range s.items {
		if i > 0 && x.bold && slices.Contains(rows, x.text) {
			row = x.text
			found = found || row == mark
		}
		if row == "" || row == mark {
			out = append(out, x.text)
		}
	}
	if !found {
		return ""
	}
	return strings.Join(out, " ")
}
