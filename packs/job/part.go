package job

import (
	"cmp"
	"math/big"
	"slices"
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// A Part is one part at one place.
type Part struct {
	At     source.Pos
	Key    string // as written, without its place
	Place  Place
	Name   string
	Count  int // pieces at this place, 1 or more
	Thread *thread.Thread
	Left   bool // left-hand thread
	// English is its name for rules that know English words, where it is written beside Name;
	// Abroad says that there is none, and that Name is in another language.
	English string
	Abroad  bool
	// Handed says that the hand of its thread must be said: it is left-hand, or right-hand
	// where the same part at another place is left-hand.
	Handed bool
	Flats  int // flats or slots of a nut, 0 if not said
	Mass   *units.Quantity
	Fit    string // designation of the fit that it sits with, as 120 H7/r6; "" if not said
	Note   string // for whoever handles it
	Renew  string // as written: "always", "as set", "never", "added", or a condition; empty if reused
	Holds  string // what it holds back: spring, pressure or weight
	Guard  bool   // keeps people from what moves or is live
	Aid    bool   // no part of the machine, as a guide stud: must be out again at the end
	Set    *Set
	Of     *Part    // the assembly that it comes off with
	Behind []*Part  // those that must be off before it comes off, and before it goes back
	Joints []*Joint // the joints that it is a fastener of

	Off  []*Move // how its pieces come off, in the order of work; none if they never do
	Back []*Move // how they go back

	Across     *Part      // on the other side of the joint that its mark stands on, nil if not known
	AcrossSaid bool       // the author says so; else it is taken from the matched set of both
	Marked     *Step      // where it gets a mark across its joint, nil if it gets none
	Meets      *Step      // where that mark meets, if below the step that puts it on; nil if there
	WayRound   []WayRound // which sides of it face what

	Movement   *Movement  // what turning it moves, for an adjuster without a thread
	LeaveAlone string     // why it is not turned
	Shims      *ShimStock // what there is to make up a thickness from
}

// A Where is where a removed part is kept: in a container, on a lay-down spot, on
// the bench, or scrapped.
type Where struct {
	Container *Container
	Pocket    string
	Spot      *Spot
	Bench     bool
	Scrap     bool
}

// A Move is a number of pieces of a part taken off or put back at a step, for
// good or for now.
type Move struct {
	At   source.Pos
	Step *Step
	Part *Part
	N    int
	To   Where // for a part taken off
	From Where // for a part put back; where the old one lies, if a new one goes on
	New  bool  // a new part goes on and the old one is scrapped
	Undo *Move // for a part put back, how these pieces came off; nil for one that is added

	MeetsAt *Step // for a part put back, the step below at which its mark meets: both sides of it are on and stand; nil if there

	Missed string // MissedBack, for what is in a tag
}

// AnyOf reports whether some moves are of a part.
func AnyOf(ms []*Move, p *Part) bool {
	return slices.ContainsFunc(ms, func(m *Move) bool { return m.Part == p })
}

// KeptAt is the place where a part lies that came off above a step and is not yet back, none for
// one that lies nowhere.
func (p *Part) KeptAt(st *Step) Where {
	at := Where{}
	for _, off := range p.Off {
		back := slices.ContainsFunc(p.Back, func(m *Move) bool { return m.Undo == off && m.Step.Index < st.Index })
		if off.Step.Index < st.Index && !back {
			at = off.To
		}
	}
	return at
}

// A Set is one matched set at one place.
type Set struct {
	At      source.Pos
	Mark    string // S1/DE
	Base    string
	Place   Place
	What    string
	Why     string
	Members []*Part

	JudgedBy    []*Dim     // of which one that is out renews all pieces
	JudgedAt    *Step      // where that is decided
	JudgedNamed source.Pos // where that step names it
}

// A Movement is what an adjuster moves, told by its maker: by turns, by flats, or by
// how thick its shims are.
type Movement struct {
	PerTurn, PerFlat *units.Quantity // one of the two, nil of shims
	Thick, Gives     *units.Quantity // of shims: so much more of them moves so much, less than nothing where it makes a reading smaller
}

// A BackOff is how far an adjuster is turned back after it touches.
type BackOff struct {
	Text      string          // as written: 1/6 turn, 2 flats, 10 to 20°
	Low, High *units.Quantity // what that moves, nil if it is not known; High only of a range
}

// Weighs is the mass of one piece of a part. Of an assembly that does not say its
// own it is that of all its parts that say theirs, so at least so much.
func (p *Part) Weighs(all []*Part) *units.Quantity {
	if p.Mass != nil {
		return p.Mass
	}
	sum := units.Quantity{Number: units.Whole(0), Unit: units.Kilogram}
	for _, q := range all {
		if q.Of != p {
			continue
		}
		m := q.Weighs(all)
		if m == nil {
			continue
		}
		kg, err := m.Convert(units.Kilogram)
		if err != nil {
			continue
		}
		kg.Number = kg.Number.Mul(units.Exact(big.NewRat(int64(q.Count), 1), 0))
		if s, err := sum.Add(kg); err == nil {
			sum = s
		}
	}
	if sum.Number.Sign() == 0 {
		return nil
	}
	return &sum
}

// Mark is the printed key of a place, alike on sheet and tag: C2/DE,
// C4/DE/springs, Y1; empty for the bench and scrap, which have none.
func (w Where) Mark() string {
	switch {
	case w.Container != nil && w.Pocket != "":
		return w.Container.Mark + "/" + w.Pocket
	case w.Container != nil:
		return w.Container.Mark
	case w.Spot != nil:
		return w.Spot.Mark
	}
	return ""
}

// Upward lists a part and the assemblies that it belongs to; none for no part.
func (p *Part) Upward() []*Part {
	var out []*Part
	for ; p != nil; p = p.Of {
		out = append(out, p)
	}
	return out
}

// Called is how messages speak of a part.
func (p *Part) Called() string { return p.Name + " (" + p.Place.Mark(p.Key) + ")" }

// IsCalled reports whether all words of a text are words of the part: of its name, its key or
// its place. A text without words calls nothing.
func (p *Part) IsCalled(text string) bool {
	words := strings.FieldsFunc(strings.ToLower(p.Name+" "+p.Key+" "+p.Place.Label), func(r rune) bool { return strings.ContainsRune(" -,/", r) })
	said := strings.Fields(strings.ToLower(text))
	return len(said) > 0 && !slices.ContainsFunc(said, func(w string) bool { return !slices.Contains(words, w) })
}

// A Stack is an order of parts from one side outward, at one place.
type Stack struct {
	Mark, Base string
	Place      Place
	What, From string
	Order      string   // in words, where Pieces have no names
	Pieces     []string // what is expected at each place of the stack; empty texts where it is not said
	Step       *Step    // where it is written down
}

// A WayRound says which side of a part faces what.
type WayRound struct {
	Part        *Part
	Mark, Faces string
}

// ComesFrom fills in how the pieces of a move came off, and books them out of
// where they lie. Of a renewed part the old piece is booked out: it goes to scrap
// when it has been held against the new one.
func (m *Move) ComesFrom(off *Move) {
	m.Undo, m.From = off, off.To
	m.New = m.Part.Renew == "always" || off.To.Scrap
	if c := m.From.Container; c != nil {
		c.Out = append(c.Out, m)
	}
}

// ComesNew reports whether a new piece goes on for one that is scrapped.
func (p *Part) ComesNew() bool { return p.Renew != "" && p.Renew != "never" }

// Added reports whether the machine has none of a part until the job fits it.
func (p *Part) Added() bool { return p.Renew == "added" }

// Within reports whether a part belongs to the assembly q, at one or more removes.
func (p *Part) Within(q *Part) bool {
	for up := p.Of; up != nil; up = up.Of {
		if up == q {
			return true
		}
	}
	return false
}

// PutBack is a move that puts back what this one took off, nil if there is none.
func (m *Move) PutBack() *Move {
	for _, b := range m.Part.Back {
		if b.Undo == m {
			return b
		}
	}
	return nil
}

// fastens are the words by which a fastener is called, and ofAnother those behind which
// a name speaks of another part: a tab washer of the input nut.
var (
	fastens   = phrase.Of(`(?i)\b(bolt|nut|(set|cap)?screw|stud)s?\b`)
	ofAnother = phrase.Of(`(?i)\s(of|in|on|for|under|behind|with|at)\s.*`)
)

// ofFastener are the parts that are called by a fastener that they have, cover or drive: a screw
// coupling sleeve is no screw. Of several fasteners, and before a side, they tell where these are:
// bolts cover, bolt pump side.
var (
	ofFastener = phrase.Of(`(?i)^\s+(lock(ing)?\s+)?(covers?|plates?|tabs?|sleeves?|conveyors?|elevators?|feeders?|lock|pumps?|couplings?|shafts?|compressors?|blowers?|spindles?|press(es)?|jacks?|washers?|caps?|boxe?s?|bush(es)?|rings?|retainers?|guards?|cages?|housings?|casings?|barrels?|rotors?|gauges?|troughs?|hoppers?|motors?|gears?|gearbox(es)?|drives?|glands?|plugs?|hubs?|cylinders?|keepers?|holders?|carriers?|spanners?|wrench(es)?|tensioners?|pullers?)\b`)
	itsSide    = phrase.Of(`(?i)^\s+\pL+\s+(side|end)\s*(M?\d.*)?$`)
)

// Fastens reports whether a part is called by the name of a fastener: lock nut, Screw M8, bolts
// and washers, but no screw conveyor and no bolt cover. One whose name is in another language
// than English alone has a thread, or is a fastener of a joint.
func (p *Part) Fastens() bool {
	if p.Abroad {
		return p.Thread != nil || len(p.Joints) > 0
	}
	name := ofAnother.ReplaceAllString(cmp.Or(p.English, p.Name), "")
	for _, at := range fastens.FindAllStringIndex(name, -1) {
		if rest := name[at[1]:]; strings.HasSuffix(strings.ToLower(name[at[0]:at[1]]), "s") || !ofFastener.MatchString(rest) || itsSide.MatchString(rest) {
			return true
		}
	}
	return false
}

// LastWord is the last word of the name of a part, before its size and what it belongs to:
// cap of a bracket cap, screw of a Cartridge screw M12, screw of a screw of the taper bush.
func LastWord(name string) string {
	for _, word := range slices.Backward(strings.Fields(ofAnother.ReplaceAllString(name, ""))) {
		if !strings.ContainsAny(word, "0123456789") {
			return word
		}
	}
	return ""
}

// Kilograms is a mass in kilograms, 0 for what is no mass.
func Kilograms(q units.Quantity) float64 {
	kg, err := q.Convert(units.Kilogram)
	if err != nil {
		return 0
	}
	f, _ := kg.Number.Rat().Float64()
	return f
}
