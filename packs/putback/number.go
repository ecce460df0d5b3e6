package putback

import (
	"strconv"

	"matchmark/packs/job"
)

// number gives sections and steps their printed numbers: 3 and 3.2 on the
// traveler, R2 and R2.4 on the reassembly sheet, each counted in the order of
// work.
func number(j *job.Job) {
	off, back, index := 0, 0, 0
	seenBack := false
	for _, s := range j.Sections {
		s.Back = s.Back || putsBack(s, seenBack)
		if s.Back {
			seenBack = true
			back++
			s.No = "R" + strconv.Itoa(back)
		} else {
			off++
			s.No = strconv.Itoa(off)
		}
		for i, st := range s.Steps {
			st.No = s.No + "." + strconv.Itoa(i+1)
			st.Back = s.Back
			st.Index = index
			index++
		}
	}
}

// putsBack reports whether a written section belongs on the reassembly sheet: it
// takes nothing apart and measures nothing as found, and it puts something back
// or stands after one that does.
func putsBack(s *job.Section, afterBack bool) bool {
	fits := false
	for _, st := range s.Steps {
		if len(st.Measure) > 0 || len(st.Remove) > 0 {
			return false
		}
		fits = fits || len(st.Fit) > 0 || len(st.Set) > 0
	}
	return fits || afterBack
}
