package jointsheet

import (
	"slices"
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/joint"
)

// Rows for further tries stood on the sheet behind an angle, where who fills them turns the
// bolts on by it once more, where a try does something else, twice where it ticks the joint
// in its step, and below the row that comes a day later.
func TestFurtherTriesHaveRowsWhereTheyGoRound(t *testing.T) {
	const tighten, turn, last, again, running, slacken, try = joint.Tighten, joint.Turn, joint.LastRound, joint.AgainAfter, joint.AgainRunning, joint.SlackenAll, joint.FurtherTry
	full, none := &joint.Setting{}, []joint.StageKind(nil)
	words, reading := &job.Asked{}, &job.Asked{Dim: &job.Dim{}}
	for _, x := range []struct {
		name   string
		rounds []joint.StageKind
		until  *job.Asked
		each   []job.TryAct
		want   []joint.StageKind
	}{
		{"until no bolt moves", []joint.StageKind{tighten, last}, words, nil, []joint.StageKind{tighten, last, try, try}},
		{"before the day after", []joint.StageKind{tighten, last, again}, words, nil, []joint.StageKind{tighten, last, try, try, again}},
		{"before it has run", []joint.StageKind{tighten, running, again}, words, nil, []joint.StageKind{tighten, try, try, running, again}},
		{"turned on", []joint.StageKind{tighten, turn}, words, nil, []joint.StageKind{tighten, turn}},
		{"slackened", []joint.StageKind{tighten, slacken}, words, nil, []joint.StageKind{tighten, slacken}},
		{"nothing is told", none, words, nil, none},
		{"until a reading is good", []joint.StageKind{tighten, last}, reading, nil, []joint.StageKind{tighten, last}},
		{"a try turns a nut", []joint.StageKind{tighten, last}, words, []job.TryAct{{Words: "turn the nut"}}, []joint.StageKind{tighten, last}},
		{"ticked in the step", []joint.StageKind{tighten, last}, words, []job.TryAct{{Joint: &job.Joint{}}}, []joint.StageKind{tighten, last}},
		{"done once", []joint.StageKind{tighten, last}, nil, nil, []joint.StageKind{tighten, last}},
	} {
		j := &job.Joint{}
		for i, k := range x.rounds {
			r := joint.Round{Stage: i, Kind: k}
			if k != turn && k != slacken {
				r.Setting = full
			}
			j.Rounds = append(j.Rounds, r)
		}
		st := &job.Step{Branching: job.Branching{Until: x.until, EachTry: x.each, Tries: 3}}
		var got []joint.StageKind
		for _, r := range triedAgain(j, []*job.Step{st}).Rounds {
			got = append(got, r.Kind)
			if r.Kind == try && r.Setting != full {
				t.Errorf("%s: a further try has no figure", x.name)
			}
		}
		if !slices.Equal(got, x.want) || len(j.Rounds) != len(x.rounds) {
			t.Errorf("%s: got the rounds %v, want %v", x.name, got, x.want)
		}
	}
}
