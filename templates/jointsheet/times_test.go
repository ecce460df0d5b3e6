package jointsheet

import (
	"slices"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/words"
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

// One table for all places asked of each what it asks of the first: where that one alone was
// tightened until no bolt moves, the others had ticks too many, and where it was not, too few.
func TestPlacesHaveTheirOwnRounds(t *testing.T) {
	exactly := joint.Exactly(units.Quantity{Number: units.Whole(100), Unit: units.NewtonMetre})
	set := &exactly
	for again := range 3 {
		for rounds := 1; rounds <= 2; rounds++ {
			jb := &job.Job{Sections: []*job.Section{{}}}
			var g []*job.Joint
			for at := range 3 {
				j := &job.Joint{Base: "J1", Mark: "J1", Torque: "100 N·m", Parts: []*job.Part{{Count: 1}}}
				j.Rounds = []joint.Round{{Kind: joint.Tighten, Setting: set}, {Kind: joint.LastRound, Setting: set}}[:rounds]
				st := &job.Step{No: "1.1", Tighten: []job.Fastening{{Joint: j}}}
				if at == again {
					st.Branching = job.Branching{Until: &job.Asked{}, Tries: 3}
				}
				g, jb.Sections[0].Steps = append(g, j), append(jb.Sections[0].Steps, st)
			}
			c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
			ticks := 0
			for _, b := range placeTables(c, g) {
				for _, item := range b.Items() {
					if item.Role == layout.RoleTick {
						ticks++
					}
				}
			}
			if want := 3*rounds + 2; ticks != want {
				t.Errorf("place %d of 3 goes round again, %d rounds else: %d ticks, want %d", again+1, rounds, ticks, want)
			}
		}
	}
}
