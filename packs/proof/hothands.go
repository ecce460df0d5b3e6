package proof

import (
	"strconv"

	"matchmark/packs/source"
)

// checkHotHands warns of a step that draws a part off by a flame with fewer people than its sheet
// keeps busy at once: who plans the crew by people: sends too few.
func (r *report) checkHotHands() {
	told := map[source.Pos]bool{} // once for all places
	for _, h := range r.job.Heats {
		st := h.PulledAt
		if st == nil || st.People == 0 || told[st.At] {
			continue
		}
		least, who := h.Hands()
		if has := st.Crew(); has < least {
			told[st.At] = true
			r.problems.WarnWith(st.At, "hot-hands", "step "+st.Name()+" draws "+h.PartName()+" off by a flame with "+count(has)+", and "+count(least)+" are busy at once: "+who, h.At, "the heat",
				"people: "+strconv.Itoa(least)+", or more where the site wants it")
		}
	}
}

// count is a number of people in words.
func count(n int) string {
	if n == 1 {
		return "one person"
	}
	return strconv.Itoa(n) + " people"
}
