package job

import (
	"slices"

	"matchmark/packs/units"
)

// Hours adds up the hours planned for the steps of a section; 0 where none are said.
func (s *Section) Hours() units.Number {
	sum := units.Number{}
	for _, st := range s.Steps {
		if st.Hours != nil {
			sum = sum.Add(*st.Hours)
		}
	}
	return sum
}

// Crew is how many people a step takes: those whom it names, and no fewer than must be there
// for each lift that it makes, or whose load hangs meanwhile; one if nothing is said.
func (s *Step) Crew() int {
	n := max(s.People, 1)
	for _, l := range slices.Concat(s.Lifts, s.Hangs) {
		n = max(n, len(l.Crew))
	}
	return n
}
