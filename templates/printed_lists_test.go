package templates_test

import (
	"regexp"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
	"matchmark/templates"
)

func limitText(l *reading.Limit) string { return templates.LimitText(l) }

// listed asks for a dimension on the list of all dimensions, and on the critical sheet.
func (w *wants) listed(d *job.Dim) {
	if d.In != nil {
		d = d.In
	}
	sheets := []string{"dimensions"}
	if d.Critical && d.Box.Form != reading.Grid {
		sheets = append(sheets, "critical")
	}
	for _, sheet := range sheets {
		where, row := d.Mark+" on the sheet "+sheet, w.p.rows[sheet+" "+d.Mark]
		w.add(where, row, d.What, "what is measured")
		limits := []*reading.Limit{d.Reuse, d.Repair}
		if len(d.LeftBy) == 0 {
			limits = append(limits, d.Left)
		}
		for _, l := range limits {
			if l != nil {
				w.add(where, row, limitText(l), "its limit")
			}
		}
		if sheet == "critical" && d.FoundAt != nil {
			w.add(where, row, d.FoundOut, "what is done as found")
		}
		for _, at := range d.ByLimit(d.LeftBy) {
			w.add(where, row, strings.Join(at.Names, ", ")+": "+strings.TrimSpace(d.Zone(at.Limit)+" "+limitText(at.Limit)), "its limit at some positions")
		}
	}
	if d.Left != nil || d.WatchedOnly() {
		w.add(d.Mark+" on the list of dimensions", w.p.rows["dimensions "+d.Mark], d.Source, "its source")
	}
	if d.Critical && len(d.LeftBy) > 0 && d.Box.Form == reading.Digits {
		for _, at := range d.ByLimit(d.LeftBy) {
			name := strings.Join(at.Names, ", ")
			row := squeeze(w.p.rows["critical "+d.Mark])
			n := strings.Count(row, squeeze(name))
			sides := 0
			for _, st := range []*job.Step{d.FoundAt, d.LeftAt} {
				if st != nil {
					sides++
				}
			}
			if n < 1+sides {
				w.add(d.Mark+" on the critical sheet", row, name+" once more", "boxes of its own for each limit")
			}
		}
	}
}

var ranges = regexp.MustCompile(`(R?\d+\.)\s*(\d+)\s*–\s*(R?\d+\.)\s*(\d+)`)

// unranged writes out what is printed as a range of steps: 4.17–4.19 as 4.17, 4.18, 4.19.
func unranged(row string) string {
	return ranges.ReplaceAllStringFunc(row, func(s string) string {
		m := ranges.FindStringSubmatch(s)
		from, _ := strconv.Atoi(m[2])
		to, _ := strconv.Atoi(m[4])
		var all []string
		for i := from; i <= to && m[1] == m[3]; i++ {
			all = append(all, m[1]+strconv.Itoa(i))
		}
		return strings.Join(all, ", ")
	})
}

// lists asks for containers, tags, counts, instruments, supplies, joints, lifts and heats.
func (w *wants) lists(jb *job.Job) {
	p := w.p
	for _, t := range jb.Tags {
		if t.Spare {
			continue
		}
		row, label := unranged(p.rows["register "+t.Mark]), p.tags[t.Code]
		for _, c := range job.Contents(t.In) {
			w.add(t.Mark+" on the register", row, strconv.Itoa(c.N)+" "+c.Name, "its contents")
		}
		for _, m := range t.In {
			w.add(t.Mark+" on the register", row, m.Step.No, "where it comes off")
			if m.OldOne() != nil && !t.Scrap && (!onRegister(label) || strings.Contains(squeeze(label), squeeze(m.Part.Name))) {
				w.add("the tag of "+t.Mark, label, m.Part.Name+" (old", "it does not go back")
			}
		}
		for _, m := range t.Out {
			w.add(t.Mark+" on the register", row, m.Step.No, "where it goes back")
		}
		for _, s := range t.Sets {
			w.add(t.Mark+" on the register", row, s.Mark, "its matched set")
		}
		if n := job.Pieces(t.All()); n > 0 {
			w.add(t.Mark+" on the register", row, strconv.Itoa(n)+" piece", "the pieces")
		}
		w.add("the tag of "+t.Mark, label, t.Keep, "how it is kept")
		w.add("the tag of "+t.Mark, label, t.Support, "what it lies on")
		if !t.Scrap {
			w.tagName(t, label)
			if t.Mass != nil {
				w.add("the tag of "+t.Mark, label, t.Mass.Print(), "what it weighs")
			}
		}
	}
	for _, k := range jb.Kinds() {
		w.add("the list of counts", p.sheets["counts"], k.Name, "a kind of parts")
		w.add("the list of counts", p.sheets["counts"], strconv.Itoa(k.Off), "its pieces")
	}
	for _, x := range jb.Supplies.Instruments {
		w.add("the gather list", p.sheets["gather"], x.Name, "an instrument")
		w.add("the gather list", p.sheets["gather"], x.Number, "its number")
		for _, q := range []*units.Quantity{x.High, x.Reads} {
			if q != nil {
				w.add("the gather list", p.sheets["gather"], q.Print(), "the end or the step of its scale")
			}
		}
	}
	for _, list := range [][]*job.Supply{jb.Supplies.Tools, jb.Supplies.Spares, jb.Supplies.Consumables} {
		for _, s := range list {
			for _, x := range []string{s.What, s.Count, s.Size, s.Note} {
				w.add("the gather list", p.sheets["gather"], x, "a supply")
			}
		}
	}
	for _, j := range jb.Joints {
		if len(j.Rounds) > 0 {
			for _, x := range []string{j.Mark, j.What, j.Source} {
				w.add("the tightening sheet", p.sheets["tightening"], x, "a joint")
			}
		}
	}
	for _, l := range jb.Lifts {
		for _, x := range []string{l.Mark, l.What, l.Note} {
			w.add("the lift sheet", p.sheets["lifts"], x, "a lift")
		}
	}
	for _, h := range jb.Heats {
		for _, x := range []string{h.Mark, h.What, h.Note} {
			w.add("the heat sheet", p.sheets["heats"], x, "a heat")
		}
	}
}

// onRegister reports whether a label has no room for all kinds of parts in its container
// and sends to the register: of those that it does not name it does not say which are old.
func onRegister(label string) bool {
	return strings.Contains(squeeze(label), squeeze("register no."))
}

// tagName asks for the name on a tag. The small label of a bag may have no room for it;
// then it must say what is in the bag.
func (w *wants) tagName(t *job.Tag, label string) {
	bare := t.Kind == job.BagLabel && t.Part == nil && !strings.Contains(squeeze(label), squeeze(t.Name))
	if !bare || len(t.In) == 0 {
		w.add("the tag of "+t.Mark, label, t.Name, "its name")
		return
	}
	for _, c := range job.Contents(t.In) {
		if !onRegister(label) {
			w.add("the tag of "+t.Mark, label, strconv.Itoa(c.N)+" "+c.Name, "what is in it, in the place of its name")
		}
	}
}

// safety asks for holds, permits, isolations, openings and cautions on their sheets.
func (w *wants) safety(jb *job.Job) {
	p := w.p
	for _, h := range jb.Holds {
		for _, x := range []string{h.What, h.Releases} {
			w.add(h.Mark+" on the list of holds", p.rows["holds "+h.Mark], x, "a hold")
		}
	}
	for _, x := range jb.Permits {
		w.add("the cautions", p.sheets["cautions"], x.What, "a permit")
		w.add("the cautions", p.sheets["cautions"], x.Note, "a permit")
	}
	for _, x := range jb.Isolations {
		for _, t := range []string{x.Point, x.Energy, x.State, x.Proved} {
			w.add("the isolations", p.sheets["isolations"], t, "an isolation")
		}
	}
	for _, o := range jb.Openings {
		w.add("the openings", p.sheets["openings"], o.What, "an opening")
		w.add("the openings", p.sheets["openings"], o.Cover, "what covers it")
	}
	for _, c := range jb.Cautions {
		if len(c.Steps) == 0 {
			continue
		}
		if c.FullIn != nil {
			c = c.FullIn
		}
		n := filled(jb, c)
		for _, t := range []string{n.Hazard, n.Result, n.Avoid, n.Rule} {
			w.add("the cautions", p.sheets["cautions"], t, "a caution")
		}
	}
	for _, s := range jb.Spared {
		w.add("the cautions", p.sheets["cautions"], s.Reason, "why a caution is left out")
	}
	for _, x := range jb.Deferred {
		w.add("the close-out", p.sheets["close-out"], x.When, "what waits")
	}
}
