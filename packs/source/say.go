package source

import (
	"sort"
	"strings"

	"matchmark/packs/nearest"
	"matchmark/packs/phrase"
)

// Quote puts a word of the author in quotes, for a message.
func Quote(s string) string { return `"` + s + `"` }

// AddWith appends an error of which a second place matters, with a few words on
// that place.
func (ps *Problems) AddWith(at Pos, code, message string, see Pos, what string, help ...string) {
	*ps = append(*ps, Problem{Pos: at, Severity: Error, Code: code, Message: message, Help: help, See: []Also{{Pos: see, What: what}}})
}

// WarnWith appends a warning of which a second place matters, with a few words on
// that place.
func (ps *Problems) WarnWith(at Pos, code, message string, see Pos, what string, help ...string) {
	*ps = append(*ps, Problem{Pos: at, Severity: Warning, Code: code, Message: message, Help: help, See: []Also{{Pos: see, What: what}}})
}

// Most is the most problems that are told in one run. More of them come from one
// mistake that runs through the whole file.
const Most = 200

// listed is up to how many known names are listed where a name is not known: the
// usual cautions all go in.
const listed = 24

// aMark is a mark: two of them are near to one another and mean different things.
var aMark = phrase.Of(`^[A-Z][0-9]+$`)

// nameLike is what could be the name of a thing.
var nameLike = phrase.Of(`^[\p{L}\d-]+$`)

// Unknown appends the error of a name that no thing of a kind has, with the nearest
// name that one has, which it gives: the name that was probably meant, "" when none
// is near. what is the kind, where the key that lists them.
func (ps *Problems) Unknown(t Text, what string, known []string, where string) string {
	help := []string{"there is none under " + where}
	var names []string
	if len(*ps) < Most { // looking for near names takes its time
		names = present(known)
	}
	near := ""
	mark := aMark.MatchString(t.Value)
	if !mark {
		near = nearest.Word(t.Value, names)
	}
	if near != "" {
		help = []string{"did you mean " + near + "?"}
	} else if len(names) > 0 && len(names) <= listed {
		help = []string{"known: " + strings.Join(names, ", ")}
	}
	if near == "" && where == "steps" {
		help = append(help, "or call what is meant so: "+what+": "+t.Value)
	} else if near == "" && where != "it" && !strings.Contains(where, " ") && nameLike.MatchString(t.Value) {
		help = append(help, "or describe it under "+where+": "+t.Value+": {…}")
	}
	article := "a "
	if strings.ContainsRune("aeiou", rune(what[0])) {
		article = "an "
	}
	for _, r := range t.Value {
		if _, twin := Twin(r); twin || OddBlank(r) {
			help = append(help, "a character in it looks like another one: "+RuneName(r))
			break
		}
	}
	ps.Add(t.At, "unknown-name", Quote(t.Value)+" is not "+article+what, help...)
	return near
}

// present sorts names and leaves out empty ones.
func present(known []string) []string {
	var names []string
	for _, k := range known {
		if k != "" {
			names = append(names, k)
		}
	}
	sort.Strings(names)
	return names
}
