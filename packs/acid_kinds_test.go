package packs_test

import (
	"os"
	"path/filepath"
	"sort"
	"sync"
	"testing"
)

// The acid test of the order of work: in every definition that check is silent about
// two neighbouring steps are changed over, a verb is moved to another step, or dropped, and
// the like (acid_moves_test.go).
// Each mutant is told by check, or the step is printed as free to move that way, or its
// kind is on the list below of what nothing in the definition can tell.
//
// Before the laws of order were written check told 1551 of 2553 mutants (61 %), and 15
// were printed as free; before those of verbs at the wrong step 2177 of 2868 (76 %), and
// 17. Verbs of one step changed over, steps moved over the end of a section and containers
// changed over are counted since then.
//
// Of each kind of mutant of a definition the first is tried and every third after it, of a
// starter, which is a large job, every ninth; with ACID_FULL=1 all of them.

// A silence is a kind of mutant that check may be silent about.
type silence struct {
	most int // in a hundred mutants of the kind
	why  string
}

// silences are what check may be silent about, as a share: a definition that is added
// changes the counts and not the shares. The shares are those of all mutants, rounded up.
var silences = map[string]silence{
	"drop empty":                           {100, "the closing row of the section asks for it then"},
	"drop fit":                             {2, "a reverse: line fits it then, by a row of its own"},
	"drop leave-out":                       {100, "the part goes back later all the same"},
	"drop lift":                            {12, "of a load that so many people may carry, or that the next step of its lift raises in one go"},
	"drop loosen":                          {94, "the step takes the fasteners out, which loosens them"},
	"drop match-marks":                     {100, "nothing else in the definition hangs on a mark, and other definitions mark by words and a photograph"},
	"drop measure":                         {3, "of a reading whose limit is worked out, or that is written down as found where it is set"},
	"drop remove":                          {7, "the part stays on, and nothing says that it is in the way: no behind: at what lies under it"},
	"drop tighten":                         {9, "of a joint that a reverse: line tightens, or that was loosened by no step"},
	"drop tool-count":                      {29, "another step below counts the tools before a lock comes off, and nobody can be in the opening"},
	"move close":                           {14, "within the time in which nothing is done in it, or at a step that puts nothing of it back"},
	"move empty":                           {26, "later than needed, or earlier, while it is empty and no lock is off"},
	"move fit":                             {9, "earlier or later at steps that put back what is in nobody's way: no behind:, or after the words of the same step"},
	"move fit-for-now":                     {33, "an aid: nothing says what it is put to, so nothing tells when it is wanted"},
	"move heat":                            {4, "to a step that moves the same part"},
	"move hold":                            {86, "who looks, and when, is the choice of the author; what stands above it is bound to stay there"},
	"move judge":                           {50, "at another step between the last of its readings and the first piece that goes back"},
	"move leave-out":                       {25, "at another step while the part is off"},
	"move lock":                            {6, "earlier, above an act that may be done on a locked machine"},
	"move unlock":                          {6, "to the end of the step that closes the machine, before nothing but its run"},
	"move lift":                            {2, "the load is raised by the next step, and no hand goes in under it before"},
	"move loosen":                          {22, "earlier than needed, below the lock, before anything it holds has moved or is read"},
	"move match-marks":                     {23, "earlier than needed, below the lock, while the part stands as it ran"},
	"move measure":                         {11, "while its faces are there and held; or of what lies between no two parts: levels, temperatures, run marks"},
	"move open":                            {15, "nothing closes it that is a part, or the cover comes off at the other step as well"},
	"drop permit":                          {12, "from one of several steps of the same work that all name it, and that hands it back"},
	"move permit":                          {17, "to the step below the locking, or to one that locks, before any work is done; or from one of several steps of the same work that all name it"},
	"move remove":                          {8, "to the step above or below, as the last it does, where nothing lies under it by behind: and its words are those of the other step or tell nothing"},
	"move set":                             {21, "later than needed, while its faces are there and held; or of what lies between no two parts"},
	"move stacks":                          {13, "earlier than needed, below the lock, before any of it has come off"},
	"move step to the section above":       {28, "the order that is written is all that is said of it: it names no step that it passes, and moves nothing that they move"},
	"move step to the section below":       {23, "the order that is written is all that is said of it: it names no step that it passes, and moves nothing that they move"},
	"move take-out-again":                  {28, "an aid: nothing says what it is put to, so nothing tells when it is done with"},
	"move tighten":                         {9, "later than needed, while nothing stands in front of it, hangs on it, is read on it, and no lock comes off"},
	"move tool-count":                      {25, "another step counts the tools before a lock comes off; where more often is the choice of the author"},
	"swap into":                            {28, "two containers, or two pockets of one, of the same place: which part lies in which is the choice of the author"},
	"swap reverse":                         {38, "neither section was reached through the other"},
	"swap sections":                        {14, "no step of the one says that it comes after one of the other, and no part, opening or reading binds them"},
	"swap steps, the lower with after:":    {2, "one of the two has a hold, which nothing binds to its place"},
	"swap steps, the lower without after:": {37, "the order that is written is all that is said of the two"},
	"swap verbs":                           {62, "both are done in one step, and neither ends what the other needs: a reading of a part that is out, a lock and a permit, two parts in nobody's way"},
	"turn section round":                   {12, "its steps are at different places of the machine, and none says that it comes after another"},
}

func TestAcidOrder(t *testing.T) {
	t.Parallel()
	full := os.Getenv("ACID_FULL") != ""
	type count struct{ all, told, free int }
	kinds := map[string]*count{}
	var sum count
	for _, file := range orderFiles(t) {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if !silentAbout(data) {
			t.Errorf("%s: told of as it stands: all its mutants are, those printed as free too", filepath.Base(file))
			continue
		}
		every := 3
		switch {
		case full:
			every = 1
		case len(data) > 20000:
			every = 9
		}
		some := orderMutants(t, data, every)
		silent := silentOf(some)
		for i, m := range some {
			k := kinds[m.kind]
			if k == nil {
				k = &count{}
				kinds[m.kind] = k
			}
			k.all++
			sum.all++
			switch {
			case !silent[i]:
				k.told++
				sum.told++
				if m.free {
					t.Errorf("%s: printed as free, and told: %s: %s", filepath.Base(file), m.kind, m.what)
				}
			case m.free:
				k.free++
				sum.free++
			case silences[m.kind].why == "":
				t.Errorf("%s: check is silent: %s: %s", filepath.Base(file), m.kind, m.what)
			default:
				t.Logf("silent: %s: %s: %s", filepath.Base(file), m.kind, m.what)
			}
		}
	}
	var names []string
	for n := range kinds {
		names = append(names, n)
	}
	sort.Strings(names)
	for _, n := range names {
		k := kinds[n]
		left := k.all - k.told - k.free
		t.Logf("%-40s %4d, told %4d, free %3d, silent %3d %s", n, k.all, k.told, k.free, left, silences[n].why)
		// Of some of the mutants a few more may happen to be silent than of all.
		more := min(3, 1+k.all/8)
		if full {
			more = 0
		}
		if most := (silences[n].most*k.all+99)/100 + more; left > most {
			t.Errorf("check is silent about %d of %d mutants of the kind %q, %d are allowed: %d in a hundred", left, k.all, n, most, silences[n].most)
		}
	}
	t.Logf("%d mutants, %d told, %d printed as free to move, %d silent: %.1f %% told or free", sum.all, sum.told, sum.free, sum.all-sum.told-sum.free, 100*float64(sum.told+sum.free)/float64(sum.all))
	if (sum.told+sum.free)*100 < sum.all*78 {
		t.Errorf("check tells %d of %d mutants, and %d are printed as free; 78 in a hundred must be", sum.told, sum.all, sum.free)
	}
}

// silentOf loads all mutants, and reports for each whether check is silent.
func silentOf(all []orderMutant) []bool {
	out := make([]bool, len(all))
	work := make(chan int)
	var wg sync.WaitGroup
	for range 2 {
		wg.Add(1)
		go func() {
			defer wg.Done()
			for i := range work {
				out[i] = silentAbout(all[i].text)
			}
		}()
	}
	for i := range all {
		work <- i
	}
	close(work)
	wg.Wait()
	return out
}
