package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// airNames are what is read of the air within, airIs what stands between that and what was found.
// A machine part has air or gas in its name as well, and is another word between the two.
const (
	airNames = `(?:gas(?:es)?|air|oxygen|O2|O₂|LEL|H2S|atmosphere|(?:lower )?(?:explosive|explosion) limit|carbon monoxide|(?:solvent )?vapou?rs?)`
	airIs    = `(?:(?:,? and|,) ` + airNames + `| (?:is|are|was|were|has|have|been|all|both|again|(?:with)?in|inside|there|at (?:\w+ )?(?:heights|levels|points|places)|(?:with)?in(?:side)? (?:the |each |it\b)?(?:vessel|tank|column|drum|boiler|furnace|space|confined space|sump|pit|spiral|casing|chamber|bunker|silo|mill|machine)?))*`
)

var (
	// airRead are words of a hold by which the air within has been tried, or may be breathed.
	airRead = phrase.Of(`(?i)\b` + airNames + airIs + ` (?:read|tested|tried|measured|proved|proven|checked|sampled|analysed|good|safe|clear|all right|in order|within (?:the |its |their |all )?limits|(?:(?:at|below|under|above|over|least|most|less|more|than) )*\d[\d.,]* ?%)|` +
		`\b(?:gas|air|atmosphere|oxygen|LEL) (?:tests?|checks?)\b|\b(?:tested|checked) for ` + airNames + `\b|\bgas[- ]free\b|\bfree (?:of|from) (?:any |all )?gas(?:es)?\b|` +
		`\b(?:may|(?:ready|safe|fit|cleared|clear) to) (?:be entered|enter|go in)\b|\b(?:ready|cleared?|safe|fit|released) for (?:the )?(?:first )?entry\b|\bentry (?:is |has been )?(?:released|allowed|cleared|permitted|granted)\b`)
	// otherAir is air and gas that nobody breathes within, or that is not read yet, in the same clause.
	otherAir = phrase.Of(`(?i)\b(?:instrument|control|starting|compressed|seal|sealing|buffer|fuel|flue|exhaust|natural|process|purge|supply|scavenge|combustion|cooling|breathing|service|plant) (?:air|gas)\b|\b(?:with|by|under|through|from) (?:the )?(?:air|gas) (?:is|are|was|were|has|have|at)\b|\bleaks?\b|` +
		`\b(?:tested|proved|proven|checked) (?:and |to be )?(?:shut|off|closed|isolated|dead|tight)\b|\b(?:tests?|checks?) (?:of|on) (?:the |all )?(?:[\w-]+ )?(?:tubes?|bundles?|coolers?|seals?|joints?|cylinders?|valves?|detectors?|meters?|lines?|pipes?|filters?)\b|` +
		`\bafter (?:that|it)\b|\bbefore the air\b|\bmay enter (?:the )?(?:room|hall|bay|area|shop)\b|\bentered in(?:to)? (?:the )?(?:log|book|register|list|sheet|report|records?)\b`)
	// clauseOn is the rest of a clause.
	clauseOn = phrase.Of(`^[^,;.:]*`)
)

// airGood reports whether words of a hold tell that the air within has been tried.
func airGood(words string) bool {
	return slices.ContainsFunc(airRead.FindAllStringIndex(words, -1), func(at []int) bool {
		return !otherAir.MatchString(clause.FindString(words[:at[0]]) + words[at[0]:at[1]] + clauseOn.FindString(words[at[1]:]))
	})
}

// checkGasLate sees that a hold at which the air within a machine is told to be good stands above
// the first step that works inside on an entry permit: not in it, for the hold of a step is
// printed below its work. Where several holds tell of it, the first of them is for the first
// entry, and the others are for later ones.
func (r *report) checkGasLate() {
	h, e := r.airHold()
	if e == nil {
		return
	}
	for _, st := range r.walk.Steps[:e.Step.Index+1] {
		if r.worksInside(st) == nil {
			continue
		}
		at, why := e.Step.At, "released only at "+e.Step.Name()+", and "+st.Name()+" works inside before that"
		if st == e.Step {
			at, why = e.At, "released at the end of "+st.Name()+", which works inside before that"
		}
		r.problems.WarnWith(at, "gas-late", h.Mark+", "+source.Quote(h.What)+", is "+why+", on an entry permit", st.At, "inside here",
			"hold: "+h.Mark+" at a step above "+st.No, "or take the permit out there, if nobody goes in")
		return
	}
}

// airHold is the first hold at which the air within is told to be good, with the event that
// releases it; nil if none is.
func (r *report) airHold() (first *job.Hold, at *walk.Event) {
	for _, h := range r.job.Holds {
		words := r.job.InEnglish(h.What)
		e := r.released(h)
		if e != nil && h.Again == nil && (at == nil || e.Index < at.Index) && airGood(words) {
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
