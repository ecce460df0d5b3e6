package def

import (
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"unicode/utf8"

	"matchmark/packs/source"
)

// takeCopy adds the things of a copy to those of the definition.
func (d *Definition) takeCopy(c *Definition, u *Use, n *renaming, ps *source.Problems) {
	to, by := reflect.ValueOf(d).Elem(), reflect.ValueOf(c).Elem()
	for i := range to.NumField() {
		field, name := to.Field(i), to.Type().Field(i).Name
		if field.Kind() != reflect.Slice || field.Type().Elem().Kind() != reflect.Pointer || name == "Sections" {
			continue
		}
		have := map[string]reflect.Value{}
		for k := range field.Len() {
			have[ownText(field.Index(k)).Value] = field.Index(k)
		}
		for k := range by.Field(i).Len() {
			thing := by.Field(i).Index(k)
			t := ownText(thing)
			first, twice := have[t.Value]
			switch {
			case !twice:
				n.fits(t, u, ps)
				field.Set(reflect.Append(field, thing))
				have[t.Value] = thing
			case slices.Contains(takenOnce, name) && ownText(first).At == t.At:
				if name == "Tools" { // one tool, at the steps of both copies
					tool := first.Interface().(*Supply)
					tool.For = append(tool.For, thing.Interface().(*Supply).For...)
				}
			case slices.Contains(takenOnce, name):
				ps.AddWith(t.At, "doubled-key", source.Quote(t.Value)+" is described by two files", ownText(first).At, "the first one", "take one of them out, or give it another name")
			default:
				n.sameHere(t, ownText(first), u, ps)
			}
		}
	}
}

// fits sees that the name or mark of a thing is one here as well.
func (n *renaming) fits(t source.Text, u *Use, ps *source.Problems) {
	was, isMark := n.copied.Marks[t.Value]
	switch {
	case !isMark && utf8.RuneCountInString(t.Value) > maxName:
		ps.AddWith(t.At, "use-name", source.Quote(t.Value)+fmt.Sprintf(" is longer than %d letters with what goes before it", maxName), u.As.At, "used here", "give it a shorter name, or the file a shorter as:")
		return
	case !isMark || n.add == 0:
		return
	}
	most := 999
	if t.Value[0] == 'D' {
		most = lastDimension
	}
	if number, err := strconv.Atoi(t.Value[1:]); err != nil || number > most {
		ps.AddWith(u.Add.At, "use-marks", fmt.Sprintf("%s of the file would be %s here, and %s marks go up to %d", was, t.Value, t.Value[:1], most), t.At, "described here", "add less, or give it a smaller number in the file")
	}
}

// sameHere tells of a thing of a copy whose mark or name something has already; of marks
// once, with a number that keeps all of them apart.
func (n *renaming) sameHere(t, first source.Text, u *Use, ps *source.Problems) {
	if slices.ContainsFunc(*ps, func(p source.Problem) bool { return p.Code == "use-marks" }) {
		return
	}
	was, isMark := n.copied.Marks[t.Value]
	if !isMark {
		ps.AddWith(u.As.At, "use-name", n.copied.Names[t.Value]+" of the file is "+t.Value+" here, and that is described already", first.At, "the first one", "give the file another as:, or one of the two another name")
		return
	}
	at := u.Add.At
	if !u.Add.Written() {
		at = u.At
	}
	is := was + " of the file is " + t.Value + " here"
	if n.add == 0 {
		is = "the file has a " + was
	}
	help := "give the marks of the file other numbers"
	if free := n.free(); free > 0 {
		help = "write: marks: " + strconv.Itoa(free)
	}
	ps.AddWith(at, "use-marks", is+", and another thing has that mark", first.At, "the other one", help)
}

// free is the least ten, twenty and so on that keeps the marks of a file apart from
// those of the definition, 0 if none does.
func (n *renaming) free() int {
	for add := 0; add < 1000; add += 10 {
		then := &renaming{add: add}
		free := true
		for m := range n.marks {
			number, _ := strconv.Atoi(then.mark(m)[1:])
			free = free && !n.before.marks[then.mark(m)] && number <= 999 && (m[0] != 'D' || number <= lastDimension)
		}
		if free {
			return add
		}
	}
	return 0
}
