package def

import (
	"testing"

	"matchmark/packs/source"
)

// textAt cuts out of a file what stands at a place.
func textAt(data []byte, at source.Pos) string {
	line := []rune(source.Lines(data)[at.Line-1])
	return string(line[at.Col-1 : at.Col-1+at.Width])
}

// The file is the judge: what stands at the place of a text must be the text.
func TestPlacesAreThoseOfTheTextItself(t *testing.T) {
	text := []byte("\ufeffpack: 1\r\n" +
		"equipment: {tag: \"T-1\", name: 'Fan 漢字 x', location: שלום, serial: 𝔽𝔸𝔫}\r\n" +
		"parts:\r\n" +
		"  nut: &nut\r\n" +
		"    name: &n Lock nut   # with a comment\r\n" +
		"    note: \"a \\\"quoted\\\" word\"\r\n" +
		"  bolt: {name: *n, note: Keep}\r\n" +
		"  pin: *nut\r\n" +
		"steps:\r\n" +
		"  - step: s\r\n" +
		"    do: Look at the nut\r\n" +
		"      and the bolt.\r\n" +
		"    note: >\r\n" +
		"      Two\r\n" +
		"      lines.\r\n")
	d, ps := Read("x.yaml", text)
	if len(ps) > 0 {
		t.Fatalf("problems:\n%s", show(ps, "x.yaml", text))
	}
	step := d.Sections[0].Steps[0]
	for _, c := range []struct {
		name        string
		got         source.Text
		value, seen string
		line, col   int
	}{
		{"plain", d.Pack, "1", "1", 1, 7},
		{"double quotes", d.Equipment.Tag, "T-1", "T-1", 2, 19},
		{"single quotes and wide letters", d.Equipment.Name, "Fan 漢字 x", "Fan 漢字 x", 2, 32},
		{"written from right to left", d.Equipment.Location, "שלום", "שלום", 2, 53},
		{"beyond the basic plane", d.Equipment.Serial, "𝔽𝔸𝔫", "𝔽𝔸𝔫", 2, 67},
		{"behind an anchor", d.Parts[0].Name.One, "Lock nut", "Lock nut", 5, 14},
		{"escapes in quotes", d.Parts[0].Note, `a "quoted" word`, `a \"quoted\" word`, 6, 12},
		{"a text repeated by an alias", d.Parts[1].Name.One, "Lock nut", "Lock nut", 5, 14},
		{"a map repeated by an alias", d.Parts[2].Note, `a "quoted" word`, `a \"quoted\" word`, 6, 12},
		{"the key of an alias", d.Parts[2].Key, "pin", "pin", 8, 3},
		{"over two lines", step.Do.One, "Look at the nut and the bolt.", "Look at the nut", 11, 9},
		{"folded", step.Note.One, "Two lines.", ">", 13, 11},
	} {
		if c.got.Value != c.value || c.got.At.Line != c.line || c.got.At.Col != c.col || textAt(text, c.got.At) != c.seen {
			t.Errorf("%s: read %q at %d:%d where %q stands, want %q at %d:%d where %q stands", c.name,
				c.got.Value, c.got.At.Line, c.got.At.Col, textAt(text, c.got.At), c.value, c.line, c.col, c.seen)
		}
	}
}

func TestPartOfATextIsFoundWhereTheTextIsTypedAsItReads(t *testing.T) {
	text := []byte("pack: 1\nequipment: {tag: 'at least 4.0 mm', name: \"a \\\"b\\\" c\"}\nsteps: [{step: s, do: x}]\n")
	d, _ := Read("x.yaml", text)
	tag, name := d.Equipment.Tag, d.Equipment.Name
	if got := textAt(text, tag.Part(9, 3)); got != "4.0" {
		t.Errorf("letters 9 to 12 of %q stand at %q, want 4.0", tag.Value, got)
	}
	if got := name.Part(2, 3); got != name.At {
		t.Errorf("a part of a text with escapes stands at %v, want the whole, %v", got, name.At)
	}
	if got := tag.Part(9, 30); got != tag.At {
		t.Errorf("a part beyond the text stands at %v, want the whole, %v", got, tag.At)
	}
}

func TestFormsOfValues(t *testing.T) {
	text := []byte(`pack: 1
equipment: {tag: T}
places:
  end: {DE: {name: drive end, viewed-from: motor}, NDE: {name: other end}}
  gate: {names: 1 to 4, counted-from: the bridge}
  valve: {names: [in, out]}
  slide: {names: G1 to G3}
parts:
  nut: {name: {DE: Nut, others: Ring}, each: [end, gate], count: {DE: 8, others: 6}, renew: if torn}
dimensions:
  D1: {what: a, of: shaft, at: clock, sign: false}
  D2: {what: b, at: [A, B]}
  D3: {what: c, at: 1 to 3}
  D4: {what: d, at: {station: [A, B], plane: 1 to 2}}
  D5: {what: e, at: {every: 2 min, rows: 8, read: [hub, cover]}}
steps:
  - step: a
    after: {}
    do: x
    remove: [nut, {nut/DE: 2, screw: 3}]
    into: bench
    way-round: {part: seal, mark: lip, faces: oil}
  - step: b
    after: [a]
    do: x
    remove: {nut: 2}
    photo: true
  - reverse: Bearings
  - step: c
    after: a
    do: x
    into: {nut: C1, screw: C1/DE/springs}
`)
	d, ps := Read("x.yaml", text)
	if len(ps) > 0 {
		t.Fatalf("problems:\n%s", show(ps, "x.yaml", text))
	}
	values := func(list []source.Text) string {
		s := ""
		for _, v := range list {
			s += v.Value + ";"
		}
		return s
	}
	axes := func(p Positions) string {
		s := ""
		for _, a := range p.Axes {
			s += a.Name.Value + "=" + values(a.Values)
		}
		return s
	}
	counts := func(list []Count) string {
		s := ""
		for _, c := range list {
			s += c.Part.Value + " " + c.N.Value + ";"
		}
		return s
	}
	places := func(g *Group) string {
		s := ""
		for _, p := range g.Places {
			s += p.Key.Value + " " + p.Name.Value + ";"
		}
		return s
	}
	loose, last := d.Sections[0], d.Sections[2]
	for _, c := range []struct{ what, got, want string }{
		{"places of their own", places(d.Places[0]), "DE drive end;NDE other end;"},
		{"places by a range", places(d.Places[1]), "1 ;2 ;3 ;4 ;"},
		{"where a range begins", d.Places[1].CountedFrom.Value, "the bridge"},
		{"places by a range with letters", places(d.Places[3]), "G1 ;G2 ;G3 ;"},
		{"places by a list", places(d.Places[2]), "in ;out ;"},
		{"a value that varies", d.Parts[0].Name.By[1].Name.Value + " " + d.Parts[0].Name.By[1].Value.Value, "others Ring"},
		{"a count that varies", d.Parts[0].Count.By[0].Value.Value, "8"},
		{"crossed groups", values(d.Parts[0].Each), "end;gate;"},
		{"renew with a condition", d.Parts[0].Renew.Value, "if torn"},
		{"a part without a face", d.Dimensions[0].Of.Part.Value + "|" + d.Dimensions[0].Of.Face.One.Value, "shaft|"},
		{"false reads as no", d.Dimensions[0].Sign.Value, "no"},
		{"clock", axes(d.Dimensions[0].At), "=clock;"},
		{"positions by a list", axes(d.Dimensions[1].At), "=A;B;"},
		{"positions by a range", axes(d.Dimensions[2].At), "=1;2;3;"},
		{"two lists of positions", axes(d.Dimensions[3].At), "station=A;B;plane=1;2;"},
		{"a log", d.Dimensions[4].At.Every.Value + "|" + d.Dimensions[4].At.Rows.Value + "|" + axes(d.Dimensions[4].At), "2 min|8|read=hub;cover;"},
		{"parts with and without numbers", counts(loose.Steps[0].Remove), "nut ;nut/DE 2;screw 3;"},
		{"parts by a map", counts(loose.Steps[1].Remove), "nut 2;"},
		{"one place for all", loose.Steps[0].Into.To.Value, "bench"},
		{"one orientation", loose.Steps[0].WayRound[0].Faces.Value, "oil"},
		{"true reads as yes", loose.Steps[1].Photo.Value, "yes"},
		{"a step before, by list", loose.Steps[1].After.Steps[0].Name.Value, "a"},
		{"put-back", values(d.Sections[1].Reverse), "Bearings;"},
		{"a step before, by name", last.Steps[0].After.Steps[0].Name.Value, "a"},
		{"a place for each part", last.Steps[0].Into.For[1].Value.Value, "C1/DE/springs"},
	} {
		if c.got != c.want {
			t.Errorf("%s: read %q, want %q", c.what, c.got, c.want)
		}
	}
	if a := loose.Steps[0].After; a.At.IsZero() || len(a.Steps) != 0 {
		t.Errorf("an empty after: reads as %v, want written and without steps", a)
	}
	if len(d.Sections) != 3 || loose.Name.Written() || len(loose.Steps) != 2 {
		t.Errorf("steps outside sections do not make one section without a heading")
	}
}

func TestAJobFileOverridesTheDefinition(t *testing.T) {
	d, _ := Read("fan.yaml", []byte("pack: 1\nequipment: {tag: FN-11, name: Fan}\njob: {number: WO-1, revision: A}\noptions: {probes: {what: Probes, fitted: yes}}\nsteps: [{step: s, do: x}]\n"))
	text := []byte("job: {number: WO-2, issued: 2026-04-01}\nequipment: {tag: FN-12}\noptions: {probes: no, prbes: yes}\n")
	j, ps := ReadJob("job.yaml", text)
	if len(ps) > 0 {
		t.Fatalf("problems:\n%s", show(ps, "job.yaml", text))
	}
	ps = d.Override(j)
	if len(ps) != 1 || ps[0].Pos.Line != 3 || ps[0].Help[0] != "did you mean probes?" {
		t.Errorf("an option that is not in the definition gives %v", ps)
	}
	for _, c := range []struct {
		what, want string
		got        source.Text
	}{
		{"number", "WO-2", d.Job.Number}, {"revision", "A", d.Job.Revision}, {"issued", "2026-04-01", d.Job.Issued},
		{"tag", "FN-12", d.Equipment.Tag}, {"name", "Fan", d.Equipment.Name}, {"probes", "no", d.Options[0].Fitted},
	} {
		if c.got.Value != c.want {
			t.Errorf("%s is %q, want %q", c.what, c.got.Value, c.want)
		}
	}
	if d.Job.Number.At.File != "job.yaml" || d.Job.Revision.At.File != "fan.yaml" {
		t.Errorf("number is placed in %s and revision in %s", d.Job.Number.At.File, d.Job.Revision.At.File)
	}
}
