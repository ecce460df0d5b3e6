package revise

import (
	"slices"
	"strconv"

	"matchmark/packs/job"
)

// steps lists the steps of a job with what they say.
func steps(j *job.Job) []thing {
	var out []thing
	seen := map[string]int{}
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			t := thing{id: stepID(st), no: st.No, name: "step " + st.No + " " + st.Place.Mark(keyOf(st)), lines: stepLines(st), step: st}
			seen[t.id]++
			if n := seen[t.id]; n > 1 {
				t.id += " " + strconv.Itoa(n) // put back in several rows
			}
			out = append(out, t)
		}
	}
	return out
}

// keyOf is the key of a step, of a generated row that of the step that it undoes.
func keyOf(st *job.Step) string {
	if st.Key == "" && st.Undoes != nil {
		return st.Undoes.Key
	}
	return st.Key
}

// stepID is what a step keeps in every revision.
func stepID(st *job.Step) string {
	id := st.Place.Mark(keyOf(st))
	if st.Undoes != nil {
		return "back of " + st.Undoes.Section.Title + "/" + id
	}
	if st.Section != nil {
		id = st.Section.Title + "/" + id
	}
	return id
}

// stepLines are what a step says, without the numbers of steps.
func stepLines(st *job.Step) []line {
	var l lines
	l.add("do", st.Do)
	l.add("measures", dimMarks(st.Measure)...)
	l.add("sets", dimMarks(st.Set)...)
	l.add("takes off", moves(st.Remove, func(m *job.Move) string { return m.To.Mark() })...)
	l.add("puts on", moves(st.Fit, func(m *job.Move) string { return m.From.Mark() })...)
	for _, m := range st.Fit {
		if m.Part == nil || m.New || m.Part.Renew == "always" || m.Part.Renew == "never" {
			continue
		}
		l.add("renewed "+m.Part.Place.Mark(m.Part.Name), m.Part.Renew) // printed where it goes back
	}
	l.add("for now", moves(st.ForNow, func(m *job.Move) string { return "" })...)
	l.add("out again", moves(st.TakeOut, func(m *job.Move) string { return "" })...)
	var empty, lifts []string
	for _, e := range st.Empty {
		if e.In != nil {
			empty = append(empty, e.In.Mark)
		}
	}
	l.add("loosens", fastenings(st.Loosen)...)
	l.add("tightens", fastenings(st.Tighten)...)
	l.add("must be empty", empty...)
	for _, x := range st.Lifts {
		lifts = append(lifts, x.Mark)
	}
	l.add("lifts", lifts...)
	for i, x := range st.Seen {
		l.add("is seen "+strconv.Itoa(i+1), x.What)
	}
	l.add("easily missed", st.Missed)
	l.add("remark", st.Note)
	l.add("second check", st.Check)
	if st.People > 0 {
		l.add("people", strconv.Itoa(st.People))
	}
	for _, m := range st.Fit {
		if m.Part != nil {
			l.tell(m.Part.Name, m.Part.WayRound)
		}
	}
	for _, f := range st.Tighten {
		if f.Joint != nil {
			l.tell(f.Joint.Mark, *f.Joint)
		}
	}
	for _, x := range st.Lifts {
		l.tell(x.Mark, *x)
		l.add(x.Mark+" upended on", x.UpendedOn())
	}
	l.across(st)
	l.add("in the order", order(st)...)
	l.tell("", *st)
	return l
}

// across adds what the marks of a step stand across a joint with.
func (l *lines) across(st *job.Step) {
	for _, p := range slices.Concat(st.Marks, st.Meet) {
		if p.Across != nil {
			l.add("the mark of "+p.Place.Mark(p.Name)+" is across", partSays(p.Across))
		}
	}
}

// order names what a step is done to, in its order: a reading below what parts its faces is
// another than one above it.
func order(st *job.Step) []string {
	var out []string
	for _, a := range st.Acts() {
		switch {
		case a.Dim != nil:
			out = append(out, a.Dim.Mark)
		case a.Move != nil && a.Move.Part != nil:
			out = append(out, a.Move.Part.Place.Mark(a.Move.Part.Key))
		case a.Grip.Joint != nil || a.Grip.Part != nil:
			out = append(out, a.Grip.Mark())
		case a.Opening != nil:
			out = append(out, a.Opening.Mark())
		}
	}
	return out
}

// fastenings are what is loosened or tightened, with how many there are.
func fastenings(fs []job.Fastening) []string {
	var out []string
	for _, f := range fs {
		n := 0
		for _, p := range f.Parts() {
			n += p.Count
		}
		out = append(out, f.Mark()+" "+f.Name()+" ("+strconv.Itoa(n)+")")
	}
	return out
}

// moves lists pieces with where they go or come from.
func moves(ms []*job.Move, where func(*job.Move) string) []string {
	var out []string
	for _, m := range ms {
		if m.Part == nil {
			continue
		}
		text := strconv.Itoa(m.N) + " " + partSays(m.Part)
		if m.New {
			text += ", new"
		}
		if w := where(m); w != "" {
			text += " (" + w + ")"
		}
		out = append(out, text)
	}
	return out
}

func dimMarks(ds []*job.Dim) []string {
	var out []string
	for _, d := range ds {
		out = append(out, d.Mark)
	}
	return out
}

// readings lists the dimensions of a job with what is said of them.
func readings(j *job.Job) []thing {
	var out []thing
	for _, d := range j.Dims {
		var l lines
		l.add("what", d.What)
		l.add("from", face(d.From))
		l.add("to", face(d.To))
		l.add("of", face(d.Of))
		l.add("found", d.Wrote.Found.Value)
		if lim := d.Left; lim != nil {
			l.add("limit", lim.Text())
		}
		l.add("reuse", d.Wrote.Reuse.Value)
		l.add("repair", d.Wrote.Repair.Value)
		l.add("worked out", d.Wrote.Formula.Value)
		l.add("boxes", strconv.Itoa(d.Positions.Boxes()))
		l.add("over", d.Over)
		l.add("under", d.Under)
		l.add("out", d.Out)
		l.add("out as found", d.FoundOut)
		l.add("source", d.Source)
		if d.By != nil {
			in := *d.By
			l.add("instrument", takenWith(d))
			in.Name = "" // said with its piece
			l.tell("instrument", in)
		}
		if d.LastChance != nil {
			l.add("last chance", stepID(d.LastChance))
		}
		if d.Adjuster != nil {
			l.add("left alone", d.Adjuster.LeaveAlone)
		}
		l.tell("", *d)
		out = append(out, thing{id: d.Mark, name: d.Mark + " " + d.What, lines: l, dim: d})
	}
	return out
}

// takenWith is the instrument of a reading, with which of several alike it is.
func takenWith(d *job.Dim) string {
	switch {
	case d.By.Count < 2:
		return d.By.Name
	case d.ByPiece == 0:
		return d.By.Name + ", all " + strconv.Itoa(d.By.Count)
	}
	return d.By.Name + ", " + strconv.Itoa(d.ByPiece) + " of " + strconv.Itoa(d.By.Count)
}

// face is a face in words.
func face(f job.Face) string {
	if f.Part == nil {
		return f.Name
	}
	return f.Part.Name + " " + f.Name
}
