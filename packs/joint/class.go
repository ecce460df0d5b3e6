package joint

// What a bolt may carry: its property class or grade
//
//	Sp, Rm    stress under proof load, least tensile strength, N/mm²
//	proof load = As Sp, ultimate load = As Rm
//
// Sources: ISO 898-1 for metric threads, coarse and fine, to M39; SAE J429 for UNC and UNF
// from 1/4 to 1-1/2 in. Refused: a class on a thread that its standard does not have it
// for. A bolt outside both standards needs its proof stress stated with the source.

import (
	"slices"
	"strings"

	"matchmark/packs/thread"
)

// ksi is a thousand psi in MPa: 4.4482216152605 N per lbf, 25.4 mm to the inch.
const ksi = 4448.2216152605 / (25.4 * 25.4)

// A Strength is what a class or grade gives for one thread.
type Strength struct {
	Class   string
	Proof   MPa
	Tensile MPa // 0 where only a proof stress was stated
	Source  string
}

// StrengthOf gives the strength of a class ("8.8") or a grade ("grade 5") on a thread. The
// error is a Refusal of the field class.
func StrengthOf(t thread.Thread, class string) (Strength, error) {
	name := className(class)
	for _, s := range strengths(t) {
		if s.Class == name {
			return s, nil
		}
	}
	return Strength{}, noClass(t, class, name)
}

// Classes lists the classes or grades that the standard has for a thread.
func Classes(t thread.Thread) []string {
	var out []string
	for _, s := range strengths(t) {
		out = append(out, s.Class)
	}
	return out
}

// className takes away how a class or a grade is introduced, and keeps "grade".
func className(class string) string {
	name := strings.Join(strings.Fields(strings.ToLower(class)), " ")
	for _, lead := range []string{"property class ", "class ", "iso 898-1 ", "sae j429 ", "sae "} {
		name = strings.TrimPrefix(name, lead)
	}
	return name
}

// strengths lists what the standard has for a thread; nothing for a thread outside both.
func strengths(t thread.Thread) []Strength {
	var out []Strength
	switch t.Series {
	case thread.MetricCoarse, thread.MetricFine:
		d := float64(t.Diameter)
		if !t.Listed || d < isoLeast || t.Series == thread.MetricFine && d < isoFineLeast {
			return nil
		}
		for _, r := range isoTable {
			if d > r.over && d <= r.upTo {
				out = append(out, Strength{r.class, r.proof, r.tensile, "ISO 898-1"})
			}
		}
	case thread.UNC, thread.UNF:
		d := float64(t.Diameter.Inch())
		for _, r := range saeTable {
			if d > r.over && d <= r.upTo {
				out = append(out, Strength{r.grade, MPa(r.proof * ksi), MPa(r.tensile * ksi), "SAE J429"})
			}
		}
	}
	return out
}

// noClass says why a thread has not got a class.
func noClass(t thread.Thread, class, name string) Refusal {
	r := Refusal{Field: "class", Help: "write its proof stress with its source: proof: {stress: …, source: …}"}
	known := Classes(t)
	metric := t.Series == thread.MetricCoarse || t.Series == thread.MetricFine
	iso := slices.ContainsFunc(isoTable, func(r isoRow) bool { return r.class == name })
	sae := slices.ContainsFunc(saeTable, func(r saeRow) bool { return r.grade == name })
	switch {
	case class == "":
		r.Message = "the property class or grade of " + t.String() + " is not told"
	case iso && !metric:
		r.Message = class + " is a class of metric threads, and the thread is " + t.String()
	case sae && metric:
		r.Message = class + " is a grade of unified threads, and the thread is " + t.String()
	case iso:
		r.Message = "ISO 898-1 has no class " + class + " for " + t.String()
	case sae:
		r.Message = "SAE J429 has no " + class + " for " + t.String()
	case slices.ContainsFunc(saeTable, func(r saeRow) bool { return r.grade == "grade "+name }) && !metric:
		r.Message, r.Help = class+" alone can be a class or a grade", "write grade "+name
		return r
	default:
		r.Message = class + " is no class or grade known here"
	}
	if len(known) > 0 {
		r.Help = "known for it are " + strings.Join(known, ", ") + "; or " + r.Help
	}
	return r
}
