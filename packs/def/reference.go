package def

import (
	"fmt"
	"io"
	"strings"

	"matchmark/packs/units"
)

// words says what stands behind a key, as part of a sentence.
func (e *entry) words() string {
	switch e.form {
	case numberForm, varyingCountForm:
		return "a whole number"
	case decimalForm:
		return "a number"
	case flagForm:
		return "yes or no"
	case dateForm:
		return "a day"
	case countsForm, marksForm:
		return "parts"
	}
	if e.letters != "" && !e.named {
		return "a mark"
	}
	return "a text"
}

// shapeWords says in a few words what may stand behind a key, for the list of
// keys.
func (e *entry) shapeWords() string {
	several := map[form]string{
		textForm:         "text",
		numberForm:       "whole number",
		decimalForm:      "number",
		flagForm:         "yes or no",
		dateForm:         "day",
		varyingForm:      "text, or one for each place",
		varyingCountForm: "whole number, or one for each place",
		listForm:         "text or list",
		faceForm:         "part: face",
		countsForm:       "list of parts, each with or without a number",
		marksForm:        "list of parts, each with or without the part across its joint",
		intoForm:         "place, or one for each part",
		afterForm:        "step, list, or map from step to reason",
		positionsForm:    "clock, list, one or two lists with names, or a log",
		namesForm:        "range or list",
		choicesForm:      "map from option to yes, no or a build",
		namedTextsForm:   "map from name to text",
		sectionsForm:     "list",
		listsForm:        "list of lists",
	}
	words, ok := several[e.form]
	switch {
	case ok:
	case e.form == mapForm:
		words = "map: " + e.inner[0].title()
	case e.form == mapsForm && e.inner[0].mark() != "":
		words = "map from " + e.inner[0].mark() + " mark to " + e.inner[0].title()
	case e.form == mapsForm:
		words = "map from name to " + e.inner[0].title()
	case e.form == textOrMapForm:
		words = "text, or map: " + e.inner[0].title()
	case e.form == itemsForm:
		words = "list: " + e.inner[0].title()
	}
	if e.takesAmount() {
		words += e.takesWords()
	}
	if e.letters != "" {
		words += "; marks: " + strings.Join(strings.Split(e.letters, ""), ", ")
	}
	if e.allowed != nil {
		words += "; one of: " + strings.Join(e.allowed, ", ")
	}
	return words
}

// Reference writes the list of all keys in Markdown, one table a kind of map,
// in the order in which the kinds are met. The error is that of w.
func Reference(w io.Writer) error {
	var b strings.Builder
	for _, s := range shapes() {
		fmt.Fprintf(&b, "- %s\n", link(s))
	}
	b.WriteString("\n")
	for _, s := range shapes() {
		fmt.Fprintf(&b, "### %s\n\n%s", upperFirst(s.title()), s.about())
		if s.mark() != "" {
			fmt.Fprintf(&b, " Its mark is %s and a number: %s1.", s.mark(), s.mark())
		}
		if s.others() != nil {
			fmt.Fprintf(&b, " Every other key is the name of a %s.", s.others().title())
		}
		b.WriteString("\n\n| key | meaning | what stands behind it | example |\n|---|---|---|---|\n")
		for _, e := range s.entries() {
			name := "`" + e.name + "`"
			if e.need {
				name = "**" + name + "**"
			}
			fmt.Fprintf(&b, "| %s | %s | %s | `%s` |\n", name, cell(e.doc), linked(e), cell(e.example))
		}
		b.WriteString("\n")
	}
	b.WriteString("Keys in bold have to be written.\n\n")
	b.WriteString(unitsTable())
	_, err := io.WriteString(w, b.String())
	return err
}

// link leads to the table of a kind.
func link(s shape) string {
	return "[" + s.title() + "](#" + strings.ReplaceAll(s.title(), " ", "-") + ")"
}

// linked is what stands behind a key, its kinds of maps as links.
func linked(e *entry) string {
	words := cell(e.shapeWords())
	for _, in := range e.inner {
		if i := strings.LastIndex(words, in.title()); i >= 0 {
			words = words[:i] + link(in) + words[i+len(in.title()):]
		} else {
			words += ", " + link(in)
		}
	}
	return words
}

// cell spells a text as one cell of a Markdown table.
func cell(s string) string { return strings.ReplaceAll(s, "|", `\|`) }

func upperFirst(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// shapes lists the kinds of maps that the table describes, each once, those of a
// definition first.
func shapes() []shape { return reached(definitionKind, includedKind, jobFileKind, siteFileKind) }

// reached lists the kinds of maps that some lead to, those first.
func reached(roots ...shape) []shape {
	var list []shape
	met := map[shape]bool{}
	var visit func(shape)
	visit = func(s shape) {
		if met[s] {
			return
		}
		met[s] = true
		list = append(list, s)
		for _, e := range s.entries() {
			for _, in := range e.inner {
				visit(in)
			}
		}
		if s.others() != nil {
			visit(s.others())
		}
	}
	for _, s := range roots {
		visit(s)
	}
	return list
}

// unitsTable lists the units by what they measure, as they are typed and as they print.
func unitsTable() string {
	var b strings.Builder
	b.WriteString("### Units\n\nA limit that is told in a second unit, `10.0 to 15.0 l/min (2.65 to 3.96 US gal/min)`, is rounded inward there: at least upward, at most downward.\n\n")
	b.WriteString("| what is measured | as it is typed | as it prints, where that differs |\n|---|---|---|\n")
	for d := units.NoDimension + 1; ; d++ {
		words := units.WordsOf(d)
		if len(words) == 0 {
			return b.String()
		}
		var typed, printed []string
		for _, w := range words {
			typed = append(typed, "`"+w+"`")
			if u, _ := units.LeadingUnit(w); u.Print() != w {
				printed = append(printed, w+": "+u.Print())
			}
		}
		fmt.Fprintf(&b, "| %s | %s | %s |\n", d, strings.Join(typed, ", "), strings.Join(printed, ", "))
	}
}
