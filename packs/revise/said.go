package revise

import (
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"matchmark/packs/job"
)

// What a step or a reading says is not listed here field by field: a field that is added to
// a job would be forgotten, and paper on which a torque had changed would say that nothing
// had. All fields are told but for those that are named below.

// apart are the fields that say nothing of their own: where a thing is written, its number,
// what is told otherwise, and what is worked out from the rest.
var apart = map[reflect.Type][]string{
	reflect.TypeFor[job.Step](): {"No", "Key", "Index", "Back", "Verbs", "Binds", "Free", "Said", "HoursSoFar", "CrewSoFar", "Mirror", "PutBack", "From", "AfterNothing",
		"Do", "Measure", "Set", "Remove", "Fit", "ForNow", "TakeOut", "Loosen", "Tighten", "Empty", "Missed", "Note", "Check", "People", "Seen", "Hangs", "GoesOn", "LeftHanging", "Shut", "Lifts"},
	reflect.TypeFor[job.Dim](): {"Mark", "Base", "Merged", "In", "Zones", "LastChance", "LostVerb", "LostBy", "LostByNothing", "Refs",
		"What", "From", "To", "Of", "Found", "Left", "Reuse", "Repair", "Worn", "Mended", "Formula", "Over", "Under", "Out", "FoundOut", "Source", "By", "ByPiece", "FoundWork", "LeftWork", "SumFound", "SumLeft"},
	reflect.TypeFor[job.Lines]():     {"Found", "Left", "Reuse", "Repair", "Formula", "By"},
	reflect.TypeFor[job.Place]():     {"Label", "Keys", "Groups"},
	reflect.TypeFor[job.Joint]():     {"Mark", "Base", "Asked", "Hole", "Wrote", "Result", "Rounds", "Order"},
	reflect.TypeFor[job.Lift]():      {"Mark", "Result", "HandResult", "Because", "Floor"},
	reflect.TypeFor[job.Heat]():      {"Mark", "Base", "Because"},
	reflect.TypeFor[job.HeatFit]():   {"Grip"},
	reflect.TypeFor[job.HotPull]():   {"Plan", "Short"},
	reflect.TypeFor[job.HotFit]():    {"Plan", "Soak", "Cold", "Ladder"},
	reflect.TypeFor[job.Alignment](): {"Mark", "Machines", "Wrote", "Hole", "Ladder", "Example"},
	reflect.TypeFor[job.Isolation](): {"Key", "No", "Periods"},
	reflect.TypeFor[job.Permit]():    {"Key"},
	reflect.TypeFor[job.Opening]():   {"Key", "ShutAt"},
	reflect.TypeFor[job.Caution]():   {"Key", "Builtin"},
	reflect.TypeFor[job.Shimmed]():   {"Rows"},
	reflect.TypeFor[job.Set]():       {"Base", "Members", "JudgedBy"},
	reflect.TypeFor[job.Stack]():     {"Base"},
	reflect.TypeOf(job.Lift{}.Plan):  {"Turn"},
}

// tell adds all that a value says, each under the words that lead to it.
func (l *lines) tell(what string, v any) { l.told(what, reflect.ValueOf(v)) }

func (l *lines) told(what string, v reflect.Value) {
	if !v.IsValid() || v.IsZero() {
		return
	}
	if v.CanInterface() {
		if says, whole := named(v.Interface()); whole {
			l.add(what, says)
			return
		}
	}
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if v.Elem().IsZero() { // that it is there says something, as 0 does
			l.add(what, "given")
			return
		}
		l.told(what, v.Elem())
	case reflect.Struct:
		if mark := v.FieldByName("Mark"); mark.IsValid() && mark.String() != "" && v.Type() != reflect.TypeFor[job.Dim]() {
			what = mark.String()
		}
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.Anonymous {
				l.told(what, v.Field(i))
			} else if !slices.Contains(apart[v.Type()], f.Name) {
				l.told(strings.TrimSpace(what+" "+inWords(f.Name)), v.Field(i))
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			l.told(what+" "+strconv.Itoa(i+1), v.Index(i))
		}
	case reflect.Map:
		keys := v.MapKeys()
		slices.SortFunc(keys, func(a, b reflect.Value) int { return strings.Compare(fmt.Sprint(a), fmt.Sprint(b)) })
		for _, k := range keys {
			l.told(what+" "+fmt.Sprint(k), v.MapIndex(k))
		}
	case reflect.Func, reflect.Chan:
	default:
		l.add(what, fmt.Sprint(v))
	}
}

// named is what stands for a thing as a whole: its words, or the mark by which it is told
// elsewhere; nothing for places in a file, and for steps, whose numbers change.
func named(v any) (says string, whole bool) {
	switch x := v.(type) {
	case *job.Section, *job.Step, []*job.Step, job.Wrote:
		return "", true
	case *job.Dim:
		return x.Mark, true
	case *job.Container:
		return x.Mark, true
	case *job.Part:
		return partSays(x), true
	case job.Dep:
		return stepID(x.Step) + ": " + x.Reason, true
	case job.Asked:
		return x.Wrote.Value, true
	case interface{ Text() string }:
		return x.Text(), true
	}
	return job.AsWritten(v)
}

// partSays is a part as a step names it, with what is printed of it there.
func partSays(p *job.Part) string {
	says := []string{p.Place.Mark(p.Name)}
	if p.Handed && p.Left {
		says = append(says, "left-hand")
	} else if p.Handed {
		says = append(says, "right-hand")
	}
	if p.Thread != nil {
		says = append(says, p.Thread.String())
	}
	if p.Fit != "" {
		says = append(says, p.Fit)
	}
	if p.Note != "" {
		says = append(says, p.Note)
	}
	if p.Mass != nil {
		says = append(says, p.Mass.Text())
	}
	if p.Holds != "" {
		says = append(says, "holds "+p.Holds)
	}
	return strings.Join(says, " ")
}

// inWords makes words of the name of a field: ViewedFrom is viewed from.
func inWords(name string) string {
	var b strings.Builder
	for i, r := range name {
		if unicode.IsUpper(r) && i > 0 {
			b.WriteByte(' ')
		}
		b.WriteRune(unicode.ToLower(r))
	}
	return b.String()
}
