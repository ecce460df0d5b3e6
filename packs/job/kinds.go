package job

import (
	"slices"

	"matchmark/packs/source"
)

// A Kind is all pieces of one name that come off a machine in numbers, wherever they lie:
// screws, nuts, washers, pins, springs. They are counted together when all is apart and when
// all is back, for a piece that went into the wrong box is missing in no box alone.
type Kind struct {
	At    source.Pos
	Name  string
	Off   int     // pieces that come off
	Back  int     // of them, pieces that go back on
	Scrap int     // of them, pieces that do not
	New   int     // new pieces that go on
	In    []Where // where they lie, each once, in the order of work
}

// Kinds lists the kinds of fasteners and loose parts of a job in the order in which they come
// off: parts of joints, parts with a thread, and all of which more than one piece comes off.
// What has a tag or a spot of its own is counted there.
func (j *Job) Kinds() []Kind {
	var out []Kind
	at, counted := map[string]int{}, map[string]bool{}
	for _, p := range j.Parts {
		counted[p.Name] = counted[p.Name] || len(p.Joints) > 0 || p.Thread != nil
	}
	for _, st := range j.Steps() {
		for _, m := range st.Remove {
			if m.Part == nil || m.To.Spot != nil || j.TagOf(m.Part) != nil {
				continue
			}
			i, known := at[m.Part.Name]
			if !known {
				i = len(out)
				at[m.Part.Name] = i
				out = append(out, Kind{At: m.Part.At, Name: m.Part.Name})
			}
			out[i].takeOff(m)
		}
	}
	for _, st := range j.Steps() {
		for _, m := range st.Fit {
			if m.Part == nil {
				continue
			}
			if i, known := at[m.Part.Name]; known {
				out[i].putOn(m)
			}
		}
	}
	return slices.DeleteFunc(out, func(k Kind) bool { return !counted[k.Name] && k.Off < 2 })
}

// takeOff counts pieces that come off.
func (k *Kind) takeOff(m *Move) {
	k.Off += m.N
	if m.To.Scrap || m.OldOne() != nil {
		k.Scrap += m.N
	}
	if !slices.Contains(k.In, m.To) {
		k.In = append(k.In, m.To)
	}
}

// putOn counts pieces that go on.
func (k *Kind) putOn(m *Move) {
	if m.New {
		k.New += m.N
		return
	}
	k.Back += m.N
}
