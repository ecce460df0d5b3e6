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

// carryIt are verbs of people before what they carry: two guide pins are no people.
const carryIt = `(?:carry|push|pull|steady|guide|walk) (?:it|them|the|both|and|its|their|this|each|all|beside|with|alongside)\b`

// notOfCrew are words behind a second man by which he is not wanted, or comes to look and sign only.
var notOfCrew = phrase.Of(`(?i)^ (?:(?:is|are|will be) (?:not|never|no longer)\b|who (?:signs|checks|countersigns)\b|(?:signs?|countersigns?|initials?|checks?|approves?|verif(?:y|ies)|witness(?:es)?|accepts?|inspects?|off|away)\b|to (?:sign|check|verify|witness|inspect)\b)`)

// otherPeople are words that want people without saying how many: a second man, a helper, one of you
// at each end, one who turns while one reads; and two that carry, as a sentence begins.
var otherPeople = []struct {
	words *phrase.Pattern
	n     int
}{
	{phrase.Of(`(?i)\b(?:a|the) third (?:person|man|woman|mechanic|fitter|technician|rigger|pair of hands)\b`), 3},
	{phrase.Of(`(?i)\b(?:a|the) second (?:person|man|woman|mechanic|fitter|technician|rigger|pair of hands)\b`), 2},
	{phrase.Of(`(?i)\b(?:a|your|the) (?:helper|mate) (?:hold|lift|carr|push|pull|stead|guid|watch|turn|read|stands? (?:at|by|beside|behind|on|under|in)\b)`), 2},
	{phrase.Of(`(?i)\b(?:one (?:of you|person|man|mechanic|fitter)|a (?:person|man|mechanic|fitter)) (?:stands? )?(?:at|on) (?:each|either) (?:end|side|handle|corner)\b`), 2},
	{phrase.Of(`(?i)\bone (?:of you )?(?:turns|lifts|pushes|pulls|bars|rolls)\b[^.;]*\b(?:one|the other|another) (?:of you )?(?:reads|watches|guides|holds|steadies|calls|looks|listens|feels)\b`), 2},
	{phrase.Of(`(?i)(?:^|[.;:!] )three ` + carryIt), 3},
	{phrase.Of(`(?i)(?:^|[.;:!] )two ` + carryIt), 2},
}

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
	for _, o := range otherPeople {
		for _, at := range o.words.FindAllStringIndex(text, -1) {
			if said := clause.FindString(text[:at[0]]); !atMost.MatchString(said) && !notIn.MatchString(said) && !notOfCrew.MatchString(text[at[1]:]) {
				most = max(most, o.n)
			}
		}
	}
	return most
}
