package templates_test

import (
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"

	"matchmark/packs/job"
)

// mutable are the fields whose text or limit the paper must say of each place: one of them set
// to that of another thing has to be noticed.
var mutable = map[reflect.Type][]string{
	reflect.TypeFor[job.Dim]():  {"What", "ViewedFrom", "Left", "Reuse", "Over", "Under", "Out", "Source", "Note"},
	reflect.TypeFor[job.Step](): {"Do", "Missed", "Note", "Check", "StillOut", "OnHook"},
}

// A swapped is one field at one place that is to be printed as it is at the first place.
type swapped struct {
	of    reflect.Value
	field string
	as    reflect.Value
}

// swappedIn are the fields of things of one kind that differ from the first thing that has them.
func swappedIn(things reflect.Value) (out []swapped) {
	if things.Len() == 0 {
		return nil
	}
	for _, field := range mutable[things.Index(0).Type().Elem()] {
		var first reflect.Value
		for i := range things.Len() {
			f := things.Index(i).Elem().FieldByName(field)
			switch {
			case !f.IsValid() || f.IsZero():
			case !first.IsValid():
				first = reflect.New(f.Type()).Elem()
				first.Set(f)
			case f.Kind() == reflect.String && strings.Contains(first.String(), f.String()):
				// where the longer text stands, so does the shorter
			case !reflect.DeepEqual(first.Interface(), f.Interface()):
				out = append(out, swapped{things.Index(i), field, first})
			}
		}
	}
	return out
}

// A field of the job that is printed from another place is noticed: the paper is made from the
// job with the field of the first place, and read with the job as it is.
func TestPaperOfAnotherPlaceIsNoticed(t *testing.T) {
	t.Parallel()
	for _, file := range []string{"shims", "ladders", "field-fire-pump"} {
		t.Run(file, func(t *testing.T) {
			t.Parallel()
			jb := loadFile(t, "../testdata/good/"+file+".yaml")
			var all []swapped
			for _, things := range []any{jb.Dims, jb.Steps()} {
				all = append(all, swappedIn(reflect.ValueOf(things))...)
			}
			rng := rand.New(rand.NewPCG(13, 4)) // the same every time
			rng.Shuffle(len(all), func(i, j int) { all[i], all[j] = all[j], all[i] })
			if len(all) < 10 {
				t.Fatalf("only %d fields differ", len(all))
			}
			asIs, told := paperOf(jb), 0
			for _, x := range all[:min(len(all), 7)] {
				f := x.of.Elem().FieldByName(x.field)
				was := reflect.New(f.Type()).Elem()
				was.Set(f)
				f.Set(x.as)
				paper := paperOf(jb)
				f.Set(was)
				if reflect.DeepEqual(asIs, paper) {
					continue // a field that this kind of sheet prints in other words
				}
				noticed := false
				for _, w := range allWants(jb, paper) {
					noticed = noticed || w.miss() != ""
				}
				if noticed {
					told++
				} else {
					t.Errorf("%s.%s of %s, %v, printed as of the first, %v: not noticed", x.of.Elem().Type().Name(), x.field, named(x.of.Interface()), f, x.as)
				}
			}
			t.Logf("%d of %d fields that differ were told of", told, len(all))
			if told < 5 {
				t.Errorf("only %d slips changed the paper", told)
			}
		})
	}
}

// named names a thing of the job for a message.
func named(x any) string {
	switch x := x.(type) {
	case *job.Dim:
		return x.Mark
	case *job.Step:
		return "step " + x.No
	}
	return "?"
}
