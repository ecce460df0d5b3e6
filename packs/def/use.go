package def

import (
	"slices"

	"matchmark/packs/source"
)

// A Use is a place among the sections where the work on a machine within this one
// stands, which is described in a file of its own.
type Use struct {
	At   source.Pos
	File source.Text // beside this one
	As   source.Text // what goes before its names
	Add  source.Text // to the numbers of its marks
}

var useKind = &kind[Use]{
	name: "sub-machine",
	doc: "A machine within this one with a file of its own, as the same bearing in ten machines: its things belong to the definition, " +
		"and the sections of its work stand here. It is written as a definition; its pack, equipment and job are not taken. Its marks, parts, steps, openings, spares and consumables are its own " +
		"in each copy; places, options, instruments, cautions, isolations, permits, tools, gear and cranes are taken once. A name that it does not describe is one of this definition.",
	keys: []key[Use]{
		text("use", "The file, beside this one or in a folder below.", "bearings/sleeve.yaml", func(u *Use) *source.Text { return &u.File }).must(),
		text("as", "What goes before its names: with NDE its part lock-nut is NDE-lock-nut here, and its section Bearing is printed as NDE Bearing.", "NDE",
			func(u *Use) *source.Text { return &u.As }).must(),
		number("marks", "What is added to the numbers of its marks, so that each mark is one thing: with 20 its D7 is D27 here.", "20", func(u *Use) *source.Text { return &u.Add }),
	},
}

// usedKind are the keys of a file that a definition uses: those of a definition, of which
// it may lack what every machine and job has of its own.
var usedKind = &kind[Definition]{name: "used file", doc: "A machine within another one.", keys: usedKeys()}

func usedKeys() []key[Definition] {
	keys := slices.Clone(definitionKind.keys)
	for i := range keys {
		keys[i].need = keys[i].name == "steps"
	}
	return keys
}

// ReadUsed reads a file that a definition uses, as Read reads a definition.
func (t Tongue) ReadUsed(name string, data []byte) (*Definition, source.Problems) {
	d := &Definition{}
	r := t.newReader(name, data)
	if root := r.root(data, "parts: …, dimensions: …, steps: …"); root != nil {
		d.At = r.firstKey(root)
		usedKind.fill(r, d, root, d.At)
	}
	d.English = r.english
	return d, r.sorted()
}
