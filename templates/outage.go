package templates

import (
	"strconv"
	"strings"
	"unicode"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/outage"
	"matchmark/packs/source"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// ComposeOutage sets the index of an outage: its jobs with their paper and hours, and
// who and what they need, by date, crane and permit, in a language, which is English where
// none is named.
func ComposeOutage(jobs []outage.Summary, lang string, paper layout.Paper, m layout.Measurer) (*layout.Doc, source.Problems) {
	w, _ := paper.Inner()
	index := &job.Job{Language: lang}
	wording := inLanguage(index)
	c := &composer{
		Composer: &block.Composer{Setter: layout.NewSetter(m, layout.Pen{Comma: decimalComma(index, wording)}), Job: index, W: wording, Span: w},
		paper:    paper,
	}
	title := c.W.Outage.Title
	pages := layout.Paginate(paper, []layout.Sheet{{
		Name: "outage", Title: title, Pieces: c.outage(jobs),
		Head: func(page, total int) layout.Block {
			return layout.Above(1, c.Line(c.Span, []layout.Run{layout.T(layout.Section, title), layout.T(layout.Sub, "   "+c.W.Outage.PageOf.With(strconv.Itoa(page), strconv.Itoa(total)))}, layout.ParaOpts{}).Heading(1), c.Rule(layout.Heavy))
		},
		Foot: func(page, total int) layout.Block { return layout.Block{} },
	}})
	date := ""
	for _, s := range jobs {
		date = max(date, s.Issued) // of the latest job: the index has no clock either
	}
	doc := &layout.Doc{Title: title, Lang: c.W.Lang, Date: date, Pages: pages.Frames, Outline: pages.Outline}
	return doc, problems(c.Job, false, pages.Misfits, nil)
}

// outage is the table of jobs, then a table for each list of needs.
func (c *composer) outage(jobs []outage.Summary) []layout.Piece {
	w := c.W.Outage
	pagesN, tags, hours, crew := outage.Total(jobs)
	g := c.Grid(block.Col(w.Job, 34), block.Col(w.Machine, 0), block.Col(w.Date, 24), block.Col(w.Pages, 15), block.Col(w.Tags, 13), block.Col(w.Hours, 15), block.Col(w.CrewHours, 17))
	var rows []layout.Row
	for _, s := range jobs {
		what := s.Tag + " " + s.Machine
		name, facts := s.Job+" "+s.Revision, s.Title
		if s.Failed != "" {
			name, facts = anywhere(name, 12), anywhere(w.NotPrinted.With(c.whyNot(s)), 24)
		}
		cells := []layout.Block{g.Text(0, layout.Strong, name, nil), g.About(1, what, facts, nil), g.Text(2, layout.Body, s.Issued, nil)}
		if s.Failed == "" {
			cells = append(cells, g.Text(3, layout.Body, strconv.Itoa(s.Pages), nil), g.Text(4, layout.Body, strconv.Itoa(s.Tags), nil),
				g.Text(5, layout.Body, s.Hours.Print(), nil), g.Text(6, layout.Body, s.CrewHours.Print(), nil))
		}
		rows = append(rows, g.Row(nil, cells...))
	}
	rows = append(rows, g.Row(nil, g.Text(0, layout.Strong, w.Total, nil), layout.Block{}, layout.Block{}, g.Text(3, layout.Strong, strconv.Itoa(pagesN), nil),
		g.Text(4, layout.Strong, strconv.Itoa(tags), nil), g.Text(5, layout.Strong, hours.Print(), nil), g.Text(6, layout.Strong, crew.Print(), nil)))
	out := c.ListSheet(w.Rule, g, rows)
	for i, l := range outage.Lists {
		lines := outage.By(jobs, l.Of)
		if len(lines) == 0 {
			continue
		}
		head := w.Lists[i]
		g := c.Grid(block.Col(head.By, 40), block.Col(w.Job, 34), block.Col(c.W.Common.Mark, 20), block.Col(head.What, 0))
		var rows []layout.Row
		for k, line := range lines {
			by := c.needBy(line.Need)
			if k > 0 && lines[k-1].By == line.By {
				by = "″"
			}
			rows = append(rows, g.Row(nil, g.Text(0, layout.Strong, by, nil), g.Text(1, layout.Body, line.Job+" "+line.Revision, nil), g.Text(2, layout.Strong, line.Mark, nil), g.Text(3, layout.Body, line.What, nil)))
		}
		out = append(out, layout.Piece{Block: c.Heading(head.Title), Gap: 4, KeepNext: true})
		out = append(out, g.Table.Pieces(block.LastTogether(rows))...)
	}
	return out
}

// anywhere lets a path or a file name in a text be parted behind each slash, and within what is
// longer than so many signs: the path of a table is as long as its folders are deep. Other words are
// parted as everywhere, with a hyphen where one is longer than its line.
func anywhere(text string, most int) string {
	words := strings.Split(text, " ")
	for i, word := range words {
		if isPath(word) {
			words[i] = parted(word, most)
		}
	}
	return strings.Join(words, " ")
}

// isPath reports whether a word is a path or a file name: it has a slash, or signs within it that
// no word of a language has.
func isPath(word string) bool {
	within := strings.TrimFunc(word, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	return strings.ContainsAny(word, `/\`) || strings.ContainsFunc(within, func(r rune) bool {
		return !unicode.IsLetter(r) && !strings.ContainsRune("-\u00ad'’", r)
	})
}

// parted lets a word be parted behind each slash, and after so many signs without one.
func parted(word string, most int) string {
	var out strings.Builder
	n := 0
	for _, r := range word {
		if n == most {
			out.WriteRune('\u200b')
			n = 0
		}
		out.WriteRune(r)
		n++
		if r == '/' || r == '\\' {
			out.WriteRune('\u200b')
			n = 0
		}
	}
	return out.String()
}

// whyNot says why a job is not printed. What paper of another language has no words for
// stands in the table beside the index.
func (c *composer) whyNot(s outage.Summary) string {
	if c.W.Lang == words.English.Lang {
		return s.Failed
	}
	if s.Why != nil {
		if text := s.Why.In(c.W); text != "" {
			return text
		}
	}
	return c.W.Outage.SeeTable
}

// needBy is by what a need is sorted, in the language of the paper.
func (c *composer) needBy(n outage.Need) string {
	if n.ByIn != nil {
		if text := n.ByIn.In(c.W); text != "" {
			return text
		}
	}
	return n.By
}
