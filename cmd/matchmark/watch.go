package main

import (
	"context"
	"crypto/sha256"
	"errors"
	"fmt"
	"maps"
	"os"
	"os/signal"
	"slices"
	"time"

	"github.com/spf13/pflag"

	"matchmark/packs"
	"matchmark/packs/source"
)

const watchUsage = `usage: matchmark watch FILE [flags of print]

Checks the definition and prints it again each time that it is saved, or one of
the files that go with it, within a second. Problems stand on the terminal; the
files of the last good state stay until the next. It replaces what it has
printed itself; a pack that was there before, only with --replace. It ends with
Ctrl-C.

`

// look is how often the files are looked at. A save is told by the bytes, so that a
// save that changes nothing prints nothing, and one within the same tick of a clock is
// not missed. Looking four times a second costs a few milliseconds for a definition.
const look = 250 * time.Millisecond

// watchFlags are the flags of the watch command.
type watchFlags struct{ printFlags }

func (w *watchFlags) add(f *pflag.FlagSet) { w.printFlags.add(f) }

// watch checks and prints at each save, until it is interrupted.
func watch(args []string, s streams) int {
	var w watchFlags
	flags := newFlags("watch", s)
	w.add(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, watchUsage+flags.FlagUsages())
	}
	switch {
	case flags.NArg() != 1 || inputName(flags.Arg(0)) == stdinName || inputName(w.job) == stdinName:
		return s.usage(errors.New("watch takes one file"), "hint: matchmark watch FILE\n")
	case w.out == "-":
		return s.usage(errors.New("watch writes into a folder"), "hint: --out DIR\n")
	}
	if _, err := paperNamed(w.paper); err != nil {
		return s.usage(err, "hint: --paper a4 or --paper letter\n")
	}
	if err := w.usable(); err != nil {
		return s.usage(err, "")
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	w.follow(ctx, flags.Arg(0), s)
	return exitDone
}

// follow prints at each change of the files, until ctx ends.
func (w *watchFlags) follow(ctx context.Context, file string, s streams) {
	tick := time.NewTicker(look)
	defer tick.Stop()
	var last map[string][32]byte // of what was read for the last print
	w.own = map[string]bool{}
	for {
		in := w.inputs(file)
		names := append(slices.Collect(maps.Keys(last)), in.Definition, in.Job, in.Site)
		if now := sums(names); last == nil || !maps.Equal(now, last) {
			last = w.again(in, s)
		}
		select {
		case <-ctx.Done():
			return
		case <-tick.C:
		}
	}
}

// again prints once, and gives the digests of all files that the job was read from, as
// they were read: a save while it was printed is seen at the next look.
func (w *watchFlags) again(in packs.Inputs, s streams) map[string][32]byte {
	fmt.Fprintf(s.err, "-- %s\n", in.Definition)
	jb, code := w.print(in, s)
	if code == exitProblems || code == exitFiles {
		fmt.Fprintln(s.err, "not printed; what was printed before stays")
	}
	read := map[string][32]byte{}
	for name, data := range jb.Files {
		read[name] = sha256.Sum256(data)
	}
	return read
}

// sums are the digests of files, by their names; one that cannot be read has none.
func sums(names []string) map[string][32]byte {
	out := map[string][32]byte{}
	for _, name := range names {
		if name == "" {
			continue
		}
		if data, problems := source.Read(disk{}, name); len(problems) == 0 {
			out[name] = sha256.Sum256(data)
		}
	}
	return out
}
