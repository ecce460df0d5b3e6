package templates

import (
	"bufio"
	"io"
	"matchmark/packs/job"
	"strconv"
	"strings"
)

// WriteOrder writes the order of work as text: every step, what binds it to the
// steps above it and why, and where the free ones may be moved to. The error is
// that of w.
func WriteOrder(w io.Writer, job *job.Job) error {
	c := &composer{job: job, w: english}
	out := bufio.NewWriter(w)
	reasons := job.Reasons()
	steps, free := 0, 0
	for _, s := range job.Sections {
		out.WriteString(fill(c.w.orderHead, s.No, sectionTitle(s)) + "\n")
		for _, st := range s.Steps {
			steps++
			out.WriteString("  " + stepLine(c, st) + "\n")
			for _, line := range c.bindLines(reasons[st]) {
				out.WriteString("      " + line + "\n")
			}
			if st.Free != nil {
				free++
				out.WriteString("      " + fill(c.w.free, c.freeWords(st.Free)) + "\n")
			}
		}
	}
	out.WriteString(fill(c.w.orderSum, strconv.Itoa(steps), strconv.Itoa(free)) + "\n")
	return out.Flush()
}

// stepLine is the number and name of a step with the beginning of its words.
func stepLine(c *composer, st *job.Step) string {
	const most = 60
	text := []rune(strings.ReplaceAll(c.stepText(st), "\u00a0", " "))
	if len(text) > most {
		text = append(text[:most], '…')
	}
	return fill(c.w.orderStep, stepName(st), string(text))
}

// stepName is the number of a step and the name that after: lines know it by.
func stepName(st *job.Step) string {
	if st.Key == "" || st.Undoes != nil {
		return st.No
	}
	return st.No + " " + st.Key
}

// bindLines words what binds a step, the nearest first.
func (c *composer) bindLines(binds []job.Bind) []string {
	var out []string
	for _, b := range binds {
		at := stepName(b.Before)
		switch b.Kind {
		case job.BoundAfter:
			line := fill(c.w.bindAfter, at)
			if b.Reason != "" {
				line = fill(c.w.because, line, b.Reason)
			}
			out = append(out, line)
		case job.BoundBelow:
			out = append(out, fill(c.w.bindBelow, at))
		case job.BoundHold:
			out = append(out, fill(c.w.bindHold, at))
		case job.BoundPart:
			out = append(out, fill(c.w.bindPart, at, b.Part.Name))
		case job.BoundJoint:
			out = append(out, fill(c.w.bindJoint, at, b.Part.Name))
		case job.BoundLost:
			out = append(out, fill(c.w.bindLost, at, b.Dim.Mark))
		case job.BoundReading:
			out = append(out, fill(c.w.bindReading, at, b.Dim.Mark))
		case job.BoundLock:
			out = append(out, fill(c.w.bindLock, at))
		case job.BoundHanging:
			out = append(out, fill(c.w.bindHanging, at))
		case job.BoundTools:
			out = append(out, fill(c.w.bindTools, at))
		case job.BoundOpening:
			out = append(out, fill(c.w.bindOpening, at, b.Opening.Mark()))
		case job.BoundEmpty:
			out = append(out, fill(c.w.bindEmpty, at, b.In.Mark))
		}
	}
	if len(out) == 0 {
		out = append(out, c.w.bindNothing)
	}
	return out
}
