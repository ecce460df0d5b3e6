package templates

import (
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// A job over several shifts had no line for who takes over a lock, and none for a permit
// that is given for a day.
func TestLocksAreTakenOver(t *testing.T) {
	for _, x := range []struct {
		hours int64
		want  int
	}{{0, 0}, {1, 0}, {12, 0}, {13, 1}, {24, 1}, {25, 2}, {400, mostChanges}} {
		if got, _ := changes(&job.Job{Hours: units.Whole(x.hours)}); got != x.want {
			t.Errorf("%d h: %d rows for the next shift, want %d", x.hours, got, x.want)
		}
	}
}

// A lock that comes off for a trial of up to four tries had one row more, also where they were
// asked at another step, and what was found on the day none at all.
func TestTrialsOfLocksHaveRows(t *testing.T) {
	step := func(tries int) *job.Step { return &job.Step{Branching: job.Branching{Tries: tries}} }
	lock, free, once, other, four, three := step(0), step(0), step(0), step(0), step(4), step(3)
	off := func(locked, unlocked *job.Step, again bool) job.LockPeriod {
		return job.LockPeriod{Locked: locked, Unlocked: unlocked, Again: again, ForNow: true}
	}
	end := func(locked *job.Step, again bool) job.LockPeriod {
		return job.LockPeriod{Locked: locked, Unlocked: free, Again: again}
	}
	for _, x := range []struct {
		name  string
		locks [][]job.LockPeriod
		want  int
	}{
		{"none", nil, 0},
		{"no trial", [][]job.LockPeriod{{end(lock, false)}}, 0},
		{"locked twice, no trial", [][]job.LockPeriod{{end(lock, false), end(other, false)}}, 0},
		{"off by unlock, on again within the step", [][]job.LockPeriod{{end(lock, false), {Locked: free, Unlocked: other, Again: true}}}, 1},
		{"off by unlock, on again at another step of four tries", [][]job.LockPeriod{{end(lock, false), end(four, true)}}, 3},
		{"not on again", [][]job.LockPeriod{{off(lock, once, false)}}, 0},
		{"within a step", [][]job.LockPeriod{{off(lock, once, false), end(once, true)}}, 1},
		{"over two steps", [][]job.LockPeriod{{off(lock, once, false), end(other, true)}}, 0},
		{"two locks, four tries", [][]job.LockPeriod{{off(lock, four, false), end(four, true)}, {off(lock, four, false), end(four, true)}}, 6},
		{"four tries, asked where it is on again", [][]job.LockPeriod{{off(lock, once, false), end(four, true)}}, 3},
		{"two trials", [][]job.LockPeriod{{off(lock, three, false), off(three, other, true), end(other, true)}}, 3},
		{"on and off within a step of three", [][]job.LockPeriod{{off(lock, once, false), off(three, other, true), end(step(0), true)}}, 2},
	} {
		jb := &job.Job{}
		for _, ps := range x.locks {
			jb.Isolations = append(jb.Isolations, &job.Isolation{Periods: ps})
		}
		if got := tried(jb); got != x.want {
			t.Errorf("%s: %d rows for trials, want %d", x.name, got, x.want)
		}
	}
}
