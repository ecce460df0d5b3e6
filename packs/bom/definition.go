package bom

import (
	"fmt"
	"io"
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/starters"
	"matchmark/packs/units"
)

// heavy is the mass above which a part is not taken off by one person alone, as check
// has it where no site says otherwise.
var heavy = units.Quantity{Number: units.Whole(25), Unit: units.Kilogram}

// fastener is a part that is tightened, by what it is called.
var fastener = phrase.Of(`(?i)\b(screws?|bolts?|nuts?|studs?|schrauben?|muttern?|vis|écrous?)\b`)

// Definition writes a definition of a machine that is called name, with the parts of a
// table: each comes off in a step of its own, in the order of the table, and goes back
// in reverse. The error is that of w.
func Definition(w io.Writer, name string, parts []Part) error {
	d := &draft{parts: parts}
	d.head(name)
	d.describe()
	d.places()
	d.work()
	_, err := io.WriteString(w, d.text.String())
	return err
}

// A draft is a definition while it is written.
type draft struct {
	parts []Part
	text  strings.Builder
}

func (d *draft) line(format string, args ...any) { fmt.Fprintf(&d.text, format+"\n", args...) }

func (d *draft) head(name string) {
	d.text.WriteString(starters.SchemaLine)
	d.line("# %s, begun from a table of %d parts. It passes check; what a planner has to", strings.Join(strings.Fields(name), " "), len(d.parts))
	d.line("# look at is marked TO DO. The order of the steps is that of the table: put it right first.")
	d.line("pack: 1\n\nequipment:\n  tag: P-101                  # TO DO: the number on the machine\n  name: %s", starters.Plain(name))
	d.line("job:\n  number: WO-1                # TO DO\n  title: Overhaul             # TO DO\n  revision: A\n  issued: 2026-03-02          # TO DO: year-month-day\n")
}

// tooHeavy reports whether a part is not for one person.
func (p *Part) tooHeavy() bool {
	kg, err := p.Mass.Convert(units.Kilogram)
	return err == nil && kg.Number.Cmp(heavy.Number) > 0
}

// tight reports whether a part is a fastener.
func (p *Part) tight() bool { return fastener.MatchString(p.Name) || p.Thread != "" }

func (d *draft) describe() {
	d.line("parts:")
	for _, p := range d.parts {
		keys := []string{"name: " + starters.Plain(p.Name)}
		if p.Count != "" && p.Count != "1" {
			keys = append(keys, "count: "+p.Count)
		}
		if p.Mass.Unit != units.None {
			keys = append(keys, "mass: "+p.Mass.Text())
		}
		if p.Renew {
			keys = append(keys, "renew: always")
		}
		if p.Note != "" {
			keys = append(keys, "note: "+starters.Plain(p.Note))
		}
		d.line("  %s: {%s}", p.Key, strings.Join(keys, ", "))
	}
	d.line("")
}

// places writes containers, tags of big parts and joints.
func (d *draft) places() {
	var containers, big, joints []string
	for _, p := range d.parts {
		switch {
		case p.tooHeavy():
			big = append(big, fmt.Sprintf("  B%d: {part: %s, keep: covered}", len(big)+1, p.Key))
		case !p.Renew:
			containers = append(containers, fmt.Sprintf("  C%d: {name: %s, kind: box, keep: dry}", len(containers)+1, starters.Plain(p.Name)))
		}
		if p.tight() {
			j := fmt.Sprintf("  J%d: {what: %s, parts: [%s], no-value: spanner tight}   # TO DO: torque, lubricant, source", len(joints)+1, starters.Plain(p.Name), p.Key)
			if p.Thread != "" {
				j += ", thread " + p.Thread
			}
			joints = append(joints, j)
		}
	}
	for _, block := range []struct {
		key   string
		lines []string
	}{{"containers", containers}, {"big", big}, {"joints", joints}} {
		if len(block.lines) > 0 {
			d.line("%s:\n%s\n", block.key, strings.Join(block.lines, "\n"))
		}
	}
	if len(big) > 0 {
		d.line("lay-down:\n  Y1: {what: Timbers beside the machine}   # TO DO\n")
	}
}

// work writes the steps.
func (d *draft) work() {
	d.line("isolations:\n  motor: {point: Breaker of the motor, energy: electric, state: locked out, proved: start button pressed}   # TO DO: all energies\n")
	d.line("steps:\n  - section: Make safe\n    steps:\n      - step: isolate\n        do: Lock the motor out and try to start it.\n        lock: [motor]")
	d.line("  - section: Take apart\n    steps:")
	c := 0
	for _, p := range d.parts {
		d.line("      - step: %s-off\n        do: Take off the %s.   # TO DO: how, with what, in which order", p.Key, d.spoken(p.Name))
		d.line("        remove: [%s]", p.Key)
		switch {
		case p.tooHeavy():
			d.line("        on-hook: workshop crane   # TO DO: a lift sheet, or what it hangs on\n        into: Y1")
		case p.Renew:
			d.line("        into: scrap")
		default:
			c++
			d.line("        into: C%d", c)
		}
	}
	d.line("  - reverse: [Take apart]")
	d.line("  - section: Hand back\n    steps:\n      - step: hand-back\n        do: Turn it by hand where it turns. Take the lock off.\n        unlock: [motor]")
}

// spoken is what a part is called, inside a sentence that YAML takes as it stands.
func (d *draft) spoken(name string) string {
	return strings.NewReplacer(": ", ", ", " #", " no. ", ":", "").Replace(name)
}
