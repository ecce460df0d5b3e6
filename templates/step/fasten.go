package step

import (
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/jointsheet"
)

// loosenLines are the lines of what a step loosens, each with a box to tick: a joint
// that is half loose at the end of a shift must show on paper.
func loosenLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, fs := range told(c, st.Loosen, c.W.Step.Loosen, false) {
		f, runs := fs[0], fastenWords(c, c.W.Step.Loosen, fs, false)
		if len(fs) > 1 {
			out = append(out, joinedLine(c, st, fs, runs, c.W.Step.IsLoose, width))
		} else {
			out = append(out, turned(tickLine(c, runs, c.W.Step.IsLoose, f.At, width), st, f))
		}
	}
	return out
}

// turned is a block that says that a step turns a joint, by which the joint's sheet finds it.
func turned(b layout.Block, st *job.Step, f job.Fastening) layout.Block {
	if f.Joint == nil {
		return b
	}
	return b.Anchored(jointsheet.TurnAnchor(f.Joint, st))
}

// tightenLines are the lines of what a step tightens, with a box to tick or one a stage.
func tightenLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, fs := range told(c, st.Tighten, c.W.Step.Tighten, true) {
		f, runs := fs[0], fastenWords(c, c.W.Step.Tighten, fs, true)
		staged := f.Joint != nil && len(f.Joint.Rounds) > 1 && f.Held == nil
		switch {
		case len(fs) > 1 && staged:
			out = append(out, joinedStages(c, st, fs, runs, width))
		case len(fs) > 1:
			out = append(out, joinedLine(c, st, fs, runs, c.W.Step.IsTight, width))
		case staged:
			out = append(out, turned(stageTicks(c, f, width), st, f))
		default:
			out = append(out, turned(tickLine(c, runs, c.W.Step.IsTight, f.At, width), st, f))
		}
		if f.Joint != nil {
			// The sources of a torque that differ are told as those of a limit are.
			out = append(out, dimension.SourcesDiffer(c, &job.Dim{At: f.At, Says: f.Joint.Says}, width)...)
		}
	}
	return out
}

// stageTicks is a joint that is tightened in stages: one box to tick for each, since
// half of the stages done looks like all of them. They stand behind its words, or below where
// that is lower.
func stageTicks(c *block.Composer, f job.Fastening, width layout.Mm) layout.Block {
	runs := fastenRuns(c, c.W.Step.Tighten, f, true)
	below := layout.Above(1, c.Para(width, runs, layout.ParaOpts{Ref: f.At}), stageRow(c, f, width))
	row := stageRow(c, f, width)
	room := width - row.W - textGap
	if room < leastShare || row.H > lowRow {
		return below
	}
	words := c.Para(room, runs, layout.ParaOpts{Ref: f.At})
	words.W = room
	if beside := layout.Middle(textGap, words, row); len(words.Misfits()) == 0 && beside.H < below.H-shareSaves {
		return beside
	}
	return below
}

// stageRow are the boxes to tick of the stages of a joint.
func stageRow(c *block.Composer, f job.Fastening, width layout.Mm) layout.Block {
	return block.FlowMiddle(append([]layout.Block{c.Words(layout.Sub, c.W.Step.Stages)}, jointsheet.Ticks(c, f.Joint, f.At)...), width)
}

// stagesApart are the words and the boxes of a step that tightens one joint, in stages; nil
// for any other.
func stagesApart(c *block.Composer, st *job.Step) *jointsheet.Apart {
	if len(st.Tighten) != 1 || st.Tighten[0].Joint == nil || len(st.Tighten[0].Joint.Rounds) < 2 || len(st.Tighten[0].Joint.Says) > 0 || st.Tighten[0].Held != nil {
		return nil
	}
	f := st.Tighten[0]
	return &jointsheet.Apart{
		Words: func(width layout.Mm) []layout.Block {
			return []layout.Block{turned(c.Para(width, fastenRuns(c, c.W.Step.Tighten, f, true), layout.ParaOpts{Ref: f.At}), st, f)}
		},
		Ticks: func(width layout.Mm) layout.Block { return stageRow(c, f, width) },
	}
}

// fastenRuns words one joint or part: its mark, what it is, and how tight it
// becomes.
func fastenRuns(c *block.Composer, verb string, f job.Fastening, tight bool) []layout.Run {
	return fastenWords(c, verb, []job.Fastening{f}, tight)
}

// fastenWords words a part, or a joint at one place or at several, by their marks.
func fastenWords(c *block.Composer, verb string, fs []job.Fastening, tight bool) []layout.Run {
	f := fs[0]
	runs := []layout.Run{layout.T(layout.Body, verb+" ")}
	if f.Joint == nil {
		runs = append(runs, layout.T(layout.Body, strconv.Itoa(f.Part.Count)+"\u00a0"+f.Part.Name))
		return append(runs, turning(c, []*job.Part{f.Part}, !tight)...)
	}
	j := f.Joint
	n := 0
	for _, p := range j.Parts {
		n += p.Count
	}
	if f.Final != nil {
		n = f.On
	}
	pieces := c.W.Pieces(n)
	if len(fs) > 1 {
		pieces = c.W.Step.EachOfThese.With(pieces)
	}
	for i, x := range fs {
		if i > 0 {
			runs = append(runs, layout.T(layout.Body, " "))
		}
		runs = append(runs, layout.Run{Text: x.Joint.Mark, Style: layout.Strong, Deco: layout.Boxed})
	}
	runs = append(runs, layout.T(layout.Body, " "+j.What+" ("+pieces+")"))
	turned := turning(c, j.Parts, !tight)
	runs = append(runs, turned...)
	if !tight {
		if back := jointsheet.Loosening(c, j); back != "" {
			runs = append(runs, layout.T(layout.Sub, " · "+back))
		}
		return runs
	}
	return append(runs, tightRuns(c, f, len(turned) > 0)...)
}

// tightRuns words how tight a joint becomes: its torque, stages, threads and order, the source
// of these and where they are ticked; said tells that which way it is turned stands before.
func tightRuns(c *block.Composer, f job.Fastening, said bool) []layout.Run {
	var runs []layout.Run
	j := f.Joint
	if torque := jointsheet.TorqueOf(f); torque != "" {
		apart := " "
		if said {
			apart = " · " // which way it is turned ends with where it is seen from
		}
		runs = append(runs, layout.T(layout.Strong, apart+c.W.Step.ToTorque.With(torque)))
		if turn := jointsheet.LastTurn(c, j); turn != "" && f.Held == nil {
			runs = append(runs, layout.T(layout.Strong, ", "+turn))
		}
	}
	if j.NoValue != "" && f.Held == nil {
		runs = append(runs, layout.T(layout.Strong, " · "+c.W.Step.NoTorque.With(j.NoValue)))
	}
	var more []string
	if len(j.Stages) == 1 && f.Held == nil {
		more = append(more, c.W.Step.Stages+" "+j.Stages[0])
	}
	if j.Lubricant != "" {
		more = append(more, c.W.Step.Oiled.With(j.Lubricant))
	}
	if j.Pattern != "" {
		more = append(more, c.W.Step.InOrder.With(j.Pattern))
	}
	if j.Source != "" && f.Held == nil { // what it is held with may be from elsewhere
		more = append(more, c.W.Common.Source.With(j.Source))
	}
	switch {
	case f.Held == nil:
		more = append(more, jointsheet.TicksAt(c, j))
	case jointsheet.Held(f):
		more = append(more, jointsheet.HeldAt(c, j))
	}
	if len(more) > 0 {
		runs = append(runs, layout.T(layout.Sub, " · "+strings.Join(more, " · ")))
	}
	if f.Final != nil {
		runs = append(runs, layout.T(layout.Body, "  "), layout.Run{Text: c.W.Step.TightForNow.With(finalText(c, f)), Style: layout.SubBold, Deco: layout.Inverse})
	}
	return runs
}

// finalText names the joint that stays, with how tight it becomes: that it has no value is told
// here where its screws are held with one for now.
func finalText(c *block.Composer, f job.Fastening) string {
	text := strings.TrimSpace(f.Final.Mark + " " + f.Final.Torque)
	if f.Held != nil && f.Final.NoValue != "" {
		text += ", " + c.W.Step.NoTorque.With(f.Final.NoValue)
	}
	return text
}

// tickLine is a line with a box to tick at its end.
func tickLine(c *block.Composer, runs []layout.Run, tick string, at layout.Ref, width layout.Mm) layout.Block {
	box := c.Tick(layout.Sub, tick, at)
	line := c.Para(width-box.W-textGap, runs, layout.ParaOpts{Ref: at})
	line.W = width - box.W - textGap
	return layout.Beside(textGap, line, box).Pad(tickPad, 0, tickPad, 0)
}

// state is what stands before the words of a step: its own place, on the bench,
// how many people.
func state(c *block.Composer, st *job.Step) []layout.Run {
	var runs []layout.Run
	add := func(text string) {
		if text != "" {
			runs = append(runs, layout.Run{Text: text, Style: layout.SubBold, Deco: layout.Boxed}, layout.T(layout.Body, "  "))
		}
	}
	add(ownPlace(st))
	if st.Bench {
		add(c.W.Step.AtBench)
	}
	if n := st.CrewTold(); n > 1 {
		add(c.W.Step.People.With(strconv.Itoa(n)))
	}
	return runs
}

// ownPlace names the place of a step that its section does not name: the one of
// several valves of a line.
func ownPlace(st *job.Step) string {
	p, s := st.Place, st.Section.Place
	if p.Label == s.Label {
		return ""
	}
	name, label := strings.TrimPrefix(p.Name, s.Name+", "), strings.TrimPrefix(p.Label, s.Label+"-")
	if name == label || strings.HasSuffix(name, " "+label) {
		return name
	}
	return name + " " + label
}
