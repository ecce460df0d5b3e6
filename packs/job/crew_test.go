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
	} {
		p := PostOf(x.role)
		if p.Told != (x.people > 0) || p.Told && p.People != x.people || !slices.Equal(p.Each(), x.names) {
			t.Errorf("%q: %d people, told %v, %q; want %d, %q", x.role, p.People, p.Told, p.Each(), x.people, x.names)
		}
	}
}
