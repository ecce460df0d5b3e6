package templates

import (
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// Places with names did not say from where they are counted, numbers behind places of the same
// sides were left out, and two groups of the same sides stood there as one, 1 – 14.
func TestPlacesAreToldByGroup(t *testing.T) {
	t.Parallel()
	c := &composer{Composer: &block.Composer{W: words.English}}
	place := func(label, name, counted, seen string) job.Place {
		return job.Place{Label: label, Name: name, CountedFrom: counted, ViewedFrom: seen}
	}
	for _, x := range []struct {
		what string
		list []job.Place
		want string
	}{
		{"ends by name", []job.Place{place("DE", "drive end", "", "the motor"), place("NDE", "free end", "", "the motor")}, "DE drive end · NDE free end: seen from the motor"},
		{"ends of two sides", []job.Place{place("DE", "drive end", "", "the motor"), place("NDE", "free end", "", "the sump")}, "DE drive end: seen from the motor; NDE free end: seen from the sump"},
		{"names that are counted", []job.Place{place("DE", "end DE", "the drive", ""), place("NDE", "end NDE", "the drive", "")}, "end DE · NDE: counted from the drive"},
		{"numbers", []job.Place{place("11", "gate 11", "the drive", "the walkway"), place("12", "gate 12", "the drive", "the walkway"), place("13", "gate 13", "the drive", "the walkway")}, "gate 11 – 13: counted from the drive, seen from the walkway"},
		{"letters and numbers", []job.Place{place("G1", "gate G1", "", "the canal"), place("G2", "gate G2", "", "the canal")}, "gate G1 – G2: seen from the canal"},
		{"one number", []job.Place{place("1", "1", "the drive", "")}, "1: counted from the drive"},
		{"a number with a name", []job.Place{place("1", "oil pump", "", ""), place("2", "line 2", "", "")}, "1 oil pump · line 2"},
		{"nothing is said", []job.Place{place("1", "line 1", "", ""), place("2", "line 2", "", "")}, ""},
	} {
		if got := c.groupOfPlaces(x.list); got != x.want {
			t.Errorf("%s: %q, want %q", x.what, got, x.want)
		}
	}
	group := func(group string, list ...job.Place) (out []job.Place) {
		for _, p := range list {
			p.Keys, p.Groups = []string{p.Label}, []string{group}
			out = append(out, p)
		}
		return out
	}
	j := &job.Job{Places: append(group("bank", place("1", "bank 1", "", "the walkway")), group("gate", place("2", "gate 2", "", "the walkway"))...)}
	for _, p := range j.Places {
		j.Dims = append(j.Dims, &job.Dim{Place: p})
	}
	set := &composer{Composer: block.New(pdf.NewFaces(), layout.Pen{}, j, words.English, 180)}
	if lines := set.placeLegend(); len(lines) != 2 {
		t.Errorf("two groups of the same sides have %d lines", len(lines))
	}
}
