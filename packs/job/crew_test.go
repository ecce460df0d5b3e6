package job

import (
	"slices"
	"testing"
)

// A lift with "two on tag lines" had one line to sign for both.
func TestPosts(t *testing.T) {
	for _, x := range []struct {
		role   string
		people int // 0 where it is not told
		names  []string
	}{
		{"person in charge", 1, []string{"person in charge"}},
		{"one to watch the load cell", 1, []string{"one to watch the load cell"}},
		{"two on tag lines", 2, []string{"two on tag lines 1/2", "two on tag lines 2/2"}},
		{"3 riggers at the slings", 3, []string{"3 riggers at the slings 1/3", "3 riggers at the slings 2/3", "3 riggers at the slings 3/3"}},
		{"zwei an den Leitseilen", 2, []string{"zwei an den Leitseilen 1/2", "zwei an den Leitseilen 2/2"}},
		{"dwóch przy linach", 2, []string{"dwóch przy linach 1/2", "dwóch przy linach 2/2"}},
		{"one at each end", 0, []string{"one at each end"}},
		{"helpers on the tag lines", 0, []string{"helpers on the tag lines"}},
		{"40 t crane driver", 1, []string{"40 t crane driver"}},
		{"5 t crane driver", 1, []string{"5 t crane driver"}},
		{"5 ton crane driver", 1, []string{"5 ton crane driver"}},
		{"10 tonne crane driver", 1, []string{"10 tonne crane driver"}},
		{"five tonne crane driver", 1, []string{"five tonne crane driver"}},
		{"5 Tonnen-Kran, Fahrer", 1, []string{"5 Tonnen-Kran, Fahrer"}},
		{"12 metre ladder man", 1, []string{"12 metre ladder man"}},
		{"6 kV electrician", 1, []string{"6 kV electrician"}},
		{"6kV electrician", 1, []string{"6kV electrician"}},
		{"3 phase electrician", 1, []string{"3 phase electrician"}},
		{"3 rd shift lead", 1, []string{"3 rd shift lead"}},
		{"3rd shift lead", 1, []string{"3rd shift lead"}},
		{"2x rigger", 2, []string{"2x rigger 1/2", "2x rigger 2/2"}},
		{"2 x rigger", 2, []string{"2 x rigger 1/2", "2 x rigger 2/2"}},
		{"rigger x2", 2, []string{"rigger x2 1/2", "rigger x2 2/2"}},
		{"2-man crew", 2, []string{"2-man crew 1/2", "2-man crew 2/2"}},
		{"two-man crew", 2, []string{"two-man crew 1/2", "two-man crew 2/2"}},
		{"2-Mann-Trupp", 2, []string{"2-Mann-Trupp 1/2", "2-Mann-Trupp 2/2"}},
		{"operators (2)", 2, []string{"operators (2) 1/2", "operators (2) 2/2"}},
		{"riggers (two)", 2, []string{"riggers (two) 1/2", "riggers (two) 2/2"}},
		{"foreman (night)", 1, []string{"foreman (night)"}},
		{"one or two riggers", 0, []string{"one or two riggers"}},
		{"2 to 3 on tag lines", 0, []string{"2 to 3 on tag lines"}},
		{"2-3 on tag lines", 0, []string{"2-3 on tag lines"}},
		{"zwei oder drei am Seil", 0, []string{"zwei oder drei am Seil"}},
		{"2 in the basket", 0, []string{"2 in the basket"}},
		{"two in the basket", 2, []string{"two in the basket 1/2", "two in the basket 2/2"}},
		{"fixer of the slings", 1, []string{"fixer of the slings"}},
	} {
		p := PostOf(x.role)
		if p.Told != (x.people > 0) || p.Told && p.People != x.people || !slices.Equal(p.Each(), x.names) {
			t.Errorf("%q: %d people, told %v, %q; want %d, %q", x.role, p.People, p.Told, p.Each(), x.people, x.names)
		}
	}
}
