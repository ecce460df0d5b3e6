package job

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/joint"
	"matchmark/packs/source"
)

// A Joint is a group of fasteners that are loosened and tightened together, at
// one place.
type Joint struct {
	At                         source.Pos
	Mark                       string // J1/DE
	Base                       string
	Place                      Place
	What                       string
	Parts                      []*Part // its fasteners
	Torque                     string  // as written, "120 N·m"; empty if not said
	NoValue                    string  // how tight where no torque is told; empty if not said
	Class                      string  // property class or grade of its fasteners; empty if not said
	Stages                     []string
	Lubricant, Pattern, Source string
	Says                       []Saying // what sources that differ say of the torque

	Spec   joint.Spec // what is written of it, for the calculation
	Asked  bool       // enough is written that it is meant to be worked out
	Hole   bool       // something of that cannot be read, which has been told
	Wrote  Wrote      // where the inputs of Spec and Layout stand
	Wanted string     // the preload that is wanted in place of a torque, as written
	Plan   *joint.Plan
	Layout *joint.Layout
	// SeenFrom is from where the layout is seen, Clock what is at its top.
	SeenFrom, Clock string
	// Inch says that a length of the layout was written in inches.
	Inch bool

	Result *joint.Result  // nil where it is not worked out
	Rounds []joint.Round  // the times that it is gone round
	Order  *joint.Pattern // nil where it has no layout
}

// Wrote tells where the inputs of a calculation were written, by their path in the
// words of its refusals: "friction.source", "feet[1].at".
type Wrote map[string]source.Pos

// Place is where an input was written: itself, or the nearest that it belongs to.
func (w Wrote) Place(field string, whole source.Pos) source.Pos {
	for field != "" {
		if at, ok := w[field]; ok && !at.IsZero() {
			return at
		}
		i := len(field) - 1
		for i > 0 && field[i] != '.' && field[i] != '[' {
			i--
		}
		field = field[:i]
	}
	return whole
}

// Count is how many fasteners a joint has.
func (j *Joint) Count() int {
	n := 0
	for _, p := range j.Parts {
		n += p.Count
	}
	return n
}

// Holes are the numbers of the holes of a joint in the order in which their fasteners are
// tightened, where the words of its order tell them: each of 1 to the number of its fasteners
// once, and no other number. Nil where they do not, or the order is drawn.
func (j *Joint) Holes() []int {
	if j.Order != nil {
		return nil
	}
	var out []int
	for _, text := range strings.FieldsFunc(j.Pattern, func(r rune) bool { return r < '0' || r > '9' }) {
		n, err := strconv.Atoi(text)
		if err != nil || n < 1 || n > j.Count() || slices.Contains(out, n) {
			return nil
		}
		out = append(out, n)
	}
	if len(out) != j.Count() {
		return nil
	}
	return out
}

// A Fastening is what a step loosens or tightens: a joint, or one part.
type Fastening struct {
	At    source.Pos
	Joint *Joint
	Part  *Part
	Final *Joint         // tightened only while its fasteners are on for now: the joint that stays
	On    int            // then the number of fasteners that are on
	Held  *joint.Setting // then how tight, where it is less than at last
}

// Mark is the printed key of what is loosened or tightened.
func (f Fastening) Mark() string {
	if f.Joint != nil {
		return f.Joint.Mark
	}
	return f.Part.Place.Mark(f.Part.Key)
}

// Name is what the mechanic calls it.
func (f Fastening) Name() string {
	if f.Joint != nil {
		return f.Joint.What
	}
	return f.Part.Name
}

// Parts lists the fasteners.
func (f Fastening) Parts() []*Part {
	if f.Joint != nil {
		return f.Joint.Parts
	}
	return []*Part{f.Part}
}

// Same reports whether both are one thing.
func (f Fastening) Same(g Fastening) bool { return f.Joint == g.Joint && f.Part == g.Part }
