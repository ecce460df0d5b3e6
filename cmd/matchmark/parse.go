package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/pflag"
)

// parse reads the arguments of a command. A flag that takes one value is not given twice,
// of which the last would count in silence, and none is empty.
func parse(flags *pflag.FlagSet, args []string) error {
	if err := flags.Parse(args); err != nil {
		return err
	}
	if name := twice(flags, args); name != "" {
		return fmt.Errorf("--%s stands twice, and takes one value", name)
	}
	var err error
	flags.Visit(func(f *pflag.Flag) {
		if f.Value.String() == "" || f.Value.String() == "[]" {
			err = fmt.Errorf("nothing stands behind --%s", f.Name)
		}
		if list, ok := f.Value.(pflag.SliceValue); ok {
			for _, x := range list.GetSlice() {
				if strings.TrimSpace(x) == "" {
					err = fmt.Errorf("an empty name stands behind --%s", f.Name)
				}
			}
		}
	})
	return err
}

// twice is a flag of one value that stands several times among arguments that have been
// read, "" if there is none.
func twice(flags *pflag.FlagSet, args []string) string {
	met := map[string]bool{}
	for i := 0; i < len(args) && args[i] != "--"; i++ {
		text, dashed := strings.CutPrefix(args[i], "--")
		if !dashed {
			continue
		}
		name, _, valued := strings.Cut(text, "=")
		f := flags.Lookup(name)
		if f == nil {
			continue
		}
		_, list := f.Value.(pflag.SliceValue)
		if met[name] && !list && !strings.HasPrefix(f.Value.Type(), "stringTo") && f.NoOptDefVal == "" {
			return name
		}
		met[name] = true
		if !valued && f.NoOptDefVal == "" {
			i++ // its value
		}
	}
	return ""
}

// together tells of flags of print that have no meaning together.
func (p *printFlags) together() error {
	tagged := len(p.sheets) == 0
	for _, name := range p.sheets {
		tagged = tagged || name == "tags"
	}
	switch {
	case p.jobs != "" && p.since.job != "":
		return errors.New("--since-job is one job, and --jobs prints many")
	case p.jobs != "" && p.tags.test:
		return errors.New("--test-page shows stocks, and --jobs prints jobs")
	case p.tags.test && (p.out == "-" || p.partial()):
		return errors.New("--test-page writes nothing but pages of stocks into a folder")
	case p.tags.start < 1:
		return fmt.Errorf("--start %d: the places of a sheet are counted from 1", p.tags.start)
	case !tagged && len(p.marks) == 0 && (p.tags.start > 1 || len(p.tags.stocks) > 0 || len(p.tags.copies) > 0 || p.tags.wrapped):
		return errors.New("--start, --stock, --copies and --envelope are of tags, and --sheets leaves the tags out")
	case p.tags.utf8 && (p.partial() || p.out == "-"):
		return errors.New("--utf8-mark is of the register, which is written with a whole pack into a folder")
	case p.tags.replace && p.partial():
		return errors.New("--replace is of a whole pack: some of its sheets or tags have a name of their own")
	}
	return nil
}
