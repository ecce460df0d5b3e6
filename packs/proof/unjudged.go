package proof

import (
	"strings"

	"matchmark/packs/source"
)

// checkUnjudged sees that a part which is renewed only if something is found on it does not
// go to scrap as it comes off: nobody could look at it, and its box of the tag, reuse or
// scrap, stands on none.
func (r *report) checkUnjudged() {
	told := map[source.Pos]bool{} // once for all places
	for _, p := range r.job.Parts {
		if !strings.HasPrefix(p.Renew, "if ") && p.Renew != "as set" {
			continue
		}
		for _, m := range p.Off {
			if m.To.Scrap && !told[m.At] {
				told[m.At] = true
				r.problems.WarnWith(m.At, "scrapped-unjudged", p.Called()+" goes to scrap at "+m.Step.Name()+", and is renewed only "+lowerName(p.Renew)+": nobody looks at it any more", p.At, "the part",
					"a container in into:, where it lies until it is decided", "or renew: always at the part")
			}
		}
	}
}
