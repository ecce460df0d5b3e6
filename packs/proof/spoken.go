package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// The words of a step and its keys tell of the same parts: where the words of one step
// say that a part is taken off or put on, and the keys of another do it, one of the two
// stands at the wrong step. What is looked for is English; of a definition in another
// language nothing is told.

// A way is how words say that a part is moved: a verb some words before the part, or a
// small word some words behind it.
type way struct {
	verb, does   string
	before, then []string
}

var (
	takes = way{"remove", "comes off", []string{"take", "draw", "lift", "slide", "pull", "unscrew", "push", "press", "carry", "roll", "screw"}, []string{"off", "out"}}
	puts  = way{"fit", "goes back", []string{"put", "fit", "lay", "push", "press", "slide", "lower", "lift", "screw", "drive", "tap", "roll"}, []string{"on", "in", "home", "back"}}
)

// Between the verb and the part, and between the part and the small word, this many other
// words may stand: "take the upper half of the guard", "the guard comes off".
const reachOfVerb, reachOfWord = 5, 3

// A speaker knows the words of steps.
type speaker struct {
	*report
	words map[*job.Step][]string
	named map[*job.Part]name
	marks map[string]bool // the texts that speak of making a mark
	idle  map[[2]string][]*job.Step
}

// A name is what a part is called for short, and the other words of its name.
type name struct {
	word   string
	others []string
}

func newSpeaker(r *report) *speaker {
	return &speaker{r, map[*job.Step][]string{}, map[*job.Part]name{}, map[string]bool{}, map[[2]string][]*job.Step{}}
}

// checkSpoken warns of a part that is moved by a step which does not speak of it, while
// another speaks of moving it and moves nothing.
func (r *report) checkSpoken() {
	s := newSpeaker(r)
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		if st.Undoes != nil {
			continue
		}
		for _, m := range st.Remove {
			s.check(m, takes, told)
		}
		for _, m := range st.Fit {
			s.check(m, puts, told)
		}
	}
}

func (s *speaker) check(m *job.Move, way way, told map[source.Pos]bool) {
	word, others := s.called(m.Part)
	if told[m.At] || m.Part.Fastens() || word == "" || s.says(m.Step, word) || slices.ContainsFunc(others, func(w string) bool { return s.says(m.Step, w) }) {
		return
	}
	alone := s.alone(m.Part, word)
	for _, t := range s.idleButSay(word, way) {
		if t.At == m.Step.At || !t.Place.Agrees(m.Step.Place) || s.hasToDoWith(t, word) ||
			!alone && !slices.ContainsFunc(others, func(w string) bool { return s.says(t, w) }) {
			continue
		}
		told[m.At] = true
		s.problems.WarnWith(m.At, "said-elsewhere", m.Part.Called()+" "+way.does+" at "+m.Step.Name()+", whose words do not speak of it; those of "+t.Name()+" do, and nothing is moved there", t.At, "spoken of here",
			way.verb+": ["+m.Part.Key+"] at "+t.No, "or say at "+m.Step.No+" what is done with it")
		return
	}
}

// idleButSay lists the steps whose words say that a part is moved in some way, and that move nothing so.
func (s *speaker) idleButSay(word string, way way) []*job.Step {
	key := [2]string{word, way.verb}
	if out, known := s.idle[key]; known {
		return out
	}
	var out []*job.Step
	for _, t := range s.walk.Steps {
		idle := len(t.Remove) == 0 && !t.Back
		if way.verb == puts.verb {
			idle = len(t.Fit) == 0 && t.Back
		}
		if idle && t.Undoes == nil && s.saysMoved(t, word, way) {
			out = append(out, t)
		}
	}
	s.idle[key] = out
	return out
}

// said lists the words of a step; a sign that parts them stands between them by itself.
func (s *speaker) said(st *job.Step) []string {
	if w, ok := s.words[st]; ok {
		return w
	}
	w := tokens.FindAllString(strings.ToLower(s.job.InEnglish(st.Do)), -1)
	s.words[st] = w
	return w
}

var tokens = phrase.Of(`[a-z0-9-]+|[.;:,]`)

// saysMoved reports whether the words of a step say that a part is moved.
func (s *speaker) saysMoved(st *job.Step, word string, way way) bool {
	said := s.said(st)
	for i, w := range said {
		if !same(w, word) || slices.Contains(said[max(0, i-2):i], "without") {
			continue
		}
		if s.movedBy(said, i, way) {
			return true
		}
	}
	return false
}

// movedBy reports whether a word is told to be moved in some way by the words round it. What
// something else is moved off, out of or in is not moved by that: take the dirt off the cover.
func (s *speaker) movedBy(said []string, i int, way way) bool {
	from, joined := false, false // it is where something else is; it is moved as something else is
	for k := i - 1; k >= max(0, i-1-reachOfVerb) && len(said[k]) > 1; k-- {
		if slices.Contains(way.before, said[k]) {
			return !from
		}
		joined = joined || said[k] == "and"
		from = from || !joined && slices.Contains(wordsOfPlace, said[k]) && k > 0 && !slices.Contains(way.before, said[k-1])
	}
	for k := i + 1; k < min(len(said), i+2+reachOfWord) && len(said[k]) > 1; k++ {
		if slices.Contains(way.then, said[k]) {
			return true
		}
	}
	return false
}

// wordsOfPlace are the words before what something else is at.
var wordsOfPlace = []string{"off", "from", "out", "in", "into", "on", "onto", "through", "at", "under", "over", "to", "against", "for", "behind", "between"}

// same reports whether a word is another in the singular or the plural.
func same(w, word string) bool { return w == word || w == word+"s" || w == word+"es" }

// called gives the word by which a part is called for short, the last of its name, what
// stands behind of, in or on left out, and the other words of its name. What has three
// letters or fewer is not looked for.
func (s *speaker) called(p *job.Part) (word string, others []string) {
	if n, known := s.named[p]; known {
		return n.word, n.others
	}
	defer func() { s.named[p] = name{word, others} }()
	for _, w := range slices.Backward(tokens.FindAllString(strings.ToLower(headOf.ReplaceAllString(s.job.InEnglish(p.Name), "")), -1)) {
		switch w = strings.TrimSuffix(w, "s"); {
		case len(w) < 3:
		case word == "":
			word = w
		default:
			others = append(others, w)
		}
	}
	return word, others
}

// headOf is what stands behind the word that a part is called by.
var headOf = phrase.Of(`(?i)(\s(of|in|on|for|under|behind|with|at)\s.*|\s+[A-Z]?\d.*)`)

// alone reports whether no part of another key is called by the same word.
func (s *speaker) alone(p *job.Part, word string) bool {
	return !slices.ContainsFunc(s.job.Parts, func(q *job.Part) bool {
		other, _ := s.called(q)
		return q.Key != p.Key && other == word
	})
}

// says reports whether the words of a step have a word.
func (s *speaker) says(st *job.Step, word string) bool {
	return slices.ContainsFunc(s.said(st), func(w string) bool { return same(w, word) })
}

// hasToDoWith reports whether a step does anything to a part that is called by a word.
func (s *speaker) hasToDoWith(st *job.Step, word string) bool {
	called := func(p *job.Part) bool {
		return p != nil && strings.Contains(strings.ToLower(s.job.InEnglish(p.Name)), word)
	}
	return s.walk.Find(st, func(e *walk.Event) bool {
		switch {
		case e.Verb == job.DoLoosen, e.Verb == job.DoTighten:
			return slices.ContainsFunc(e.Grip.Parts(), called)
		case e.Move != nil:
			return called(e.Move.Part)
		case e.Lift != nil:
			return slices.ContainsFunc(e.Lift.Parts, called)
		case e.Heat != nil:
			return called(e.Heat.Hub)
		}
		return called(e.Part)
	}) != nil
}
