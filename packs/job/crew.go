package job

import (
	"strconv"
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/units"
)

// A Post is who must be there at a lift, in the words of the definition, and how many
// people that are.
type Post struct {
	Role   string
	People int // 1 or more where it is told
	Told   bool
}

// numbers are the numbers of people that a crew is written with, in the languages of the
// paper.
var numbers = map[string]int{
	"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "both": 2,
	"ein": 1, "eine": 1, "einer": 1, "zwei": 2, "drei": 3, "vier": 4, "fünf": 5, "sechs": 6, "beide": 2,
	"uno": 1, "una": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "ambos": 2,
	"un": 1, "une": 1, "deux": 2, "trois": 3, "quatre": 4, "cinq": 5,
	"jeden": 1, "jedna": 1, "dwóch": 2, "dwaj": 2, "dwie": 2, "dwoje": 2, "trzech": 3, "trzej": 3, "trzy": 3, "czterech": 4, "pięciu": 5, "sześciu": 6,
}

// Words by which a role is that of several people of whom nobody says how many: so many for
// each of something, and a number of people where no number stands before them.
var (
	forEach = phrase.Of(`(?i)(?:^|\s)(?:each|every|jede[rmsn]?|cada|chaque|chacune?|każd\p{L}*)(?:$|[\s,:])`)
	someOf  = phrase.Of(`(?i)(?:^|\s)(?:all|several|riggers|helpers|mechanics|alle|mehrere|todos|varios|tous|plusieurs|wszyscy|kilku)(?:$|[\s,:])`)
)

// How a number of people is written that does not stand alone: 2x rigger, 2-man crew,
// operators (2), one or two riggers.
var (
	times    = phrase.Of(`(?i)^(\d+|\p{L}+) ?[x×] ?\p{L}`)
	manCrew  = phrase.Of(`(?i)^(\d+|\p{L}+)[ -](?:man|men|person|people|mann|mannige[rns]?|personen|hombres|personas|personnes|osob\p{L}*)(?:$|[\s,:-])`)
	behind   = phrase.Of(`(?i)(?:\((\d+|\p{L}+)\)|\s[x×] ?(\d+))$`)
	fromTo   = phrase.Of(`(?i)^(\d+|\p{L}+)(?:\s*[-–/]\s*| (?:or|to|oder|bis|o|u|a|ou|à|lub|albo|do) )(\d+|\p{L}+)`)
	leading  = phrase.Of(`^(?:\d+|\p{L}+)$`)
	sizeWord = phrase.Of(`(?i)^(?:st|nd|rd|th|k?v|k?va|kw|mw|hp|ps|bhp|hz|volts?|kilovolts?|tons?|tonnes?|tonnen|toneladas?|tony?|tonow\p{L}*|met(?:re|er)s?|mètres?|metros?|metr\p{L}*|millimet(?:re|er)s?|inch(?:es)?|zoll|f(?:oo|ee)t|pounds?|lbs|kilos?|kilograms?|lit(?:re|er)s?|bars?|degrees?|hours?|minutes?|days?|phases?|phasen|legs?|legged|poles?|stages?|axles?|wheels?|ways?|class)(?:$|[^\p{L}\d])`)
)

// PostOf reads how many people a role is: the number that it begins with, as 2 or two, 2x or
// 2-man, or that stands in brackets behind it; and one where no number is written. A size, as
// of a 5 t crane or of 6 kV, and the third of a row are none. It is not told of "one at each
// end", which is as many as there are ends, of "riggers", nor of "one or two".
func PostOf(role string) Post {
	not := Post{Role: role, People: 1}
	if forEach.MatchString(role) {
		return not
	}
	if m := fromTo.FindStringSubmatch(role); m != nil && people(m[1]) > 0 && people(m[2]) > 0 {
		return not
	}
	for _, written := range []*phrase.Pattern{times, manCrew, behind} {
		if m := written.FindStringSubmatch(role); m != nil {
			if n := people(strings.Join(m[1:], "")); n > 0 {
				return Post{Role: role, People: n, Told: true}
			}
		}
	}
	words := strings.Fields(role)
	if len(words) > 0 && leading.MatchString(words[0]) {
		switch n := people(words[0]); {
		case n == 0 || len(words) > 1 && sizeWord.MatchString(words[1]):
		case len(words) > 1 && words[0] == strconv.Itoa(n) && words[1] == "in":
			return not // 2 in the basket, or a 2 in pipe
		case len(words) > 1 && words[0] == strconv.Itoa(n) && units.IsQuantity(words[0]+" "+words[1]):
		default:
			return Post{Role: role, People: n, Told: true}
		}
	}
	return Post{Role: role, People: 1, Told: !someOf.MatchString(role)}
}

// people is the number that a word or its figures stand for, 0 where they stand for none, or
// for more than hang on one lift.
func people(word string) int {
	if n, err := strconv.Atoi(word); err == nil && 1 <= n && n <= mostAtOnePost {
		return n
	}
	return numbers[strings.ToLower(word)]
}

// mostAtOnePost is the greatest number that is read as people. Common practice, no source:
// no more hang on one lift.
const mostAtOnePost = 12

// Each names the people of a post one by one, as "two on tag lines 1/2"; the post itself
// where it is one, or not told.
func (p Post) Each() []string {
	if !p.Told || p.People == 1 {
		return []string{p.Role}
	}
	var out []string
	for i := range p.People {
		out = append(out, p.Role+" "+strconv.Itoa(i+1)+"/"+strconv.Itoa(p.People))
	}
	return out
}
