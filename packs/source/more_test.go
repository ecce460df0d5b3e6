package source

import "testing"

// other is a language that has the sentence about further places.
type other struct{}

func (other) Said(english string) string {
	return map[string]string{onePlace: "; ebenso an 1 weiteren Stelle", morePlaces: "; ebenso an %d weiteren Stellen"}[english]
}

func (other) Cause(string) string { return "Ein Gewinde fehlt." }

// What holds at several places was said of the first alone on paper in another language.
func TestFurtherPlacesInAnotherLanguage(t *testing.T) {
	t.Parallel()
	at := Pos{File: "x.yaml", Line: 3, Col: 1}
	for _, c := range []struct {
		places          []string
		english, german string
	}{
		{[]string{"J1/DE"}, "J1/DE has no thread", "Ein Gewinde fehlt."},
		{[]string{"J1/DE", "J1/NDE"}, "J1/DE has no thread; the same at 1 more place", "Ein Gewinde fehlt; ebenso an 1 weiteren Stelle"},
		{[]string{"J1/A", "J1/B", "J1/C"}, "J1/A has no thread; the same at 2 more places", "Ein Gewinde fehlt; ebenso an 2 weiteren Stellen"},
	} {
		var ps Problems
		for _, p := range c.places {
			ps.Add(at, "joint-refused", p+" has no thread")
		}
		ps.Sort()
		if len(ps) != 1 || ps[0].In(nil) != c.english || ps[0].In(other{}) != c.german {
			t.Errorf("%v: %d problems, %q and %q", c.places, len(ps), ps[0].In(nil), ps[0].In(other{}))
		}
	}
}
