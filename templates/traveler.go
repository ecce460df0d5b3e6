package templates

import (
	"slices"
	"strings"
	"unicode"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/step"
)

// sectionHead is the heading of a section: its number, name, place and the side
// it is seen from.
func (c *composer) sectionHead(s *job.Section) layout.Block {
	return layout.Above(0.3, c.sectionLine(s), c.Rule(layout.Heavy)).Pad(0, 0, 0.2, 0)
}

// sectionGap is the room above it.
const sectionGap layout.Mm = 1

// sectionAgain is the heading as it stands on each page that the section runs on to: in
// the head of the page, with room beside it for the step that goes on, or below where it
// is too long. line is where it stands.
func (c *composer) sectionAgain(s *job.Section) (again *layout.Block, line step.Running) {
	if one, width, up := c.inHead(s, false); width > 0 {
		return &one, step.Running{Taken: block.InkRight(one), Right: width, Up: up, H: runningH}
	}
	b := c.Para(c.Span, c.sectionRuns(s, layout.Section, true), layout.ParaOpts{Ref: s.At}).Pad(0, 0, 0.7, 0)
	return &b, step.Running{Taken: block.InkRight(b), Right: c.Span, Up: b.H, H: layout.Section.Lead}
}

// inHead is the heading of a section in the head of a page, as large as it goes there, with
// the room of the line and how far it begins above the flow; no room where it is too long.
// Where the section goes on its place may stand there by its label.
func (c *composer) inHead(s *job.Section, begins bool) (one layout.Block, width, up layout.Mm) {
	width, up = c.running()
	names := []*job.Section{s}
	if short := *s; !begins && s.Place.Label != "" {
		short.Place.Name = s.Place.Label // the name stands in full where the section begins
		names = append(names, &short)
	}
	for _, s := range names {
		for _, st := range []layout.Style{layout.Section, layout.StepNo, layout.Limit, layout.Strong} {
			one = c.Line(0, c.sectionRuns(s, st, begins), layout.ParaOpts{Ref: s.At})
			if begins && one.W <= width || one.W+goesOnRoom <= width {
				one = one.At(0, -up-(one.H-runningH)/2) // its line may be a little higher than that of the head
				one.H = 0
				return one, width, up
			}
		}
	}
	return layout.Block{}, 0, 0
}

// goesOnRoom is the room that is kept in the head of a page for the number of a step that
// goes on.
const goesOnRoom layout.Mm = 26

// sectionLine is the text of the heading of a section.
func (c *composer) sectionLine(s *job.Section) layout.Block {
	return c.Para(c.Span, c.sectionRuns(s, layout.Section, true), layout.ParaOpts{Ref: s.At})
}

// sectionRuns are the runs of that heading, where it begins with the hours.
func (c *composer) sectionRuns(s *job.Section, st layout.Style, begins bool) []layout.Run {
	place := s.Place.Name
	if s.Place.Label != "" && place != s.Place.Label && !strings.HasSuffix(place, " "+s.Place.Label) {
		place += " (" + s.Place.Label + ")"
	}
	text := listed(s.Name, place)
	runs := []layout.Run{layout.T(st, "▶ "+numbered(s.No, text))}
	var from []string
	if s.Place.CountedFrom != "" {
		from = append(from, c.W.Common.CountedFrom.With(s.Place.CountedFrom))
	}
	if s.Place.ViewedFrom != "" {
		from = append(from, c.W.Common.SeenFrom.With(s.Place.ViewedFrom))
	}
	if begins && s.HoursSoFar != nil {
		from = append(from, c.W.Step.SectionHours.With(s.HoursSoFar.Print(), s.CrewSoFar.Print()))
	}
	if len(from) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+strings.Join(from, " · ")))
	}
	return runs
}

// numbered puts the number of a section before its name. One that begins with a number
// of its own, as that of the manual, is parted from it.
func numbered(no, name string) string {
	if name != "" && unicode.IsDigit([]rune(name)[0]) {
		return no + "  ·  " + name
	}
	return no + "  " + name
}

// traveler sets the sheets for taking apart: every step with its boxes, its
// cautions before it and its hold after it.
func traveler(c *composer) []layout.Piece { return c.work(false) }

// reassembly sets the sheets for putting back.
func reassembly(c *composer) []layout.Piece { return c.work(true) }

// work sets the sections of one of the two sheets of work. Where the order of
// work goes over to the other sheet, a line says so.
func (c *composer) work(back bool) []layout.Piece {
	room := 0
	for _, s := range c.Job.Sections {
		if s.Back == back {
			room += piecesOfStep * len(s.Steps)
		}
	}
	out := make([]layout.Piece, 0, room)
	group := 0
	var before *job.Section
	near := c.nearPages()
	for _, s := range c.Job.Sections {
		if s.Back != back {
			if before != nil && before.Back == back {
				on := c.otherSheet(s)
				on.Closes = c.backToTheEnd(s) && !back // at the foot of a full page the next one says it
				out = append(out, on)
			}
			before = s
			continue
		}
		before = s
		again, line := c.sectionAgain(s)
		head := layout.Piece{Block: c.sectionHead(s).Heading(2).Anchored("section " + s.No), Gap: sectionGap, KeepNext: true, Title: numbered(s.No, sectionTitle(s)), Level: 1}
		if top, width, _ := c.inHead(s, true); width > 0 {
			top = top.Heading(2).Anchored("section " + s.No)
			head.AtTop = &top
		}
		if len(out) == 0 && c.Title != "" {
			head = c.titled(head, s)
		}
		out = append(out, head)
		for i := 0; i < len(s.Steps); i++ {
			group++
			st := s.Steps[i]
			near.see(out, st)
			if n := likeSteps(s.Steps[i:], tabled); n > 0 {
				near.see(out, s.Steps[i:i+n]...)
				for _, p := range c.barred(step.Table(c.Composer, s.Steps[i:i+n]), c.tabledChanged(s.Steps[i:i+n])) {
					p.Under = append([]*layout.Block{again}, p.Under...)
					out = append(out, p)
				}
				i += n - 1
				continue
			}
			if n := likeSteps(s.Steps[i:], inOne); n > 1 {
				near.see(out, s.Steps[i:i+n]...)
				out = append(out, c.below(s.Steps[i:i+n], group, again, line)...)
				group += n
				i += n - 1
				continue
			}
			if st.Later != "" && st.Undoes == nil {
				out = append(out, layout.Piece{Block: step.WaitsLine(c.Composer, st), Gap: 1, Under: []*layout.Block{again}})
				continue
			}
			out = append(out, c.alone(st, group, again, line)...)
		}
	}
	return out
}

// piecesOfStep is how many pieces a step has, about: there is room for them before they are set.
const piecesOfStep = 4

// alone sets one step; again is the line of its section.
func (c *composer) alone(st *job.Step, group int, again *layout.Block, line step.Running) []layout.Piece {
	pieces := c.Once(st, func() []layout.Piece { return step.Pieces(c.Composer, st) })
	pieces = slices.Clone(c.barred(pieces, c.since.Step(st)))
	goesOn := step.ContinuedLine(c.Composer, st, line)
	notes, above := step.NotesAgain(c.Composer, st)
	under := []*layout.Block{again, goesOn, notes} // of all pieces, or the first of them
	if notes == nil {
		under = under[:2:2]
	}
	dear := onTheHook(st) || hotInHand(st)
	for i := range pieces {
		pieces[i].Group, pieces[i].Dear, pieces[i].Under = group, dear, under
		if i < above {
			pieces[i].Under = under[:1:1]
		}
	}
	return pieces
}

// onTheHook reports whether a load hangs in a step: nobody turns the page meanwhile.
func onTheHook(st *job.Step) bool { return len(st.Lifts) > 0 || len(st.Hangs) > 0 }

// hotInHand reports whether a step puts a hot part in its place: it grips before a page is turned.
func hotInHand(st *job.Step) bool {
	hot := func(c *job.Caution) bool { return c.Key == "heating" }
	return len(st.Fit) > 0 && slices.ContainsFunc(st.Cautions, hot)
}

// backToTheEnd reports whether a section begins the reassembly and all after it belong there.
func (c *composer) backToTheEnd(first *job.Section) bool {
	i := slices.Index(c.Job.Sections, first)
	return !slices.ContainsFunc(c.Job.Sections[:i], func(s *job.Section) bool { return s.Back }) &&
		!slices.ContainsFunc(c.Job.Sections[i:], func(s *job.Section) bool { return !s.Back })
}

// below sets one step at several places below one head; again is the line of its section.
func (c *composer) below(all []*job.Step, group int, again *layout.Block, line step.Running) []layout.Piece {
	pieces := c.Once(all[0], func() []layout.Piece { return step.InOne(c.Composer, all) })
	pieces = slices.Clone(c.barred(pieces, c.tabledChanged(all)))
	goesOn := step.AllContinued(c.Composer, all, line)
	notes, above := step.NotesAgain(c.Composer, all...)
	for i := range pieces {
		pieces[i].Group += group
		pieces[i].Under = []*layout.Block{again, goesOn}
		if notes != nil && i >= above {
			pieces[i].Under = append(pieces[i].Under, notes) // no row is parted from its notes
		}
	}
	return pieces
}

// tabled and inOne report whether a step is printed with the same step at other places, in
// one table or below one head.
func tabled(st *job.Step) bool { return st.Table }
func inOne(st *job.Step) bool  { return st.Alike }

// likeSteps counts the steps at the head of a list that are one step at several places, to
// be printed together.
func likeSteps(steps []*job.Step, together func(*job.Step) bool) int {
	n := 0
	for n < len(steps) && together(steps[n]) && (steps[n].Undoes == nil) == (steps[0].Undoes == nil) && steps[n].At == steps[0].At {
		n++
	}
	return n
}

// sectionTitle is the name of a section with its place; one without a name has its place
// alone, or nothing.
func sectionTitle(s *job.Section) string { return listed(s.Name, s.Place.Label) }

// listed are the texts that there are, with commas between them.
func listed(texts ...string) string {
	return strings.Join(slices.DeleteFunc(texts, func(t string) bool { return t == "" }), ", ")
}

// otherSheet is the line that sends the reader to the other sheet of work.
func (c *composer) otherSheet(s *job.Section) layout.Piece {
	sentence := c.W.Traveler.GoOn
	if s.Back {
		sentence = c.W.Reassembly.GoOn
	}
	text := c.Para(c.Span-4, []layout.Run{layout.T(layout.Strong, "▶ "+sentence.With(s.No, c.Page("section "+s.No)))}, layout.ParaOpts{})
	return layout.Piece{Block: text.Pad(0.6, 2, 0.6, 2).Border(layout.Rect{Weight: layout.Heavy}), Gap: 2}
}

// titled sets the title of a sheet of work before the heading of its first section, where it
// goes on below the other one; on a page of its own the plate in the head says it.
func (c *composer) titled(head layout.Piece, s *job.Section) layout.Piece {
	const between = 3
	if alone := head.Block; head.AtTop == nil {
		head.AtTop = &alone
	}
	plate := c.TitlePlate(c.Title)
	line := c.Para(c.Span-plate.W-between, c.sectionRuns(s, layout.Section, true), layout.ParaOpts{Ref: s.At}).Heading(2)
	row := layout.Above(0.3, layout.Middle(between, plate, line), c.Rule(layout.Heavy)).Pad(0, 0, 0.6, 0)
	head.Block, head.Gap = row.Anchored("section "+s.No), 4
	return head
}
