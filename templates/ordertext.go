package templates

import (
	"bufio"
	"io"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/step"
	"matchmark/templates/words"
)

// WriteOrder writes the order of work as text: every step, what binds it to the
// steps above it and why, and where the free ones may be moved to. The error is
// that of w.
func WriteOrder(w io.Writer, job *job.Job) error {
	c := &composer{Composer: &block.Composer{Job: job, W: words.English}}
	out := bufio.NewWriter(w)
	reasons := job.Reasons()
	steps, free := 0, 0
	for _, s := range job.Sections {
		head := s.No
		if title := sectionTitle(s); title != "" {
			head = c.W.Order.Section.With(s.No, title)
		}
		out.WriteString(head + "\n")
		for _, st := range s.Steps {
			steps++
			out.WriteString("  " + stepLine(c, st) + "\n")
			for _, line := range c.bindLines(st, reasons[st]) {
				out.WriteString("      " + line + "\n")
			}
			if st.Free != nil {
				free++
				out.WriteString("      " + c.W.Order.Free.With(step.FreeWords(c.Composer, st.Free)) + "\n")
			}
		}
	}
	out.WriteString(c.W.Order.Sum.With(strconv.Itoa(steps), strconv.Itoa(free)) + "\n")
	return out.Flush()
}

// stepLine is the number and name of a step with the beginning of its words.
func stepLine(c *composer, st *job.Step) string {
	const most = 60
	text := []rune(strings.ReplaceAll(step.Text(c.Composer, st), "\u00a0", " "))
	if len(text) > most {
		text = append(text[:most], '…')
	}
	return c.W.Order.Step.With(stepName(st), string(text))
}

// stepName is the number of a step and the name that after: lines know it by.
func stepName(st *job.Step) string {
	if st.Key == "" || st.Undoes != nil {
		return st.No
	}
	return st.No + " " + st.Key
}

// bindLines words what binds a step, the nearest first.
func (c *composer) bindLines(st *job.Step, binds []job.Bind) []string {
	var out []string
	for _, b := range st.Runs(binds) {
		at := stepName(b.Before)
		if b.Steps > 1 {
			at = c.W.Order.Span.With(stepName(b.From), at)
		}
		if b.Loop {
			out = append(out, c.W.Order.Loop.With(at))
			continue
		}
		switch b.Kind {
		case job.BoundAfter:
			line := c.W.Order.After.With(at)
			if b.Reason != "" {
				line = c.W.Order.Because.With(line, b.Reason)
			}
			out = append(out, line)
		case job.BoundBelow:
			out = append(out, c.W.Order.Below.With(at))
		case job.BoundHold:
			out = append(out, c.W.Order.Hold.With(at))
		case job.BoundPart:
			out = append(out, c.W.Order.Part.With(at, b.Part.Name))
		case job.BoundJoint:
			out = append(out, c.W.Order.Joint.With(at, b.Part.Name))
		case job.BoundLost:
			out = append(out, c.W.Order.Destroyed.With(at, b.Dim.Mark))
		case job.BoundReading:
			out = append(out, c.W.Order.Reading.With(at, b.Dim.Mark))
		case job.BoundLock:
			out = append(out, c.W.Order.Lock.With(at))
		case job.BoundBehind:
			out = append(out, c.W.Order.Behind.With(at, b.Part.Name, b.Front.Name))
		case job.BoundBack:
			out = append(out, c.W.Order.Back.With(at, b.Part.Name))
		case job.BoundJudged:
			out = append(out, c.W.Order.Judged.With(at, b.Set.Mark))
		case job.BoundLater:
			out = append(out, c.W.Order.Later.With(at))
		case job.BoundHanging:
			out = append(out, c.W.Order.Hanging.With(at))
		case job.BoundTools:
			out = append(out, c.W.Order.Tools.With(at))
		case job.BoundPermit:
			out = append(out, c.W.Order.Permit.With(at, b.Permit.What))
		case job.BoundOpening:
			out = append(out, c.W.Order.Opening.With(at, b.Opening.Mark()))
		case job.BoundEmpty:
			out = append(out, c.W.Order.Empty.With(at, b.In.Mark))
		}
	}
	if len(out) == 0 {
		out = append(out, c.W.Order.Nothing)
	}
	return out
}
