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

// WithoutHours counts the steps for which no hours are said, which a total leaves out.
func (j *Job) WithoutHours() int {
	n := 0
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			if st.Hours == nil {
				n++
			}
		}
	}
	return n
}

// TakesTime reports whether a step is planned to take time: it has hours, and more than none.
func (s *Step) TakesTime() bool { return s.Hours != nil && s.Hours.Sign() > 0 }

// Crew is how many people a step takes: those whom it names, and no fewer than must be there
// for each lift that it makes, or whose load hangs meanwhile; one if nothing is said.
func (s *Step) Crew() int {
	n, _ := s.crew()
	return n
}

// CrewTold is how many people a step takes as it is told to who makes it: the crew, and where
// nobody says how many a post of a lift is, those alone whom the step names; 0 if not said.
func (s *Step) CrewTold() int {
	if n, told := s.crew(); told && n > 1 {
		return n
	}
	return s.People
}

// crew counts the people of a step, and reports whether each post of its lifts says how many
// it is.
func (s *Step) crew() (n int, told bool) {
	n, told = max(s.People, 1), true
	for _, l := range slices.Concat(s.Lifts, s.Hangs) {
		there := 0
		for _, role := range l.Crew {
			post := PostOf(role)
			there += post.People
			told = told && post.Told
		}
		n = max(n, there)
	}
	return n, told
}
