package job

import "matchmark/packs/source"

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
}

// A Fastening is what a step loosens or tightens: a joint, or one part.
type Fastening struct {
	At    source.Pos
	Joint *Joint
	Part  *Part
	Final *Joint // tightened only while its fasteners are on for now: the joint that stays
	On    int    // then the number of fasteners that are on
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
