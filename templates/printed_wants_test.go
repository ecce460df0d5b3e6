package templates_test

import (
	"cmp"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// A want is a text that has to be read in a place of the paper, or, if it must not, one
// that belongs to another place.
type want struct {
	where string // as a message names it
	text  string // what is read there, squeezed
	want  string
	why   string
	not   bool
}

// miss words what is wrong, empty if nothing is.
func (w want) miss() string {
	found := strings.Contains(w.text, squeeze(w.want))
	switch {
	case w.want == "" || found != w.not:
		return ""
	case w.not:
		return w.where + " says " + strconv.Quote(w.want) + ", which is " + w.why
	}
	return w.where + " does not say " + strconv.Quote(w.want) + ": " + w.why
}

// wants gathers what must be read.
type wants struct {
	p     *paper
	list  []want
	tight map[string]string // what has been squeezed
}

// squeezed squeezes a text once.
func (w *wants) squeezed(text string) string {
	s, ok := w.tight[text]
	if !ok {
		s = squeeze(text)
		w.tight[text] = s
	}
	return s
}

func (w *wants) add(where, text, what, why string) {
	w.list = append(w.list, want{where: where, text: w.squeezed(text), want: what, why: why})
}

func (w *wants) never(where, text, what, why string) {
	w.list = append(w.list, want{where: where, text: w.squeezed(text), want: what, why: why, not: true})
}

// allWants lists everything that a job holds with where it belongs.
func allWants(jb *job.Job, p *paper) []want {
	w := &wants{p: p, tight: map[string]string{}}
	w.frontSheet(jb)
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			if st.Later != "" && st.Undoes == nil {
				w.add("the close-out", p.sheets["close-out"], st.Do, "what waits")
			}
			w.step(jb, st)
		}
	}
	for _, d := range jb.Dims {
		w.listed(d)
	}
	w.lists(jb)
	w.safety(jb)
	return w.list
}

func (w *wants) frontSheet(jb *job.Job) {
	e, o := jb.Equipment, jb.Order
	for _, x := range []string{e.Tag, e.Name, e.Serial, e.Maker, e.Type, e.Location, o.Number, o.Title, o.Revision, o.Issued, o.Scope} {
		w.add("the front sheet", w.p.sheets["front"], x, "of the machine or the job")
	}
}

// step asks for all that one step says, does and moves.
func (w *wants) step(jb *job.Job, st *job.Step) {
	text := w.p.steps[st.No]
	all, where := text.above+text.text, "step "+st.No
	own := func(what, why string) { w.add(where, all, what, why) }
	own(st.Do, "what is done")
	if st.Missed != "" {
		own("easily missed: "+st.Missed, "what is easily missed")
	}
	for _, x := range st.Seen {
		own("seen: "+x.What, "what is seen to be so")
	}
	own(st.Note, "the remark") // was read and printed nowhere
	own(st.Check, "who checks as well")
	own(strings.TrimRight(st.OnHook, ". "), "what it hangs on")
	own(st.Otherwise, "what is done otherwise")
	own(st.StillOut, "what is done after the last try")
	for _, d := range st.After {
		own(d.Reason, "why it comes after "+d.Step.No)
	}
	for _, x := range st.Without {
		own(x.Reason, "why a guard is left out")
	}
	w.moves(jb, st, own)
	w.acts(jb, st, own)
	for _, c := range st.Cautions {
		n := filled(jb, c)
		own(n.Hazard, "a hazard")
		avoid := cmp.Or(n.Short, n.Avoid)
		if first, _, more := strings.Cut(avoid, ". "); more && saidBefore(st, c) {
			avoid = first + "." // a note that comes again may be cut to its first sentence
		}
		own(avoid, "how to keep clear of it")
	}
	if st.Table {
		w.tableRow(st, text)
		return
	}
	for _, d := range st.Measure {
		w.boxes(d, st, text, false)
	}
	for _, d := range st.Set {
		w.boxes(d, st, text, true)
	}
	for _, d := range st.Recall {
		own(d.Mark, "looked up")
		own(d.What, "looked up")
	}
}

// filled is a hazard note as it is printed: in those of the program stand the fire watch
// and the heavy mass of the site.
func filled(jb *job.Job, n *job.Caution) job.Caution {
	out := *n
	if n.Builtin {
		fill := strings.NewReplacer("{watch}", jb.Site.FireWatch.Print(), "{heavy}", jb.Site.Heavy.Print())
		for _, text := range []*string{&out.Hazard, &out.Result, &out.Short, &out.Avoid} {
			*text = fill.Replace(*text)
		}
	}
	return out
}

// saidBefore reports whether a note stands before an earlier step of the same section.
func saidBefore(st *job.Step, n *job.Caution) bool {
	for _, s := range st.Section.Steps {
		if s == st {
			return false
		}
		if waits := s.Later != "" && s.Undoes == nil; !waits && slices.Contains(s.Cautions, n) {
			return true
		}
	}
	return false
}

// moves asks for where pieces go and come from, how many, their tags, sets and ends.
func (w *wants) moves(jb *job.Job, st *job.Step, own func(string, string)) {
	for _, list := range [][]*job.Move{st.Remove, st.Fit, st.ForNow, st.TakeOut} {
		for _, c := range job.Contents(list) {
			own(c.Name, "is moved")
		}
	}
	for _, m := range st.Remove {
		own(markOf(m.To), "where "+m.Part.Name+" goes")
		if m.To.Spot != nil {
			own(m.To.Spot.What, "where "+m.To.Spot.Mark+" is")
		}
		if m.OldOne() != nil {
			own("old "+m.Part.Name, "does not go back")
		}
	}
	for _, m := range st.Fit {
		if !m.From.Scrap {
			own(markOf(m.From), "where "+m.Part.Name+" comes from")
		}
		if m.New {
			own("new, from stores: ", "a new "+m.Part.Name)
		}
		for _, r := range m.Part.WayRound {
			own(r.Mark+" faces "+r.Faces, "the way round of "+m.Part.Name)
		}
		if m.Part.Marked != nil {
			own("match marks of "+m.Part.Name, "its marks meet")
		}
	}
	for _, m := range append(append([]*job.Move{}, st.Remove...), st.Fit...) {
		if b := jb.TagOf(m.Part); b != nil {
			own(b.Mark, "the tag of "+m.Part.Name)
		}
		if m.Part.Set != nil {
			own(m.Part.Set.Mark, "the matched set of "+m.Part.Name)
		}
		if m.Part.Handed {
			hand := "right-hand thread"
			if m.Part.Left {
				hand = "left-hand thread"
			}
			own(m.Part.Name+": "+hand, "the hand of its thread")
		}
	}
}

// markOf is where a part is kept as printed.
func markOf(x job.Where) string {
	switch {
	case x.Scrap:
		return job.ScrapMark
	case x.Bench:
		return "bench"
	}
	return x.Mark()
}

// acts asks for what a step loosens, tightens, locks, opens, lifts, heats and writes down.
func (w *wants) acts(jb *job.Job, st *job.Step, own func(string, string)) {
	for _, list := range [][]job.Fastening{st.Loosen, st.Tighten} {
		for _, f := range list {
			if f.Joint != nil {
				own(f.Joint.Mark, "a joint")
				own(f.Joint.What, "a joint")
			} else if f.Part != nil {
				own(f.Part.Name, "is loosened or tightened")
			}
		}
	}
	for _, f := range st.Tighten {
		if f.Joint != nil {
			own(f.Joint.Torque, "the torque of "+f.Joint.Mark)
			own(f.Joint.NoValue, "how tight "+f.Joint.Mark+" becomes")
		}
	}
	for _, x := range append(append([]*job.Isolation{}, st.Lock...), st.Unlock...) {
		own(x.Point, "is locked or unlocked")
	}
	for _, x := range st.Permits {
		own(x.What, "a permit")
	}
	for _, o := range append(append([]*job.Opening{}, st.Open...), st.Close...) {
		own(o.What, "an opening")
	}
	for _, o := range st.Open {
		own(o.Cover, "what covers it")
	}
	for _, l := range st.Lifts {
		own(l.Mark, "a lift")
	}
	for _, h := range st.Heats {
		own(h.Mark, "a heat")
	}
	for _, p := range st.Marks {
		own("match mark", "is marked")
		own(p.Name, "is marked")
	}
	if st.Undoes == nil && !st.Back {
		for _, r := range st.WayRound {
			own(r.Mark+" faces "+r.Faces, "the way round")
		}
		for _, k := range st.Stacks {
			own(k.Mark, "a stack")
			own(k.What, "a stack")
			own(k.From, "from where a stack is counted")
		}
	}
	stops(st, own)
}

// stops asks for what a step judges, sees empty and holds for.
func stops(st *job.Step, own func(string, string)) {
	for _, m := range st.Judge {
		own(m.Mark, "a set that is judged")
		own(m.What, "a set that is judged")
	}
	for _, x := range st.Empty {
		own(x.In.Mark, "must be empty")
	}
	if h := st.Hold; h != nil {
		own(h.Mark, "a hold")
		own(h.What, "what must have been seen")
		own(h.Releases, "who releases it")
		if h.Witness {
			own("seen by: name and signature", "a witness")
		} else {
			own("released by: name and signature", "a hold")
		}
	}
}

// boxes asks for all that belongs to the boxes of a dimension at a step.
func (w *wants) boxes(d *job.Dim, st *job.Step, text *stepText, back bool) {
	where, block := d.Mark+" at "+st.No, ""
	if d.Sheet {
		where, block = d.Mark+" on the readings sheet", w.p.sheets["readings"]
	} else {
		block = text.frames(d, append(append(append([]*job.Dim{}, st.Measure...), st.Set...), st.Recall...))
	}
	w.told(d, where, block, back)
	for _, x := range places(d, st, back) {
		w.others(d, x, where, block)
	}
}

// places are the dimensions of the same mark at other places that have boxes of their
// own at the same step.
func places(d *job.Dim, st *job.Step, back bool) []*job.Dim {
	var list []*job.Dim
	for _, x := range st.Section.Steps {
		if x != st && (!x.Alike || x.At != st.At) {
			continue
		}
		if back {
			list = append(list, x.Set...)
		} else {
			list = append(list, x.Measure...)
		}
	}
	var out []*job.Dim
	for _, x := range list {
		if x != d && x.Base == d.Base && !d.Sheet {
			out = append(out, x)
		}
	}
	return out
}

// tableRow asks for the readings of a row of a table: in the row, or above all rows.
func (w *wants) tableRow(st *job.Step, text *stepText) {
	for i, list := range [][]*job.Dim{st.Measure, st.Set} {
		for _, d := range list {
			w.told(d, d.Mark+" in row "+st.No, text.above+text.text, i == 1)
			for _, s := range st.Section.Steps {
				if s == st || !s.Table || s.At != st.At {
					continue
				}
				for _, x := range append(append([]*job.Dim{}, s.Measure...), s.Set...) {
					if x.Base == d.Base {
						w.others(d, x, d.Mark+" in row "+st.No, text.above+text.text)
					}
				}
			}
		}
	}
}

// texts are the words of a dimension that its author may write by place.
func texts(d *job.Dim) []string {
	return []string{d.What, d.State.With, d.State.Pushed, d.State.Load, d.State.Plane, d.Over, d.Under, d.Out, d.Source}
}

// told asks for the words and numbers of a dimension in its block.
func (w *wants) told(d *job.Dim, where, block string, back bool) {
	own := func(what, why string) { w.add(where, block, what, why) }
	for _, x := range texts(d) {
		if (x == d.Over || x == d.Under || x == d.Out || x == d.Source) && d.Left == nil && !d.WatchedOnly() {
			continue // nothing is judged
		}
		own(x, "said of "+d.Mark)
	}
	for _, x := range d.Merged {
		for _, t := range texts(x) {
			own(t, "said of "+x.Mark)
		}
	}
	own(d.Note, "the note of "+d.Mark)
	if d.By != nil && !d.ByHand() {
		own(d.By.Name, "what it is read with")
	}
	if d.NotSourced() && !back {
		own("LIMIT NOT SOURCED", "no source")
	}
	if d.Adjuster != nil && d.Adjuster.LeaveAlone != "" {
		own(d.Adjuster.LeaveAlone, "why it is left alone")
	}
	if d.BackOff != nil && back {
		own(d.BackOff.Text, "how far it is backed off")
	}
	if d.LastChance != nil && !back && d.FoundAt != nil {
		own("LAST CHANCE", "it is gone after "+d.LastChance.No)
	}
	for _, s := range d.Says {
		own(s.Text, "what a source says")
	}
	w.limits(d, where, block, back)
}

// limits asks for the numbers of the limits, at each position its own.
func (w *wants) limits(d *job.Dim, where, block string, back bool) {
	if d.Left == nil && back {
		return
	}
	late := d.FoundWork.Late != nil && !back
	for _, l := range []*reading.Limit{d.Left, d.Reuse, d.Repair} {
		switch {
		case l == nil, l == d.Left && len(d.LeftBy) > 0, late && l != d.Left:
			continue
		case !back && (late || l == d.Left && d.FoundIsRecorded()):
			w.add(where, block, limitText(l), "how it is to be left") // worked out later
			continue
		}
		for _, n := range numbers(l) {
			w.add(where, block, n, "of the limit "+l.Text())
		}
	}
	if d.WatchedOnly() && !back && len(d.FoundBy) == 0 {
		for _, n := range numbers(d.Found) {
			w.add(where, block, n, "of the limit "+d.Found.Text())
		}
	}
	by := d.LeftBy
	if d.Left == nil {
		by = d.FoundBy
	}
	for _, at := range d.ByLimit(by) {
		w.add(where, block, strings.Join(at.Names, ", ")+": "+strings.TrimSpace(d.Zone(at.Limit)+" "+main(at.Limit)), "the limit at some positions")
	}
	if tabled := []*job.Step{d.FoundAt, d.LeftAt}[map[bool]int{true: 1}[back]]; tabled != nil && tabled.Table {
		return // the verdicts of all readings stand in one row
	}
	if judged := d.Judged() && (back && !d.Left.NeedsFound() || !d.FoundIsRecorded()); judged && !late && d.Reuse == nil && d.Repair == nil {
		n := max(len(d.ByLimit(d.LeftBy)), 1)
		if got := strings.Count(block, "not OK"); block != "" && got < n && !d.Sheet {
			w.add(where, block, strconv.Itoa(n)+" verdicts", "each limit is judged by itself")
		}
	} else if d.Left != nil && !back && !d.Sheet && d.FoundIsRecorded() && d.Reuse == nil {
		w.never(where, block, "not OK", "a verdict on what is only recorded")
	}
}

// main is the main line of a limit in words.
func main(l *reading.Limit) string { return limitText(l) }

var number = regexp.MustCompile(`[-+]?\d+(?:[.]\d+)?(?:[-/]\d+)*(?:/\d+)?`)

// numbers are the numbers that a limit is written with, as they stand on paper: without
// the marks of readings, and of a size that is worked out without its sign.
func numbers(l *reading.Limit) []string {
	text := l.Text()
	for _, m := range l.Marks() {
		text = strings.ReplaceAll(text, string(m), "")
	}
	if l.Kind != reading.Measured {
		return nil
	}
	var out []string
	for _, n := range number.FindAllString(text, -1) {
		n = strings.TrimLeft(n, "+-")
		out = append(out, n)
	}
	return out
}

// others sees that a block does not say what is true of another place only.
func (w *wants) others(d, x *job.Dim, where, block string) {
	mine := strings.Join(append(texts(d), d.Note), "\n")
	other := texts(x)
	for i, t := range texts(d) {
		if other[i] != t && other[i] != "" && len(other[i]) > 4 && !strings.Contains(squeeze(mine), squeeze(other[i])) {
			w.never(where, block, other[i], "said of "+x.Mark)
		}
	}
	for _, pair := range [][2]*reading.Limit{{d.Left, x.Left}, {d.Reuse, x.Reuse}, {d.Repair, x.Repair}} {
		if pair[0] == nil || pair[1] == nil || pair[0].Text() == pair[1].Text() {
			continue
		}
		text := limitText(pair[1])
		if text != "" && !slices.ContainsFunc(beside(d), func(y *job.Dim) bool { return mentions(y, text) }) {
			w.never(where, block, text, "the limit of "+x.Mark)
		}
	}
}

// beside are the dimensions that are read at the same steps as one.
func beside(d *job.Dim) []*job.Dim {
	out := []*job.Dim{d}
	for _, st := range []*job.Step{d.FoundAt, d.LeftAt} {
		if st != nil && st.Table {
			out = append(append(out, st.Measure...), st.Set...)
		}
	}
	return out
}

// mentions reports whether a limit in words is one of a dimension's own.
func mentions(d *job.Dim, text string) bool {
	for _, l := range d.Limits() {
		if strings.Contains(squeeze(limitText(l)), squeeze(text)) {
			return true
		}
	}
	return false
}
