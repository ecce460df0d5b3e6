package filled

import (
	"slices"

	"matchmark/packs/source"
	"matchmark/packs/units"
)

// Values are the readings of one job from all its files together.
type Values struct {
	entries map[string]Entry // by the key of the box
	unsure  map[string]bool  // keys of boxes whose value was refused, or differs between files
	Files   []*File
	Lost    []Lost
	Day     []Day
	Hours   *units.Quantity
	Told    source.Problems // where two files differ, as Merge gave it
}

// Merge joins the files of one job. Where two give different values for one box both
// rows are told, and the box has none.
func Merge(files []*File) (*Values, source.Problems) {
	v := &Values{entries: map[string]Entry{}, unsure: map[string]bool{}, Files: files}
	var told source.Problems
	conflict := map[string]bool{}
	days := map[[2]string]Day{}
	for _, f := range files {
		for _, e := range f.Entries {
			key := e.Blank.Key()
			before, there := v.entries[key]
			switch {
			case !there:
				v.entries[key] = e
			case before.same(e):
			default:
				conflict[key] = true
				told.AddWith(e.At, "two-values", e.Blank.Dim.Mark+" "+sides[e.Blank.When]+inBrackets(position(e.Blank))+" is "+source.Quote(e.Text)+" here and "+source.Quote(before.Text)+" in the other file", before.At, "the other row",
					"look at the paper, and put the one right that differs")
			}
		}
		for _, d := range f.Day {
			key := [2]string{d.Mark, d.Side}
			if before, there := days[key]; there && before.Text != d.Text {
				told.AddWith(d.At, "two-values", d.Mark+" "+d.Side+" is "+source.Quote(d.Text)+" here and "+source.Quote(before.Text)+" in the other file", before.At, "the other row",
					"look at the paper, and put the one right that differs")
				continue
			} else if !there {
				days[key] = d
				v.Day = append(v.Day, d)
			}
		}
		for _, b := range f.Refused {
			v.unsure[b.Key()] = true
		}
		v.Lost = append(v.Lost, f.Lost...)
		if f.Hours != nil {
			if v.Hours != nil && v.Hours.Number.Cmp(f.Hours.Number) != 0 {
				told.Add(source.Pos{File: f.Name}, "two-values", "the running hours are "+f.Hours.Text()+" here and "+v.Hours.Text()+" in the other file", "the files of one outage name one count of hours")
			}
			v.Hours = f.Hours
		}
	}
	for key := range conflict {
		v.unsure[key] = true
		delete(v.entries, key)
	}
	v.Told = told
	return v, told
}

// Boxes is how many boxes have a value.
func (v *Values) Boxes() int { return len(v.entries) }

// Typed says who typed the values and when, each once: A. Penn, 2026-03-14.
func (v *Values) Typed() []string {
	var out []string
	for _, f := range v.Files {
		text := f.By
		if !f.On.IsZero() {
			text += ", " + f.On.Format("2006-01-02")
		}
		if text != "" && !slices.Contains(out, text) {
			out = append(out, text)
		}
	}
	return out
}

// On is the last day on which a file of the job was typed, as 2026-03-14; empty if none
// says.
func (v *Values) On() string {
	last := ""
	for _, f := range v.Files {
		if !f.On.IsZero() {
			last = max(last, f.On.Format("2006-01-02"))
		}
	}
	return last
}
