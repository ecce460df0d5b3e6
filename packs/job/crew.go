package job

import (
	"regexp"
	"strconv"
	"strings"

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
	forEach = regexp.MustCompile(`(?i)(?:^|\s)(?:each|every|jede[rmsn]?|cada|chaque|chacune?|każd\p{L}*)(?:$|[\s,:])`)
	someOf  = regexp.MustCompile(`(?i)(?:^|\s)(?:all|several|riggers|helpers|mechanics|alle|mehrere|todos|varios|tous|plusieurs|wszyscy|kilku)(?:$|[\s,:])`)
)

// PostOf reads how many people a role is: the number that it begins with, as 2 or two, and
// one where no number is written; a size, as of a 5 t crane, is none. It is not told of "one
// at each end", which is as many as there are ends, nor of "riggers".
func PostOf(role string) Post {
	if forEach.MatchString(role) {
		return Post{Role: role, People: 1}
	}
	words := strings.Fields(role)
	if len(words) > 0 {
		n := numbers[strings.ToLower(words[0])]
		if count, err := strconv.Atoi(words[0]); err == nil && 1 <= count && count <= mostAtOnePost {
			n = count
			if _, err := units.ParseQuantity(strings.Join(words[:min(2, len(words))], " ")); err == nil {
				n = 0
			}
		}
		if n > 0 {
			return Post{Role: role, People: n, Told: true}
		}
	}
	return Post{Role: role, People: 1, Told: !someOf.MatchString(role)}
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
