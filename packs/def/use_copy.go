package def

import (
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

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
var asForm = regexp.MustCompile(`^[\p{L}\p{N}][\p{L}\p{N}-]{0,11}$`)

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
		ps.Add(u.As.At, "use-name", source.Quote(u.As.Value)+" goes before every name of the file, on tags as well: 12 letters, figures and hyphens at most", "for example as: NDE")
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

// InWords tells a problem of the file in its own words, and reports whether it spoke of
// this copy.
func (c *Copied) InWords(p *source.Problem) bool {
	was := p.Message
	p.Message = c.inWordsOf(p.Message)
	for i := range p.Help {
		p.Help[i] = once(c.inWordsOf(p.Help[i]))
	}
	return p.Message != was
}

// once leaves out of a list in a line of help what stands in it already: two copies have
// the same names in the words of their file.
func once(s string) string {
	list := strings.Split(s, ", ")
	seen := map[string]bool{}
	out := list[:0]
	for _, item := range list {
		word := item[strings.LastIndexByte(item, ' ')+1:]
		if !seen[word] || word != item {
			out = append(out, item)
		}
		seen[word] = true
	}
	return strings.Join(out, ", ")
}

// inWordsOf gives a text in the words of the file.
func (c *Copied) inWordsOf(s string) string {
	var out strings.Builder
	before := ' '
	for i := 0; i < len(s); {
		if here := c.nameAt(s[i:]); here != "" && !unicode.IsLetter(before) && !unicode.IsDigit(before) && before != '-' {
			out.WriteString(c.Names[here])
			i, before = i+len(here), 'x'
			continue
		}
		r, size := utf8.DecodeRuneInString(s[i:])
		out.WriteString(s[i : i+size])
		i, before = i+size, r
	}
	return markInText.ReplaceAllStringFunc(out.String(), func(m string) string {
		if there, ok := c.Marks[m]; ok {
			return there
		}
		return m
	})
}

// nameAt is the longest name of this copy that a text begins with, empty if it begins
// with none.
func (c *Copied) nameAt(s string) string {
	longest := ""
	if !strings.HasPrefix(s, c.As) {
		return longest
	}
	for here := range c.Names {
		if len(here) > len(longest) && strings.HasPrefix(s, here) {
			longest = here
		}
	}
	return longest
}
