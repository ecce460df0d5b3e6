package def

import (
	"reflect"
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// A Copied is a file as a definition uses it: where, and what its names and marks are
// called in the file, by what they are called here.
type Copied struct {
	At           source.Pos
	File, As     string
	Names, Marks map[string]string
}

// takenOnce are what the copies of a file share.
var takenOnce = []string{"Places", "Options", "Instruments", "Cautions", "Isolations", "Permits", "Tools", "Gear", "Cranes"}

// asForm is what may go before names: short, for it stands in every one of them.
var asForm = phrase.Of(`^[\p{L}\p{N}][\p{L}\p{N}-]{0,11}$`)

// Use puts a copy of a used file, the i-th section of the definition, in its place: the
// sections there, the things to those of the definition. file is its path.
func (d *Definition) Use(i int, file string, from *Definition) source.Problems {
	var ps source.Problems
	u := d.Sections[i].Use
	d.Sections = slices.Delete(d.Sections, i, i+1)
	if !u.As.Written() || from.At.IsZero() {
		return nil // has been told
	}
	if !asForm.MatchString(u.As.Value) {
		ps.Add(u.As.At, "use-name", source.Quote(u.As.Value)+" goes before every name of the file, on tags as well: 12 letters, figures and hyphens at most", shorter(u.As.Value))
		return ps
	}
	if c := d.Copied[u.As.Value]; c != nil {
		ps.AddWith(u.As.At, "use-name", "two files are used as "+u.As.Value+": their names would be the same", c.At, "the first of them", "give one of them another as:")
		return ps
	}
	add, _ := strconv.Atoi(u.Add.Value)
	n := &renaming{as: u.As.Value, add: add, english: d.English, problems: &ps, root: !d.Pack.At.IsZero(),
		copied: &Copied{At: u.At, File: file, As: u.As.Value, Names: map[string]string{}, Marks: map[string]string{}}}
	n.describe(from)
	n.before = &renaming{}
	n.before.describe(d)
	taken := *from
	taken.Sections = slices.Clone(from.Sections)
	copied := reflect.New(reflect.TypeOf(taken)).Elem()
	n.copy(copied, reflect.ValueOf(taken), "", "Definition")
	c := copied.Addr().Interface().(*Definition)
	d.takeCopy(c, u, n, &ps)
	d.Sections = slices.Insert(d.Sections, i, c.Sections...)
	if d.Copied == nil {
		d.Copied = map[string]*Copied{}
	}
	for as, inner := range from.Copied { // what the file uses in its turn
		d.Copied[n.as+"-"+as] = inner.under(n)
	}
	d.Copied[n.as] = n.copied
	return ps
}

// shorter proposes what may go before names, made of what was written where that can be.
func shorter(as string) string {
	if plain := strings.Join(strings.Fields(as), "-"); asForm.MatchString(plain) {
		return "write: as: " + plain
	}
	return "for example as: NDE"
}

// under is a copy within a copy, by the names of the outer one.
func (c *Copied) under(n *renaming) *Copied {
	out := &Copied{At: n.copied.At, File: c.File, As: n.as + "-" + c.As, Names: map[string]string{}, Marks: map[string]string{}}
	for here, there := range n.copied.Names {
		if first, ok := c.Names[there]; ok {
			out.Names[here] = first
		}
	}
	for here, there := range n.copied.Marks {
		if first, ok := c.Marks[there]; ok {
			out.Marks[here] = first
		}
	}
	return out
}

// describe notes what the file describes.
func (n *renaming) describe(d *Definition) {
	n.marks, n.parts, n.steps, n.openings, n.headings = map[string]bool{}, map[string]bool{}, map[string]bool{}, map[string]bool{}, map[string]bool{}
	v := reflect.ValueOf(d).Elem()
	for i := range v.NumField() {
		f := v.Field(i)
		if f.Kind() != reflect.Slice || f.Type().Elem().Kind() != reflect.Pointer {
			continue
		}
		into := map[string]map[string]bool{"Parts": n.parts, "Openings": n.openings}[v.Type().Field(i).Name]
		for k := range f.Len() {
			own := ownText(f.Index(k)).Value
			if into != nil {
				into[own] = true
			} else if markShape.MatchString(own) {
				n.marks[own] = true
			}
		}
	}
	for _, s := range d.Sections {
		n.headings[s.Name.One.Value] = s.Name.One.Value != ""
		for _, st := range s.Steps {
			n.steps[st.Key.Value] = true
		}
	}
}

// copy copies a value with all it points to and takes its names over. field is the kind
// of map and the field that it stands in, owner the kind of map around it.
func (n *renaming) copy(to, from reflect.Value, field, owner string) {
	switch from.Kind() {
	case reflect.Pointer:
		if !from.IsNil() {
			to.Set(reflect.New(from.Type().Elem()))
			n.copy(to.Elem(), from.Elem(), field, owner)
		}
	case reflect.Slice:
		if !from.IsNil() {
			to.Set(reflect.MakeSlice(from.Type(), from.Len(), from.Len()))
		}
		for i := range from.Len() {
			n.copy(to.Index(i), from.Index(i), field, owner)
		}
	case reflect.Struct:
		to.Set(from)
		switch x := to.Addr().Interface().(type) {
		case *source.Text:
			n.text(field, x)
			return
		case *source.Pos:
			return
		case *Named:
			n.text(field+"#", &x.Name)
			n.text(field, &x.Value)
			return
		}
		name := from.Type().Name()
		for i := range from.NumField() {
			f := from.Type().Field(i)
			path := name + "." + f.Name
			switch {
			case name == "Varying" || name == "Positions" || name == "Axis":
				path = field
			case owner == "Tools" && name == "Supply":
				path = "Tool." + f.Name
			}
			below := owner
			if name == "Definition" {
				below = f.Name
			}
			n.copy(to.Field(i), from.Field(i), path, below)
		}
	default:
		to.Set(from)
	}
}
