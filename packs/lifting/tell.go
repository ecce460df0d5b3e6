package lifting

import (
	"errors"
	"strings"

	"matchmark/packs/lift"
	"matchmark/packs/source"
)

// stopHelp and lookHelp say what to do about a caution.
var (
	stopHelp = map[lift.CautionCode]string{
		lift.Overloaded:   "take a larger piece, steeper legs or another hitch",
		lift.NoReach:      "use shorter legs or a flatter rig, or carry the load less high",
		lift.OffSaddle:    "use a hook that takes it in its saddle, or a shackle or a ring in the hook",
		lift.TouchyLength: "use longer legs, or measure them against each other and write what was found",
		lift.OverTeam:     "take another person or a hoist, or write decided-by: and because:",
	}
	lookHelp = map[lift.CautionCode]string{
		lift.FlatLeg:      "use longer legs; 60° is the aim",
		lift.TouchyLength: "measure the legs against each other, or use longer ones",
		lift.NearlySlack:  "look at the centre of gravity and the lengths",
		lift.SlackLeg:     "shorten it, or count the load without it",
		lift.HighCentre:   "take picks above the centre of gravity where there are any",
		lift.LooseMass:    "weigh it, and write mass-within: by the scale",
		lift.LooseCentre:  "write centre-within: by how the centre of gravity was found",
		lift.UnevenLegs:   "make the legs the lengths at which all four carry, or let two carry",
		lift.NoHeadroom:   "write size:, pass-over: and stack:, and high-hook: at the crane",
		lift.CriticalLift: "signed-plan: its number, once a competent person has signed it",
	}
)

// tellHoles takes the problems of what is written of the lift, those from number
// before on, as the reasons on paper why it cannot be computed.
func (r *liftReader) tellHoles(before int) {
	for _, p := range r.b.Problems[before:] {
		if p.Severity == source.Error && p.Code != "not-computed" {
			r.l.Because = append(r.l.Because, p)
		}
	}
	r.refused(r.unwritten())
}

// unwritten gives what else is not written of the load and of the rating basis, which a
// hole at another place is not to hide.
func (r *liftReader) unwritten() error {
	_, err := lift.Compute(r.l.Plan)
	if r.l.ByHand {
		_, err = lift.Carry(r.l.HandPlan)
	}
	var all, out lift.Refusals
	errors.As(err, &all)
	for _, no := range all {
		if len(r.d.Sections) > 0 && no.Field != "basis" {
			continue // told at the sections that give them
		}
		if _, told := r.at[no.Field]; !told && (strings.HasPrefix(no.Field, "load.") || no.Field == "basis") {
			out = append(out, no)
		}
	}
	return out
}

// refused turns the reasons why a lift cannot be computed into problems.
func (r *liftReader) refused(err error) bool {
	var rs lift.Refusals
	if !errors.As(err, &rs) {
		return false
	}
	for _, no := range rs {
		r.l.Because = append(r.l.Because, source.Problem{Code: "not-computed", Message: no.In(r.l.PaperUnits(nil)), Sentence: sentence{of: no, units: r.l.Units()}})
		help := []string{byKeys(no.Help)}
		if no.Field == "load.cogtolerance" {
			if more := r.roundBody(); more != "" {
				help = append(help, more)
			}
		}
		r.b.Problems.Add(r.place(no.Field), "not-computed", r.l.Mark+" cannot be computed: "+no.In(r.l.Units()), help...)
		r.b.Problems.Says(r.says(no))
	}
	return true
}

// unanswered turns what has to be known before the lift may be made into problems.
func (r *liftReader) unanswered(list lift.Refusals) {
	for _, no := range list {
		message, help := no.In(r.l.Units()), byKeys(no.Help)
		if strings.HasSuffix(no.Field, ".point") {
			help += "; it is written under lifting-points:, by the words behind takes:"
		}
		r.b.Problems.Add(r.place(no.Field), "not-known", r.l.Mark+" must not be made yet: "+message, help)
		r.b.Problems.Says(r.says(no))
	}
}

// byKeys says by which keys the person is named of whom a calculator, which knows none, speaks.
func byKeys(help string) string {
	if strings.HasSuffix(help, "name the person who decides and the reason") {
		return help + ": decided-by: … and because: …"
	}
	return help
}

// place is where the input of a path stands: itself, or what it belongs to.
func (r *liftReader) place(field string) source.Pos {
	for field != "" {
		if at, ok := r.at[field]; ok && !at.IsZero() {
			return at
		}
		field = parentField(field)
	}
	return r.l.At
}

// parentField drops the last step of a path: legs[2].sling.rated, legs[2].sling,
// legs[2], legs.
func parentField(field string) string {
	for i := len(field) - 1; i > 0; i-- {
		if field[i] == '.' || field[i] == '[' {
			return field[:i]
		}
	}
	return ""
}

// quiet are the cautions that the sheet prints and the check is silent about:
// they ask for nothing more than what the sheet says, stand there with the name of
// who decided, or have been told of at the gear itself.
var quiet = map[lift.CautionCode]bool{lift.BelowAim: true, lift.NamedSharing: true, lift.OverTeam: true, lift.NoGearWeight: true, lift.Decided: true, lift.Turning: true}

// help is what to do about a caution: its own help where that depends on the cause.
func help(c lift.Caution, usual map[lift.CautionCode]string) string {
	if c.Help != "" {
		return c.Help
	}
	return usual[c.Code]
}

// cautions turns what the calculation has to say into problems: errors where the
// lift must not be made.
func (r *liftReader) cautions(cs []lift.Caution) {
	for _, c := range cs {
		message := r.l.Mark + ": " + c.In(r.l.Units())
		switch {
		case c.Stop:
			r.b.Problems.Add(r.place(c.Field), "must-not-lift", message, help(c, stopHelp))
			r.b.Problems.Says(r.says(c))
		case c.Code == lift.CriticalLift && r.l.SignedPlan != "":
		case !quiet[c.Code]:
			r.b.Problems.Warn(r.place(c.Field), "look-at-lift", message, help(c, lookHelp))
			r.b.Problems.Says(r.says(c))
		}
	}
}

// A sentence is what the calculation says of a lift, for paper in another language.
type sentence struct {
	mark  string
	of    interface{ In(lift.Units) string }
	units lift.Units
}

// In implements source.Sentence.
func (s sentence) In(t source.Tongue) string {
	u := s.units
	u.Paper = true
	english := s.of.In(u)
	u.Tongue = t
	text := s.of.In(u)
	if text == english {
		return ""
	}
	return source.About(t, s.mark, text)
}

// says is a sentence with the mark of the lift.
func (r *liftReader) says(of interface{ In(lift.Units) string }) source.Sentence {
	return sentence{r.l.Mark, of, r.l.Units()}
}
