package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// Marks that come off, what makes one that stays, and what takes the first off.
var (
	softMark = phrase.Of(`(?i)\b(?:chalk|pencil|(?:wax )?crayon|soapstone|felt[- ]?(?:tip|pen)|marker pen)s?\b`)
	hardMark = phrase.Of(`(?i)\b(?:punch|scribe|scratch|stamp|etch|engrave|vibro|paint|number stamps?|tag|pop|cent(?:re|er)[- ]?(?:pop|mark))`)
	washes   = phrase.Of(`(?i)\b(?:wash|degrease|steam-?clean|pickle|shot-?blast|sand-?blast|blast|boil|dip|immerse|soak)(?:s|es|ed|ing)?\b|\bclean\b[^.;]*\b(?:steam|solvent|degreaser|spirit|paraffin|kerosene|detergent|alkaline|acetone)\b|\boil bath\b`)
	// washesElse are hands and tools that are washed, sparesMark words that spare the mark, and
	// aboutFloor those of a mark that is made on what a part stands on.
	washesElse = phrase.Of(`(?i)\b(?:wash|clean|degrease)(?:s|es)? (?:your |the |all )?(?:hands|gloves|tools?|floor|bench|tray)\b`)
	sparesMark = phrase.Of(`(?i)\b(?:not|never|but|except|save|leave|keep)\b[^.;]*\b(?:marks?|lines?|chalk|pencil)\b`)
	aboutFloor = phrase.Of(`(?i)\b(?:chalk|mark|pencil|outline)(?:s|ed)? (?:[\w-]+ ){0,4}?(?:floor|ground|bench|wall|sleepers?|boards?|trestles?)\b`)
	keptOily   = phrase.Of(`(?i)\b(?:oiled|in oil|greased|waxed|slushed|dipped)\b`)
)

// checkChalked warns of a mark in chalk or pencil on a part that is heated, washed or laid in oil
// before it goes back by that mark.
func (r *report) checkChalked() {
	s := newSpeaker(r)
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		words := r.job.InEnglish(st.Do)
		if st.Undoes != nil || told[st.At] || !softMark.MatchString(words) || hardMark.MatchString(words) || !makesMark.MatchString(words) && len(st.Marks) == 0 {
			continue
		}
		for _, p := range s.chalked(st) {
			back := s.readBack(p, st)
			if back == nil {
				continue
			}
			if at, how := s.lost(p, st, back); how != "" {
				told[st.At] = true
				r.problems.WarnWith(st.At, "mark-lost", "the "+strings.ToLower(softMark.FindString(words))+" mark that "+st.Name()+" makes on "+p.Called()+" is gone when it goes back at "+back.Name()+": "+how, at, "here",
					"make it with a punch, a scriber or paint, and say so in the words of the step")
				break
			}
		}
	}
}

// chalked lists the parts that a step marks: by its key, else those that its words call.
func (s *speaker) chalked(st *job.Step) []*job.Part {
	if len(st.Marks) > 0 {
		return st.Marks
	}
	if aboutFloor.MatchString(s.job.InEnglish(st.Do)) {
		return nil
	}
	var out []*job.Part
	for _, w := range s.said(st) {
		if len(w) > 2 {
			out = append(out, s.calledBy(w, st.Place)...)
		}
	}
	return out
}

// readBack is the step that puts a part back by a mark that was made at another, nil where none
// does: where the piece itself goes back, by its key or by the words.
func (s *speaker) readBack(p *job.Part, marked *job.Step) *job.Step {
	for _, m := range p.Back {
		if st := m.Step; st != nil && st.Index > marked.Index && !m.New &&
			(p.MarkedAbove(st) == marked || slices.Contains(st.Meet, p) || goesByMark.MatchString(s.job.InEnglish(st.Do))) {
			return st
		}
	}
	return nil
}

// lost is where the mark on a part goes between two steps, and how; empty where it stays.
func (s *speaker) lost(p *job.Part, from, to *job.Step) (at source.Pos, how string) {
	for _, m := range p.Off {
		if c := m.To.Container; c != nil && m.Step.Index >= from.Index && m.Step.Index < to.Index && keptOily.MatchString(s.job.InEnglish(c.Keep)) {
			return c.At, c.Mark + " keeps it " + c.Keep
		}
	}
	word, _ := s.called(p)
	for _, st := range s.walk.Steps[from.Index : to.Index+1] {
		if slices.ContainsFunc(st.Heats, func(h *job.Heat) bool { return h.Hub == p }) {
			return st.At, st.Name() + " heats it"
		}
		if words := s.job.InEnglish(st.Do); st != from && word != "" && washes.MatchString(washesElse.ReplaceAllString(words, " ")) && !sparesMark.MatchString(words) && s.says(st, word) {
			return st.At, st.Name() + " washes it, by its words"
		}
	}
	return at, ""
}
