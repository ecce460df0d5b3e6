package block

import (
	"strconv"
	"strings"

	"matchmark/packs/job"
)

// RoleWorking is the role of the lines that tell how figures were worked out, several things
// together.
const RoleWorking = "working"

// StepRef is a step with its page: 3.2 p. 9.
func (c *Composer) StepRef(st *job.Step) string {
	return c.W.Common.StepPage.With(st.No, c.Page("step "+st.No))
}

// StepRefs lists steps with their pages.
func (c *Composer) StepRefs(list []*job.Step) string {
	var out []string
	for _, st := range list {
		out = append(out, c.StepRef(st))
	}
	return strings.Join(out, ", ")
}

// PartList names the parts of some moves with their numbers: 4 Hex bolt, 1 Cover. Named, if
// not nil, says how a part is called here by its name.
func PartList(ms []*job.Move, named func(name string) string) string {
	var out []string
	for _, x := range job.Contents(ms) {
		name := x.Name
		if named != nil {
			name = named(name)
		}
		out = append(out, strconv.Itoa(x.N)+"\u00a0"+name)
	}
	return strings.Join(out, ", ")
}

// InstrumentPiece is the name of one of several instruments alike: Dial gauge, 2 of 2.
func InstrumentPiece(c *Composer, in *job.Instrument, piece int) string {
	return in.Name + ", " + c.W.Common.PieceOf.With(strconv.Itoa(piece), strconv.Itoa(in.Count))
}
