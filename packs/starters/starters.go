// Package starters holds the definitions that ship: whole jobs of invented machines,
// which planners read and copy from, and the short one that a new definition begins as.
package starters

import (
	"embed"
	"io/fs"
	"slices"
	"strings"
)

//go:embed *.yaml
var files embed.FS

//go:embed first.txt
var first string

// SchemaLine is the comment by which editors find the schema that stands beside a
// definition.
const SchemaLine = "# yaml-language-server: $schema=matchmark.schema.json\n"

// Names lists the starters, sorted, without their ending.
func Names() []string {
	var out []string
	entries, _ := fs.ReadDir(files, ".") // an embedded folder is always there
	for _, e := range entries {
		out = append(out, strings.TrimSuffix(e.Name(), ".yaml"))
	}
	slices.Sort(out)
	return out
}

// Text gives a starter as it stands; false when there is none of that name.
func Text(name string) (string, bool) {
	data, err := files.ReadFile(name + ".yaml")
	return string(data), err == nil
}

// New is a short definition, with a comment at each thing to change, of a machine that
// is called name. It passes check.
func New(name string) string {
	return SchemaLine + strings.ReplaceAll(first, "NAME", Plain(name))
}

// Like is a starter as the beginning of a definition of a machine that is called name.
// It is the starter with that name for the machine; all else is to be changed by hand.
func Like(name, starter string) (string, bool) {
	text, ok := Text(starter)
	if !ok {
		return "", false
	}
	head := "# " + Plain(name) + ", begun like the starter " + starter + ": its machine and its numbers are invented.\n# Put your own in their place, and run check after each change.\n"
	lines := strings.Split(text, "\n")
	for len(lines) > 0 && strings.HasPrefix(lines[0], "#") {
		lines = lines[1:]
	}
	inEquipment := false
	for i, l := range lines {
		switch {
		case strings.HasPrefix(l, "equipment:"):
			inEquipment = true
		case inEquipment && strings.HasPrefix(l, "  name:"):
			lines[i] = "  name: " + Plain(name)
			inEquipment = false
		}
	}
	return SchemaLine + head + strings.Join(lines, "\n"), true
}

// Plain is a text as YAML takes it without quotes, or in quotes where it needs them.
func Plain(s string) string {
	s = strings.Join(strings.Fields(s), " ")
	if s == "" || strings.ContainsAny(s, ":#,[]{}\"'`@%&*!|>?\\") || strings.ContainsAny(s[:1], "-0123456789~=+.") || reserved(s) {
		return "'" + strings.ReplaceAll(s, "'", "''") + "'"
	}
	return s
}

// reserved reports whether YAML reads a word as something else than a text.
func reserved(s string) bool {
	return slices.Contains([]string{"yes", "no", "on", "off", "true", "false", "null", "y", "n"}, strings.ToLower(s))
}
