package jointsheet

import (
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/joint"
)

// A joint that told no torque, or was dry, was said to be worked out with that of oiled bolts.
func TestSameBoltsAreAlikeInAll(t *testing.T) {
	bolt := &job.Part{Key: "bolt"}
	at := func(base, torque, lubricant string, worked bool) []*job.Joint {
		j := &job.Joint{Base: base, Torque: torque, Lubricant: lubricant, Parts: []*job.Part{bolt}}
		if worked {
			j.Result = &joint.Result{}
		}
		return []*job.Joint{j}
	}
	for _, x := range []struct {
		name string
		j, k []*job.Joint
		want bool
	}{
		{"the same", at("J2", "250 N·m", "oiled", false), at("J1", "250 N·m", "oiled", true), true},
		{"told at the other", at("J2", "250 N·m", "as in J1", false), at("J1", "250 N·m", "oiled", true), true},
		{"the other tells it here", at("J2", "250 N·m", "oiled", false), at("J1", "250 N·m", "as in J2", true), true},
		{"dry", at("J2", "250 N·m", "dry", false), at("J1", "250 N·m", "oiled", true), false},
		{"nothing told", at("J2", "250 N·m", "", false), at("J1", "250 N·m", "oiled", true), false},
		{"told at none", at("J2", "250 N·m", "as in J9", false), at("J1", "250 N·m", "oiled", true), false},
		{"a ring", at("J2", "250 N·m", "as in J2", false), at("J1", "250 N·m", "oiled", true), false},
		{"no torque", at("J2", "", "oiled", false), at("J1", "", "oiled", true), false},
		{"another torque", at("J2", "200 N·m", "oiled", false), at("J1", "250 N·m", "oiled", true), false},
	} {
		if got := boltsOf([][]*job.Joint{x.k, x.j}, x.j) != nil; got != x.want {
			t.Errorf("%s: the same bolts %t, want %t", x.name, got, x.want)
		}
	}
}
