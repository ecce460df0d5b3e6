package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

var (
	// airRead are words of a hold by which the air within has been tried, or may be breathed.
	airRead = phrase.Of(`(?i)\b(?:gas|air|oxygen|atmosphere)\b[^.;:]*\b(?:read|tested|tried|measured|proved|good|safe|clear)\b|\b(?:gas|air|atmosphere) tests?\b|\bgas[- ]free\b|\b(?:may|ready to) (?:be entered|enter|go in)\b|\bready for entry\b`)
	// otherAir is air and gas that nobody breathes within, or that is not read yet.
	otherAir = phrase.Of(`(?i)\bair (?:gaps?|lines?|hoses?|supply|pressure|filters?|coolers?|valves?|receivers?)\b|\b(?:gas|air)[- ]?(?:side|end|seals?|temperatures?|flow|cylinders?|engines?)\b|\b(?:instrument|control|starting|compressed|seal|fuel|service) (?:air|gas)\b|\bafter (?:that|it)\b|\bbefore the air\b|\bmay enter (?:the )?(?:room|hall|bay|area|shop)\b`)
)

// checkGasLate sees that a hold at which the air within a machine is told to be good stands above
// the first step that works inside on an entry permit. Where several holds tell of it, the first
// of them is for the first entry, and the others are for later ones.
func (r *report) checkGasLate() {
	h, e := r.airHold()
	if e == nil {
		return
	}
	for _, st := range r.walk.Steps[:e.Step.Index] {
		if o := r.worksInside(st); o != nil {
			r.problems.WarnWith(e.Step.At, "gas-late", h.Mark+", "+source.Quote(h.What)+", is released only at "+e.Step.Name()+", and "+st.Name()+" works inside before that, on an entry permit", st.At, "inside here",
				"hold: "+h.Mark+" at a step above "+st.No, "or take the permit out there, if nobody goes in")
			return
		}
	}
}

// airHold is the first hold at which the air within is told to be good, with the event that
// releases it; nil if none is.
func (r *report) airHold() (first *job.Hold, at *walk.Event) {
	for _, h := range r.job.Holds {
		words := r.job.InEnglish(h.What)
		e := r.released(h)
		if e != nil && h.Again == nil && (at == nil || e.Index < at.Index) && airRead.MatchString(words) && !otherAir.MatchString(words) {
			first, at = h, e
		}
	}
	return first, at
}

// worksInside is the opening that a step works within: it asks for an entry permit and moves,
// marks or reads something there; nil if it does not. Who opens or closes one is still outside,
// and a reading of the air is taken from there.
func (r *report) worksInside(st *job.Step) *job.Opening {
	enclosed := func(o *job.Opening) bool { return o.Enclosed }
	if st.Bench || slices.ContainsFunc(st.Open, enclosed) || slices.ContainsFunc(st.Close, enclosed) || !slices.ContainsFunc(st.Permits, func(p *job.Permit) bool { return r.goesIn(st, p) && !underLock(p) }) {
		return nil
	}
	reads := slices.ContainsFunc(slices.Concat(st.Measure, st.Set), func(d *job.Dim) bool { return !airName.MatchString(r.job.InEnglish(d.What)) })
	if !reads && len(st.Remove)+len(st.Fit)+len(st.Loosen)+len(st.Tighten)+len(st.Marks) == 0 {
		return nil
	}
	for _, o := range r.job.Openings {
		if o.Enclosed && r.walk.Open(o, &walk.Event{Index: r.walk.Start(st)}) != nil {
			return o
		}
	}
	return nil
}

// airName finds a reading of the air itself.
var airName = phrase.Of(`(?i)\b(?:oxygen|gas|gases|explosion limit|explosive limit|solvent|atmosphere|air|vapours?|carbon monoxide)\b`)

// gasLate binds the hold of the air to the steps below it that work inside.
func (b *binder) gasLate() {
	r := &report{walk: b.walk, job: b.job}
	_, e := r.airHold()
	if e == nil {
		return
	}
	for _, st := range b.walk.Steps[e.Step.Index+1:] {
		if o := r.worksInside(st); o != nil {
			b.before(e.Step, st, job.Bind{Kind: job.BoundOpening, Opening: o})
		}
	}
}
