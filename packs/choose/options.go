package choose

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// choices decides every option: what the job file or the definition says, else
// what the serial number tells.
type choices struct {
	on     map[string]bool   // option fitted, or build chosen
	option map[string]string // option of a build
	fitted map[string]bool   // names of options that are fitted or not
}

// readChoices decides the options. Where one cannot be decided this is a problem,
// and nothing is left out on its account.
func (b *chooser) readChoices() choices {
	c := choices{on: map[string]bool{}, option: map[string]string{}, fitted: map[string]bool{}}
	for _, o := range b.def.Options {
		choice := &job.Choice{At: o.Key.At, Key: o.Key.Value, What: o.What.Value}
		if len(o.Builds) == 0 {
			c.fitted[o.Key.Value] = true
			if !o.Fitted.Written() && !b.told("yes-or-no") {
				b.problems.Add(o.Key.At, "not-chosen", "it is not said whether this machine has "+o.Key.Value, "fitted: yes, here or in the job file; or builds: where there are several")
			}
			choice.Fitted = o.Fitted.Value != "no"
			c.on[o.Key.Value] = choice.Fitted
			b.chosen.Choices = append(b.chosen.Choices, choice)
			continue
		}
		if o.Fitted.Written() {
			b.problems.Add(o.Fitted.At, "fitted-build", o.Key.Value+" has builds and is never without one", "chosen: "+o.Builds[0].Name.Value+", or make it two options")
		}
		b.chooseBuild(o, choice)
		for _, n := range o.Builds {
			c.option[n.Name.Value] = o.Key.Value
			// Where nothing could be chosen, all builds stay: the problem is told.
			c.on[n.Name.Value] = choice.Build == n.Name.Value || choice.Build == ""
		}
		b.chosen.Choices = append(b.chosen.Choices, choice)
	}
	return c
}

// told reports whether a problem of a code has been reported: then a value that
// is missing may be one that could not be read.
func (b *chooser) told(code string) bool {
	return slices.ContainsFunc(*b.problems, func(p source.Problem) bool { return p.Code == code })
}

// chooseBuild decides which build of an option the machine is.
func (b *chooser) chooseBuild(o *def.Option, choice *job.Choice) {
	bySerial := b.buildBySerial(o)
	switch {
	case o.Chosen.Written():
		var names []string
		for _, n := range o.Builds {
			names = append(names, n.Name.Value)
			if n.Name.Value == o.Chosen.Value {
				choice.Build, choice.Means = n.Name.Value, n.Value.Value
			}
		}
		if choice.Build == "" {
			b.problems.Unknown(o.Chosen, "build of "+o.Key.Value, names, "builds")
			return
		}
		if bySerial != "" && bySerial != choice.Build {
			b.problems.Warn(o.Chosen.At, "other-build", o.Key.Value+": "+choice.Build+" is chosen, but serial "+b.def.Equipment.Serial.Value+" is a machine of "+bySerial,
				"look at the plate of the machine, and put one of the two right")
		}
	case bySerial != "":
		choice.Build, choice.Serial = bySerial, b.def.Equipment.Serial.Value
		for _, n := range o.Builds {
			if n.Name.Value == bySerial {
				choice.Means = n.Value.Value
			}
		}
	default:
		serial := b.def.Equipment.Serial
		at, words := o.Key.At, "no serial number of the machine is given"
		if serial.Written() {
			words = "serial " + serial.Value + " is in none of its ranges"
		}
		b.problems.Add(at, "not-chosen", "it is not said which build of "+o.Key.Value+" this machine is: "+words,
			"chosen: "+o.Builds[0].Name.Value+", here or in the job file as options: {"+o.Key.Value+": "+o.Builds[0].Name.Value+"}")
	}
}

// buildBySerial is the build that the serial number of the machine tells, empty
// if it tells none. Ranges that share a machine are a problem.
func (b *chooser) buildBySerial(o *def.Option) string {
	letters, n, ok := cutSerial(b.def.Equipment.Serial.Value)
	found := ""
	type written struct {
		def.Named
		serialRange
	}
	var ranges []written
	for _, build := range o.Builds {
		r, said := b.readSerials(build.Value)
		if !said {
			continue
		}
		for _, q := range ranges {
			if r.overlaps(q.serialRange) {
				*b.problems = append(*b.problems, source.Problem{
					Pos: build.Value.At, Severity: source.Error, Code: "two-builds",
					Message: "the builds " + q.Name.Value + " and " + build.Name.Value + " share serial numbers",
					Help:    []string{"let one end before the other begins"},
					See:     []source.Also{{Pos: q.Value.At, What: "the other range"}},
				})
				return ""
			}
		}
		ranges = append(ranges, written{build, r})
		if ok && r.letters == letters && r.low <= n && n <= r.high {
			found = build.Name.Value
		}
	}
	return found
}

// applies reports whether a thing is meant for this machine, and if not, why.
func (b *chooser) applies(c choices, a def.Applies) (bool, string) {
	if t := a.Fitted; t.Written() {
		switch {
		case c.option[t.Value] != "":
			b.problems.Add(t.At, "option-kind", source.Quote(t.Value)+" is a build", "write: if: "+t.Value)
		case !c.fitted[t.Value]:
			b.problems.Unknown(t, "option that is fitted or not", keys(c.fitted), "options")
		case !c.on[t.Value]:
			return false, t.Value + " is not fitted"
		}
	}
	if t := a.If; t.Written() {
		switch {
		case c.fitted[t.Value]:
			b.problems.Add(t.At, "option-kind", source.Quote(t.Value)+" is an option that is fitted or not", "write: fitted: "+t.Value)
		case c.option[t.Value] == "":
			b.problems.Unknown(t, "build of an option", keys(c.option), "options")
		case !c.on[t.Value]:
			return false, "the machine is not of build " + t.Value
		}
	}
	return true, ""
}

// settle puts one value in place of a map by options and builds. A map goes
// either by places or by the builds of one option.
func (b *chooser) settle(c choices, field string, v *def.Varying) {
	var byOption, byOther []def.Named
	for _, n := range v.By {
		switch {
		case c.option[n.Name.Value] != "" || c.fitted[n.Name.Value]:
			byOption = append(byOption, n)
		case n.Name.Value != "others":
			byOther = append(byOther, n)
		}
	}
	if len(byOption) == 0 {
		return
	}
	if len(byOther) > 0 {
		b.problems.Add(byOther[0].Name.At, "mixed-map", source.Quote(byOther[0].Name.Value)+" is no option or build, and "+source.Quote(byOption[0].Name.Value)+" is: a map goes by one of the two",
			"make two of the thing, each with its own fitted: or if:")
		*v = def.Varying{}
		return
	}
	var names []string
	for _, n := range append(byOption, v.By...) {
		if c.on[n.Name.Value] || n.Name.Value == "others" {
			*v = def.Varying{One: n.Value, At: v.At}
			return
		}
		if o := c.option[n.Name.Value]; o != "" {
			names = append(names, o)
		}
	}
	at := v.At
	*v = def.Varying{}
	if !mayBeSilent[field] {
		which := ""
		if len(names) > 0 {
			which = " of " + names[0]
		}
		b.problems.Add(at, "build-left-out", "nothing is said here for what this machine has"+which, "add it, or others: …")
	}
}

// mayBeSilent are the values that need not be said for every build.
var mayBeSilent = map[string]bool{"Missed": true, "Note": true, "Keep": true, "Support": true, "Back": true, "BackMissed": true}
