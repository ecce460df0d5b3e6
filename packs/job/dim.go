package job

import (
	"slices"

	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Face is one face of a part.
type Face struct {
	Part *Part
	Name string
}

// A Dim is one dimension at one place.
type Dim struct {
	At               source.Pos
	Mark             string // D7/DE
	Base             string // D7
	Place            Place
	What             string
	Kind             string
	From, To         Face
	Of               Face
	Positions        Positions
	State            State
	ViewedFrom       string
	By               *Instrument
	ByPiece          int              // which of its pieces, from 1; 0 where that is not said
	Found            *reading.Limit   // how the as-found box is written, if said
	Left             *reading.Limit   // what must stand at closing, nil if only found
	FoundBy, LeftBy  []*reading.Limit // one a name of Positions.Names where they differ; Left is then the first of them
	Reuse, Repair    *reading.Limit   // how far an old part may go back, and be mended, with the other end of Left where that is a size
	Worn, Mended     *reading.Limit   // the two as they are written
	Box              reading.Box      // the write-in box of one reading
	Warm             *Warm            // correction to 20 °C, nil if none is wanted
	Spare            int              // boxes left free
	Over, Under, Out string
	FoundOut         string // what is done as found, in place of these three
	Source           string
	Says             []Saying // sources that differ
	Note             string
	WhyCoarse        string  // why an instrument with so coarse a step will do
	Critical         bool    // stands on the sheet of critical dimensions
	LastChance       *Step   // the step that destroys it, nil if none does
	LostAt           []*Step // all steps that destroy it, the first of them LastChance
	LostVerb         Verb    // the act of LastChance that destroys it; DoPermit where the whole step does
	OneSided         bool    // said to be set only, and not measured as found

	Merged []*Dim // of a merged one: the dimensions it stands for, in the order of its boxes
	In     *Dim   // the merged one that prints it, nil if it prints itself
	Sheet  bool   // its boxes stand on a sheet of their own
	// CountedFrom is where the counting of the places of a merged one starts.
	CountedFrom string

	Zones map[*reading.Limit]string

	Adjuster *Part           // the part that sets it
	PerTurn  *units.Quantity // what one turn of the adjuster moves it
	PerFlat  *units.Quantity // what one flat of the adjuster moves it
	BackOff  *BackOff        // how far the adjuster is turned back after it touches
	Shims    *Shimmed        // the shims that it is the thickness of

	FoundAt *Step // where it is measured before parting
	LeftAt  *Step // where it is set in putting back

	FoundNamed, LeftNamed source.Pos // where a step names it; zero where a generated row does
	Wrote                 Lines
	Hint                  reading.Hint // what is known of its size besides its limits
	LostBy                []LostBy     // what ends it besides its faces
	LostByNothing         bool         // the author says that no step of the job ends it
	Refs                  []Ref        // the readings that it is worked out from, or its limits are

	Worked
}

// An Instrument is what a reading is taken with.
type Instrument struct {
	At                source.Pos
	Key, Name, Number string
	Count             int             // how many are used at once, 1 or more
	Low, High, Reads  *units.Quantity // range and smallest reading
	ForDims           bool            // the definition names it at a dimension, of this machine or another
}

// A State is what must hold while a reading is taken; what is not said is empty.
type State struct {
	With   string // in the author's words
	Pushed string // which way the moving part is pushed
	Load   string
	Plane  string
	Hot    bool   // taken hot
	Cold   bool   // taken cold
	OnThe  string // "diameter" or "radius"
}

// Warm is the correction of a reading of a warm part: PerDegree is taken off for
// each degree over At.
type Warm struct {
	Material  string
	PerDegree units.Quantity // length, to three figures
	At        units.Quantity // 20 °C, or 68 °F for a size in inches
	Source    string         // of the expansion
}

// A Saying is what one of several sources that differ says of a limit.
type Saying struct {
	Source, Text, Note string
	Used               bool
	Hold               *Hold // at which it was chosen, nil if that is not said
}

// Lines are the lines of a dimension as written, at its place.
type Lines struct{ Found, Left, Reuse, Repair, Formula, By source.Text }

// A LostBy is a step or a part that the author names as the end of a reading.
type LostBy struct {
	At   source.Pos
	Step *Step
	Part *Part
}

// A Ref is a reading that a line names: one dimension, or those of several places.
type Ref struct {
	Mark reading.Mark
	Dims []*Dim
}

// Ref lists the dimensions that a mark stands for as seen from d; none for a mark
// that no reading has.
func (d *Dim) Ref(m reading.Mark) []*Dim {
	for _, r := range d.Refs {
		if r.Mark == m {
			return r.Dims
		}
	}
	return nil
}

// FaceParts are the parts that its faces are on.
func (d *Dim) FaceParts() []*Part {
	return slices.DeleteFunc([]*Part{d.From.Part, d.To.Part, d.Of.Part}, func(p *Part) bool { return p == nil })
}

// FoundPos is where a step measures it, zero if none does.
func (d *Dim) FoundPos() source.Pos { return namedAt(d.FoundNamed, d.FoundAt) }

// LeftPos is where a step sets it, zero if none does.
func (d *Dim) LeftPos() source.Pos { return namedAt(d.LeftNamed, d.LeftAt) }

func namedAt(named source.Pos, st *Step) source.Pos {
	if named.IsZero() && st != nil {
		return st.At
	}
	return named
}

// LimitPos is where its limit for closing is written, or else the dimension.
func (d *Dim) LimitPos() source.Pos {
	if d.Wrote.Left.Written() {
		return d.Wrote.Left.At
	}
	return d.At
}

// LastChances are the steps of which the first to be done takes the reading away:
// LastChance, and those after it on paper that may as well be done before it. It is
// empty where no step does.
func (d *Dim) LastChances() []*Step {
	var out []*Step
	for _, st := range d.LostAt {
		if d.lastAt(st) {
			out = append(out, st)
		}
	}
	return out
}

// LastChanceAt reports whether a step is one of LastChances.
func (d *Dim) LastChanceAt(st *Step) bool { return slices.Contains(d.LostAt, st) && d.lastAt(st) }

// lastAt reports whether a step that takes the reading away may be the first to do so.
func (d *Dim) lastAt(st *Step) bool {
	return st == d.LastChance || st.Free != nil && (st.Free.After == nil || st.Free.After.Index < d.LastChance.Index)
}

// Gap reports whether a dimension is a gap, which may be shut: then nothing goes into it.
func (d *Dim) Gap() bool {
	return d.Kind == "gap" || d.Kind == "clearance" || d.Kind == "clearance-below"
}

// Adjusted reports whether something is set by a reading as left: a part that sets it or
// shims. All else is measured, and goes back or is renewed.
func (d *Dim) Adjusted() bool { return d.Left != nil && (d.Adjuster != nil || d.Shims != nil) }
