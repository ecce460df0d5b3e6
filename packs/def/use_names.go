package def

import (
	"strconv"
	"strings"

	"matchmark/packs/nearest"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// What a text of a used file names, by the kind of map and the field that it stands in.
// A text that is in none of the lists names nothing. TestUsedStarters sees to it that
// none is missing: a name that were left as it is would be a name of nothing.
type naming int

const (
	namesNothing naming = iota
	ownMark             // the mark of a thing
	ownName             // the name of a thing: a part, a step, an opening, a thing to fetch
	title               // how a thing is called on paper
	aMark               // names a thing by its mark
	aPart
	aStep
	anOpening
	aHeading
	reckons // a limit, a formula or a condition, in which dimensions stand by their marks
	prose   // is read by people, in the words of the file
)

// among gives one naming to all fields of a list.
func among(n naming, fields string, to map[string][]naming) {
	for _, f := range strings.Fields(fields) {
		to[f] = append(to[f], n)
	}
}

var namings = func() map[string][]naming {
	m := map[string][]naming{}
	among(ownMark, `Dimension.Mark Container.Mark BigPart.Mark Spot.Mark Set.Mark Stack.Mark Joint.Mark Alignment.Mark Heat.Mark Hold.Mark Lift.Mark`, m)
	among(ownName, `Part.Key Step.Key Opening.Key Supply.Key`, m)
	among(title, `Part.Name Dimension.What Container.Name Spot.What Set.What Stack.What Joint.What Alignment.What Heat.What Lift.What Opening.What Supply.What Section.Name`, m)
	among(aMark, `Part.Set Set.JudgedBy Says.Used Lift.LayDown Readings.Bore Readings.Seat AlignRead.Rim AlignRead.Face AlignRead.Stationary AlignRead.Movable
		Step.Measure Step.Set Step.From Step.Loosen Step.Tighten Step.Empty Step.Lift Step.SetDown Step.Hold Step.BackHold Step.Heat Step.Align Step.Stacks Step.Judge Branching.EachTry Into.To Into.For`, m)
	among(aPart, `Part.Of Part.Behind Face.Part Dimension.Adjust Dimension.LostBy Worked.Shims BigPart.Part Joint.Parts Lift.Parts Hub.Part Shaft.Part Supply.Part Tool.Part
		Count.Part Into.For# Step.LeftOut Step.Loosen Step.Tighten MatchMark.Part MatchMark.On WayRound.Part`, m)
	among(aStep, `Dimension.LostBy Supply.For Tool.For After.Steps#`, m)
	among(anOpening, `Step.Open Step.Close`, m)
	among(aHeading, `Section.Reverse`, m)
	among(reckons, `Dimension.Found Dimension.Left Dimension.Reuse Dimension.Repair Worked.Formula Says.Text Branching.Until Applies.If Shims.Range`, m)
	among(prose, `Part.Note Part.Renew Dimension.With Dimension.Over Dimension.Under Dimension.Out Dimension.FoundOut Dimension.WhyCoarse Dimension.Note Container.Note Container.Keep BigPart.Keep
		BigPart.Support Set.Why Hold.What Lift.Note Lift.Stops Lift.TrialStops Lift.StopsIn Alignment.Note Heat.Note Adjusting.LeaveAlone After.Steps Step.Do Step.Missed Step.Back Step.BackMissed Step.UnderLoad Step.Seen Step.BackSeen Step.Note Step.Otherwise
		Branching.EachTry Branching.StillOut Branching.Later`, m)
	return m
}()

// A renaming takes the names of a used file to those of the definition that uses it.
type renaming struct {
	as       string
	add      int
	marks    map[string]bool // that the file describes
	parts    map[string]bool
	steps    map[string]bool
	openings map[string]bool
	headings map[string]bool
	before   *renaming // what the definition described before
	root     bool      // the definition is the whole one, and used by none
	english  map[string]string
	copied   *Copied
	problems *source.Problems
}

// markInText is a word that may be a mark.
var markInText = phrase.Of(`\b[A-Z][1-9][0-9]{0,2}\b`)

// mark is what a mark of the file is here.
func (n *renaming) mark(m string) string {
	number, err := strconv.Atoi(m[1:])
	if err != nil {
		return m // told where it is written
	}
	return m[:1] + strconv.Itoa(number+n.add)
}

// text takes one text over, which stands in a field; inName says that it is the name in
// a map from names.
func (n *renaming) text(field string, t *source.Text) {
	if t.Value == "" {
		return
	}
	base, place, slash := strings.Cut(t.Value, "/")
	was := t.Value
	for _, what := range namings[field] {
		switch {
		case t.Value != was: // it was of the kind before
		case what == ownMark && len(base) > 1:
			t.Value = n.mark(t.Value)
			n.copied.Marks[t.Value] = was
		case what == ownName:
			t.Value = n.as + "-" + t.Value
			n.copied.Names[t.Value] = was
		case what == title:
			n.inWords(t)
			t.Value = n.as + " " + t.Value
			n.copied.Names[t.Value] = was
			if english, ok := n.english[was]; ok {
				n.english[t.Value] = n.as + " " + english
			}
		case what == aMark && n.marks[base]:
			t.Value = n.mark(base)
			if slash {
				t.Value += "/" + place
			}
		case what == aPart && n.own(base, n.parts, n.before.parts), what == aStep && n.own(base, n.steps, n.before.steps), what == anOpening && n.own(base, n.openings, n.before.openings):
			t.Value = n.as + "-" + t.Value
		case what == aHeading && n.headings[t.Value]:
			t.Value = n.as + " " + t.Value
		case what == reckons && n.add > 0:
			t.Value = markInText.ReplaceAllStringFunc(t.Value, func(m string) string {
				if m[0] == 'D' && n.marks[m] {
					return n.mark(m)
				}
				return m
			})
		case what == prose:
			n.inWords(t)
		}
	}
}

// own reports whether a name is one of the file. A slip of the pen is: one that nothing
// has, neither in the file nor in the definition, and that is near one of the file.
func (n *renaming) own(name string, in, here map[string]bool) bool {
	if in[name] {
		return true
	}
	if !n.root || here[name] {
		return false
	}
	list := make([]string, 0, len(in))
	for known := range in {
		list = append(list, known)
	}
	if nearest.Word(name, list) == "" {
		return false
	}
	n.copied.Names[n.as+"-"+name] = name
	return true
}

// inWords refuses a mark in a text for people: whether D7 is meant for a dimension, or
// C3 for the clearance of a bearing, only the author knows.
func (n *renaming) inWords(t *source.Text) {
	if n.add == 0 {
		return
	}
	for _, m := range markInText.FindAllString(t.Value, -1) {
		if n.marks[m] {
			n.problems.AddWith(t.PlaceOf(m), "use-words", "the text names "+m+", and that mark is "+n.mark(m)+" where this file is used as "+n.as+": on paper the text would send to another thing",
				n.copied.At, "used here", "say it in words, as the reading above, or its bag", "if no mark is meant, give the thing that has it another number")
			return
		}
	}
}
