package job

import "matchmark/packs/units"

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
