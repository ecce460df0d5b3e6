package proof

import (
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// saidPeople finds a number of people in the words of a step: two people, three of you,
// 4 men, a two-man job. A number with its unit or of things is none, nor is one that there
// may be at most. Common practice, no source.
var (
	saidPeople = phrase.Of(`(?i)\b(?:(?:two|three|four|five|six|[2-9]) (?:people|persons|men|women|mechanics|fitters|technicians|riggers|helpers|of you)|(?:two|three|four|five|six|[2-9])-(?:man|person))\b`)
	atMost     = phrase.Of(`(?i)\b(?:more than|at most|fewer than|less than|up to|max(?:imum)?(?: of)?) $|\bnever\b`)
)

// checkSaidPeople warns of a step whose words want more people than its keys do: who plans
// the crew by its hours and its head sends one.
func (r *report) checkSaidPeople() {
	told := map[source.Pos]bool{} // once for all places, and for the row that has its people from the step
	for _, st := range r.walk.Steps {
		n, has := peopleIn(r.job.InEnglish(st.Do)), st.Crew()
		if n <= has || told[st.At] {
			continue
		}
		told[st.At] = true
		key := "people"
		if st.Undoes != nil {
			key = "back-people"
		}
		r.problems.Warn(st.At, "people-in-words", "the words of step "+st.Name()+" want "+strconv.Itoa(n)+" people, its keys "+strconv.Itoa(has), key+": "+strconv.Itoa(n))
	}
}

// peopleIn is the greatest number of people that a text wants, 0 where it wants none.
func peopleIn(text string) int {
	most := 0
	for _, at := range saidPeople.FindAllStringIndex(text, -1) {
		if !atMost.MatchString(clause.FindString(text[:at[0]])) {
			most = max(most, job.PostOf(strings.ToLower(text[at[0]:at[1]])).People)
		}
	}
	return most
}
